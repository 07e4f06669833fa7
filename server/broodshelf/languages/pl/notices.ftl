### „kolonia”, „królowa” i „robotnice” są rodzaju żeńskiego: „ona”, „jej”, „je” odnosi się do nich.

notice-plan-failed = Nie udało się ułożyć tego planu na nowo: widzisz stary plan, to szacunek. Kieruj się tym, co widzisz w gnieździe i probówkach. Serwer spróbuje ponownie w ciągu godziny; jego dziennik mówi, gdzie zawiódł.
notice-claustral = Królowa, która zakłada kolonię, żyje z zapasów: bez pokarmu i bez niepokojenia, najwyżej jeden spokojny rzut oka na tydzień. Pierwszy pokarm 2 do 7 dni po pierwszych robotnicach (praktyka hodowców).
notice-claustral-fungus = Królowa, która zakłada kolonię, żyje z zapasów i hoduje ogród z okruszka grzyba, który przyniosła: bez liści i bez niepokojenia, najwyżej jeden spokojny rzut oka na tydzień. Pierwsze liście 2 do 7 dni po pierwszych robotnicach (praktyka hodowców).
notice-stage-unknown = Nikt nie powiedział, jak daleko jest ta kolonia, więc plan jest ostrożny: tylko to, co nie szkodzi królowej na początku, i to, czego kolonia najbardziej potrzebuje. Stadium albo liczenie to poprawi.
notice-settling = Urządza się: kilka spokojnych dni.
notice-resting = Zimuje.
notice-resting-summer = W letnim spoczynku, z zamkniętym gniazdem: nie przyjmuje pokarmu, zagląda się tylko do wody (praktyka hodowców).
notice-rest-window = Ten gatunek odpoczywa od { $low_months } do { $high_months } miesięcy przy { DEGREES($low_c) } do { DEGREES($high_c) } (praktyka hodowców). To zakres, nie reguła.
notice-queen-lays = Królowa jest oznaczona jako niepewna, ale przy ostatnim liczeniu były jaja: jeśli staną się larwami, ustaw stan „Ma się dobrze”. Do tego czasu bez prognoz.
notice-queenless = Królowa jest niepewna: bez prognoz. Nigdy nie rozkopuj gniazda, żeby jej szukać.
notice-quarantine = Z dala od innych: karm ją na końcu, jej własną pęsetą.
notice-length-clamped = Wzory na masę działają dla robotnic krótszych niż te { $given_mm } mm: liczone jak dla { $used_mm } mm.
notice-mass-clamped-low = Sądząc po długości, niektóre z tych robotnic mogą ważyć mniej niż { $limit_mg } mg, czyli najmniej, dla ilu znane są tempa: liczone z tą wartością.
notice-mass-clamped-high = Sądząc po długości, niektóre z tych robotnic mogą ważyć więcej niż { $limit_mg } mg, czyli najwięcej, dla ilu znane są tempa: liczone z tą wartością.
notice-temperature-clamped = Tempa są znane od { DEGREES(10) } do { DEGREES(40) }: ma { DEGREES($mean_c) }, a liczone jak przy { DEGREES($used_c) }.
notice-colder-than-set = Zimniej, niż ustawiono: według czujnika { DEGREES($measured_c) } w ostatnich trzech dniach zamiast { DEGREES($set_c) }. Plan idzie za czujnikiem.
notice-warmer-than-set = Cieplej, niż ustawiono: według czujnika { DEGREES($measured_c) } w ostatnich trzech dniach zamiast { DEGREES($set_c) }. Plan idzie za czujnikiem.
notice-species-unknown = Gatunku nie ma na liście: plan opiera się na długości robotnic i praktyce hodowców.
notice-quiet-for =
    Zostaw ją w ciemności jeszcze na { $days ->
        [one] { $days } dzień
        [few] { $days } dni
        [many] { $days } dni
       *[other] { $days } dnia
    } (praktyka hodowców); potem spokojny rzut oka jest w porządku.
notice-quiet-look = Dziś spokojny rzut oka jest w porządku, potem żadnego przez tydzień.
notice-fed-queens-choice = Twój wybór: królowe klasztorne nie potrzebują pokarmu, ale w opublikowanym badaniu (Lasius niger) karmione królowe wychowały więcej poczwarek i robotnic. Jeśli karmisz, to maleńka kropla, rzadko i bez światła czy wstrząsów.
notice-first-food-soon =
    Są pierwsze robotnice. Z pierwszym pokarmem poczekaj { $low } do { $high ->
        [one] { $high } dnia
        [few] { $high } dni
        [many] { $high } dni
       *[other] { $high } dnia
    } (praktyka hodowców).
