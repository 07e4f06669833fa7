reason-tasting-not-started = Żadna degustacja nie trwa: zacznij, jeśli chcesz się dowiedzieć, co lubią.
reason-tasting-not-now =
    { $state ->
        [founding] Nie wtedy, gdy królowa zakłada kolonię: odmowa nic by nie znaczyła.
        [settling] Nie wtedy, gdy kolonia się urządza: odmowa nic by nie znaczyła.
        [resting] Nie w czasie jej spoczynku: odmowa nic by nie znaczyła.
        [queenless_suspected] Nie wtedy, gdy królowa jest niepewna: odmowa nic by nie znaczyła.
       *[other] Nie teraz: kolonii już tu nie ma.
    }
reason-tasting-no-safe-food = Żadnego z tych pokarmów nie można teraz podać, ze względu na pochodzenie.
reason-tasting-wait = Jeden nowy pokarm na tydzień: następny nowy od { $until }.
reason-tasting-check-first = Najpierw sprawdź, co zostało z ostatniego nowego pokarmu.
reason-tasting-need-paused = Na taki pokarm nie jest teraz pora, więc nic się nie podaje.
reason-tasting-new-food = Nowe dla tej kolonii: nic innego nowego; dni: { $days }.
reason-tasting-likes = Takie kolonie mogą to brać w ok. { $share }% przypadków.
reason-tasting-learn-more =
    Oczekiwane branie w ok. { $share }% przypadków (sprawdzone: { $offers }).
