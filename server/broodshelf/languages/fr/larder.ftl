## Les vivres, et ce qu’il faut acheter.

larder-title = Les vivres
larder-empty = Aucun aliment n’est noté. Note ce qu’il y a à la maison : au nourrissage, cela viendra en premier.
larder-used = Fini
larder-left-now = Combien il en reste
larder-by-logs = reste environ { $left } sur { $whole }, d’après les nourrissages notés
larder-no-amount = Tape un nombre.
larder-used-up = Marqué comme fini
larder-use-by = à utiliser avant le { $day }
larder-got = depuis le { $day }
larder-never = À ne jamais donner.
larder-held = { $days ->
    [one] En attente jusqu’au { $day }, encore { $days } jour.
   *[other] En attente jusqu’au { $day }, encore { $days } jours.
  }
larder-over = Date passée : jette-le.
larder-left = { $days ->
    [0] À utiliser aujourd’hui.
    [one] Bon encore { $days } jour.
   *[other] Bon encore { $days } jours.
  }
larder-add = Ajouter un aliment
larder-mix = Préparer de l’eau sucrée
larder-size = Taille
larder-size-open = Mélangée ou inconnue
larder-tint = Avec colorant alimentaire
larder-no-tint = Aucun
larder-tint-why = Pour voir qui a bu : un colorant bleu sans carmin, la teinte la plus faible qui se voie, une seule colonie, un seul jour, avec de l’eau sucrée non colorée à côté. Usage courant : nous n’avons trouvé ni dose publiée, ni durée, ni essai de sécurité pour les fourmis ; des éleveurs rapportent des morts avec un colorant rouge.
larder-food = Aliment
larder-origin = D’où ça vient
larder-name = Nom
larder-use-by-field = À utiliser avant
larder-refused = Cela n’entre pas dans les vivres.
larder-go = L’ajouter
larder-percent = Sucre
larder-of-weight = % de sucre en poids
larder-water = Eau
larder-of-water = { $unit } d’eau
larder-recipe = Mélange { $sugar_g } g de sucre avec { VOLUME($water_ml) } d’eau tiède : environ { VOLUME($total_ml) }.
larder-cool = Laisse refroidir jusqu’à ce que ce soit froid sur ton poignet. L’eau chaude peut brûler : tiens-la loin des enfants.
larder-keeps = Au frigo environ 7 jours (usage courant) ; jette-la quand elle est trouble.
larder-batch = Garder ce mélange dans les vivres
larder-batch-name = eau sucrée { $percent } %
larder-lots = À la maison

larder-get-title = À acheter
larder-get-today = À prendre aujourd’hui.
larder-get-by = À prendre avant le { $day }.
larder-get-spoils = Se gâte d’abord

calculator-title = Calculs
