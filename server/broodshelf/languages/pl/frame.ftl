frame-name = Broodshelf
frame-opening = Półka się otwiera. Jeśli ten tekst nie znika, w tej przeglądarce wyłączono JavaScript lub jego moduły albo jest ona za stara: Broodshelf potrzebuje Chrome 91, Safari 16.4 lub Firefox 147, albo nowszych. Wszystko, co wpisano na tym telefonie, na nim zostaje.
frame-description = Opieka nad półką kolonii mrówek, bez sieci tuż przy półce.
frame-close = Zamknij
frame-loading = Chwileczkę…
frame-missing = Nie udało się wczytać tej części aplikacji. Wczytaj ją ponownie; żaden wpis nie zginął.
frame-screens = Ekrany

frame-nav-round = Obchód
frame-nav-shelf = Półka
frame-nav-larder = Spiżarnia
frame-nav-handover = Przekaż
frame-nav-settings = Dom

frame-banner-unsent = Niewysłane wpisy
frame-banner-sign-in = Zaloguj ponownie
frame-banner-update = Nowa wersja jest gotowa.
frame-banner-update-waits = Nowa wersja przyjdzie, gdy zapiszesz lub porzucisz to, co tu piszesz.
frame-banner-use-it = Użyj jej teraz
frame-banner-emptied = Przeglądarka opróżniła swoją pamięć na tym telefonie, więc półka została pobrana z serwera od nowa. Przepadło to, co tu wpisano i czego nie wysłano: przejrzyj dziennik i wpisz ponownie to, czego brakuje.
frame-banner-understood = Przeczytane
frame-banner-signed-out = Ten telefon jest wylogowany. To, czego nie wysłał, zostaje tutaj.

frame-clock-ahead = { $unit ->
    [minutes] { $count ->
        [one] Zegar tego telefonu spieszy się o { $count } minutę. Terminy i czas wpisów idą według serwera.
        [few] Zegar tego telefonu spieszy się o { $count } minuty. Terminy i czas wpisów idą według serwera.
        [many] Zegar tego telefonu spieszy się o { $count } minut. Terminy i czas wpisów idą według serwera.
       *[other] Zegar tego telefonu spieszy się o { $count } minuty. Terminy i czas wpisów idą według serwera.
      }
    [hours] { $count ->
        [one] Zegar tego telefonu spieszy się o { $count } godzinę. Terminy i czas wpisów idą według serwera.
        [few] Zegar tego telefonu spieszy się o { $count } godziny. Terminy i czas wpisów idą według serwera.
        [many] Zegar tego telefonu spieszy się o { $count } godzin. Terminy i czas wpisów idą według serwera.
       *[other] Zegar tego telefonu spieszy się o { $count } godziny. Terminy i czas wpisów idą według serwera.
      }
   *[days] { $count ->
        [one] Zegar tego telefonu spieszy się o { $count } dzień. Terminy i czas wpisów idą według serwera.
        [few] Zegar tego telefonu spieszy się o { $count } dni. Terminy i czas wpisów idą według serwera.
        [many] Zegar tego telefonu spieszy się o { $count } dni. Terminy i czas wpisów idą według serwera.
       *[other] Zegar tego telefonu spieszy się o { $count } dnia. Terminy i czas wpisów idą według serwera.
      }
  }
frame-clock-behind = { $unit ->
    [minutes] { $count ->
        [one] Zegar tego telefonu spóźnia się o { $count } minutę. Terminy i czas wpisów idą według serwera.
        [few] Zegar tego telefonu spóźnia się o { $count } minuty. Terminy i czas wpisów idą według serwera.
        [many] Zegar tego telefonu spóźnia się o { $count } minut. Terminy i czas wpisów idą według serwera.
       *[other] Zegar tego telefonu spóźnia się o { $count } minuty. Terminy i czas wpisów idą według serwera.
      }
    [hours] { $count ->
        [one] Zegar tego telefonu spóźnia się o { $count } godzinę. Terminy i czas wpisów idą według serwera.
        [few] Zegar tego telefonu spóźnia się o { $count } godziny. Terminy i czas wpisów idą według serwera.
        [many] Zegar tego telefonu spóźnia się o { $count } godzin. Terminy i czas wpisów idą według serwera.
       *[other] Zegar tego telefonu spóźnia się o { $count } godziny. Terminy i czas wpisów idą według serwera.
      }
   *[days] { $count ->
        [one] Zegar tego telefonu spóźnia się o { $count } dzień. Terminy i czas wpisów idą według serwera.
        [few] Zegar tego telefonu spóźnia się o { $count } dni. Terminy i czas wpisów idą według serwera.
        [many] Zegar tego telefonu spóźnia się o { $count } dni. Terminy i czas wpisów idą według serwera.
       *[other] Zegar tego telefonu spóźnia się o { $count } dnia. Terminy i czas wpisów idą według serwera.
      }
  }

