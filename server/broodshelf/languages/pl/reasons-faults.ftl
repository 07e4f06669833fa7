reason-leak = Zgłoszony przeciek. Pierwsze kroki: postaw probówkę nad spodkiem, watą do góry, sprawdź, czy potomstwo nie jest mokre, połóż obok świeżą probówkę. Nie potrząsaj.
reason-flood = Pierwsze kroki: przechyl tak, żeby woda odpłynęła od potomstwa, zbierz ją watą, podaj suchą probówkę.
reason-mould = Plamki z dala: zrób zdjęcie i zajrzyj ponownie za 7 dni (praktyka hodowców). Blisko potomstwa albo jedna trzecia waty: podaj dziś świeżą probówkę. Sama żółta wata to nic.
reason-mould-far = Odległa plamka to nie alarm: zrób teraz zdjęcie i za 7 dni sprawdź, czy urosła (praktyka hodowców). Sama żółta wata to nic.
reason-mould-look =
    Plamkę pleśni zgłoszono { $days ->
        [one] { $days } dzień
        [few] { $days } dni
        [many] { $days } dni
       *[other] { $days } dnia
    } temu: porównaj ją ze zdjęciem. Nie większa: zostaw. Bliżej potomstwa albo jedna trzecia waty: zgłoś ją ponownie jako bliską (praktyka hodowców).
reason-mould-near = Pierwsze kroki: podaj dziś świeżą probówkę, wylot do wylotu obok tej, a starą zostaw w świetle. Nie drap, nie pryskaj, nie potrząsaj (praktyka hodowców).
reason-fault-over =
    Zgłoszone { $days ->
        [one] { $days } dzień
        [few] { $days } dni
        [many] { $days } dni
       *[other] { $days } dnia
    } temu i nikt od tego czasu nie powiedział, że minęło. Jeśli minęło, oznacz jako naprawione; jeśli nie, zgłoś ponownie.
reason-escape = Pierwsze kroki: zamknij pokrywę, odnów barierę, zbierz uciekinierki miękkim pędzelkiem. Nigdy nie wypuszczaj ich na dwór.
reason-mites = Pierwsze kroki: karm tę kolonię na końcu, używaj jej własnej pęsety, trzymaj ją osobno, zapisz, z której partii dostała pokarm.
reason-many-dead = Pierwsze kroki: wstrzymaj pokarm podany jako ostatni, zabierz go, sprawdź wodę i temperaturę i zapisz, co widzisz.
reason-heater = Pierwsze kroki: wyłącz grzanie, przenieś kolonię w miejsce o { DEGREES(20) } do { DEGREES(25) } (praktyka hodowców), nie chłodź jej w lodówce.
reason-risk-out =
    Podano to mimo odmowy albo inna kolonia dostała tak tę samą partię: może nieść truciznę. Zabierz natychmiast wszystko, co zostało; od podania: { $hours ->
        [one] { $hours } godzina
        [few] { $hours } godziny
        [many] { $hours } godzin
       *[other] { $hours } godziny
    }.
reason-risk-look =
    Pokarm, który może nieść truciznę, podano tu { $days ->
        [one] { $days } dzień
        [few] { $days } dni
        [many] { $days } dni
       *[other] { $days } dnia
    } temu: zaglądaj raz dziennie przez { $of } dni; to dzień { $day }.
reason-risk-times = Opublikowane czasy, po których nie żyła połowa robotnic: 1 do 4 dni przy silnych dawkach trzech trutek (Rust et al. 2004), 8 dni przy słabej dawce kwasu borowego (Klotz et al. 1997).
reason-risk-signs = Dużo martwych, robotnice powolne lub drgające: zgłoś „dużo martwych” i podaj czystą wodę oraz świeżą wodę z cukrem (praktyka hodowców).
