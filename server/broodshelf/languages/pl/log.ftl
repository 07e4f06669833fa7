## Arkusz wpisu.

log-food = Pokarm
log-more = Więcej pokarmów
log-amount = Ilość
log-size = Rozmiar
log-from = Skąd pochodzi
log-lot = Która partia
log-no-lot = Skądinąd
log-go = Zapisz karmienie
log-despite = To już się stało: zapisz mimo to

log-stop-refuse = Nie podawaj tego.
log-stop-wait = Jeszcze nie.
log-stop-hold = Najpierw to przetrzymaj.

log-outcome-later = { $hours ->
    [one] Co z tego zostało, może poczekać: obchód zapyta o resztki po ok. { $hours } godzinie.
    [few] Co z tego zostało, może poczekać: obchód zapyta o resztki po ok. { $hours } godzinach.
    [many] Co z tego zostało, może poczekać: obchód zapyta o resztki po ok. { $hours } godzinach.
   *[other] Co z tego zostało, może poczekać: obchód zapyta o resztki po ok. { $hours } godziny.
  }
log-which-feeding = Które karmienie
log-feeder-level = Jak pełne jest poidełko
log-offered-in = Podane jako

log-vessel-drop = Krople
log-vessel-feeder = W poidełku

log-colour-seen = Gdzie widać kolor
log-colour-only = Zapisz tylko, gdzie widać
log-colour-when = Zajrzyj po 1, 8, 24 i 72 godzinach: przez jasne, rozdęte odwłoki i do potomstwa. Ciemne mrówki go ukrywają (praktyka hodowców).
log-what-became = Co z tego zostało
log-leftovers = Resztki zabrane
log-calm = Wszystko spokojne
log-barrier-good = Bariera jest dobra
log-level = Poziom wody
log-drag = Przesuń poziom, aż będzie jak w prawdziwej probówce, albo użyj klawiszy strzałek.
log-bubble = W leżącej probówce bąbel pływa nad wodą: odczytaj koniec przy wacie.
log-mm = Albo wpisz w mm
log-read = Zapisz ten poziom
log-filled = Uzupełnione
log-new-tube = Podana nowa probówka
log-hydrate = Gniazdo nawodnione
log-wrong = Co jest nie tak
log-report = Zgłoś to
log-workers = Widziane robotnice
log-guess = (może być na oko)
log-count = Zapisz liczenie
log-more-brood = Jaja, poczwarki, królowe
log-move-words = Połóż nową probówkę obok starej, nową zaciemnij, starą oświetl. Daj im 1 do 4 tygodni (praktyka hodowców). Nigdy ich nie wytrząsaj, chyba że stara jest zalana lub sucha.
log-offered = Podane nowe gniazdo
log-moved = Już się przeniosły
log-note = Notatka
log-keep-note = Zachowaj notatkę
log-mould-where = Gdzie jest

log-mould-far = Plamki z dala od potomstwa
log-mould-near = Blisko potomstwa albo jedna trzecia waty (praktyka hodowców)

log-queens = Widziane królowe
log-queens-hint = (zostaw puste, jeśli nie było sprawdzane; 0 znaczy, że nie ma żadnej)
log-males-only = Wyszły same samce
log-donor = Z której kolonii
log-from-elsewhere = Skądinąd
log-which-brood = Co dodano
log-how-many = Ile
log-boost = Zapisz potomstwo
log-boost-words = Tylko potomstwo tego samego gatunku (przy królowej pasożytniczej: jej gospodarza), ze zdrowej kolonii. Najlepiej przyjmowane są poczwarki (praktyka hodowców).

## Odkładanie lub pominięcie z powodem.

later-title = Później albo nie tym razem
later-when = Przypomnij w obchodzie
later-hour = Za godzinę
later-evening = Dziś wieczorem
later-tomorrow = Jutro
later-skip = Albo pomiń tym razem, bo
later-own = Twój powód
later-go = Pomiń
later-cannot-wait = To może czekać najwyżej do rana: ktoś musi zajrzeć.

## Kilka kolonii naraz.

several-title = Kilka naraz
several-what = Co dostały
several-who = Które kolonie
several-none = Wybierz co najmniej jedną kolonię.
several-water = Uzupełnione
several-look = Wszystko spokojne
several-go = { $count ->
    [one] Zapisz dla { $count } kolonii
    [few] Zapisz dla { $count } kolonii
    [many] Zapisz dla { $count } kolonii
   *[other] Zapisz dla { $count } kolonii
  }
