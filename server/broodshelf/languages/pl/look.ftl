## Every part that the screens are made of, on one page.

look-title = Wygląd
look-about = Każda część, z której złożone są ekrany, w wybranym świetle.
look-gauge = Wskaźnik
look-colour = Kolor
look-type = Pismo
look-buttons = Przyciski
look-chips = Znaczniki
look-stepper = Licznik
look-states = Zapisane, zsynchronizowane, do sprawdzenia
look-empty = Stan spokoju
look-skeleton = Zanim się pojawi
look-sheet = Arkusz
look-toast = Krótki komunikat
look-icons = Ikony
look-open-sheet = Otwórz arkusz
look-show-toast = Pokaż komunikat
