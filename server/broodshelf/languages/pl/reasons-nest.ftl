reason-settling = Kolonia urządza się po przeprowadzce: zostaw ją w spokoju, odmowy nic teraz nie znaczą.
reason-room-full = Ok. { $workers } robotnic w pojemniku na ok. { $room } (praktyka hodowców).
reason-barrier = Bariera, po której mrówki się nie wspinają, zużywa się w 2 do 8 tygodni: sprawdzaj raz w tygodniu (praktyka hodowców).
reason-glance =
    Nikt nie zaglądał do tej kolonii od { $days ->
        [one] { $days } dnia
        [few] { $days } dni
        [many] { $days } dni
       *[other] { $days } dnia
    }.
reason-ask-stage = Nikt nie powiedział, jak daleko jest ta kolonia. Rzuć dziś raz spokojnie okiem i wpisz liczenie: sama królowa czy ile robotnic i czy są larwy.
reason-ask-workers = Ostatnie liczenie nie znalazło robotnic tam, gdzie powinny być. Rzuć raz spokojnie okiem i policz ponownie: to pomyłka czy królowa jest sama?
reason-room-fills =
    W tym tempie gniazdo będzie pełne, z ok. { $room } robotnic (praktyka hodowców), za { $best ->
        [one] { $best } dzień
        [few] { $best } dni
        [many] { $best } dni
       *[other] { $best } dnia
    } ({ $low } do { $high }): przygotuj następne.
reason-room-fills-perhaps =
    W tym tempie gniazdo będzie pełne, z ok. { $room } robotnic (praktyka hodowców), za { $best ->
        [one] { $best } dzień
        [few] { $best } dni
        [many] { $best } dni
       *[other] { $best } dnia
    }, być może znacznie później: przygotuj następne.
reason-room-full-by-now =
    Sądząc po tempie, gniazdo na ok. { $room } robotnic (praktyka hodowców) może być już pełne; ostatnie liczenie: { $days ->
        [one] { $days } dzień
        [few] { $days } dni
        [many] { $days } dni
       *[other] { $days } dnia
    } temu. Policz i przygotuj następne.
reason-room-growth =
    W obecnym tempie podwaja się w ok. { $doubling } dni ({ $counts ->
        [one] { $counts } liczenie
        [few] { $counts } liczenia
        [many] { $counts } liczeń
       *[other] { $counts } liczenia
    }).
reason-move-water-low = Wody w tej probówce jest mało: świeża probówka to woda i miejsce naraz.
reason-move-mould = Pleśń jest blisko potomstwa albo zajmuje jedną trzecią waty.
reason-move-flood = Gniazdo jest zalane.
reason-move-dry = Zbiornik jest suchy.
reason-move-beside = Połóż nową probówkę lub gniazdo wylotem do wylotu obok starego.
reason-move-darken = Nowe zaciemnij.
reason-move-light = Stare zostaw w świetle, bez ciepła.
reason-move-wait = Daj im 1 do 4 tygodni; wybierają noc (praktyka hodowców).
reason-move-no-shaking = Nigdy ich nie wytrząsaj ani nie wysypuj.
reason-move-force = Widać, że jest sucho lub zalane: dopiero teraz pomóż ręką. Delikatnie wystukaj je do nowej probówki, najpierw potomstwo, i zostaw w ciemności.
reason-never-tilt = Nigdy nie przechylaj: replety, które spadną, są stracone.
reason-offer-look =
    Gniazdo podano { $days ->
        [one] { $days } dzień
        [few] { $days } dni
        [many] { $days } dni
       *[other] { $days } dnia
    } temu: sprawdź, czy się przeniosły, i wpisz to, jeśli tak.
reason-offer-light = Nadal w starym? Ustaw nad starym światło, bez ciepła, a nowe trzymaj w ciemności i wilgotne z jednego końca (praktyka hodowców).
reason-offer-last =
    Gniazdo podano { $days ->
        [one] { $days } dzień
        [few] { $days } dni
        [many] { $days } dni
       *[other] { $days } dnia
    } temu: cztery tygodnie wystarczą na wybór (praktyka hodowców). Wpisz, jeśli się przeniosły.
reason-offer-ends = Nadal w starym? Więc im odpowiada: zabierz nowe, sprawdź, czy jest dość wilgotne i ciemne, i podaj inne później (praktyka hodowców).
reason-offer-water = Stara probówka powinna być prawie sucha, a jeszcze się nie przeniosły: zajrzyj do wody i wpisz, co widzisz. Ręką opróżnia się tylko to, o czym wiadomo na oko, że jest suche.
