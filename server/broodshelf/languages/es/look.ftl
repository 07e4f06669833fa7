## Every part that the screens are made of, on one page.

look-title = Qué aspecto tiene
look-about = Cada parte de las páginas, con la luz que elijas.
look-gauge = El indicador
look-colour = Color
look-type = Letra
look-buttons = Botones
look-chips = Etiquetas
look-stepper = Contador
look-states = Guardado, sincronizado, te necesita
look-empty = Un estado tranquilo
look-skeleton = Antes de que esté
look-sheet = Hoja
look-toast = Mensaje breve
look-icons = Iconos
look-open-sheet = Abrir una hoja
look-show-toast = Mostrar un mensaje breve
