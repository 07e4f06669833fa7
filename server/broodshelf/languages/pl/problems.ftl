problem-title-failed = Coś poszło źle na serwerze.
problem-title-bad-request = Tego żądania ten adres nie rozumie.
problem-title-signed-out = Ten telefon nie jest zalogowany.
problem-title-not-allowed = Nie możesz tego tutaj zrobić.
problem-title-not-found = Pod tym adresem nic nie ma.
problem-title-wrong-device = Sesja należy do innego urządzenia; niczego nie zapisano.
problem-title-gone = To się skończyło.
problem-title-too-large = Żądanie jest za duże.
problem-title-wrong-media-type = Wyślij JSON (Content-Type: application/json).
problem-title-upgrade-required = Ta kopia aplikacji jest za stara dla serwera; wczytaj ją ponownie. Na telefonie nic nie zginęło.
problem-title-store-full = Na serwerze nie ma już miejsca; niczego nie zapisano.
problem-title-busy = Serwer nie może tego teraz zrobić; niczego nie zapisano.
problem-title-too-many = Za dużo prób; poczekaj chwilę.

problem-unforeseen = Niczego nie zapisano. Spróbuj ponownie; jeśli to nie minie, powiedz osobie, która prowadzi serwer: { $reference }.
problem-disk-full = Dysk serwera jest pełny; niczego nie zapisano.
problem-database-locked = Bazę danych serwera trzyma inny program; niczego nie zapisano.
problem-database-away = Baza danych serwera nie odpowiada; niczego nie zapisano.
problem-database-read-only = Serwer nie może pisać w swojej bazie danych; niczego nie zapisano.
problem-database-damaged = Część bazy danych serwera przepadła; niczego nie zapisano.
problem-no-household = Na tym serwerze nie ma takiego gospodarstwa.
problem-no-file = Ten plik nie należy do żadnej przechowywanej tu wersji; wczytaj aplikację ponownie.
problem-foreign-origin = To żądanie nie pochodzi z { $url }. Otwórz aplikację pod tym adresem albo ustaw w BROODSHELF_PUBLIC_URL ten, którego używasz.
problem-keepers-only = Może to zrobić tylko hodowca z tego gospodarstwa.
problem-no-record = W tym gospodarstwie nie ma takiego zapisu.
problem-no-place = Nie ma takiego miejsca.
problem-no-place-yet = Nie ma takiego miejsca. Niech ten telefon najpierw się zsynchronizuje, potem spróbuj ponownie.
problem-no-person-yet = W tym gospodarstwie nie ma takiej osoby. Niech ten telefon najpierw się zsynchronizuje, potem spróbuj ponownie.

problem-code-used-now = Tego kodu użyto przed chwilą.
problem-claim-code-ended = Ten kod jest nieznany, był użyty albo wygasł. Poproś o nowy tego, kto prowadzi serwer ('broodshelf pair', 'broodshelf household invite').
problem-signup-closed = Ten serwer nie przyjmuje teraz nowych gospodarstw. Zapytaj tego, kto go prowadzi.
problem-signup-code-needed = Ten serwer wymaga kodu dla nowego gospodarstwa. Poproś o zaproszenie tego, kto go prowadzi.
problem-signup-address = Zaczęto stąd dziś wiele gospodarstw. Spróbuj jutro albo poproś o zaproszenie tego, kto prowadzi serwer.
problem-founding-incomplete = Nowe gospodarstwo potrzebuje twojego imienia, swojej nazwy i strefy czasowej.
problem-too-many-phones-ask = W tej chwili o wpuszczenie prosi za dużo telefonów; spróbuj niedługo.
problem-no-keeper = W tym gospodarstwie nie ma takiego hodowcy.
problem-pairing-over = Ten kod wygasł. Pokaż nowy.
problem-pairing-used = Tego kodu już użyto.
problem-pairing-unknown = Żaden telefon nie pokazuje teraz tego kodu. Kody są ważne dziesięć minut.
problem-device-id-taken = Ten identyfikator urządzenia jest zajęty; telefon powinien utworzyć nowy.
problem-device-revoked = Hodowca wylogował ten telefon. To, czego nie wysłał, można eksportować.
problem-session-old = Ta sesja się skończyła, bo długo nie była używana. Połącz telefon ponownie.
problem-person-removed = Hodowca odebrał ci dostęp do tego gospodarstwa.
problem-no-phone = W tym gospodarstwie nie ma takiego telefonu.
problem-one-of-two = Podaj albo { $one }, albo { $other }.
problem-quota-address = Z tego adresu przyszło w ciągu godziny bardzo dużo. To, co jest na tym telefonie, zostaje na nim i samo pójdzie dalej.
problem-quota-pass = Ta przepustka wysłała tyle, ile może w ciągu dnia. To, co jest na tym telefonie, zostaje na nim i pójdzie jutro albo z nową przepustką.
problem-quota-household = To gospodarstwo wysłało tyle, ile może w ciągu dnia. To, co jest na tym telefonie, zostaje na nim i pójdzie jutro.
problem-room-records = To gospodarstwo ma tyle zapisów, ile pozwala ten serwer ({ $most }). To, co jest na tym telefonie, zostaje i pójdzie, gdy będzie miejsce: usuń, czego nikt nie potrzebuje, albo zapytaj tego, kto prowadzi serwer.
problem-room-pictures = To gospodarstwo ma tyle zdjęć, ile pozwala ten serwer ({ $most }). To zostaje na telefonie i pójdzie, gdy będzie miejsce: usuń jakieś albo zapytaj tego, kto prowadzi serwer.
problem-room-mib = To gospodarstwo zajmuje na serwerze tyle, ile może ({ $most } MiB). To, co jest na tym telefonie, zostaje i pójdzie, gdy będzie miejsce: zapytaj tego, kto prowadzi serwer.
room-nearly-full = To gospodarstwo zapełniło { $percent } % swojego miejsca na serwerze; zapisy: { $records } z { $most_records }, zdjęcia: { $pictures } z { $most_pictures }, { $mib } z { $most_mib } MiB. Nic nie przepada; poproś o więcej, zanim się zapełni.

