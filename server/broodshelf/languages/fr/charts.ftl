## Les mots des courbes.

chart-growth = Croissance
chart-water = Eau
chart-feeding = Nourriture
chart-which = Courbe
chart-day = Jour
chart-workers = Ouvrières
chart-level = Niveau
chart-share = Partager comme image
chart-no-picture = L’image n’a pas pu être faite.
chart-few = Une courbe demande au moins deux comptages avec un nombre.
chart-few-water = Pas encore de niveau d’eau.
chart-few-food = Pas encore de nourrissage noté.
chart-week = Semaine du
chart-sugar = Sucre
chart-protein = Protéines et autres
chart-growth-words = Ouvrières comptées : de { $first } à { $last }.
chart-water-words = { $days ->
    [one] À ce rythme, encore { $days } jour avant l’échéance.
   *[other] À ce rythme, encore { $days } jours avant l’échéance.
  }
chart-never = Le niveau ne baisse pas en ce moment.
chart-due-now = C’est le moment de voir l’eau.
chart-food-words = { $count ->
    [one] { $count } nourrissage ces six derniers mois.
   *[other] { $count } nourrissages ces six derniers mois.
  }
chart-estimate = La ligne pointillée est une estimation, l’ombre sa fourchette.
chart-growth-ahead = À ce rythme, environ { $best } le { $day }, probablement { $low } à { $high }.
chart-behind = La forme derrière : la chaleur mesurée à son emplacement, { $low } à { $high }.
