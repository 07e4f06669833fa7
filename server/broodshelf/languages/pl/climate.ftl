## Miejsce w czasie i pliki jego czujników.

climate-which = Co jest narysowane
climate-span = Za jaki czas
climate-temperature = Temperatura
climate-humidity = Wilgotność

climate-span-of-days = Dwa tygodnie
climate-span-of-weeks = Trzy miesiące
climate-span-of-year = Rok

climate-nothing = Nic tu w tym czasie nie zmierzono ani nie wpisano i nic nie jest ustawione.
climate-summary = Średnio { $mean }, { $low } do { $high }.
climate-measured-all = Wszystko zmierzone lub odczytane.
climate-measured = { $days ->
    [one] Zmierzone lub odczytane dni: { $measured } z { $days }.
    [few] Zmierzone lub odczytane dni: { $measured } z { $days }.
    [many] Zmierzone lub odczytane dni: { $measured } z { $days }.
   *[other] Zmierzone lub odczytane dni: { $measured } z { $days }.
  }
climate-key = Cień sięga od najniższej do najwyższej wartości dnia. Linia przerywana: przyjęto, jak ustawiono.
climate-key-weeks = Cień sięga od najniższej do najwyższej wartości tygodnia. Linia przerywana: przyjęto, jak ustawiono.
climate-comfort = Pas w tle: co służy wszystkim, które tu mieszkają, { $low } do { $high }.
climate-no-comfort = Żadna temperatura nie służy wszystkim, które tu mieszkają.
climate-degree-days = { $name }. Stopniodni powyżej { $threshold } od { $since }: { $sum }.
climate-degree-days-assumed = { $name }. Stopniodni powyżej { $threshold } od { $since }: { $sum }; w tym przyjęte bez pomiaru: { $percent }%.
climate-day = Dzień
climate-week = Tydzień od
climate-mean = Średnio
climate-low = Najmniej
climate-high = Najwięcej
climate-basis = Skąd to wiadomo

climate-basis-measured = zmierzone
climate-basis-typed = odczytane
climate-basis-assumed = przyjęte

climate-file = Plik czujnika
climate-file-hint = tabela CSV, nagłówki w pierwszym wierszu
climate-too-large = Ten plik ma ponad 4 MB: wczytaj go w częściach, z nagłówkami w pierwszym wierszu każdej.
climate-time-column = Kolumna czasu
climate-temperature-column = Kolumna temperatury
climate-humidity-column = Kolumna wilgotności
climate-no-column = brak
climate-unit = Mierzone w
climate-dates = Czas jest zapisany
climate-date-form-iso = 2026-12-31 18:30
climate-date-form-dmy = 31.12.2026 18:30
climate-date-form-mdy = 12/31/2026 6:30 PM
climate-date-form-unix = sekundy od 1970

climate-zone = Czas według

climate-zone-of-household = domu
climate-zone-of-utc = UTC

climate-look = Najpierw obejrzyj
climate-take = Wczytaj
climate-taken = { $hours ->
    [one] Wczytano: { $hours } godzina. Dni będą narysowane w ciągu dziesięciu minut.
    [few] Wczytano: { $hours } godziny. Dni będą narysowane w ciągu dziesięciu minut.
    [many] Wczytano: { $hours } godzin. Dni będą narysowane w ciągu dziesięciu minut.
   *[other] Wczytano: { $hours } godziny. Dni będą narysowane w ciągu dziesięciu minut.
  }
climate-found = { $rows ->
    [one] { $rows } odczyt: { $from } – { $until }.
    [few] { $rows } odczyty: { $from } – { $until }.
    [many] { $rows } odczytów: { $from } – { $until }.
   *[other] { $rows } odczytu: { $from } – { $until }.
  }
climate-found-nothing = Żadnego wiersza nie da się odczytać.
climate-range = Od { $low } do { $high }.
climate-new-hours-all = { $hours ->
    [one] { $hours } godzina, w całości nowa.
    [few] { $hours } godziny, wszystkie nowe.
    [many] { $hours } godzin, wszystkie nowe.
   *[other] { $hours } godziny, wszystkie nowe.
  }
climate-new-hours = { $hours ->
    [one] { $hours } godzina, w tym nowe: { $new }. Pozostałe już zmierzono i zostają, jak są.
    [few] { $hours } godziny, w tym nowe: { $new }. Pozostałe już zmierzono i zostają, jak są.
    [many] { $hours } godzin, w tym nowe: { $new }. Pozostałe już zmierzono i zostają, jak są.
   *[other] { $hours } godziny, w tym nowe: { $new }. Pozostałe już zmierzono i zostają, jak są.
  }
climate-bad-rows = { $rows ->
    [one] { $rows } wiersza nie da się odczytać i zostanie pominięty:
    [few] { $rows } wierszy nie da się odczytać i zostaną pominięte:
    [many] { $rows } wierszy nie da się odczytać i zostaną pominięte:
   *[other] { $rows } wiersza nie da się odczytać i zostanie pominięty:
  }
climate-bad-line = Wiersz { $line }: { $why }
climate-give-out = Zapisz godziny do pliku
