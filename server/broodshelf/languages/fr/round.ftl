## La tournée : ce qu’il y a à faire, quand, et ce qu’on en fait.

round-due-never = pas à faire
round-due-now = à faire maintenant
round-due-since = { $days ->
    [one] à faire depuis { $days } jour
   *[other] à faire depuis { $days } jours
  }
round-due-hours = { $hours ->
    [one] à faire dans { $hours } heure
   *[other] à faire dans { $hours } heures
  }
round-due-days = { $days ->
    [one] à faire dans { $days } jour
   *[other] à faire dans { $days } jours
  }

round-title = La tournée
round-now = Maintenant
round-today = Plus tard aujourd’hui
round-next = Prochains jours
round-done = Fait
round-quiet = Rien à faire maintenant.
round-next-at = Prochaine fois : { $day }.
round-calm = Chaque tube est assez plein. Laisse-les au calme.
round-as-suggested = Fait comme proposé
round-done-short = Fait
round-offered = Nouveau nid offert
round-not-moved = Pas encore déménagé
round-moved = Elles ont déménagé
round-other = Autre
round-count = Compter
round-change = Modifier la colonie
round-later = Plus tard
round-resolved = C’est réglé
round-urgent = urgent
round-why = Pourquoi
round-all = { $count ->
    [one] Fait comme proposé : { $colony }
   *[other] Les { $count } : faits comme proposé
  }
round-by = par { $who }
round-undo = Annuler
round-empty-shelf = L’étagère est vide. Ajoute la première colonie.
round-joining = Ton étagère arrive sur ce téléphone.
round-joined = { $count ->
    [0] Les premières saisies arrivent.
    [one] { $count } saisie jusqu’ici
   *[other] { $count } saisies jusqu’ici
  }
round-progress = Fait : { $part } sur { $whole }
round-finished = La tournée est finie.
round-many = Plusieurs d’un coup
round-add = Ajouter une colonie

## L’étagère et sa liste.

shelf-title = L’étagère
shelf-search = Chercher une colonie
shelf-none = Aucune colonie n’a cela dans son nom ou son espèce.
shelf-labels = Étiquettes de tubes
shelf-scan = Scanner une étiquette
shelf-species-unknown = Espèce non indiquée
shelf-no-plan = Le plan arrive à la prochaine connexion.
shelf-next = { $need } : { $due }
shelf-level = { $need } : { $level }

## What was put off or skipped, and why.

later-was-skipped = { $need } : sauté cette fois ({ $why })
later-was-put-off = { $need } : reporté
later-why-still-food = Il y a encore à manger
later-why-leave-quiet = Les laisser au calme
later-why-nothing-in-the-house = Rien à la maison
later-why-other = Une autre raison
