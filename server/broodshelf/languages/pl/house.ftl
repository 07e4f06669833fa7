## Dom: osoby, telefony, poczta i co działo się u drzwi.

house-title = Dom
house-look = Wygląd
house-language = Język
house-language-as-phone = Jak w telefonie
house-good-to-know = Warto wiedzieć
house-build = Wersja { $build }
house-advice = Broodshelf daje ogólne rady hodowlane, nie weterynaryjne ani medyczne.
house-never = Nigdy nie wypuszczaj mrówek ani owadów karmowych. Trzymanie i przewożenie gatunków reguluje miejscowe prawo: zapytaj w urzędzie.
house-hours = Nazwy i godziny
house-shelf-name = Nazwa półki
house-zone = Strefa czasowa
house-first = Pierwsza godzina opieki
house-second = Druga godzina opieki
house-quiet-from = Cisza od
house-quiet-to = Cisza do
house-backup-patience = Powiedz, gdy ostatnia kopia zapasowa ma więcej niż tyle dni
house-backup-patience-hint = 0: nigdy. Jeśli żadnej nie zrobiono, nie ma komunikatu.
house-save = Zapisz
house-sign-out = Wyloguj
house-on-this-phone = Na tym telefonie
house-this-phone = ten telefon
house-last-synced = Ostatnia synchronizacja: { $when }.
house-not-synced = Jeszcze bez synchronizacji.
house-not-sent = Niewysłane: { $count }.
house-nothing-waits = Nic nie czeka.
house-kept = Przeglądarka obiecała zachować dane.
house-not-kept = Przeglądarka może usuwać dane nieużywanych aplikacji; bezpieczna jest kopia na serwerze. Pomaga dodanie aplikacji do ekranu głównego.
house-sync-now = Synchronizuj teraz
house-export = Eksportuj niewysłane wpisy
house-left = { $who }, na tym telefonie, niewysłane: { $count }. Pójdzie samo, gdy { $who } znowu się tu zaloguje.
house-leave = Wylogować: { $who }?
house-leave-unsent = { $count ->
    [one] { $count } wpis nie jest jeszcze wysłany i zostaje na tym telefonie. Wylogować mimo to?
    [few] { $count } wpisy nie są jeszcze wysłane i zostają na tym telefonie. Wylogować mimo to?
    [many] { $count } wpisów nie jest jeszcze wysłanych i zostaje na tym telefonie. Wylogować mimo to?
   *[other] { $count } wpisu nie jest jeszcze wysłane i zostaje na tym telefonie. Wylogować mimo to?
  }

## Jak wygląda aplikacja.

look-light = Światło
look-degrees = Temperatury w
look-volumes = Objętości w
look-as-phone = Jak w telefonie
look-day = Jasne
look-dark = Ciemne
look-red = Przyćmione czerwone
look-red-why = Przyćmione czerwone światło służy do zaglądania do ciemnego gniazda: mrówki prawie nie widzą głębokiej czerwieni (praktyka hodowców).
look-all-parts = Zobacz wszystkie części aplikacji
