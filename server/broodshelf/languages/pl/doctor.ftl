doctor-good = dobrze
doctor-look = spójrz
doctor-bad = ŹLE

doctor-about-data-folder = folder danych
doctor-about-disk = dysk
doctor-about-revoked = cofnięte telefony i przepustki
doctor-about-marks = znaczniki
doctor-about-set-aside = odłożone
doctor-about-database = baza danych
doctor-about-database-role = rola w bazie danych
doctor-about-households = gospodarstwa
doctor-about-history = historia
doctor-about-push-key = klucz przypomnień
doctor-about-nudger = wysyłanie przypomnień
doctor-about-mail = poczta
doctor-about-proxy = proxy
doctor-about-public-address = adres publiczny
doctor-about-certificate = certyfikat
doctor-about-server = serwer
doctor-about-clock = zegar

doctor-folder-missing = { $path } jeszcze nie istnieje; utworzy go pierwszy start
doctor-folder-good = w { $path } można pisać
doctor-folder-locked = ten użytkownik nie może pisać w { $path }; zmień właściciela
doctor-disk = wolne { $mib } MiB; pełny dysk odrzuca wpisy
doctor-revoked-unreadable =
    { $n ->
        [one] { $n } wiersz nie do odczytania
        [few] { $n } wiersze nie do odczytania
        [many] { $n } wierszy nie do odczytania
       *[other] { $n } wiersza nie do odczytania
    } w { $path }; następny start zachowa kopię i wszystko, co da się odczytać. Zanim przywrócisz starszą kopię zapasową, wstaw ten plik z najnowszej
doctor-mark-unreadable = nie można odczytać { $path }; przy następnym starcie jego telefony dostaną wszystko od nowa
doctor-was-set-aside = plik { $path } był uszkodzony i jest odłożony; obejrzyj go, zachowaj albo usuń
doctor-database-gone = brakuje jej, choć była tu półka; 'broodshelf restore FILE' przywraca kopię zapasową
doctor-database-none = jeszcze jej nie ma; utworzy ją pierwszy start
doctor-database-silent = nie odpowiada: { $error }; czy działa?
doctor-database-damaged = jest uszkodzona ({ $path }): zachowaj plik, potem przywróć kopię zapasową
doctor-database-unsound = jest uszkodzona: { $found }; przywróć kopię zapasową
doctor-database-schema = jej schemat to { $at }, ta wersja chce { $head }; naprawia to 'broodshelf migrate'
doctor-database-empty = jej schemat jest pusty, ta wersja chce { $head }; naprawia to 'broodshelf migrate'
doctor-database-good = odpowiada; tabele: { $n }, schemat { $at }
doctor-role-free = ta rola może omijać zabezpieczenia wierszy; daj serwerowi jego własną (docs/self-hosting.md)
doctor-role-good = zabezpieczenia wierszy trzymają ją przy jednym gospodarstwie naraz
doctor-households = na tym serwerze: { $n }
doctor-history = w ciągu roku przyszło zmian: { $n }, z gospodarstw: { $households }; z historią i odpowiedziami około { $kib } KiB tekstu każde, do tego indeksy (przerzedzane po 400 dniach: self-hosting.md)
doctor-history-some = w ciągu roku przyszło zmian: około { $n }, z gospodarstw: około { $households }, oszacowano na podstawie { $looked } z nich; z historią i odpowiedziami około { $kib } KiB tekstu każde, do tego indeksy (przerzedzane po 400 dniach: self-hosting.md)
doctor-key-none = jeszcze go nie ma; utworzy go pierwszy start
doctor-key-wrong = { $file } nie zawiera klucza P-256 w PEM; przywróć stary z kopii zapasowej, inaczej następny start utworzy nowy, którego żaden telefon jeszcze nie słyszy
doctor-key-changed =
    został zmieniony: { $n ->
        [one] { $n } telefon nic nie słyszy
        [few] { $n } telefony nic nie słyszą
        [many] { $n } telefonów nic nie słyszy
       *[other] { $n } telefonu nic nie słyszy
    }, póki nie otworzy się tam aplikacji; lepiej przywróć stary { $file } z kopii zapasowej
