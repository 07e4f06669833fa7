reason-too-hot = { DEGREES($temperature_c) }: powyżej { DEGREES($limit_c) } ten gatunek jest w niebezpieczeństwie ({ $source }). Wyłącz grzanie, zabierz ją ze słońca, daj jej chłodny i wilgotny koniec. Bez lodówki. Wpisz nowy odczyt, gdy będzie chłodniej.
reason-too-cold = { DEGREES($temperature_c) }: poniżej { DEGREES($limit_c) } ten gatunek jest w niebezpieczeństwie, gdy nie śpi ({ $source }). Przenieś ją dziś w cieplejsze miejsce i daj się powoli ogrzać. Wpisz nowy odczyt, gdy będzie cieplej.
reason-overheating = Czujnik mierzy { DEGREES($temperature_c) }: powyżej { DEGREES($limit_c) } ten gatunek jest w niebezpieczeństwie ({ $source }). Wyłącz grzanie, zabierz ją ze słońca, daj jej chłodny i wilgotny koniec. Bez lodówki.
reason-freezing = Czujnik mierzy { DEGREES($temperature_c) }: woda zamarza i probówka może pęknąć. Przenieś ją w chłodne miejsce powyżej { DEGREES($limit_c) }, bez pośpiechu i bez grzejnika.
reason-rest-colder = Czujnik mierzy { DEGREES($temperature_c) }, poniżej { DEGREES($limit_c) }, które ten gatunek znosi w spoczynku (praktyka hodowców). Przenieś ją w chłodne miejsce powyżej tego, bez pośpiechu i bez grzejnika.
reason-rising-fast = Jest { DEGREES($temperature_c) } i rośnie o { DEGREES_APART($rise_c) } na godzinę: w tym tempie w ciągu dwóch godzin przekroczy { DEGREES($limit_c) }, a wtedy ten gatunek jest w niebezpieczeństwie ({ $source }). Sprawdź, czy nie świeci na nią słońce albo grzanie nie ma końca, i wyłącz je.
reason-heater-on = Od { $hours } godzin jest o { DEGREES_APART($by_c) } cieplej niż zwykle o tej porze: teraz { DEGREES($temperature_c) }. Jeśli ogrzewa ją grzejnik, sprawdź, czy termostat się nie zaciął; jeśli nie, poszukaj słońca lub kaloryfera.
reason-heater-off = Od { $hours } godzin jest o { DEGREES_APART($by_c) } zimniej niż zwykle o tej porze: teraz { DEGREES($temperature_c) }. Jeśli ogrzewa ją grzejnik, sprawdź, czy jeszcze działa; jeśli nie, poszukaj otwartego okna.
reason-fridge-open = W lodówce jest { DEGREES($temperature_c) } zamiast { DEGREES($usual_c) }: sprawdź, czy drzwi są zamknięte i czy lodówka działa. Kolonia, która ogrzewa się w spoczynku, zużywa to, z czego żyje.
reason-dry-air = Powietrze ma { $humidity_pct }% wilgotności zamiast { $usual_pct }%: gniazdo schnie szybciej niż dotąd. Zajrzyj do jego wilgotnego końca i nawodnij go, jeśli jest suchy.
reason-rest-water =
    Ostatnie spojrzenie { $days ->
        [one] { $days } dzień
        [few] { $days } dni
        [many] { $days } dni
       *[other] { $days } dnia
    } temu. W spoczynku zagląda się do wody co { $low } do { $high } dni (praktyka hodowców).
reason-rest-airing = Otwieraj pudełko z lodówki na minutę raz w tygodniu: powietrze w nim jest zużyte (praktyka hodowców). Ostatnie wietrzenie, dni temu: { $days }.
reason-wake-up = Tego dnia kończy się jej spoczynek: ogrzewaj ją przez ok. { $ramp_days } dni, najpierw podaj cukier (praktyka hodowców) i ustaw stan „Ma się dobrze”.
reason-wake-up-summer = Tego dnia kończy się jej letni spoczynek: ustaw stan „Ma się dobrze” i znów podawaj cukier i małą zdobycz (praktyka hodowców).
reason-rest-too-warm = Jest oznaczona jako odpoczywająca, ale w jej miejscu jest { DEGREES($mean_c) }; powyżej { DEGREES($limit_c) } nie śpi i zjada swoje zapasy (praktyka hodowców). Albo stoi w chłodniejszym miejscu: wybierz to miejsce. Albo ją ochłódź. Albo ustaw stan „Ma się dobrze”. Do tego czasu dostaje pokarm, jakby nie spała.
reason-rest-not-for-species = Jest oznaczona jako odpoczywająca, ale ten gatunek nie ma corocznego spoczynku: trzymaj ją przy co najmniej { DEGREES($least_c) } (praktyka hodowców; teraz { DEGREES($mean_c) }) i ustaw stan „Ma się dobrze”. Do tego czasu jest karmiona, jakby nie spała.
reason-rest-frost = Za zimno w jej spoczynku: { DEGREES($coldest_c) }. Przenieś ją dziś w miejsce powyżej { DEGREES($limit_c) }, bez ogrzewania (praktyka hodowców).

source-common-practice = praktyka hodowców
