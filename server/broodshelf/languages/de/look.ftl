## Every part that the screens are made of, on one page.

look-title = Wie sie aussieht
look-about = Alle Teile, aus denen die Ansichten bestehen, in dem Licht, das du wählst.
look-gauge = Die Anzeige
look-colour = Farbe
look-type = Schrift
look-buttons = Knöpfe
look-chips = Chips
look-stepper = Zähler
look-states = Gespeichert, abgeglichen, braucht dich
look-empty = Ein ruhiger Zustand
look-skeleton = Bevor es da ist
look-sheet = Blatt
look-toast = Kurzmeldung
look-icons = Zeichen
look-open-sheet = Ein Blatt öffnen
look-show-toast = Eine Kurzmeldung zeigen
