## Un emplacement au fil du temps, et les fichiers de ses capteurs.

climate-which = Ce qui est dessiné
climate-span = Sur combien de temps
climate-temperature = Température
climate-humidity = Humidité

climate-span-of-days = Deux semaines
climate-span-of-weeks = Trois mois
climate-span-of-year = Un an

climate-nothing = Rien n’a été mesuré ni noté ici pendant ce temps, et rien n’est réglé.
climate-summary = { $mean } en moyenne, { $low } à { $high }.
climate-measured-all = Tout a été mesuré ou relevé.
climate-measured = { $days ->
    [one] Mesuré ou relevé : { $measured } jour sur { $days }.
   *[other] Jours mesurés ou relevés : { $measured } sur { $days }.
  }
climate-key = L’ombre va du plus bas au plus haut de la journée. En pointillé : supposé, d’après le réglage.
climate-key-weeks = L’ombre va du plus bas au plus haut de la semaine. En pointillé : supposé, d’après le réglage.
climate-comfort = La bande derrière : ce qui convient à toutes celles qui vivent ici, { $low } à { $high }.
climate-no-comfort = Aucune température ne convient à toutes celles qui vivent ici.
climate-degree-days = { $name } : { $sum } degrés-jours au-dessus de { $threshold } depuis le { $since }.
climate-degree-days-assumed = { $name } : { $sum } degrés-jours au-dessus de { $threshold } depuis le { $since } ; { $percent } % supposés.
climate-day = Jour
climate-week = Semaine du
climate-mean = Moyenne
climate-low = Minimum
climate-high = Maximum
climate-basis = D’où on le sait

climate-basis-measured = mesuré
climate-basis-typed = relevé
climate-basis-assumed = supposé

climate-file = Un fichier de capteur
climate-file-hint = un tableau CSV, ses titres sur la première ligne
climate-too-large = Ce fichier dépasse 4 Mo : apporte-le en plusieurs parties, les titres sur la première ligne de chacune.
climate-time-column = Colonne de l’heure
climate-temperature-column = Colonne de la température
climate-humidity-column = Colonne de l’humidité
climate-no-column = aucune
climate-unit = Mesuré en
climate-dates = Les heures s’écrivent
climate-date-form-iso = 2026-12-31 18:30
climate-date-form-dmy = 31.12.2026 18:30
climate-date-form-mdy = 12/31/2026 6:30 PM
climate-date-form-unix = secondes depuis 1970

climate-zone = Les heures sont celles

climate-zone-of-household = de la maison
climate-zone-of-utc = du temps UTC

climate-look = Regarder d’abord
climate-take = Importer
climate-taken = { $hours ->
    [one] Importé : { $hours } heure. Les jours seront dessinés d’ici dix minutes.
   *[other] Importé : { $hours } heures. Les jours seront dessinés d’ici dix minutes.
  }
climate-found = { $rows ->
    [one] { $rows } mesure, de { $from } à { $until }.
   *[other] { $rows } mesures, de { $from } à { $until }.
  }
climate-found-nothing = Aucune ligne n’est lisible.
climate-range = De { $low } à { $high }.
climate-new-hours-all = { $hours ->
    [one] { $hours } heure, toute nouvelle.
   *[other] { $hours } heures, toutes nouvelles.
  }
climate-new-hours = { $hours ->
    [one] { $hours } heure, dont { $new } nouvelle : les autres étaient déjà mesurées et restent telles quelles.
   *[other] { $hours } heures, dont nouvelles : { $new }. Les autres étaient déjà mesurées et restent telles quelles.
  }
climate-bad-rows = { $rows ->
    [one] { $rows } ligne est illisible et sera laissée de côté :
   *[other] { $rows } lignes sont illisibles et seront laissées de côté :
  }
climate-bad-line = Ligne { $line } : { $why }
climate-give-out = Enregistrer les heures en fichier
