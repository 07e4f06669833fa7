## Miejsca i ich klimat.

place-title = Miejsca
place-about = Szafka, pokój, piwnica czy lodówka: ich ciepło i suchość zmieniają pokarm, wodę i potomstwo w każdym planie.
place-empty = Żadne miejsce nie jest zapisane. Bez niego przyjmuje się pokój o { DEGREES(22) } (praktyka hodowców).
place-add = Dodaj miejsce
place-change = Zmień
place-reading = Wpisz odczyt
place-log = Zapisz odczyt
place-sensors = Czujniki
place-chart = W czasie
place-close = Zamknij
place-open = Zobacz miejsca
place-name = Nazwa miejsca
place-type = Co to jest

place-type-cabinet = Szafka
place-type-room = Pokój
place-type-cellar = Piwnica
place-type-fridge = Lodówka

place-nobody = Nie stoi tu jeszcze żadna kolonia: wybierz miejsce w kolonii pod „Zmień”.
place-day-temp = W dzień, { $unit }
place-night-temp = W nocy, { $unit }
place-humidity = Wilgotność, %
place-temperature = Temperatura, { $unit }
place-stands = Miejsce
place-nowhere = nie podano
place-none-yet = Najpierw dodaj miejsce, w części Dom.
place-day = { $warm } w dzień
place-night = { $warm } w nocy
place-moist = { $percent }% wilgotności
place-last = Ostatni odczyt: { $what } ({ $when })
place-bad-temp = Taka temperatura jest niemożliwa: wpisz wartość w { $unit }.
place-bad-moist = Wilgotność jest między 0 a 100%.
place-nothing = Wpisz temperaturę lub wilgotność.
