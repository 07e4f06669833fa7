### Przyciski nazywają się „Zrobione” (round-done-short) i „Coś jest nie tak” (event-kind-fault).

reason-tube-step-still = Zostaw probówkę tam, gdzie leży: nie podnoś, nie przechylaj, nie otwieraj i nie potrząsaj.
reason-tube-step-find = Znajdź biały korek w środku probówki. Po jednej stronie mieszkają mrówki, po drugiej stoi woda.
reason-tube-step-good = Czysta woda dotyka korka: wszystko dobrze, naciśnij „Zrobione”. Nie trzeba nic dolewać.
reason-tube-step-bad = Za korkiem nie ma już wody albo woda jest tam, gdzie mrówki: naciśnij „Coś jest nie tak” i zadzwoń.
reason-nest-step-look = Popatrz z zewnątrz, niczego nie otwierając: czy wilgotny koniec jest nadal ciemniejszy niż suchy? Wtedy naciśnij „Zrobione”.
reason-nest-step-place = Znajdź, gdzie wlewa się wodę: otwór, tackę albo gąbkę poza komorami. Jeśli nie możesz znaleźć, zadzwoń.
reason-nest-step-drip-ml = Nabierz { VOLUME($ml) } zwykłej wody o temperaturze pokoju i pozwól jej powoli spływać.
reason-nest-step-drip = Wpuść powoli trochę zwykłej wody o temperaturze pokoju, aż gąbka lub gips w tym miejscu ściemnieje.
reason-nest-step-stop = Przestań, gdy tylko woda nie wsiąka. Potem naciśnij „Zrobione”.
reason-nest-step-bad = Woda stoi tam, gdzie mrówki, albo gniazdo jest całe suche i jasne: naciśnij „Coś jest nie tak” i zadzwoń.
reason-helper-call = Niczego nie otwieraj, nie przesuwaj, nie potrząsaj i nie dawaj nic dodatkowo. Zadzwoń i powiedz, co widzisz.
reason-helper-wet = Do tego czasu połóż dookoła ręcznik papierowy, żeby nic nie pociekło do innych gniazd.
reason-helper-escape = Do tego czasu zamknij pokrywę i drzwi pokoju. Uciekinierki zmieć delikatnie pędzelkiem do zamkniętego pudełka; nigdy na dwór.
reason-helper-fridge = Zamknij drzwi lodówki. Jeśli są zamknięte, sprawdź, czy lodówka działa.
reason-helper-heater = Do tego czasu wyłącz ogrzewanie półki i zasłoń zasłonę, jeśli świeci na nią słońce.
reason-helper-dead = Najpierw zabij: nic żywego nie wkłada się, gdy hodowcy nie ma.
reason-helper-glance = Popatrz chwilę z zewnątrz, niczego nie otwierając, nie podnosząc i nie potrząsając. Ruszają się spokojnie? Wtedy naciśnij „Zrobione”.
