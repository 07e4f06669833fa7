## As palavras das etiquetas e da página que as lê.

label-title = Etiquetas de tubos
label-about = Imprima a folha, recorte e cole uma em cada tubo. Lida ou digitada dentro do app, a etiqueta abre a anotação dessa colônia, também sem conexão.
label-print = Imprimir a folha
label-choose = Etiquetas para
label-scan = Ler etiqueta
label-scan-title = Ler uma etiqueta
label-typed = Ou digite o código por baixo dela
label-open = Abrir
label-unknown = Nenhuma colônia deste telefone tem este código.
label-camera = Segure a etiqueta diante da câmera.
label-no-camera = A câmera não pode ser usada aqui. Digite o código.
label-start = Ligar a câmera
label-foreign = Este código não é uma etiqueta desta estante.
label-several = Várias colônias combinam:
