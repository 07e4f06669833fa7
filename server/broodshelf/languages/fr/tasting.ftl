## Les dégustations : ce qu’aime une colonie.

tasting-title = Ce qu’elles aiment
tasting-about = Une dégustation montre quel aliment elles préfèrent : la tournée les offre tour à tour, tu dis ce qu’il en est resté. Un nouvel aliment par semaine, jamais pendant une fondation ou une installation.
tasting-not-now = Pas maintenant ({ $state }) : un refus ne voudrait rien dire.
tasting-kind = Genre d’aliment
tasting-foods = Aliments, 2 à 5
tasting-pick = Choisis 2 à 5 aliments.
tasting-go = Commencer la dégustation
tasting-started = La dégustation a commencé
tasting-none = Il n’y a pas deux aliments à comparer pour ce qu’elles mangent.
tasting-since = Depuis le { $day }.
tasting-told = Ce qu’elle a dit jusqu’ici
tasting-wait = Le plan choisit le premier aliment à la prochaine connexion.
tasting-not-offered = Pas encore offert
tasting-next = Ensuite : { $food }, { $due }.
tasting-taken = Pris dans environ { $mean } %, { $low } à { $high }
tasting-offers = { $count ->
    [one] { $count } essai
   *[other] { $count } essais
  }
tasting-offers-and-likes = { $count ->
    [one] { $others ->
        [one] { $count } essai et ce qu’a pris { $others } colonie semblable
       *[other] { $count } essai et ce qu’ont pris { $others } colonies semblables
      }
   *[other] { $others ->
        [one] { $count } essais et ce qu’a pris { $others } colonie semblable
       *[other] { $count } essais et ce qu’ont pris { $others } colonies semblables
      }
  }
tasting-best = Préféré : probable à { $percent } %
tasting-range = La barre est l’estimation, la ligne sa fourchette.
tasting-food = Aliment
tasting-offered = Essais
tasting-share = Pris
tasting-spread = Fourchette
tasting-favourite = Préféré
tasting-end = Finir la dégustation
tasting-ended = La dégustation est finie
tasting-part = Partie de la dégustation : { $name }
tasting-here = Cela compte pour la dégustation en cours.
tasting-earlier = Dégustations passées
tasting-days = { $from } – { $to }
tasting-tally = { $checked ->
    [one] { $food } : pris { $taken } fois sur { $checked }
   *[other] { $food } : pris { $taken } fois sur { $checked }
  }
tasting-unchecked = { $food } : jamais contrôlé