problem-no-pass = Nie ma takiej przepustki.
problem-no-pass-yet = Nie ma takiej przepustki. Niech ten telefon najpierw się zsynchronizuje, potem spróbuj ponownie.
problem-pass-taken-back = Ta przepustka została cofnięta; utwórz nową.
problem-pass-taken-back-here = Hodowca cofnął tę przepustkę. To, czego ten telefon nie wysłał, można eksportować.
problem-pass-unknown = Ta przepustka jest nieznana albo cofnięta. Poproś hodowcę o nowy link.
problem-pass-ended = Ostatni dzień tej przepustki: { $on }.
problem-pass-ended-still-taken = Ostatni dzień tej przepustki: { $on }. To, co do tego czasu wpisano, jest nadal przyjmowane.
problem-pass-over = Ta przepustka się skończyła albo została cofnięta.
problem-pass-full = Telefony, które już otworzyły tę przepustkę: { $n }. Hodowca może usunąć jeden z nich.
problem-no-feed = Ten adres kalendarza jest nieznany albo zakończony. Utwórz nowy w aplikacji.

problem-mail-off = Ten serwer nie wysyła poczty; może to ustawić jego właściciel (docs/self-hosting.md).
problem-no-mail-address = To nie jest adres e-mail, którego można użyć, np. name@example.org.
problem-no-mail-code = Dla tej osoby nie ma otwartego kodu; poproś o nowy.
problem-mail-code-over = Ten kod się skończył; poproś o nowy.
problem-mail-code-wrong = To nie jest wysłany kod.
problem-not-subscribed = Ten telefon jeszcze nie słucha; najpierw włącz jego przypomnienia.
problem-push-too-long = Tego adresu przypomnień nie można użyć: ma więcej znaków niż { $most }.
problem-push-not-https = Tego adresu przypomnień nie można użyć: to nie jest zwykły adres https na porcie 443.
problem-push-unknown = Tego adresu przypomnień nie można użyć: to nie adres znanej usługi. Właściciel serwera może dopuścić więcej usług.
problem-push-private = Tego adresu przypomnień nie można użyć: jego nazwa prowadzi do sieci prywatnej.
problem-push-other-key = Telefon słucha ze starszym kluczem tego serwera; zasubskrybuj ponownie.
problem-push-taken = Pod tym adresem słucha inny telefon; zasubskrybuj ponownie, żeby mieć własny adres.
problem-push-too-many = Telefony, które już dla ciebie słuchają: { $n }; najpierw wyloguj jeden z nich.

problem-picture-slow = Odczyt tego zdjęcia trwa za długo.
problem-picture-not-now = Serwer nie mógł teraz obejrzeć tego zdjęcia.
problem-picture-busy = Serwer jest zajęty zdjęciami.
problem-picture-scans = To zdjęcie jest zapisane w zbyt wielu przebiegach.
problem-picture-unreadable = To nie jest zdjęcie JPEG, które da się odczytać.
problem-picture-pixels = To zdjęcie ma za dużo pikseli.
problem-picture-damaged = Zdjęcie dotarło uszkodzone; wyślij je ponownie.
problem-pictures-full = Zdjęcia tego gospodarstwa zajęły całe swoje miejsce; usuń kilka albo zapytaj osobę, która prowadzi serwer.
problem-picture-not-sent = To zdjęcie nie zostało jeszcze wysłane przez swój telefon.
problem-no-picture = W tym gospodarstwie nie ma takiego zdjęcia.
problem-picture-itself = Wyślij samo zdjęcie (Content-Type: image/jpeg).
problem-picture-large = Największy rozmiar zdjęcia w bajtach: { $most }.

