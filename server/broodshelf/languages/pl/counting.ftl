counting-open = Policz na zdjęciu
counting-again = Obejrzyj liczenie jeszcze raz
counting-looking = Szukanie mrówek…
counting-range = Prawdopodobnie od { $low } do { $high }, co najmniej { $least }
counting-crowded = Siedzą zbyt gęsto, żeby było widać wszystkie: co najmniej { $least }, prawdopodobnie od { $low } do { $high }
counting-brood = Potomstwo: { $count }
counting-plain = Jak wyraźna musi być mrówka
counting-tap = Dotknięcie zaznacza
counting-sets-worker = Mrówki
counting-sets-brood = Potomstwo
counting-sets-frame = Ramka
counting-sets-size = Wielkość
counting-hint-worker = Dotknij mrówki bez kropki; dotknij kropki, żeby ją usunąć.
counting-hint-brood = Dotknij potomstwa bez kropki; dotknij kropki, żeby ją usunąć.
counting-hint-frame = Przeciągnij oba rogi wokół tego, co się liczy.
counting-hint-size = Ustaw oba końce na czymś o znanej długości.
counting-spans = Między końcami jest
counting-spans-worker = Jedna robotnica
counting-spans-bore = Wnętrze probówki
counting-spans-length = Długość w mm
counting-length = Długość w mm
counting-corner = { $which ->
    [first] Lewy górny róg
   *[other] Prawy dolny róg
  }
counting-end = { $which ->
    [first] Jeden koniec
   *[other] Drugi koniec
  }
counting-picture = Zdjęcie, liczba kropek: { $count }. Page Up i Page Down przechodzą między nimi, strzałki przesuwają wybraną, Delete ją usuwa, Enter stawia nową.
counting-dot = Kropka { $at } z { $count }: { $what ->
    [brood] potomstwo
   *[worker] robotnica
  }{ $sure ->
    [no] , niepewne
   *[yes] {""}
  }
counting-previous = Poprzednia kropka
counting-next = Następna kropka
counting-take-away = Usuń tę kropkę
counting-nearer = Większe
counting-farther = Mniejsze
counting-whole = Całe zdjęcie
counting-part = Widać tylko część gniazda
counting-pale = Mrówki są jaśniejsze niż podłoże
counting-keep = Zachowaj to liczenie
counting-kept = Liczenie zachowane.
counting-failed = Nie udało się zbadać tego zdjęcia. Kropki można stawiać ręcznie.
counting-heic = Ta przeglądarka nie odczytuje zdjęć HEIC i nic nie zostało zapisane. Ustaw w aparacie format JPEG albo zapisz zdjęcie jako JPEG i wybierz je jeszcze raz.
counting-growth = Wzrost na zdjęciach
counting-film = Udostępnij jako film
counting-strip = Udostępnij obok siebie
counting-making = Chwileczkę…
counting-still = Ten telefon nie robi filmów; udostępnij zdjęcia obok siebie.
counting-shown = Pokaż kropki
counting-few = Policz na dwóch lub więcej zdjęciach, a staną tu obok siebie.