notice-first-food-now =
    Są pierwsze robotnice: pora na pierwszy pokarm, w ciągu { $days ->
        [one] { $days } dnia
        [few] { $days } dni
        [many] { $days } dni
       *[other] { $days } dnia
    } (praktyka hodowców); nie więcej, niż mówią jej zadania.
notice-semi-claustral = Ta królowa poluje, gdy zakłada kolonię: cukier i mała zdobycz co { $low } do { $high } dni (praktyka hodowców).
notice-semi-claustral-harvester = Ta królowa zbiera, gdy zakłada kolonię: rozgniecione nasiona zawsze w zasięgu, mała zdobycz co { $low } do { $high } dni (praktyka hodowców).
notice-semi-claustral-fungus-grower = Ta królowa wychodzi po liście, gdy zakłada kolonię: świeże kawałki dla jej ogrodu co { $low } do { $high } dni, bez zdobyczy i bez cukru (praktyka hodowców).
notice-alone = Królowa bez robotnic, już po założeniu kolonii: jej zapasy się skończyły. Cukier i mała zdobycz co { $low } do { $high } dni (praktyka hodowców), mało światła, bez wstrząsów.
notice-alone-harvester = Królowa bez robotnic, już po założeniu kolonii: jej zapasy się skończyły. Rozgniecione nasiona w zasięgu i mała zdobycz co { $low } do { $high } dni (praktyka hodowców), mało światła, bez wstrząsów.
notice-alone-fungus-grower = Królowa bez robotnic, już po założeniu kolonii: musi sama dbać o ogród. Świeże kawałki liści co { $low } do { $high } dni (praktyka hodowców), mało światła, bez wstrząsów.
notice-colony-empty = Nie policzono ani królowej, ani robotnic: nic nie jest karmione. Jeśli zostały poczwarki, mogą się jeszcze wykluć: wtedy wpisz liczenie. W przeciwnym razie ustaw stan „Martwa”, z przyczyną.
notice-parasitic = Ta królowa nie wychowa potomstwa bez robotnic gospodarza: daj jej kilka albo poczwarki gospodarza, gdy tylko możesz. Do tego czasu kropla cukru, bez zdobyczy (praktyka hodowców).
notice-parasitic-pupae = Przy tej królowej są poczwarki: te, które wyjdą z poczwarek gospodarza, będą ją karmić. Do tego czasu kropla cukru, bez zdobyczy (praktyka hodowców).
notice-parasitic-hosts = Robotnice gospodarza karmią tę królową, a ona składa jaja.
notice-note-host = Zapisz gatunek gospodarza, ile dostała i z której kolonii.
notice-settles = Właśnie się przeniosła: zostaw ją w spokoju jeszcze { $low } do { $high } dni. Odrzucony pokarm nic teraz nie znaczy (praktyka hodowców).
notice-too-cold-for-protein = Przy { DEGREES($day_c) } nie ma białka: poniżej { DEGREES($limit_c) } psuje się niezjedzone (praktyka hodowców).
notice-too-cold-perhaps-rest = Przy { DEGREES($day_c) } nie ma białka: poniżej { DEGREES($limit_c) } psuje się niezjedzone (praktyka hodowców). Jeśli to jej zimowanie, ustaw stan „W spoczynku”.
notice-too-cold-for-species = Przy { DEGREES($day_c) } nie ma białka: poniżej { DEGREES($limit_c) } psuje się niezjedzone (praktyka hodowców). Ten gatunek nie ma corocznego spoczynku: przenieś ją w cieplejsze miejsce, co najmniej { DEGREES(20) } (praktyka hodowców).
notice-yearly-clock = Późno w swoim roku ten gatunek zwalnia nawet w cieple: mało jaj to nie kłopot. Od 4 tygodni nikt nie liczył larw: tylko trochę białka, aż ktoś policzy.
notice-yearly-clock-larvae = Późno w swoim roku ten gatunek zwalnia nawet w cieple; ale policzono larwy, więc są karmione. To, co zostaje niezjedzone, nie jest teraz kłopotem.
notice-yearly-clock-none = Późno w swoim roku ten gatunek zwalnia nawet w cieple: brak larw i mało jaj to nie kłopot.
notice-yearly-clock-summer = Ten gatunek zwalnia latem: mało jaj to nie kłopot. Od 4 tygodni nikt nie liczył larw: tylko trochę białka, aż ktoś policzy.
notice-yearly-clock-larvae-summer = Ten gatunek zwalnia latem; ale policzono larwy, więc są karmione. To, co zostaje niezjedzone, nie jest teraz kłopotem.
notice-yearly-clock-none-summer = Ten gatunek zwalnia latem: brak larw i mało jaj to nie kłopot.
notice-queen-doubt = Brak jaj w liczeniach; aktywne tygodnie bez jaj: { $weeks } (praktyka hodowców: 6 do 8). Królowej może już nie być. Karm dalej, zajrzyj ponownie za dwa tygodnie; nigdy nie rozkopuj gniazda, żeby jej szukać.
notice-no-queen = Nie policzono królowej: robotnice pożyją jeszcze miesiące, ale nowe nie przyjdą. Larwy, które są, dostają pokarm, potem tylko trochę białka; bez prognoz. Nigdy nie rozkopuj gniazda, żeby jej szukać.
notice-gamergates = Nie policzono królowej; u tego gatunku jaja składają zapłodnione robotnice, więc to może być w porządku: powiedzą jaja i larwy.
notice-eggs-without-larvae = W liczeniach są jaja, a nigdy larwa; aktywne tygodnie: { $weeks } (praktyka hodowców: wątpliwość od 6). Mogą być niezapłodnione albo zjadane. Zostaw ją w spokoju i dość ciepło, i zajrzyj ponownie za dwa tygodnie.
notice-eggs-too-cold = W liczeniach są jaja, a nigdy larwa; tygodnie: { $weeks }. W jej miejscu jest za zimno, żeby się wykluły. Ogrzej powoli i zajrzyj ponownie za miesiąc.
notice-males-only = Wychodzą same samce: królowej może nie być albo jest niezapłodniona. Bez prognoz; nigdy nie rozkopuj gniazda, żeby jej szukać.
notice-quarantine-left = Trzymaj ją osobno jeszcze { $low } do { $high } dni (praktyka hodowców: 2 do 4 tygodni).
notice-quarantine-over =
    Osobno już { $days ->
        [one] { $days } dzień
        [few] { $days } dni
        [many] { $days } dni
       *[other] { $days } dnia
    }: zwykle to 2 do 4 tygodni. Jeśli nic nie zauważono, zakończ kwarantannę.
