## Le plan d’une colonie et le rythme qu’on choisit soi-même.

plan-own = Ton propre intervalle
plan-set = Choisir ton intervalle
plan-every = { $days ->
    [1] Ton réglage : tous les jours.
    [one] Ton réglage : tous les { $days } jours.
   *[other] Ton réglage : tous les { $days } jours.
  }
plan-keep = Garder cet intervalle
plan-clear = Laisser le plan décider
plan-days = { $count ->
    [one] jour
   *[other] jours
  }
plan-spread = { $high ->
    [one] Sans doute dans { $low } à { $high } jour.
   *[other] Sans doute dans { $low } à { $high } jours.
  }
plan-kept = Ton intervalle est réglé
plan-cleared = Le plan décide à nouveau

plan-rhythm-open = Jours, heure ou pause
plan-rhythm-title = { $need } : jours et heure
plan-rhythm-days = Ces jours-là
plan-rhythm-hour = À cette heure
plan-rhythm-until = En pause jusqu’au
plan-rhythm-daily = Tous les jours
plan-rhythm-at = { $days } à { $hour }
plan-rhythm-paused = En pause jusqu’au { $day }.
plan-rhythm-urgent = Sans choix, c’est le plan qui décide. Ce qui presse, comme une fuite, est signalé quand même.
