## Co jest w gnieździe i co z tego będzie.

brood-first = Pierwsze robotnice
brood-next = Nowe robotnice
brood-days = { $high ->
    [one] Za { $low } do { $high } dnia.
    [few] Za { $low } do { $high } dni.
    [many] Za { $low } do { $high } dni.
   *[other] Za { $low } do { $high } dnia.
  }
brood-days-about = { $days ->
    [one] Za ok. { $days } dzień.
    [few] Za ok. { $days } dni.
    [many] Za ok. { $days } dni.
   *[other] Za ok. { $days } dnia.
  }
brood-between = { $from } – { $to }
brood-on = Około { $day }
brood-any-by = Lada dzień, do { $day }
brood-any = Lada dzień
brood-at-latest = { $days ->
    [one] Najpóźniej za { $days } dzień.
    [few] Najpóźniej za { $days } dni.
    [many] Najpóźniej za { $days } dni.
   *[other] Najpóźniej za { $days } dnia.
  }
brood-not-before = Nie wcześniej niż { $day }
brood-likely = { $days ->
    [one] Najpewniej około { $best }, za { $days } dzień; być może dopiero { $high }.
    [few] Najpewniej około { $best }, za { $days } dni; być może dopiero { $high }.
    [many] Najpewniej około { $best }, za { $days } dni; być może dopiero { $high }.
   *[other] Najpewniej około { $best }, za { $days } dnia; być może dopiero { $high }.
  }
brood-perhaps = Być może dopiero { $high }.
brood-no-end = Jak długo po tym, jeszcze nie da się powiedzieć.
brood-warm = Przy { DEGREES($mean_c) }.
brood-none = Przy obecnym cieple żadnych nie widać na pół roku naprzód.

brood-ask-by-seen = { $brood ->
    [eggs] Do { $day } powinny być jaja: widać je?
    [larvae] Do { $day } powinny być larwy: widać je?
   *[pupae] Do { $day } powinny być poczwarki: widać je?
  }
brood-ask-by = { $brood ->
    [eggs] Do { $day } powinny być jaja.
    [larvae] Do { $day } powinny być larwy.
   *[pupae] Do { $day } powinny być poczwarki.
  }
brood-ask-now-seen = { $brood ->
    [eggs] Jaja powinny już być: widać je?
    [larvae] Larwy powinny już być: widać je?
   *[pupae] Poczwarki powinny już być: widać je?
  }
brood-ask-now = { $brood ->
    [eggs] Jaja powinny już być.
    [larvae] Larwy powinny już być.
   *[pupae] Poczwarki powinny już być.
  }
brood-ask-yes = Tak
brood-ask-not-yet = Jeszcze nie
brood-ask-cannot-see = Nie widać
brood-ask-early = Już widać
brood-ask-looked = Ktoś zaglądał { $day }. Pytanie wróci { $again }: do tego czasu spokój pomaga bardziej.
brood-ask-told = { $brood ->
    [eggs] Jaja widziane { $day }.
    [larvae] Larwy widziane { $day }.
   *[pupae] Poczwarki widziane { $day }.
  }
brood-ask-waits = Dni zostaną przeliczone przy następnym połączeniu.
brood-ask-remark = { $brood ->
    [eggs] Szukanie jaj: nic nie widać
    [larvae] Szukanie larw: nic nie widać
   *[pupae] Szukanie poczwarek: nic nie widać
  }

brood-open = Potomstwo na osi czasu

brood-why-title = Dlaczego te dni
brood-why-nothing = Nic z tego, co widziano, jeszcze ich nie przesunęło: to dni jej gatunku przy tym cieple.
brood-why-eight = Z dziesięciu takich kolonii osiem mieści się w tym zakresie.
brood-why-unmeasured = Nikt nie zmierzył, jak długo trwają stadia w jej grupie. Dni opierają się na praktyce hodowców, dlatego zakres jest szeroki. To, co widzisz, zawęża go.
brood-why-source = Na początku: { $source }.
brood-why-line = { $day }: { $seen }, { $moved }.
brood-why-counted = { $count ->
    [0] brak robotnic
    [one] policzona { $count } robotnica
    [few] policzone { $count } robotnice
    [many] policzone: { $count } robotnic
   *[other] policzone: { $count } robotnicy
  }
brood-why-workers = policzone robotnice
brood-why-seen-none = { $brood ->
    [eggs] brak jaj
    [larvae] brak larw
    [pupae] brak poczwarek
   *[workers] brak robotnic
  }
brood-why-seen-seen = { $brood ->
    [eggs] widziane jaja
    [larvae] widziane larwy
    [pupae] widziane poczwarki
   *[workers] widziane robotnice
  }
brood-why-seen-few = { $brood ->
    [eggs] mało jaj
    [larvae] mało larw
    [pupae] mało poczwarek
   *[workers] mało robotnic
  }
brood-why-seen-some = { $brood ->
    [eggs] trochę jaj
    [larvae] trochę larw
    [pupae] trochę poczwarek
   *[workers] trochę robotnic
  }
brood-why-seen-many = { $brood ->
    [eggs] dużo jaj
    [larvae] dużo larw
    [pupae] dużo poczwarek
   *[workers] dużo robotnic
  }
brood-why-seen-taken = owady przyjęte
brood-why-seen-refused = owady odrzucone

brood-why-moved-census-more = więcej, niż oczekiwano
brood-why-moved-census-fewer = mniej, niż oczekiwano
brood-why-moved-census-sooner = to potomstwo jest więc szybsze, niż sądzono
brood-why-moved-census-later = to potomstwo jest więc wolniejsze, niż sądzono

