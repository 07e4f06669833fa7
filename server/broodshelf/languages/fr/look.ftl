## Every part that the screens are made of, on one page.

look-title = Son aspect
look-about = Chaque pièce dont les écrans sont faits, dans la lumière que tu choisis.
look-gauge = La jauge
look-colour = Couleur
look-type = Écriture
look-buttons = Boutons
look-chips = Pastilles
look-stepper = Compteur
look-states = Enregistré, synchronisé, à voir
look-empty = Un état calme
look-skeleton = Avant l’arrivée
look-sheet = Volet
look-toast = Message bref
look-icons = Icônes
look-open-sheet = Ouvrir un volet
look-show-toast = Montrer un message
