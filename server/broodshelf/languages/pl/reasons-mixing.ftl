reason-sugar-near-saturation = Blisko tego, ile woda może w ogóle przyjąć ({ $limit }% przy { DEGREES(20) }): krystalizuje w probówkach i poidełkach.
reason-sugar-thick = Gęstsze niż to, co najlepiej wypełnia wole (43% u jednej gmachówki: Josens et al. 1998): wolno się pije.
reason-sugar-thin = Rzadkie: mrówki to piją, ale wypełnia wole małą ilością cukru i szybciej się psuje.
reason-sugar-good-range = W zakresie, który mrówki dobrze piją: u jednej gmachówki picie było najszybsze przy 31%, a wole najpełniejsze przy 43% (Josens et al. 1998).
reason-sugar-dissolve-warm = Jeśli podgrzewasz, żeby rozpuścić cukier, ostudź do { DEGREES(30) } lub mniej, zanim podasz. Gorący syrop parzy ręce i zabija mrówki.
reason-cooling-check = Sprawdź przed podaniem: termometr pokazuje { DEGREES(30) } lub mniej albo po wewnętrznej stronie nadgarstka nie czuć ciepła (praktyka hodowców).
reason-cooling-spread = Pokrywka, szeroka miska lub przeciąg bardzo to zmieniają: dwa odczyty termometru w twoim naczyniu są lepsze.