problem-broker-and-topic = Podaj i broker, i temat, albo żadne z nich.
problem-no-broker = Serwer nie słucha brokera o tej nazwie.
problem-topic-not-yours = Podaj jeden cały temat, który pasuje do { $wanted }.
problem-too-many-sensors = Najwięcej czujników w gospodarstwie: { $most }. Najpierw zakończ jeden.
problem-topic-taken = Tego tematu słucha już czujnik.
problem-bad-token = Wyślij nadal ważny token czujnika ('Authorization: Bearer …'). Nowe tworzy Dom, Miejsca.
problem-no-sensor = W tym gospodarstwie nie ma takiego czujnika.
problem-no-csv = Wiersz { $line } nie jest w CSV: { $why }. Zapisz plik ponownie jako CSV.
problem-no-such-column =
    { $n ->
        [0] Żadna kolumna nie nazywa się '{ $name }'; podaj jedną z tych w pierwszym wierszu.
        [one] { $n } kolumna nazywa się '{ $name }'; podaj jedną z tych w pierwszym wierszu.
        [few] { $n } kolumny nazywają się '{ $name }'; podaj jedną z tych w pierwszym wierszu.
        [many] { $n } kolumn nazywa się '{ $name }'; podaj jedną z tych w pierwszym wierszu.
       *[other] { $n } kolumny nazywa się '{ $name }'; podaj jedną z tych w pierwszym wierszu.
    }
problem-name-a-column = Podaj kolumnę temperatury albo wilgotności.

problem-holiday-days = Wybierz dzień powrotu po dniu wyjazdu, w ciągu roku.
problem-no-calculator = Nie ma takiego kalkulatora.
problem-no-input = { $calculator }: nie ma pola { $name }.
problem-input-number = { $name } musi być liczbą.
problem-input-choice = { $name } musi być jedną z możliwości.
problem-input-yes-no = { $name } musi być: tak lub nie.
problem-out-of-range = { $what }: { $value } { $unit }; potrzebna wartość między { $low } { $unit } a { $high } { $unit }.
problem-not-a-choice = { $name } to { $value }; potrzebne jest jedno z { $choices }.
problem-parts-by = Powiedz, czy części są wagowe ({ $mass }%), czy objętościowe ({ $volume }%).

problem-no-json = Treść nie jest JSON-em, który przyjmuje ten adres: { $why }.
problem-not-an-object = { $where } musi być obiektem.
problem-body-not-an-object = Treść musi być obiektem JSON.
problem-not-a-list = '{ $where }' musi być listą.
problem-not-a-uuid = '{ $where }' musi być UUID-em z małych liter.
problem-address-not-a-uuid = Id w adresie nie jest UUID-em.
problem-not-a-whole-number = '{ $where }' musi być liczbą całkowitą od { $low } do { $high }.
problem-not-a-short-text = { $where } musi być krótkim tekstem.
problem-not-a-flag = { $where } musi być true lub false.
problem-not-a-pair = { $where } musi zawierać za każdym razem [ms, device].
problem-empty-set = { $where } musi być obiektem z co najmniej jednym polem.
problem-too-many-fields = { $where } ma więcej pól niż { $most }.
problem-wrong-cursor = 'cursor' musi być tym, co dała ostatnia odpowiedź, albo null.
problem-wrong-fields = Te pola są złe albo ich brakuje: { $names }.
problem-wrong-auth-key = { $where } musi mieć 16 bajtów w base64url.
problem-wrong-point-key = { $where } musi być nieskompresowanym punktem P-256 (65 bajtów) w base64url.
problem-app-newer = Aplikacja na tym telefonie jest nowsza niż serwer; zaktualizuj serwer.
problem-too-many-operations = Najwięcej operacji w jednym żądaniu: { $most }; resztę wyślij w następnym.
problem-too-many-bytes = Najwięcej przyjmowanych tu bajtów: { $most }.
problem-input-wrong = Z tym nie da się liczyć: { $why }.

refused-one-household = Gospodarstwo ma jeden wpis o sobie i ten wpis już jest.
refused-household-stays = Samego gospodarstwa nie można usunąć.
refused-let-in = Osoby dodaje się, wpuszczając telefon albo przepustką.
refused-no-role = Osoba jest hodowcą albo zastępstwem; ta nie jest ani jednym, ani drugim.
refused-last-keeper = Ostatniego hodowcy nie można usunąć; najpierw wpuść innego.

problem-row-no-number = „{ $cell }” to nie liczba.
problem-row-no-time = „{ $cell }” to nie czas w wybranej postaci.
problem-row-too-early = Czas sprzed roku 2000.
problem-row-not-a-number = Nie ma tu liczby.
problem-row-nothing-measured = Nie ma tu ani temperatury, ani wilgotności.
problem-row-broken-temperature = Takiej temperatury nie może mieć żadne miejsce.
problem-row-broken-humidity = Wilgotność jest poza zakresem od 0 do 100 %.
problem-row-too-old = To zbyt stare.
problem-row-in-the-future = To leży w przyszłości.
