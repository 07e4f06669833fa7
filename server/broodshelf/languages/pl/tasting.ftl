## Degustacje: co lubi kolonia.

tasting-title = Co lubią
tasting-about = Degustacja pokazuje, który pokarm lubią najbardziej: obchód podaje je po kolei, a ty mówisz, co zostało. Jeden nowy pokarm na tydzień, nigdy na początku kolonii ani po przeprowadzce.
tasting-not-now = Nie teraz ({ $state }): odmowa nic by nie znaczyła.
tasting-kind = Rodzaj pokarmu
tasting-foods = Pokarmy, 2 do 5
tasting-pick = Wybierz 2 do 5 pokarmów.
tasting-go = Zacznij degustację
tasting-started = Degustacja się zaczęła
tasting-none = Z tego, co jedzą, nie ma dwóch pokarmów do porównania.
tasting-since = Od { $day }.
tasting-told = Co dotąd pokazała
tasting-wait = Plan wybierze pierwszy pokarm przy następnym połączeniu.
tasting-not-offered = Jeszcze niepodane
tasting-next = Następne: { $food }, { $due }.
tasting-taken = Brane w ok. { $mean }%, { $low } do { $high }
tasting-offers = { $count ->
    [one] { $count } podanie
    [few] { $count } podania
    [many] { $count } podań
   *[other] { $count } podania
  }
tasting-offers-and-likes = { $count ->
    [one] { $count } podanie i to, co brały podobne kolonie ({ $others })
    [few] { $count } podania i to, co brały podobne kolonie ({ $others })
    [many] { $count } podań i to, co brały podobne kolonie ({ $others })
   *[other] { $count } podania i to, co brały podobne kolonie ({ $others })
  }
tasting-best = Ulubione z szansą { $percent }%
tasting-range = Słupek to szacunek, linia to jego zakres.
tasting-food = Pokarm
tasting-offered = Podania
tasting-share = Brane
tasting-spread = Zakres
tasting-favourite = Ulubione
tasting-end = Zakończ degustację
tasting-ended = Degustacja zakończona
tasting-part = Część degustacji: { $name }
tasting-here = To liczy się do trwającej degustacji.
tasting-earlier = Wcześniejsze degustacje
tasting-days = { $from } – { $to }
tasting-tally = { $checked ->
    [one] { $food }: brane { $taken } z { $checked } razu
    [few] { $food }: brane { $taken } z { $checked } razy
    [many] { $food }: brane { $taken } z { $checked } razy
   *[other] { $food }: brane { $taken } z { $checked } razu
  }
tasting-unchecked = { $food }: nigdy nie sprawdzone
