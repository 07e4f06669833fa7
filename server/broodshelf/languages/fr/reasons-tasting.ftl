reason-tasting-not-started = Aucune dégustation en cours : commences-en une si tu veux savoir ce qu’elles aiment.
reason-tasting-not-now =
    { $state ->
        [founding] Pas pendant que la reine fonde : un refus ne voudrait rien dire.
        [settling] Pas pendant que la colonie s’installe : un refus ne voudrait rien dire.
        [resting] Pas pendant son repos : un refus ne voudrait rien dire.
        [queenless_suspected] Pas tant que la reine est incertaine : un refus ne voudrait rien dire.
       *[other] Pas maintenant : la colonie n’est plus ici.
    }
reason-tasting-no-safe-food = Aucun de ces aliments ne peut être offert maintenant, à cause de son origine.
reason-tasting-wait = Un nouvel aliment par semaine : le prochain à partir du { $until }.
reason-tasting-check-first = Vois d’abord ce qu’il est resté du dernier nouvel aliment.
reason-tasting-need-paused = Un aliment de ce genre n’est pas à donner maintenant, donc rien n’est offert.
reason-tasting-new-food = Nouveau pour cette colonie : rien d’autre de nouveau pendant { $days } jours.
reason-tasting-likes = Des colonies comme celle-ci le prennent dans environ { $share } % des cas.
reason-tasting-learn-more =
    Devrait être pris dans environ { $share } % des cas ({ $offers ->
        [one] { $offers } contrôlé
       *[other] { $offers } contrôlés
    }).
