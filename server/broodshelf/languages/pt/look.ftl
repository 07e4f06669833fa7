## Every part that the screens are made of, on one page.

look-title = Que aspecto tem
look-about = Cada parte das páginas, na luz que você escolher.
look-gauge = O indicador
look-colour = Cor
look-type = Letra
look-buttons = Botões
look-chips = Etiquetas
look-stepper = Contador
look-states = Guardado, sincronizado, precisa de você
look-empty = Um estado calmo
look-skeleton = Antes de aparecer
look-sheet = Folha
look-toast = Mensagem breve
look-icons = Ícones
look-open-sheet = Abrir uma folha
look-show-toast = Mostrar uma mensagem breve