notice-keep-apart = Nowa w domu: trzymaj ją z dala od innych jeszcze { $low } do { $high } dni (praktyka hodowców).
notice-granary = Kiełkujące nasiona znaczą, że spichlerz jest za wilgotny: daj mu suchszy kąt (praktyka hodowców).
notice-cocoon-substrate = Jej larwy przędą kokony: gdy urosną, podaj szczyptę drobnego suchego podłoża (praktyka hodowców).
notice-wakes-in =
    Obudź ją za { $days ->
        [one] { $days } dzień
        [few] { $days } dni
        [many] { $days } dni
       *[other] { $days } dnia
    }.
notice-first-workers-in = Pierwsze robotnice za ok. { $low } do { $high } dni przy { DEGREES($mean_c) }.
notice-next-workers-in = Nowe robotnice za ok. { $low } do { $high } dni przy { DEGREES($mean_c) }.
notice-coming-wide-flight = Te dni są tak odległe, bo nikt nie zapisał dnia jej lotu, a potomstwo może być w każdym wieku: spojrzenie na larwy i poczwarki je zbliży.
notice-coming-wide-look = Te dni są tak odległe, bo od dwóch tygodni nikt nie szukał jej larw i poczwarek: spojrzenie je zbliży.
notice-coming-wide-kind = Te dni są tak odległe, bo nikt nie zmierzył, ile trwa rozwój potomstwa jej gatunku (zastępuje to praktyka hodowców).
notice-founding-stalled =
    Jej pierwsze robotnice spóźniają się o { $days ->
        [one] { $days } dzień
        [few] { $days } dni
        [many] { $days } dni
       *[other] { $days } dnia
    }: ta kolonia chyba utknęła na początku. Zostaw ją w ciemności i spokoju na dwa tygodnie, potem zajrzyj raz (praktyka hodowców).

notice-census-more =
    { $on } widziano więcej { $seen ->
        [eggs] jaj
        [larvae] larw
        [pupae] poczwarek
       *[workers] robotnic
    }, niż oczekiwano.
notice-census-fewer =
    { $on } widziano mniej { $seen ->
        [eggs] jaj
        [larvae] larw
        [pupae] poczwarek
       *[workers] robotnic
    }, niż oczekiwano.
notice-census-sooner =
    To, co widziano { $on } ({ $seen ->
        [eggs] jaja
        [larvae] larwy
        [pupae] poczwarki
       *[workers] robotnice
    }), mówi, że to potomstwo jest szybkie.
