travel-no-loose-liquid = Pas de liquide libre : pas de gouttes, pas d’abreuvoir ; laisse sécher l’aire de chasse.
travel-plugs-tight = Tous les bouchons et couvercles bien serrés, avec un peu d’air.
travel-dark-and-calm = Dans le noir, couché comme toujours, emballé pour que rien ne roule.
travel-travel-warmth = { DEGREES($low_c) } à { DEGREES($high_c) } tout le trajet ; jamais dans une voiture garée (usage courant).
travel-quiet-after = Ensuite { $low } à { $high } jours de calme : un repas refusé ne veut rien dire (usage courant).
travel-never-tilt = Ne penche jamais : des réplètes qui tombent sont perdues.
travel-double-lid = Elle pique : une deuxième boîte fermée autour, avec une étiquette.
