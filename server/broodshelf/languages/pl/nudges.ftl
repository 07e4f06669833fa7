nudge-one-food = { $need }: { $colony }
nudge-one-todo = { $todo }: { $colony }
nudge-same-need = { $n ->
    [one] { $need }: { $n } kolonia
    [few] { $need }: { $n } kolonie
    [many] { $need }: { $n } kolonii
   *[other] { $need }: { $n } kolonii
  }
nudge-same-todo = { $n ->
    [one] { $todo }: { $n } kolonia
    [few] { $todo }: { $n } kolonie
    [many] { $todo }: { $n } kolonii
   *[other] { $todo }: { $n } kolonii
  }
nudge-one-colony = { $colony }: { $needs }
nudge-colonies = { $n ->
    [one] { $n } kolonia: { $needs }
    [few] { $n } kolonie: { $needs }
    [many] { $n } kolonii: { $needs }
   *[other] { $n } kolonii: { $needs }
  }
nudge-need-for = { $need } dla { $n }
nudge-line = { $colony }: { $what }
nudge-more = i jeszcze { $n }

nudge-short-title = Pora na obchód
nudge-short-body = Otwórz aplikację i zobacz, czego potrzebują twoje kolonie.
nudge-test-title = Przypomnienia działają na tym telefonie
nudge-test-body = To tylko próba. Nic nie trzeba z jej powodu robić.

nudge-new-phone-title = Wpuszczono nowy telefon
nudge-new-phone-body = { $phone }, dla: { $person }. Jeśli nikt z was tego nie zrobił, wyloguj go w części Dom.
nudge-link-made-title = Nowy link: { $pass }
nudge-link-made-body = Utworzenie: { $person }. Kto ma link, może otworzyć przepustkę; nowy link go kończy.
nudge-pass-opened-title = { $pass }: przepustka otwarta
nudge-pass-opened-body = Na telefonie: { $phone }. Jeśli tak nie miało być, cofnij przepustkę.
nudge-sensor-silent-title = { $sensor }: czujnik zamilkł
nudge-sensor-silent-body =
    Nic od niego nie przyszło od { $hours ->
        [one] { $hours } godziny
        [few] { $hours } godzin
        [many] { $hours } godzin
       *[other] { $hours } godziny
    } ({ $place }). Sprawdź jego zasilanie i drogę do serwera; aż znów się odezwie, plany opierają się na tym, co odczytasz lub ustawisz.
nudge-sensor-broken-title = { $sensor }: czujnik mierzy bzdury
nudge-sensor-broken-body = To, co wysyła, jest niemożliwe ({ $place }). Sprawdź jego kabel i zasilanie; to, co wysyła, jest pomijane, aż znów nabierze sensu.
