## Las palabras de las etiquetas y de la página que las lee.

label-title = Etiquetas de tubos
label-about = Imprime la hoja, recorta y pega una en cada tubo. Escaneada o escrita dentro de la app, la etiqueta abre la anotación de esa colonia, también sin conexión.
label-print = Imprimir la hoja
label-choose = Etiquetas para
label-scan = Escanear etiqueta
label-scan-title = Escanear una etiqueta
label-typed = O escribe el código que lleva debajo
label-open = Abrir
label-unknown = Ninguna colonia de este teléfono tiene este código.
label-camera = Pon la etiqueta delante de la cámara.
label-no-camera = Aquí no se puede usar la cámara. Escribe el código.
label-start = Encender la cámara
label-foreign = Este código no es una etiqueta de este estante.
label-several = Encajan varias colonias:
