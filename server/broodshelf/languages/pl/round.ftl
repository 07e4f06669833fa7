## Obchód: na co i kiedy jest pora i co się z tym robi.

round-due-never = bez terminu
round-due-now = pora teraz
round-due-since = { $days ->
    [one] pora od { $days } dnia
    [few] pora od { $days } dni
    [many] pora od { $days } dni
   *[other] pora od { $days } dnia
  }
round-due-hours = { $hours ->
    [one] pora za { $hours } godzinę
    [few] pora za { $hours } godziny
    [many] pora za { $hours } godzin
   *[other] pora za { $hours } godziny
  }
round-due-days = { $days ->
    [one] pora za { $days } dzień
    [few] pora za { $days } dni
    [many] pora za { $days } dni
   *[other] pora za { $days } dnia
  }

round-title = Obchód
round-now = Teraz
round-today = Dziś później
round-next = Następne dni
round-done = Zrobione
round-quiet = Teraz nic nie trzeba.
round-next-at = Następny raz: { $day }.
round-calm = Każda probówka jest dość pełna. Zostaw im spokój.
round-as-suggested = Zrobione według rady
round-done-short = Zrobione
round-offered = Podane nowe gniazdo
round-not-moved = Jeszcze nie
round-moved = Już się przeniosły
round-other = Inaczej
round-count = Policz
round-change = Zmień kolonię
round-later = Później
round-resolved = Naprawione
round-urgent = pilne
round-why = Dlaczego
round-all = { $count ->
    [one] Zrobione według rady: { $colony }
    [few] Wszystkie { $count } zrobione według rady
    [many] Wszystkie { $count } zrobione według rady
   *[other] Wszystkie { $count } zrobione według rady
  }
round-by = { $who }
round-undo = Cofnij
round-empty-shelf = Półka jest pusta. Dodaj pierwszą kolonię.
round-joining = Twoja półka jest w drodze na ten telefon.
round-joined = { $count ->
    [0] Idą pierwsze zapisy.
    [one] Na razie { $count } zapis
    [few] Na razie { $count } zapisy
    [many] Na razie { $count } zapisów
   *[other] Na razie { $count } zapisu
  }
round-progress = Zrobione: { $part } z { $whole }
round-finished = Obchód skończony.
round-many = Kilka naraz
round-add = Dodaj kolonię

## Półka i jej lista kolonii.

shelf-title = Półka
shelf-search = Znajdź kolonię
shelf-none = Żadna kolonia nie ma tego w nazwie ani gatunku.
shelf-labels = Etykiety na probówki
shelf-scan = Skanuj etykietę
shelf-species-unknown = Gatunek niepodany
shelf-no-plan = Plan przyjdzie przy następnym połączeniu.
shelf-next = { $need }: { $due }
shelf-level = { $need }: { $level }

## What was put off or skipped, and why.

later-was-skipped = { $need }: tym razem pominięte ({ $why })
later-was-put-off = { $need }: odłożone
later-why-still-food = Jest jeszcze jedzenie
later-why-leave-quiet = Potrzebują spokoju
later-why-nothing-in-the-house = Nic nie ma w domu
later-why-other = Inny powód
