## Ce que dit une saisie du journal.

event-kind-feeding = Nourrissage
event-kind-check = Contrôle
event-kind-water = Eau
event-kind-fault = Quelque chose ne va pas
event-kind-count = Comptage
event-kind-move = Déménagement
event-kind-boost = Couvain ajouté
event-kind-note = Note
event-kind-climate = Climat
event-kind-photo = Photo
event-kind-later = Reporté

event-colony = Une colonie
event-repeat = { $told } (peut-être un doublon, non compté)
event-brood-added = { $brood ->
    [eggs] Couvain ajouté : œufs
    [larvae] Couvain ajouté : larves
   *[pupae] Couvain ajouté : nymphes
  }
event-brood-added-some = { $brood ->
    [eggs] { $count ->
        [one] Couvain ajouté : { $count } œuf
       *[other] Couvain ajouté : { $count } œufs
      }
    [larvae] { $count ->
        [one] Couvain ajouté : { $count } larve
       *[other] Couvain ajouté : { $count } larves
      }
   *[pupae] { $count ->
        [one] Couvain ajouté : { $count } nymphe
       *[other] Couvain ajouté : { $count } nymphes
      }
  }
event-leftovers = Restes retirés
event-mended = { $fault } (réglé)
event-read = Niveau d’eau : { $level }
event-read-mm = Niveau d’eau : { $mm } mm
event-feeder = Abreuvoir : { $level }
event-colour = Couleur cherchée : { $where }
event-colour-nowhere = Couleur cherchée : nulle part

event-water-refill = Eau remplie
event-water-new-tube = Nouveau tube offert
event-water-hydrate = Nid humidifié

event-counted = Compté : { $seen }
event-counted-nothing = Compté : couvain
event-counted-eggs = { $amount ->
    [none] œufs : aucun
    [seen] œufs : vus
    [few] œufs : peu
    [some] œufs : quelques-uns
   *[many] œufs : beaucoup
  }
event-counted-larvae = { $amount ->
    [none] larves : aucune
    [seen] larves : vues
    [few] larves : peu
    [some] larves : quelques-unes
   *[many] larves : beaucoup
  }
event-counted-pupae = { $amount ->
    [none] nymphes : aucune
    [seen] nymphes : vues
    [few] nymphes : peu
    [some] nymphes : quelques-unes
   *[many] nymphes : beaucoup
  }
event-workers = { $count ->
    [one] { $count } ouvrière
   *[other] { $count } ouvrières
  }
event-workers-at-least = au moins { $seen }
event-queens = { $count ->
    [one] { $count } reine
   *[other] { $count } reines
  }
event-males-only = seulement des mâles
event-workers-roughly = { $amount ->
    [none] Pas d’ouvrières
    [few] Peu d’ouvrières
    [some] Quelques ouvrières
   *[many] Beaucoup d’ouvrières
  }

event-stage-larvae = Larves
event-stage-eggs = Œufs
event-stage-pupae = Nymphes

event-outcome-all = Tout pris
event-outcome-some = Pris en partie
event-outcome-ignored = Ignoré

event-reading-full = Plein
event-reading-three-quarters = ¾
event-reading-half = ½
event-reading-quarter = ¼
event-reading-empty = Vide

event-colour-seen-gasters = Dans les gastres : des ouvrières ont bu
event-colour-seen-brood = Dans le couvain : c’est passé plus loin

event-coarse-none = Zéro
event-coarse-few = Peu
event-coarse-some = Plusieurs
event-coarse-many = Beaucoup

event-brood-seen-none = Zéro
event-brood-seen-seen = Vu
event-brood-seen-few = Peu
event-brood-seen-some = Plusieurs
event-brood-seen-many = Beaucoup

## Le journal.

diary-empty = Rien de noté pour l’instant.
diary-earlier = Plus tôt
diary-void = Annuler
diary-search = Chercher dans le journal
diary-kind = Afficher
diary-all = Tout
diary-none = Rien de tel dans le journal.
diary-looking = Recherche jusqu’au { $day } …
diary-today = Aujourd’hui
diary-yesterday = Hier

## Les photos.

photo-title = Photos
photo-take = Prendre une photo
photo-busy = Un instant…
photo-remove = Retirer cette photo
photo-unreadable = Cette photo n’a pas pu être lue. Essaies-en une autre, ou reprends-la.
photo-too-large = Cette photo n’a pas pu être assez réduite.
photo-of = { $name }, le { $day }
photo-large = Voir la photo du { $day }
photo-older = Plus ancienne
photo-newer = Plus récente
photo-elsewhere = Cette photo est encore sur le téléphone qui l’a prise.