frame-banner-ended-pass-revoked = Hodowca cofnął tę przepustkę. To, czego ten telefon nie wysłał, zostaje tutaj do eksportu.
frame-banner-ended-pass-ended = Ta przepustka się skończyła. Dziękujemy. To, czego ten telefon nie wysłał, zostaje tutaj do eksportu.
frame-banner-ended-device-revoked = Hodowca wylogował ten telefon. To, czego nie wysłał, zostaje tutaj do eksportu.
frame-banner-ended-session-old = Sesja tego telefonu wygasła. To, czego nie wysłał, zostaje tutaj.

## Części wspólne wielu ekranów.

part-table = Liczby w tabeli
part-needs-server = Do tego potrzebny jest serwer, a właśnie nie ma połączenia.
part-again = Spróbuj ponownie
part-labelled = { $label }: { $value }
part-labelled-twice = { $label }: { $first }, { $second }
part-percent = { $percent }%
part-less = { $label }: mniej
part-more = { $label }: więcej

## Gdzie jest wpis.

saving-saved = Zapisane na tym telefonie
saving-not-saved = Niezapisane: ten telefon nie zdołał tego przechować. Zwolnij miejsce albo zamknij inne karty i spróbuj ponownie.
saving-no-connection = Brak połączenia z serwerem. Twoje wpisy zostają na tym telefonie.
saving-asks-sign-in = Coś między tym telefonem a serwerem prosi o zalogowanie.
saving-failed = Serwer nie zdołał tego zrobić.
saving-not-signed-in = Ten telefon nie jest zalogowany.
saving-unsent-title = Niewysłane wpisy z Broodshelf
saving-taken-back = Cofnięte

saving-state-synced = Zsynchronizowane
saving-state-saved = Zapisane na tym telefonie
saving-state-attention = Do sprawdzenia

saving-waiting = Na tym telefonie: { $count }
saving-attention = { $count ->
    [one] Do sprawdzenia: { $count }
    [few] Do sprawdzenia: { $count }
    [many] Do sprawdzenia: { $count }
   *[other] Do sprawdzenia: { $count }
  }
saving-synced = Wszystko zsynchronizowane
saving-joining = Pobieranie twojej półki
saving-offline = Brak połączenia
saving-syncing = Synchronizacja…

saving-told-database-damaged = Codzienny przegląd serwera wykrył, że jego baza danych jest uszkodzona. Powiedz osobie, która prowadzi serwer: trzeba przywrócić kopię zapasową.
saving-told-backup-old = Ostatnia kopia zapasowa serwera: { $day }. Powiedz osobie, która prowadzi serwer, albo ustaw w Domu, jak stara może być.

saving-problem-disk-full = Dysk serwera jest pełny. Twoje wpisy zostają na tym telefonie; powiedz osobie, która prowadzi serwer.
saving-problem-database-locked = Serwer jest zajęty. Twoje wpisy zostają na tym telefonie i zostaną wysłane później.
saving-problem-database-away = Serwer nie może dosięgnąć swoich danych. Twoje wpisy zostają na tym telefonie i zostaną wysłane później.
saving-problem-database-read-only = Serwer nie może zapisywać. Twoje wpisy zostają na tym telefonie; powiedz osobie, która prowadzi serwer.
saving-problem-database-damaged = Serwer stracił część swoich danych. Twoje wpisy zostają na tym telefonie; powiedz osobie, która prowadzi serwer.

## On a nudge itself: the worker reads these three, so they stay on one line and are told nothing.

phone-nudges-done = Zrobione według rady
phone-nudges-in-an-hour = Za godzinę
phone-nudges-something = Na półce jest coś do zrobienia.