doctor-key-good = { $key }…, czytelny tylko dla właściciela
doctor-key-sealed = { $key }…, zapieczętowany w bazie danych
doctor-nudger-never = nigdy tu nie działało; uruchamia je 'broodshelf serve'
doctor-nudger-ahead = ostatnio działało { $s } s w przyszłości: zegar tej maszyny cofnięto
doctor-nudger-good = działało { $s } s temu i nic nie czeka
doctor-nudger-late = ostatnio działało { $s } s temu albo przypomnienia czekają; czy 'broodshelf serve' działa?
doctor-mail-refused = { $server } nas nie przyjmuje: { $error }; zobacz BROODSHELF_SMTP_*
doctor-mail-good = { $server } przyjmuje naszą pocztę
doctor-proxy-good = adres gościa jest brany na wiarę; liczba proxy z przodu: { $n }
doctor-proxy-none = BROODSHELF_TRUSTED_PROXY_HOPS wynosi 0, więc wszyscy goście adresu https mają wspólny limit; ustaw 1
doctor-address-good = { $url } to https, czego potrzebują telefony
doctor-address-local = { $url } działa tylko na tej maszynie; telefony potrzebują https (docs/self-hosting.md)
doctor-server-silent = { $url } nie odpowiada stąd tak, jak ten serwer ({ $error })
doctor-server-other = pod { $url } odpowiada coś innego (wersja { $version }, tutaj { $here })
doctor-server-good = wersja { $version } odpowiada pod { $url }
doctor-server-unwell = sam mówi, że coś jest z nim nie tak: { $told }
doctor-clock = zegar serwera i ten różnią się o { $s } s
doctor-certificate-good =
    { $n ->
        [one] ta maszyna mu ufa, został { $n } dzień
        [few] ta maszyna mu ufa, zostały { $n } dni
        [many] ta maszyna mu ufa, zostało { $n } dni
       *[other] ta maszyna mu ufa, zostało { $n } dnia
    }
doctor-certificate-short = ta maszyna mu ufa; jest ważny dni lub godziny i odnawia go proxy, jak z własnego urzędu certyfikacji
doctor-certificate-late =
    { $n ->
        [one] został tylko { $n } dzień i nikt go nie odnowił
        [few] zostały tylko { $n } dni i nikt go nie odnowił
        [many] zostało tylko { $n } dni i nikt go nie odnowił
       *[other] zostało tylko { $n } dnia i nikt go nie odnowił
    }; zajrzyj do dziennika proxy: porty 80 i 443 tej nazwy muszą do niego prowadzić (docs/https.md)
doctor-certificate-name = nikt tu nie zna nazwy { $host }; wpisz ją tam, skąd ją masz, albo w routerze (docs/https.md)
doctor-certificate-port = { $host } nie odpowiada stąd na porcie { $port }; czy proxy działa i czy router prowadzi do niego ten port?
doctor-certificate-plain = { $host } mówi na porcie { $port } bez szyfrowania (http): postaw przed nim proxy z certyfikatem (docs/https.md)
doctor-certificate-expired = certyfikat { $host } wygasł albo zegar tej maszyny chodzi źle; proxy musi go odnowić
doctor-certificate-other-name = certyfikat jest dla innej nazwy niż { $host }; daj proxy tę nazwę albo ustaw jego nazwę w BROODSHELF_PUBLIC_URL
doctor-certificate-authority = ta maszyna nie wie, kto podpisał certyfikat { $host }; telefony wiedzą to tylko tam, gdzie masz zainstalowany własny urząd certyfikacji (docs/https.md, sposób piąty)
doctor-certificate-hello = { $host } zerwał połączenie na porcie { $port }, zanim pokazał certyfikat; zajrzyj do dziennika proxy