brood-why-none = a oczekiwano, że będą

brood-why-larvae-census-more = larw jest więc więcej, niż sądzono
brood-why-larvae-census-fewer = larw jest więc mniej, niż sądzono

stalled-title = Ta kolonia chyba utknęła na początku
stalled-days = { $days ->
    [one] W dziewięciu z dziesięciu takich początków robotnice byłyby już { $days } dzień temu albo wcześniej.
    [few] W dziewięciu z dziesięciu takich początków robotnice byłyby już { $days } dni temu albo wcześniej.
    [many] W dziewięciu z dziesięciu takich początków robotnice byłyby już { $days } dni temu albo wcześniej.
   *[other] W dziewięciu z dziesięciu takich początków robotnice byłyby już { $days } dnia temu albo wcześniej.
  }
stalled-about = Co robią hodowcy, w tej kolejności (praktyka hodowców):
stalled-unfed-1 = Zostaw probówkę w ciemności i spokoju na dwa tygodnie, w środku zakresu ciepła, które lubi jej gatunek. Wiele królowych zjada potomstwo, bo często się do nich zagląda.
stalled-unfed-2 = Nie karm jej w tym czasie: żyje z własnych zapasów, a jedzenie psuje się obok niej.
stalled-unfed-3 = Potem zajrzyj raz. Jeśli potomstwo poszło naprzód, na przykład są larwy tam, gdzie były jaja, potrzeba tylko więcej czasu.
stalled-unfed-4 = Brak potomstwa albo mniej niż przedtem: podaj kroplę wody z cukrem i okruszek owada, a po dniu zabierz resztki. Królowa, która zjadła potomstwo, może znów złożyć jaja.
stalled-fed-1 = Zostaw ją w ciemności i spokoju, w środku zakresu ciepła, które lubi jej gatunek, i zaglądaj najwyżej raz w tygodniu.
stalled-fed-2 = Karm dalej: cukier i mały owad co 3 do 5 dni, a po dniu zabierz resztki. Głodna królowa zjada swoje potomstwo.
stalled-fed-3 = Po dwóch tygodniach przyjrzyj się dokładnie. Jeśli potomstwo poszło naprzód, na przykład są larwy tam, gdzie były jaja, potrzeba tylko więcej czasu.
stalled-last-1 = Woda się skończyła albo jest pleśń blisko potomstwa: połóż świeżą probówkę przed jej probówką i pozwól jej przenieść się samej.
stalled-last-2 = Brak jaj przez sześć do ośmiu ciepłych tygodni: pewnie nigdy nie została zapłodniona albo jest wyczerpana. Potomstwo jej własnego gatunku ze zdrowej kolonii to ostatnia rzecz, której można spróbować.

brood-line-ahead = Jak daleko naprzód

brood-line-reach-56 = 8 tygodni
brood-line-reach-182 = Pół roku

brood-line-stage-eggs = Jaja
brood-line-stage-small-larvae = Małe larwy
brood-line-stage-large-larvae = Duże larwy
brood-line-stage-pupae = Poczwarki
brood-line-stage-workers = Robotnice

brood-line-day = Dzień
brood-line-today = dziś
brood-line-now = teraz { $number }
brood-line-about = { $best } ({ $low }–{ $high })
brood-line-summary = { $best ->
    [one] Dziś prawdopodobnie: { $counts }. Do { $day }: ok. { $best } robotnica, pewnie { $low } do { $high }.
    [few] Dziś prawdopodobnie: { $counts }. Do { $day }: ok. { $best } robotnice, pewnie { $low } do { $high }.
    [many] Dziś prawdopodobnie: { $counts }. Do { $day }: ok. { $best } robotnic, pewnie { $low } do { $high }.
   *[other] Dziś prawdopodobnie: { $counts }. Do { $day }: ok. { $best } robotnicy, pewnie { $low } do { $high }.
  }
brood-line-count-eggs = { $count ->
    [0] brak jaj
    [one] { $count } jajo
    [few] { $count } jaja
    [many] { $count } jaj
   *[other] { $count } jaja
  }
brood-line-count-small-larvae = { $count ->
    [0] brak małych larw
    [one] { $count } mała larwa
    [few] { $count } małe larwy
    [many] { $count } małych larw
   *[other] { $count } małej larwy
  }
brood-line-count-large-larvae = { $count ->
    [0] brak dużych larw
    [one] { $count } duża larwa
    [few] { $count } duże larwy
    [many] { $count } dużych larw
   *[other] { $count } dużej larwy
  }
brood-line-count-pupae = { $count ->
    [0] brak poczwarek
    [one] { $count } poczwarka
    [few] { $count } poczwarki
    [many] { $count } poczwarek
   *[other] { $count } poczwarki
  }
brood-line-count-workers = { $count ->
    [0] brak robotnic
    [one] { $count } robotnica
    [few] { $count } robotnice
    [many] { $count } robotnic
   *[other] { $count } robotnicy
  }

brood-line-mark-line = najbardziej prawdopodobne; przerywana: dopiero nadejdzie
brood-line-mark-band = osiem z dziesięciu
brood-line-mark-dot = liczenie albo coś było widać
brood-line-mark-hollow = zaglądano i nic nie było
brood-line-mark-due = kiedy wychodzą robotnice

brood-line-scale = Każdy wiersz ma własną wysokość. Przeszłość jest narysowana tak, jak wtedy sądzono.