notice-census-later =
    To, co widziano { $on } ({ $seen ->
        [eggs] jaja
        [larvae] larwy
        [pupae] poczwarki
       *[workers] robotnice
    }), mówi, że to potomstwo jest powolne.

notice-brood-no-forecast = Brak prognozy potomstwa przy { DEGREES($value) }: liczby obowiązują od { DEGREES($low_c) } do { DEGREES($high_c) }.
notice-rest-over =
    Jej spoczynek miał się skończyć { $days ->
        [one] { $days } dzień
        [few] { $days } dni
        [many] { $days } dni
       *[other] { $days } dnia
    } temu: ogrzej ją, najpierw podaj cukier i ustaw stan „Ma się dobrze”. Do tego czasu liczy się jako odpoczywająca.
notice-rest-by-sensor = Czujnik mierzy średnio { DEGREES($mean_c) } w porze jej spoczynku; dni z rzędu: { $days }. Liczy się jako odpoczywająca i nic nie jest podawane. Ustaw stan „W spoczynku”, żeby powiedzieć, kiedy ma się obudzić.
notice-rest-over-by-sensor = Zimne dni: { $cold }. Potem czujnik mierzył { DEGREES($mean_c) }; dni z rzędu: { $days }. Jej spoczynek jest więc skończony i znów dostaje pokarm, najpierw cukier. Ustaw stan „Ma się dobrze”.
notice-wakes-later =
    Dni spoczynku za ciepłe, żeby się liczyły (według czujnika): { $warm }. Obudzi się więc { $later ->
        [one] { $later } dzień
        [few] { $later } dni
        [many] { $later } dni
       *[other] { $later } dnia
    } później, niż ustawiono.
notice-rest-unmarked = Stoi przy { DEGREES($mean_c) } w porze swojego spoczynku (zwykle: { DEGREES($low_c) } do { DEGREES($high_c) }, praktyka hodowców): jeśli odpoczywa, ustaw stan „W spoczynku” i nic nie podawaj.
notice-rest-missed = Ten gatunek odpoczywa zimą od { $low_months } do { $high_months } miesięcy przy { DEGREES($low_c) } do { DEGREES($high_c) } i już powinien był zacząć; spoczynek nie jest oznaczony. Późny jest lepszy niż żaden: ochładzaj ją przez ok. { $ramp_days } dni (praktyka hodowców).
notice-rest-after-first = Ten gatunek zimuje, a spoczynek nie jest oznaczony, ale jej pierwsze robotnice powinny wyjść w tych dniach: { $low_on } – { $high_on }. Zostaw ją w cieple, aż będą i zjedzą, potem ochładzaj ją do { DEGREES($low_c, unit: "none") } – { DEGREES($high_c) } przez ok. { $ramp_days } dni (praktyka hodowców).
notice-rest-larvae-wait = Pewnie ok. { $low } do { $high } larw czeka w gnieździe, aż się obudzi; jaja i poczwarki giną w zimnie. Nie trzeba zaglądać.
notice-rest-no-brood = Pewnie nie ma już potomstwa w gnieździe: jaja i poczwarki giną w zimnie, a jaja składa znowu, gdy nie śpi i ma ciepło. Nie trzeba zaglądać.
notice-rest-begins-summer = Jej letni spoczynek może zacząć się za { $low } do { $high } dni: zamyka gniazdo i nie przyjmuje pokarmu. Gdy nic już nie bierze, ustaw stan „W spoczynku” (praktyka hodowców).
notice-rest-begins = Jej zimowanie może zacząć się za { $low } do { $high } dni, gdy dzień skróci się do ok. { $hours } godzin: ochładzaj ją do { DEGREES($low_c) } – { DEGREES($high_c) } przez ok. { $ramp_days } dni. To zakres, nie reguła (praktyka hodowców).
notice-rest-may-end =
    Spoczynek może się teraz skończyć, najpóźniej za { $days ->
        [one] { $days } dzień
        [few] { $days } dni
        [many] { $days } dni
       *[other] { $days } dnia
    } (praktyka hodowców).
notice-tint-offered = Podano barwioną wodę z cukrem: zajrzyj po 1, 8, 24 i 72 godzinach przez jasne, rozdęte odwłoki i do potomstwa, a w kontroli powiedz, gdzie ją widać (praktyka hodowców; ciemne mrówki ją ukrywają).
notice-tint-in-gasters = Kolor w odwłokach: robotnice piły i mogły podzielić się między sobą.
notice-tint-in-brood = Kolor w potomstwie: to, co wypiły robotnice, trafiło do larw.
notice-tint-nowhere = Koloru nie widziano. To mało mówi: ciemne lub puste odwłoki go ukrywają.
