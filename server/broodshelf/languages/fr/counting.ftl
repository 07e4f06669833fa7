counting-open = Compter sur une photo
counting-again = Revoir le comptage
counting-looking = Recherche des fourmis…
counting-range = Probablement de { $low } à { $high }, au moins { $least }
counting-crowded = Elles sont trop serrées pour être toutes vues : au moins { $least }, probablement de { $low } à { $high }
counting-brood = Couvain : { $count }
counting-plain = Netteté qu’une fourmi doit avoir
counting-tap = Un toucher pose
counting-sets-worker = Fourmis
counting-sets-brood = Couvain
counting-sets-frame = Cadre
counting-sets-size = Taille
counting-hint-worker = Touche une fourmi sans point ; touche un point pour l’enlever.
counting-hint-brood = Touche du couvain sans point ; touche un point pour l’enlever.
counting-hint-frame = Tire les deux coins autour de ce qui compte.
counting-hint-size = Pose les deux bouts sur une chose de longueur connue.
counting-spans = Entre les bouts se trouve
counting-spans-worker = Une ouvrière
counting-spans-bore = L’intérieur du tube
counting-spans-length = Une longueur en mm
counting-length = Longueur en mm
counting-corner = { $which ->
    [first] Coin en haut à gauche
   *[other] Coin en bas à droite
  }
counting-end = { $which ->
    [first] Un bout
   *[other] Autre bout
  }
counting-picture = Photo avec { $count } points. Page haut et page bas vont de l’un à l’autre, les flèches déplacent le point choisi, Suppr l’enlève, Entrée en pose un.
counting-dot = Point { $at } sur { $count } : { $what ->
    [brood] couvain
   *[worker] ouvrière
  }{ $sure ->
    [no] , pas sûr
   *[yes] {""}
  }
counting-previous = Point précédent
counting-next = Point suivant
counting-take-away = Enlever ce point
counting-nearer = Plus grand
counting-farther = Plus petit
counting-whole = La photo entière
counting-part = Seule une partie du nid est visible
counting-pale = Les fourmis sont plus claires que leur fond
counting-keep = Garder ce comptage
counting-kept = Le comptage est gardé.
counting-failed = Cette photo n’a pas pu être examinée. Des points se posent à la main.
counting-heic = Ce navigateur ne lit pas les photos HEIC ; rien n’a été gardé. Règle l’appareil photo sur JPEG, ou enregistre la photo en JPEG, puis choisis-la à nouveau.
counting-growth = Croissance en photos
counting-film = Partager comme film
counting-strip = Partager côte à côte
counting-making = Un instant…
counting-still = Ce téléphone ne fait pas de films ; partage les photos côte à côte.
counting-shown = Montrer les points
counting-few = Compte sur deux photos ou plus, et elles seront ici côte à côte.
