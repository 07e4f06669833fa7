## Les emplacements et leur climat.

place-title = Emplacements
place-about = Meuble, pièce, cave ou frigo : leur chaleur et leur sécheresse font bouger nourriture, eau et couvain dans chaque plan.
place-empty = Aucun emplacement n’est noté. Sans cela, le plan suppose une pièce à { DEGREES(22) } (usage courant).
place-add = Ajouter un emplacement
place-change = Modifier
place-reading = Noter une mesure
place-log = Noter la mesure
place-sensors = Capteurs
place-chart = Dans le temps
place-close = Fermer
place-open = Voir les emplacements
place-name = Nom de l’emplacement
place-type = Ce que c’est

place-type-cabinet = Meuble
place-type-room = Pièce
place-type-cellar = Cave
place-type-fridge = Frigo

place-nobody = Aucune colonie ici : choisis l’emplacement dans la colonie, sous Modifier.
place-day-temp = De jour, { $unit }
place-night-temp = De nuit, { $unit }
place-humidity = Humidité, %
place-temperature = Température, { $unit }
place-stands = Emplacement
place-nowhere = non précisé
place-none-yet = Ajoute d’abord un emplacement, sous Maison.
place-day = { $warm } de jour
place-night = { $warm } de nuit
place-moist = { $percent } % d’humidité
place-last = Dernière mesure : { $what } ({ $when })
place-bad-temp = Cette température est impossible : tape une valeur en { $unit }.
place-bad-moist = L’humidité est entre 0 et 100 %.
place-nothing = Tape une température ou une humidité.
