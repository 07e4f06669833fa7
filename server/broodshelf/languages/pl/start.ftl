## Pierwszy start: przejęcie, dołączenie, przepustka.

start-welcome = Każda kolonia nakarmiona, napojona i doglądnięta.
start-what = Broodshelf prowadzi obchód twojej półki z mrówkami: na co jest pora, ile i dlaczego. Działa bez zasięgu.
start-have-code = Mam kod serwera
start-join-one = Dołącz do istniejącej półki
start-have-pass = Mam przepustkę
start-back = Wstecz
start-claim = Przejmij tę półkę
start-code = Kod
start-code-hint = z zaproszenia albo od serwera
start-your-name = Twoje imię
start-more = Nazwa półki i strefa czasowa
start-shelf-name = Nazwa półki
start-our-shelf = Nasza półka
start-zone = Strefa czasowa
start-claim-it = Przejmij
start-known = Witaj znowu: { $name }
start-come-in = Wejdź
start-join = Dołącz do półki
start-join-how = Na zalogowanym telefonie otwórz Dom i wpisz ten kod albo go tam zeskanuj.
start-waiting = Czekanie na hodowcę…
start-pass = Otwórz przepustkę
start-pass-hint = masz go od hodowcy
start-open-pass = Otwórz przepustkę
start-language = Język
start-phone-name = Telefon lub przeglądarka ({ $system })
start-phone-unnamed = Telefon lub przeglądarka
start-handed = Masz pod opieką półkę
start-handed-what = Ten telefon może przez kilka dni opiekować się wybranymi koloniami. Konto nie jest potrzebne.
start-only-a-look = { $count ->
    [one] Masz tu prawa hodowcy, więc to tylko podgląd: przepustka jest na { $count } kolonię, { $from } – { $to }.
    [few] Masz tu prawa hodowcy, więc to tylko podgląd: przepustka jest na { $count } kolonie, { $from } – { $to }.
    [many] Masz tu prawa hodowcy, więc to tylko podgląd: przepustka jest na { $count } kolonii, { $from } – { $to }.
   *[other] Masz tu prawa hodowcy, więc to tylko podgląd: przepustka jest na { $count } kolonii, { $from } – { $to }.
  }

## Po pierwszej kolonii: jej plan i ekran główny.

welcome-title = Na półce: { $name }
welcome-plan = Plan
welcome-wait = Plan przyjdzie przy następnym połączeniu.
welcome-nothing = Nic nie trzeba. Zostaw im spokój.
welcome-install = Dodaj do ekranu głównego
welcome-why-install = Wtedy otwiera się jak każda aplikacja, działa przy półce bez zasięgu i chroni twoje wpisy przed sprzątaniem przeglądarki.
welcome-installed = Jest już na tym ekranie głównym.
welcome-go = Przejdź do obchodu
welcome-again = Dodaj następną kolonię
welcome-ios-1 = Stuknij przycisk udostępniania w Safari (kwadrat ze strzałką).
welcome-ios-2 = Wybierz „Do ekranu początkowego”, potem „Dodaj”.
welcome-ios-3 = Otwórz Broodshelf stamtąd. Ma tam własną pamięć: przejmij półkę lub dołącz w niej albo wpuść ją z Safari przez Dom, „Wpuść nowy telefon”.
welcome-android-1 = Otwórz menu przeglądarki (trzy kropki).
welcome-android-2 = Wybierz „Zainstaluj aplikację” albo „Dodaj do ekranu głównego”.
welcome-android-3 = Otwórz Broodshelf stamtąd.
welcome-desktop-1 = Chrome lub Edge: przycisk instalacji na końcu paska adresu.
welcome-desktop-2 = Safari na Macu: Plik, potem „Dodaj do Docka”.
welcome-desktop-3 = Firefox na komputerze: wystarczy zakładka.
welcome-now = Zainstaluj teraz
