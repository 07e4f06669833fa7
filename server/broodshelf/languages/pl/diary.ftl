## Co mówi wpis dziennika.

event-kind-feeding = Karmienie
event-kind-check = Kontrola
event-kind-water = Woda
event-kind-fault = Coś jest nie tak
event-kind-count = Liczenie
event-kind-move = Przeprowadzka
event-kind-boost = Dodane potomstwo
event-kind-note = Notatka
event-kind-climate = Klimat
event-kind-photo = Zdjęcie
event-kind-later = Odłożone

event-colony = Kolonia
event-repeat = { $told } (może powtórzone, nie liczy się)
event-brood-added = { $brood ->
    [eggs] Dodane potomstwo: jaja
    [larvae] Dodane potomstwo: larwy
   *[pupae] Dodane potomstwo: poczwarki
  }
event-brood-added-some = { $brood ->
    [eggs] { $count ->
        [one] Dodane potomstwo: { $count } jajo
        [few] Dodane potomstwo: { $count } jaja
        [many] Dodane potomstwo: { $count } jaj
       *[other] Dodane potomstwo: { $count } jaja
      }
    [larvae] { $count ->
        [one] Dodane potomstwo: { $count } larwa
        [few] Dodane potomstwo: { $count } larwy
        [many] Dodane potomstwo: { $count } larw
       *[other] Dodane potomstwo: { $count } larwy
      }
   *[pupae] { $count ->
        [one] Dodane potomstwo: { $count } poczwarka
        [few] Dodane potomstwo: { $count } poczwarki
        [many] Dodane potomstwo: { $count } poczwarek
       *[other] Dodane potomstwo: { $count } poczwarki
      }
  }
event-leftovers = Resztki zabrane
event-mended = { $fault } (naprawione)
event-read = Poziom wody: { $level }
event-read-mm = Poziom wody: { $mm } mm
event-feeder = Poidełko: { $level }
event-colour = Szukanie koloru: { $where }
event-colour-nowhere = Szukanie koloru: nigdzie

event-water-refill = Woda uzupełniona
event-water-new-tube = Podana nowa probówka
event-water-hydrate = Gniazdo nawodnione

event-counted = Policzone: { $seen }
event-counted-nothing = Policzone: potomstwo
event-counted-eggs = { $amount ->
    [none] jaja: brak
    [seen] jaja: widziane
    [few] jaja: mało
    [some] jaja: trochę
   *[many] jaja: dużo
  }
event-counted-larvae = { $amount ->
    [none] larwy: brak
    [seen] larwy: widziane
    [few] larwy: mało
    [some] larwy: trochę
   *[many] larwy: dużo
  }
event-counted-pupae = { $amount ->
    [none] poczwarki: brak
    [seen] poczwarki: widziane
    [few] poczwarki: mało
    [some] poczwarki: trochę
   *[many] poczwarki: dużo
  }
event-workers = { $count ->
    [one] { $count } robotnica
    [few] { $count } robotnice
    [many] { $count } robotnic
   *[other] { $count } robotnicy
  }
event-workers-at-least = co najmniej { $seen }
event-queens = { $count ->
    [one] { $count } królowa
    [few] { $count } królowe
    [many] { $count } królowych
   *[other] { $count } królowej
  }
event-males-only = same samce
event-workers-roughly = { $amount ->
    [none] Brak robotnic
    [few] Mało robotnic
    [some] Trochę robotnic
   *[many] Dużo robotnic
  }

event-stage-larvae = Larwy
event-stage-eggs = Jaja
event-stage-pupae = Poczwarki

event-outcome-all = Zjedzone wszystko
event-outcome-some = Zjedzone trochę
event-outcome-ignored = Pominięte

event-reading-full = Pełny
event-reading-three-quarters = ¾
event-reading-half = ½
event-reading-quarter = ¼
event-reading-empty = Pusty

event-colour-seen-gasters = W odwłokach: robotnice piły
event-colour-seen-brood = W potomstwie: przekazane dalej

event-coarse-none = Brak
event-coarse-few = Mało
event-coarse-some = Trochę
event-coarse-many = Dużo

event-brood-seen-none = Brak
event-brood-seen-seen = Widać
event-brood-seen-few = Mało
event-brood-seen-some = Trochę
event-brood-seen-many = Dużo

## Dziennik.

diary-empty = Nic jeszcze nie wpisano.
diary-earlier = Wcześniej
diary-void = Unieważnij
diary-search = Szukaj w dzienniku
diary-kind = Pokaż
diary-all = Wszystko
diary-none = Niczego takiego nie ma w dzienniku.
diary-looking = Szukanie wstecz do: { $day } …
diary-today = Dziś
diary-yesterday = Wczoraj

## Zdjęcia.

photo-title = Zdjęcia
photo-take = Zrób zdjęcie
photo-busy = Chwileczkę…
photo-remove = Usuń to zdjęcie
photo-unreadable = Nie udało się odczytać tego zdjęcia. Spróbuj innego albo zrób je jeszcze raz.
photo-too-large = Nie udało się wystarczająco zmniejszyć tego zdjęcia.
photo-of = { $name }, { $day }
photo-large = Obejrzyj zdjęcie: { $day }
photo-older = Starsze
photo-newer = Nowsze
photo-elsewhere = To zdjęcie jest jeszcze na telefonie, którym je zrobiono.
