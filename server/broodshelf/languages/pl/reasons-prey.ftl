reason-prey-size = Te robotnice zabierają w całości zdobycz do ok. { $longest_mm } mm; dłuższa jest cięta albo pomijana (praktyka hodowców).
reason-prey-first-third = Pierwsza porcja to jedna trzecia tego, co wynika z wielkości kolonii; rośnie o połowę, gdy wszystko jest zjedzone, powoli, gdy nikt nie sprawdza (praktyka hodowców).
reason-portion-rises = Porcja rośnie krok po kroku do tego, co wynika z wielkości kolonii: najwyżej o połowę po „zjedzone wszystko”, powoli tam, gdzie nikt nie sprawdzał, wcale, gdy coś zostało (praktyka hodowców).
reason-portion-at-once =
    Nigdy więcej naraz niż zapotrzebowanie na { $days ->
        [one] { $days } dzień
        [few] { $days } dni
        [many] { $days } dni
       *[other] { $days } dnia
    }, choćby do następnego razu było daleko: co zostanie, psuje się (praktyka hodowców).
reason-portion-tiny = Pierwszy pokarm w ich życiu to najmniejsza możliwa porcja (praktyka hodowców).
reason-prey-smallest =
    To najmniejsza porcja pod ręką; wystarczy im na ok. { $days ->
        [one] { $days } dzień
        [few] { $days } dni
        [many] { $days } dni
       *[other] { $days } dnia
    }.
reason-prey-most = Najwięcej sztuk w jednej porcji: { $pieces } (praktyka hodowców).
reason-prey-banked = Mała kolonia przechowa zdobycz najwyżej przez { $days } dni, choćby była duża (praktyka hodowców).
reason-prey-dead = Najpierw zabij: żywa zdobycz może zranić robotnice i potomstwo albo się schować (praktyka hodowców).
reason-prey-dead-small = Małe robotnice: tylko świeżo zabita (praktyka hodowców).
reason-prey-dead-in-tube = W probówce tylko świeżo zabita zdobycz: nigdy nic żywego.
reason-prey-too-big-alive = Polują wzrokiem, ale ta zdobycz jest dłuższa niż robotnica albo trzeba ją pociąć: najpierw ją zabij.
reason-prey-stunned = Polują wzrokiem: zdobycz, która jeszcze drga, znajdą szybciej. Ogłusz ją, żeby nie mogła gryźć ani kopać (praktyka hodowców).
reason-prey-live = Żywa, bo tak ustawiono: krótsza niż robotnica, na arenie, nigdy w probówce. Zabierz ją, jeśli przez godzinę jest pomijana (praktyka hodowców).
reason-prey-piece = Okruszek: zabierz go, zanim się zepsuje.
reason-prey-uncounted = Nikt nie podaje białka w tym pokarmie, więc się nie liczy.
