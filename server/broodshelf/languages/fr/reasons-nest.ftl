reason-settling = La colonie s’installe après un déménagement : laisse-la au calme, les refus ne veulent rien dire maintenant.
reason-room-full = Environ { $workers } ouvrières dans un contenant pour environ { $room } (usage courant).
reason-barrier = L’anti-évasion s’use en 2 à 8 semaines : vérifie une fois par semaine (usage courant).
reason-glance =
    Personne n’a regardé cette colonie depuis { $days ->
        [one] { $days } jour
       *[other] { $days } jours
    }.
reason-ask-stage = Personne n’a dit où en est cette colonie. Jette un coup d’œil calme aujourd’hui et note un comptage : une reine seule, ou combien d’ouvrières et s’il y a des larves.
reason-ask-workers = Le dernier comptage n’a trouvé aucune ouvrière là où il devrait y en avoir. Jette un coup d’œil calme et compte à nouveau : était-ce une erreur, ou la reine est-elle seule ?
reason-room-fills =
    À ce rythme le nid sera plein, avec environ { $room } ouvrières (usage courant), dans { $best ->
        [one] { $best } jour
       *[other] { $best } jours
    } ({ $low } à { $high }) : prépare le suivant.
reason-room-fills-perhaps =
    À ce rythme le nid sera plein, avec environ { $room } ouvrières (usage courant), dans { $best ->
        [one] { $best } jour
       *[other] { $best } jours
    }, peut-être bien plus tard : prépare le suivant.
reason-room-full-by-now =
    À son rythme le nid, prévu pour environ { $room } ouvrières (usage courant), est peut-être déjà plein ; le dernier comptage date de { $days ->
        [one] { $days } jour
       *[other] { $days } jours
    } : compte, et prépare le suivant.
reason-room-growth =
    À son rythme actuel elle double en { $doubling } jours environ ({ $counts ->
        [one] { $counts } comptage
       *[other] { $counts } comptages
    }).
reason-move-water-low = L’eau de ce tube est basse : un tube neuf donne l’eau et la place d’un coup.
reason-move-mould = La moisissure est près du couvain ou couvre un tiers du coton.
reason-move-flood = Le nid est inondé.
reason-move-dry = Le réservoir est à sec.
reason-move-beside = Pose le nouveau tube ou nid bouche contre bouche à côté de l’ancien.
reason-move-darken = Mets le nouveau dans le noir.
reason-move-light = Laisse l’ancien à la lumière, sans chaleur.
reason-move-wait = Laisse-leur 1 à 4 semaines ; elles choisissent la nuit (usage courant).
reason-move-no-shaking = Ne les secoue jamais dehors, ne les verse jamais.
reason-move-force = Tu l’as vu à sec ou inondé : maintenant seulement, aide à la main. Fais-les tomber doucement dans le nouveau tube par petites tapes, le couvain d’abord, et laisse-les dans le noir.
reason-never-tilt = Ne penche jamais : des réplètes qui tombent sont perdues.
reason-offer-look =
    Un nid a été offert il y a { $days ->
        [one] { $days } jour
       *[other] { $days } jours
    } : vois si elles ont déménagé, et note-le si oui.
reason-offer-light = Toujours dans l’ancien ? Mets une lumière au-dessus de l’ancien, sans chaleur, et garde le nouveau sombre et humide d’un côté (usage courant).
reason-offer-last =
    Un nid a été offert il y a { $days ->
        [one] { $days } jour
       *[other] { $days } jours
    } : quatre semaines suffisent pour choisir (usage courant). Note-le si elles ont déménagé.
reason-offer-ends = Toujours dans l’ancien ? Alors il leur convient : retire le nouveau, vois s’il est assez humide et sombre, et offres-en un autre plus tard (usage courant).
reason-offer-water = L’ancien tube doit être presque à sec, et elles n’ont pas encore déménagé : regarde son eau et note ce que tu vois. On ne vide à la main que ce que tu as vu à sec.
