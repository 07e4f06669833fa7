### Nazwany jest jeden przycisk: „Coś jest nie tak” (event-kind-fault).

reason-tube-step-still = Zostaw probówkę tam, gdzie leży: nie podnoś, nie przechylaj, nie otwieraj i nie potrząsaj.
reason-tube-step-find = Znajdź biały korek w środku probówki. Po jednej stronie mieszkają mrówki, po drugiej stoi woda.
reason-tube-step-good = Czysta woda dotyka korka: wszystko dobrze. Nie trzeba nic dolewać.
reason-tube-step-bad = Za korkiem nie ma już wody albo woda jest tam, gdzie mrówki: naciśnij „Coś jest nie tak” i zadzwoń.
reason-nest-step-look = Popatrz z zewnątrz, niczego nie otwierając: czy wilgotny koniec jest nadal ciemniejszy niż suchy? Wtedy wszystko dobrze.
reason-nest-step-place = Znajdź, gdzie wlewa się wodę: otwór, tackę albo gąbkę poza komorami. Jeśli nie możesz znaleźć, zadzwoń.
reason-nest-step-drip-ml = Nabierz { VOLUME($ml) } zwykłej wody o temperaturze pokoju i pozwól jej powoli spływać.
reason-nest-step-drip = Wpuść powoli trochę zwykłej wody o temperaturze pokoju, aż gąbka lub gips w tym miejscu ściemnieje.
reason-nest-step-stop = Przestań, gdy tylko woda nie wsiąka.
reason-nest-step-bad = Woda stoi tam, gdzie mrówki, albo gniazdo jest całe suche i jasne: naciśnij „Coś jest nie tak” i zadzwoń.
reason-helper-call = Niczego nie otwieraj, nie przesuwaj, nie potrząsaj i nie dawaj nic dodatkowo. Zadzwoń i powiedz, co widzisz.
reason-helper-wet = Do tego czasu połóż dookoła ręcznik papierowy, żeby nic nie pociekło do innych gniazd.
reason-helper-escape = Do tego czasu zamknij pokrywę i drzwi pokoju. Uciekinierki zmieć delikatnie pędzelkiem do zamkniętego pudełka; nigdy na dwór.
reason-helper-fridge = Zamknij drzwi lodówki. Jeśli są zamknięte, sprawdź, czy lodówka działa.
reason-helper-heater = Do tego czasu wyłącz ogrzewanie półki i zasłoń zasłonę, jeśli świeci na nią słońce.
reason-helper-dead = Najpierw zabij: nic żywego nie wkłada się, gdy hodowcy nie ma.
reason-helper-glance = Popatrz chwilę z zewnątrz, niczego nie otwierając, nie podnosząc i nie potrząsając. Czy ruszają się spokojnie?

reason-drop-step-take = Weź butelkę stamtąd, gdzie trzyma ją hodowca, i czysty zakraplacz. Niech dojdzie do temperatury pokoju: nigdy gorące.
reason-drop-step-place = Otwórz tylko pudełko do karmienia, nigdy gniazdo. Umieść krople na miseczce lub folii, która tam jest, nie na mrówce.
reason-drop-step-small = Nie dawaj więcej, niż tu jest napisane, ani większych kropli: małe mrówki w nich toną.
reason-feeder-step-out = Wyjmij poidełko pęsetą. Mrówki zmieć z niego delikatnie pędzelkiem z powrotem do pudełka.
reason-feeder-step-fill = Wypłucz je zwykłą wodą i napełnij tym, co jest wymienione wyżej. W temperaturze pokoju: nigdy gorące.
reason-feeder-step-back = Odstaw je na miejsce, prosto, żeby nic nie kapało.
reason-prey-step-take = Weź je z zamrażarki lub pudełka, które wskazał hodowca, i rozmrażaj dziesięć minut. Musi być martwe.
reason-prey-step-cut = Przetnij raz w połowie, na papierze, żeby mrówki dostały się do miękkiego środka.
reason-prey-step-place = Otwórz tylko pudełko do karmienia. Połóż pęsetą blisko drogi do gniazda, w suchym miejscu.
reason-seed-step-take = Weź suche nasiona z torebki hodowcy, żadnych innych: kupna karma dla ptaków może być zaprawiana.
reason-seed-step-place = Wrzuć je do pudełka do karmienia, w suche miejsce daleko od wody.
reason-leaf-step-take = Utnij liście z rośliny, którą wskazał hodowca, żadnych innych: pryskane liście zabijają kolonię.
reason-leaf-step-rinse = Opłucz je zimną wodą i strząśnij.
reason-leaf-step-place = Połóż je w pudełku do karmienia i zabierz suche z ostatniego razu.
reason-piece-step-take = Weź to stamtąd, gdzie trzyma to hodowca, i potnij tak drobno, jak napisano wyżej.
reason-piece-step-place = Otwórz tylko pudełko do karmienia. Połóż to na miseczce lub folii, która tam jest, w suchym miejscu.
reason-food-step-only = Nic innego: złapane owady i jedzenie z kuchni mogą nieść truciznę.
reason-food-step-close = Od razu zamknij pokrywę i sprawdź, czy na zewnątrz nie ma mrówki.
reason-food-step-bad = Wiele mrówek leży bez ruchu, mrówki są na zewnątrz albo nie wiesz na pewno? Zostaw zamknięte i zadzwoń.

reason-left-step-find = Popatrz tam, gdzie było jedzenie: co jest suche, ciemne lub włochate, puste skórki, lepkie krople.
reason-left-step-take = Otwórz tylko pudełko do karmienia. Wyjmij to pęsetą; lepkie miejsce wytrzyj wilgotnym papierem.
reason-left-step-held = Mrówki się tego trzymają? Zostaw na godzinę i nigdy nie ciągnij.
reason-left-step-bin = Wyrzuć to do zamkniętego kosza, nie na kompost. Od razu zamknij pokrywę.

reason-barrier-step-look = Obejrzyj z zewnątrz brzeg pudełka do karmienia, dookoła.
reason-barrier-step-bridge = Leży na nim włos, liść lub wata? Zdejmij to pęsetą.
reason-barrier-step-still = Nie dotykaj brzegu i nie nakładaj na niego nic nowego.
reason-barrier-step-bad = Mrówki chodzą po brzegu albo są na zewnątrz: naciśnij „Coś jest nie tak” i zadzwoń.

reason-glance-step-calm = Kilka mrówek się rusza, większość siedzi razem: wszystko dobrze.
reason-glance-step-bad = Wiele leży bez ruchu, wiele biega w kółko albo jakaś jest na zewnątrz: naciśnij „Coś jest nie tak” i zadzwoń.
reason-air-step-open = Otwórz pudełko w lodówce na minutę i nie trzymaj drzwi lodówki otwartych dłużej.
reason-air-step-still = Nie wyjmuj mrówek i nie ogrzewaj ich w dłoni. Śpią: to dobrze, jeśli nic się nie rusza.
reason-air-step-close = Zamknij pudełko i lodówkę i sprawdź, czy drzwi są domknięte.
reason-risk-step-signs = Mogły dostać zły pokarm. Policz, ile leży bez ruchu albo chodzi chwiejnie.
reason-nest-step-still = Nie trzeba go otwierać ani nic dolewać.
reason-helper-tell = Powiedz, która to kolonia, co widzisz i od kiedy. Pomaga zdjęcie.
