## Przeszłość zapisu: nazwy pól, kto co zmienił i co zniknęło.

history-title = Historia
history-offline = Historia jest na serwerze, więc potrzebne jest połączenie.
history-again = Spróbuj ponownie
history-unsent = Jeszcze niewysłane. Historia zacznie się przy następnym połączeniu.
history-somebody = Ktoś
history-made = { $who }: wpis
history-changed = { $who }: zmiana
history-out = { $who }: usunięcie
history-back = { $who }: przywrócenie
history-was = wcześniej: { $value }
history-not-stood = { $field }: „{ $value }” nie zostało, bo zmiana na innym telefonie była późniejsza.
history-bring = Przywróć „{ $value }”
history-clear = Znów zostaw puste
history-brought = Przywrócone

history-gone-title = Co zniknęło
history-gone-about = Co ostatnio usunięto lub unieważniono. Wszystko można przywrócić, z całą zawartością.
history-gone-none = Nic nie usunięto.
history-gone-take-back = Przywróć
history-gone-back = Wróciło: { $what }
history-gone-link = Co zniknęło
history-gone-by = { $who }, { $when }

history-register-household = Dom
history-register-person = Osoba
history-register-colony = Kolonia
history-register-vessel = Pojemnik
history-register-place = Miejsce
history-register-lot = Pokarm w spiżarni
history-register-rule = Własny rytm
history-register-tasting = Degustacja
history-register-pass = Przepustka

history-field-resting-since = W spoczynku od
history-field-condition-until = Do kiedy
history-field-came-from = Skąd pochodzi
history-field-went-to = Do kogo poszła
history-field-died-of = Przyczyna śmierci
history-field-host-species-code = Gospodarz
history-field-name = Nazwa
history-field-stage = Stadium
history-field-condition = Stan
history-field-number = Numer
history-field-species-code = Gatunek
history-field-species-name = Gatunek
history-field-queens = Królowe
history-field-gone = Usunięte
history-field-worker-length-mm = Długość robotnic w mm
history-field-guild = Co je
history-field-founding-mode = Jak królowa zakłada kolonię
history-field-stings = Żądli
history-field-vessel-id = Pojemnik
history-field-place-id = Miejsce
history-field-interval-days = Twoje własne odstępy
history-field-amount = Ilość
history-field-unit = Jednostka
history-field-text = Tekst
history-field-zone = Strefa czasowa
history-field-care-hours = Godziny opieki
history-field-remark = Uwaga
history-field-happened-at = Kiedy
history-field-need = Na co
history-field-food-code = Pokarm
history-field-lot-id = Partia
history-field-origin = Skąd pochodzi
history-field-size-class = Rozmiar
history-field-feeding-id = Karmienie
history-field-outcome = Co z tego zostało
history-field-leftovers-removed = Resztki zabrane
history-field-level = Poziom poidełka
history-field-colour-seen = Gdzie widać kolor
history-field-tint = Barwnik spożywczy
history-field-action = Co zrobiono
history-field-reading = Poziom
history-field-level-mm = Poziom w mm
history-field-workers = Robotnice
history-field-workers-coarse = Robotnice, mniej więcej
history-field-fault = Co jest nie tak
history-field-resolved-at = Naprawione
history-field-colony-ids = Kolonie
history-field-food-codes = Pokarmy
history-field-started-on = Pierwszy dzień
history-field-ended-on = Koniec
history-field-use-by = Zużyć do
history-field-got-on = Od kiedy
history-field-tasting-id = Degustacja
history-field-despite = Wpisane mimo
history-field-until = Odłożone do
history-field-why = Powód
history-field-day-temp-c = W dzień
history-field-night-temp-c = W nocy
history-field-temperature-c = Temperatura
history-field-humidity-pct = Wilgotność, %
history-field-place-type = Co to jest
history-field-vessel-code = Pojemnik
history-field-has-outworld = Arena
history-field-founded-on = Założona
history-field-acquired-on = U ciebie od
history-field-finished-on = Zużyte
history-field-starts-on = Pierwszy dzień
history-field-ends-on = Ostatni dzień

history-value-empty = puste
history-value-yes = tak
history-value-no = nie
history-value-elsewhere = nie na tym telefonie
history-value-every = { $days ->
    [one] { $need }: codziennie
    [few] { $need }: co { $days } dni
    [many] { $need }: co { $days } dni
   *[other] { $need }: co { $days } dnia
  }
history-value-read = Odczyt
