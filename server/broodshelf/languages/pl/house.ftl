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
house-phones = Telefony
house-this-one = { $phone } (ten)
house-last-seen = ostatnio: { $when }
house-sign-out = Wyloguj
house-sign-out-other = Wylogować: { $name }?
house-new-phone = Wpuść nowy telefon
house-new-phone-hint = wpisz kod, który pokazuje
house-look-up = Znajdź go
house-asks = { $phone } prosi o wpuszczenie. Czyj to telefon?
house-somebody-new = Ktoś nowy
house-new-keeper = Imię nowego hodowcy
house-let-in = Telefon jest wpuszczony
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
house-leave = Wylogować: { $who }?
house-leave-unsent = { $count ->
    [one] { $count } wpis nie jest jeszcze wysłany i zostaje na tym telefonie. Wylogować mimo to?
    [few] { $count } wpisy nie są jeszcze wysłane i zostają na tym telefonie. Wylogować mimo to?
    [many] { $count } wpisów nie jest jeszcze wysłanych i zostaje na tym telefonie. Wylogować mimo to?
   *[other] { $count } wpisu nie jest jeszcze wysłane i zostaje na tym telefonie. Wylogować mimo to?
  }

house-mail-title = Przypomnienia pocztą
house-mail-about = Dla tych, którzy nie mają telefonu z przypomnieniami. Adres liczy się, gdy jego kod zostanie tu wpisany.
house-mail-address = Adres
house-mail-send = Wyślij kod
house-mail-asked = Kod poszedł na ten adres. Jest ważny godzinę.
house-mail-code = Kod z wiadomości
house-mail-confirm = Potwierdź
house-mail-anew = Wyślij inny kod
house-mail-comes = Przypomnienia przychodzą tutaj.
house-mail-remove = Usuń go
house-mail-on = Odtąd przypomnienia idą na ten adres
house-mail-removed = Nie będzie już tam poczty
house-mail-not-sent = Nie udało się wysłać wiadomości: { $why }.

house-doors-title = Co działo się u drzwi
house-doors-about = Telefony, linki i kody. Inni hodowcy od razu dowiadują się o nowym telefonie, linku i otwartej przepustce.
house-doors-offline = To jest na serwerze, więc potrzebne jest połączenie.
house-doors-all = Pokaż wszystko ({ $count })

house-door-new-phone = Nowy telefon: { $phone }, dla: { $who }
house-door-new-phone-by-nobody = Nowy telefon: { $phone }, dla kogoś
house-door-phone-removed = Wylogowano: { $phone } ({ $who })
house-door-phone-removed-by-nobody = Wylogowano: { $phone }
house-door-person-removed = Usunięto: { $name }, ze wszystkimi telefonami ({ $who })
house-door-person-removed-by-nobody = Usunięto: { $name }, ze wszystkimi telefonami
house-door-way-back = Osoba prowadząca serwer utworzyła link powrotny dla: { $who }
house-door-way-back-by-nobody = Osoba prowadząca serwer utworzyła link powrotny dla hodowcy
house-door-link-made = Nowy link, przepustka: { $pass } (utworzenie: { $who })
house-door-link-made-by-nobody = Nowy link, przepustka: { $pass }
house-door-pass-opened = { $pass }: przepustkę otwarto na: { $phone }
house-door-pass-ended = { $pass }: przepustka cofnięta ({ $who })
house-door-pass-ended-by-nobody = { $pass }: przepustka cofnięta

house-door-wrong-codes = { $where ->
    [claim] { $count ->
        [one] { $count } zły kod linku powrotnego, wpisano przez: { $who }
        [few] { $count } złe kody linku powrotnego, wpisano przez: { $who }
        [many] { $count } złych kodów linku powrotnego, wpisano przez: { $who }
       *[other] { $count } złego kodu linku powrotnego, wpisano przez: { $who }
      }
    [pass] { $count ->
        [one] { $count } zły kod przepustki, wpisano przez: { $who }
        [few] { $count } złe kody przepustki, wpisano przez: { $who }
        [many] { $count } złych kodów przepustki, wpisano przez: { $who }
       *[other] { $count } złego kodu przepustki, wpisano przez: { $who }
      }
    [pairing] { $count ->
        [one] { $count } zły kod nowego telefonu, wpisano przez: { $who }
        [few] { $count } złe kody nowego telefonu, wpisano przez: { $who }
        [many] { $count } złych kodów nowego telefonu, wpisano przez: { $who }
       *[other] { $count } złego kodu nowego telefonu, wpisano przez: { $who }
      }
   *[mail] { $count ->
        [one] { $count } zły kod adresu e-mail, wpisano przez: { $who }
        [few] { $count } złe kody adresu e-mail, wpisano przez: { $who }
        [many] { $count } złych kodów adresu e-mail, wpisano przez: { $who }
       *[other] { $count } złego kodu adresu e-mail, wpisano przez: { $who }
      }
  }
house-door-wrong-codes-by-nobody = { $where ->
    [claim] { $count ->
        [one] { $count } zły kod linku powrotnego
        [few] { $count } złe kody linku powrotnego
        [many] { $count } złych kodów linku powrotnego
       *[other] { $count } złego kodu linku powrotnego
      }
    [pass] { $count ->
        [one] { $count } zły kod przepustki
        [few] { $count } złe kody przepustki
        [many] { $count } złych kodów przepustki
       *[other] { $count } złego kodu przepustki
      }
    [pairing] { $count ->
        [one] { $count } zły kod nowego telefonu
        [few] { $count } złe kody nowego telefonu
        [many] { $count } złych kodów nowego telefonu
       *[other] { $count } złego kodu nowego telefonu
      }
   *[mail] { $count ->
        [one] { $count } zły kod adresu e-mail
        [few] { $count } złe kody adresu e-mail
        [many] { $count } złych kodów adresu e-mail
       *[other] { $count } złego kodu adresu e-mail
      }
  }
house-door-export = Osoba prowadząca serwer zapisała eksport
house-door-import = Osoba prowadząca serwer wczytała eksport
house-door-restore = Osoba prowadząca serwer przywróciła kopię zapasową

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
