reason-interval-band = Zwykle dla tego gatunku i wielkości: co { $low } do { $high } dni (praktyka hodowców).
reason-interval-keeper =
    Twoje ustawienie: { $days ->
        [one] codziennie
        [few] co { $days } dni
        [many] co { $days } dni
       *[other] co { $days } dnia
    }.
reason-interval-chosen = W dni i o godzinie z twojego ustawienia.
reason-last-fed =
    Ostatnio podane { $days ->
        [one] { $days } dzień
        [few] { $days } dni
        [many] { $days } dni
       *[other] { $days } dnia
    } temu.
reason-never-fed = Nie ma jeszcze wpisanego karmienia.
reason-no-larvae = Larw nie widziano: białko może poczekać dłużej.
reason-slow-species = Ten gatunek je powoli: odstępy są o połowę dłuższe (praktyka hodowców).
reason-ignored-did-not-count = Ostatnia porcja została pominięta, więc się nie liczy.
reason-leftovers =
    Podane { $hours ->
        [one] { $hours } godzinę
        [few] { $hours } godziny
        [many] { $hours } godzin
       *[other] { $hours } godziny
    } temu; zabierz resztę, zanim się zepsuje (praktyka hodowców: po { $after } godzinach).
reason-crop-lasts =
    Pełne wole wystarcza na ok. { $days ->
        [one] { $days } dzień
        [few] { $days } dni
        [many] { $days } dni
       *[other] { $days } dnia
    } przy { DEGREES($temp_c) }; połowa zostaje w zapasie.
reason-freshness-rules =
    To, co podane, jest dobre ok. { $days ->
        [one] { $days } dzień
        [few] { $days } dni
        [many] { $days } dni
       *[other] { $days } dnia
    } (praktyka hodowców); więcej nie wystarczy na dłużej.
reason-amount-rules = Podano { $mg } mg cukru, a kolonia zużywa ok. { $mg_per_day } mg na dzień, więc skończy się najpierw.
reason-band-rules =
    Według szacunku rytm byłby inny; jest trzymany na { $days ->
        [one] { $days } dzień
        [few] { $days } dni
        [many] { $days } dni
       *[other] { $days } dnia
    }, od połowy do podwójnej długości zwykłych { $low } do { $high } dni (praktyka hodowców).
reason-brood-grows =
    Ok. { $larvae ->
        [one] { $larvae } larwa potrzebuje
        [few] { $larvae } larwy potrzebują
        [many] { $larvae } larw potrzebuje
       *[other] { $larvae } larwy potrzebuje
    } { $mg_per_day } mg białka na dzień przy { DEGREES($temp_c) }.
reason-prey-rules =
    { $mg } mg białka to ok. { $days ->
        [one] { $days } dzień
        [few] { $days } dni
        [many] { $days } dni
       *[other] { $days } dnia
    } wzrostu.
reason-bank-rules =
    Potomstwo nie odłoży białka na dłużej niż ok. { $days ->
        [one] { $days } dzień
        [few] { $days } dni
        [many] { $days } dni
       *[other] { $days } dnia
    }, choćby zdobycz była duża (praktyka hodowców).
reason-no-brood-expected = Nowych robotnic nie należy się spodziewać i od 4 tygodni nikt nie liczył larw: tylko trochę białka (praktyka hodowców).
reason-quiet-season = Według swojego rocznego zegara ten gatunek teraz zwalnia i od 4 tygodni nikt nie liczył larw: tylko trochę białka. Policzone larwy dostają pokarm (praktyka hodowców).
reason-maintenance-only = Brak larw: wystarczy trochę białka, żeby robotnice miały się dobrze.
reason-appetite-learnt =
    Z { $checks ->
        [one] { $checks } kontroli
        [few] { $checks } kontroli
        [many] { $checks } kontroli
       *[other] { $checks } kontroli
    }: ta kolonia je mniej więcej { $times } razy tyle, co zwykle.
reason-appetite-at-least =
    Przy każdej kontroli, która coś mówi ({ $checks }), zjedzone było wszystko: ta kolonia je co najmniej ok. { $times } razy tyle, co zwykle. O ile więcej, okaże się, gdy coś zostanie.
reason-appetite-at-most =
    Przy każdej kontroli, która coś mówi ({ $checks }), coś zostało: ta kolonia je najwyżej ok. { $times } razy tyle, co zwykle. O ile mniej, nie da się poznać, póki zostaje nawet z najmniejszej porcji.
reason-appetite-hidden = Z takich kontroli nie da się poznać, ile ta kolonia je: trudno, żeby wyszły inaczej, jak cała kropla przed garstką mrówek. Plan zostaje przy tym, co zwykłe dla jej wielkości.
reason-refusal-food = Ostatnia porcja została: najpierw wiń pokarm i spróbuj innego.
reason-refusal-state = Ostatnia porcja została, ale kolonia się urządza, zwalnia przed spoczynkiem albo całe jej potomstwo to poczwarki: to nic nie mówi o apetycie.
reason-protein-outweighs-sugar = Więcej białka ({ $protein_mg } mg) niż cukru ({ $sugar_mg } mg); tygodnie: { $weeks }. Taka dieta skracała życie robotnic (Dussutour and Simpson 2012). Podawaj więcej cukru; larwy łagodzą szkodę.
reason-census-guessed = Nikt jeszcze nie liczył: przyjęto ok. { $workers } robotnic według stadium (praktyka hodowców).
reason-census-unknown = Nikt jeszcze nie liczył i stadium nie jest ustawione: wpisz liczenie, do tego czasu ilości są zgadywane.
reason-census-old =
    Ostatnie liczenie: { $days ->
        [one] { $days } dzień
        [few] { $days } dni
        [many] { $days } dni
       *[other] { $days } dnia
    } temu; nowe spojrzenie dałoby większą pewność.
reason-workers-fell-to-zero = Ostatnie spojrzenie nie znalazło robotnic tam, gdzie jakieś były. Jeśli to pomyłka, wpisz nowe liczenie.
