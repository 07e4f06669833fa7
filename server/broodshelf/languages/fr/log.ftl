## Le volet où l’on note.

log-food = Aliment
log-more = Plus d’aliments
log-amount = Quantité
log-size = Taille
log-from = D’où ça vient
log-lot = Quel lot
log-no-lot = D’ailleurs
log-go = Noter le nourrissage
log-despite = C’est déjà fait : noter quand même

log-stop-refuse = Ne donne pas cela.
log-stop-wait = Pas encore.
log-stop-hold = Mets-le d’abord à part.

log-outcome-later = { $hours ->
    [one] Ce qu’il en est resté peut attendre : la tournée demandera les restes après environ { $hours } heure.
   *[other] Ce qu’il en est resté peut attendre : la tournée demandera les restes après environ { $hours } heures.
  }
log-which-feeding = Quel nourrissage
log-feeder-level = L’abreuvoir est plein à
log-offered-in = Donné en

log-vessel-drop = Gouttes
log-vessel-feeder = Abreuvoir

log-colour-seen = Où la couleur se voit
log-colour-only = Noter seulement où on la voit
log-colour-when = Regarde après 1, 8, 24 et 72 heures, à travers les gastres clairs et gonflés, et dans le couvain. Les fourmis sombres la cachent (usage courant).
log-what-became = Ce qu’il en est resté
log-leftovers = Restes retirés
log-calm = Vu, tout est calme
log-barrier-good = L’anti-évasion est bon
log-level = Niveau d’eau
log-drag = Glisse le niveau jusqu’à ce qu’il ressemble au vrai tube, ou prends les flèches du clavier.
log-bubble = Dans un tube couché, une bulle flotte sur l’eau : lis le bout côté coton.
log-mm = Ou tape-le, en mm
log-read = Noter ce niveau
log-filled = Rempli
log-new-tube = Nouveau tube offert
log-hydrate = Nid humidifié
log-wrong = Ce qui ne va pas
log-report = Le signaler
log-workers = Ouvrières vues
log-guess = (à peu près suffit)
log-count = Noter le comptage
log-more-brood = Œufs, nymphes, reines
log-move-words = Pose le nouveau tube à côté de l’ancien, mets-le dans le noir et éclaire l’ancien. Laisse-leur 1 à 4 semaines (usage courant). Ne les secoue jamais dehors, sauf si l’ancien est inondé ou à sec.
log-offered = Nouveau nid offert
log-moved = Elles ont déménagé
log-note = Note
log-keep-note = Garder la note
log-mould-where = Où est-elle

log-mould-far = Des taches loin du couvain
log-mould-near = Près du couvain, ou un tiers du coton (usage courant)

log-queens = Reines vues
log-queens-hint = (laisse vide si tu n’as pas regardé ; 0 veut dire qu’il n’en reste aucune)
log-males-only = Seulement des mâles sont nés
log-donor = De quelle colonie
log-from-elsewhere = D’ailleurs
log-which-brood = Ce qui a été ajouté
log-how-many = Combien
log-boost = Noter le couvain
log-boost-words = Seulement du couvain de la même espèce (pour une reine parasite : de son hôte), d’une colonie saine. Les nymphes sont le mieux acceptées (usage courant).

## Reporter une tâche, ou la sauter avec une raison.

later-title = Plus tard, ou pas cette fois
later-when = La rappeler
later-hour = Dans une heure
later-evening = Ce soir
later-tomorrow = Demain
later-skip = Ou la sauter cette fois, parce que
later-own = Ta raison
later-go = La sauter
later-cannot-wait = Cela peut attendre une nuit au plus : quelqu’un doit regarder.

## Plusieurs colonies d’un coup.

several-title = Plusieurs d’un coup
several-what = Ce qu’elles ont eu
several-who = Quelles colonies
several-none = Choisis au moins une colonie.
several-water = Rempli
several-look = Vu, tout est calme
several-go = { $count ->
    [one] Noter pour { $count } colonie
   *[other] Noter pour { $count } colonies
  }
