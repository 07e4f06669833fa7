## Who comes in: phones, mail, and what happened at the doors.

house-phones = Telefony
house-this-one = { $phone } (ten)
house-last-seen = ostatnio: { $when }
house-sign-out-other = Wylogować: { $name }?
house-new-phone = Wpuść nowy telefon
house-new-phone-hint = wpisz kod, który pokazuje
house-look-up = Znajdź go
house-asks = { $phone } prosi o wpuszczenie. Czyj to telefon?
house-somebody-new = Ktoś nowy
house-new-keeper = Imię nowego hodowcy
house-let-in = Telefon jest wpuszczony
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
