## Przekazywanie: przepustki.

handover-title = Przekaż opiekę
handover-about = Z przepustką ktoś z rodziny lub znajomych może przez kilka dni opiekować się wybranymi koloniami, bez konta.

handover-state-back = cofnięta
handover-state-ended = zakończona
handover-state-now = trwa
handover-state-from = początek: { $day }
handover-days = { $from } – { $to }
handover-done-by = Kto zrobił: { $who }
handover-nothing = Nic nie wpisano.
handover-link-once = Wyślij ten link albo daj go zeskanować. Jest pokazany tylko raz.
handover-by-code = Albo kodem:
handover-share = Udostępnij
handover-share-title = Przepustka: { $who }
handover-make-link = Utwórz link
handover-new-link = Utwórz nowy link
handover-take-back = Cofnij
handover-sure = Cofnąć tę przepustkę ({ $who })? Jej telefon zatrzyma się od razu.
handover-print = Drukuj kartkę
handover-preview = Zobacz ich widok
handover-preview-title = Tak to widzi { $who }
handover-new = Nowa przepustka
handover-who = Kto
handover-colonies = Kolonie
handover-all = Wszystkie
handover-stings = { $colony } (żądli)
handover-first = Pierwszy dzień
handover-last = Ostatni dzień
handover-know = Co warto wiedzieć
handover-call = Do kogo dzwonić
handover-none = Wybierz co najmniej jedną kolonię.
handover-backwards = Ostatni dzień jest przed pierwszym.
handover-go = Utwórz przepustkę
handover-calendar = Kalendarz całej półki
handover-stings-words = Wybrana kolonia żądli. Najpierw zapytaj, czy ktoś tam jest uczulony; przekaż ją tylko wtedy, gdy mają pewność.

## Co się drukuje.

paper-sheet = Opieka nad półką: { $who }
paper-record = Karta: { $name }
paper-print = Drukuj
paper-colony = Kolonia
paper-what = Co zrobić
paper-done = Zrobione
paper-nothing = Nic do zrobienia.
paper-over = Ostatni dzień tej przepustki minął.
paper-ahead = Dni policzono dzisiaj. Wszystko, co zrobisz lub wpiszesz do początku przepustki, je przesunie: wydrukuj kartkę ponownie wieczorem dzień wcześniej.
paper-colonies = Kolonie
paper-call = Zadzwoń:
paper-made = Wydrukowano { $day }
paper-gone = Nie ma tu nic do druku.
paper-species = Gatunek
paper-lives = Pojemnik
paper-count = Ostatnie liczenie
paper-when = Kiedy
paper-event = Co
paper-by = Kto

## Co widzi osoba na zastępstwie.

stand-in-from = Początek: { $day }
stand-in-today = { $count ->
    [one] Dziś: { $count } rzecz, ok. { $minutes } min
    [few] Dziś: { $count } rzeczy, ok. { $minutes } min
    [many] Dziś: { $count } rzeczy, ok. { $minutes } min
   *[other] Dziś: { $count } rzeczy, ok. { $minutes } min
  }
stand-in-nothing = Dziś nic
stand-in-calm = Opuszczony dzień nie szkodzi. Nie otwieraj gniazda, nie potrząsaj i nie dawaj nic dodatkowo.
stand-in-from-keeper = Od hodowcy
stand-in-call = Zadzwoń: { $who }
stand-in-yours = Twoje kolonie

stand-in-gave = Podane
stand-in-looked = Sprawdzone
stand-in-took = Zabrane
stand-in-watered = Woda podana
stand-in-could-not = Nie dało się
stand-in-why = Co przeszkodziło?
stand-in-why-none = Nie było już czego podać
stand-in-why-closed = Nie dało się otworzyć
stand-in-why-unsure = Nie było jasne, jak
stand-in-why-away = Nie było mnie na miejscu
stand-in-why-other = Coś innego
stand-in-note = Nie dało się: { $task }. { $why }
stand-in-told = Zapisane dla hodowcy. Zostaje na liście.
stand-in-read-aloud = Przeczytaj mi
stand-in-quiet = Przestań czytać
stand-in-how = Jak to zrobić
stand-in-practice = Czasy i ilości w krokach: praktyka hodowców.

stand-in-hint = Dla osoby na zastępstwie
stand-in-hint-example = na przykład: muszki są w drzwiach zamrażarki
stand-in-hint-picture = Zdjęcie dla tej osoby
stand-in-hint-about = Stoi nad krokami każdego zadania tej kolonii.

paper-true-size = Prawdziwa wielkość
paper-drop-of = Kropla, ok. { $ul } µL
paper-prey-of = Kawałek, ok. { NUMBER($mm) } mm
paper-ruler = Linijka w milimetrach: porównaj ją ze swoją
