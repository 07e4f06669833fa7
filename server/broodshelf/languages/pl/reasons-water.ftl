reason-water-read =
    Odczyt ({ $reading }) sprzed { $days ->
        [one] { $days } dnia
        [few] { $days } dni
        [many] { $days } dni
       *[other] { $days } dnia
    }; pełny zbiornik wystarcza tu na ok. { $last } dni.
reason-water-look = Nikt nie wpisał, ile jest wody, więc nie wiadomo: zajrzyj raz. Wpisany poziom pozwoli planowi powiedzieć, kiedy jest pora.
reason-water-look-again =
    O wodzie nic nie wpisano od { $days ->
        [one] { $days } dnia
        [few] { $days } dni
        [many] { $days } dni
       *[other] { $days } dnia
    }, dłużej, niż jej wystarcza: znów nie wiadomo, ile jej jest. Zajrzyj raz i wpisz poziom.
reason-water-unread = Nikt jeszcze nie odczytał wody; pełny zbiornik powinien tu wystarczyć na ok. { $last } dni.
reason-water-physics = Policzone z wielkości probówki oraz ciepła i suchości jej miejsca; twoje odczyty dadzą większą pewność.
reason-water-nest = Takie gniazdo nawadnia się w pokoju co 3 do 10 dni, w chłodzie rzadziej (praktyka hodowców).
reason-water-learnt = Z twoich własnych odczytów: pełny zbiornik wystarcza na { $low } do { $high } dni.
reason-water-left-out = Jeden odczyt wody pominięto: probówka tej wielkości nie może go pokazać.
reason-water-length-guessed = Nikt nie podał, jak długi jest pełny zbiornik: za pełny liczy się najdłuższy odczyt, { $mm } mm.
reason-water-length-unknown = Odczyty w mm są pomijane, póki nie podasz, jak długi jest pełny zbiornik.
reason-water-fill = Do pełna trzeba ok. { VOLUME($ml) }.
reason-water-damp-end = Trzymaj jeden koniec wilgotny, a drugi suchy: mrówki wybierają (praktyka hodowców).
reason-water-drinker = Tyle mrówek potrzebuje też poidełka na arenie (praktyka hodowców).
reason-leak-suspected =
    Ubyło więcej wody, niż tłumaczą schnięcie i picie: przeciek z prawdopodobieństwem { $chance }%. W tym tempie będzie sucho za { $days ->
        [one] { $days } dzień
        [few] { $days } dni
        [many] { $days } dni
       *[other] { $days } dnia
    }. Sprawdź dziś, czy podłoga lub potomstwo nie są mokre; to może być coś innego.
