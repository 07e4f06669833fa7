### `.of` to dopełniacz: „1 kropla wody z cukrem”, „2 nogi świerszcza”.
### Wielkość zgadza się ze słowem „rozmiar”, a stan to rzeczownik: nic nie zależy od rodzaju pokarmu.

food-sugar-water = woda z cukrem
    .counted = woda z cukrem
    .of = wody z cukrem

food-honey-water = woda z miodem
    .counted = woda z miodem
    .of = wody z miodem

food-honey = miód
    .counted = miód
    .of = miodu

food-maple-syrup = syrop klonowy
    .counted = syrop klonowy
    .of = syropu klonowego

food-jam = dżem
    .counted = dżem
    .of = dżemu

food-white-sugar = biały cukier
    .counted = biały cukier
    .of = białego cukru

food-fruit = owoc
    .counted = owoc
    .of = owocu

food-fruit-fly = muszka owocowa
    .counted =
        { $n ->
            [one] muszka owocowa
            [few] muszki owocowe
            [many] muszek owocowych
           *[other] muszki owocowej
        }
    .of = muszki owocowej

food-web-spider = pająk z sieci
    .counted =
        { $n ->
            [one] pająk z sieci
            [few] pająki z sieci
            [many] pająków z sieci
           *[other] pająka z sieci
        }
    .of = pająka z sieci

food-hunting-spider = pająk polujący
    .counted =
        { $n ->
            [one] pająk polujący
            [few] pająki polujące
            [many] pająków polujących
           *[other] pająka polującego
        }
    .of = pająka polującego

food-cricket = świerszcz
    .counted =
        { $n ->
            [one] świerszcz
            [few] świerszcze
            [many] świerszczy
           *[other] świerszcza
        }
    .of = świerszcza

food-mealworm = mącznik
    .counted =
        { $n ->
            [one] mącznik
            [few] mączniki
            [many] mączników
           *[other] mącznika
        }
    .of = mącznika

food-waxworm = barciak
    .counted =
        { $n ->
            [one] barciak
            [few] barciaki
            [many] barciaków
           *[other] barciaka
        }
    .of = barciaka

food-superworm = drewnojad
    .counted =
        { $n ->
            [one] drewnojad
            [few] drewnojady
            [many] drewnojadów
           *[other] drewnojada
        }
    .of = drewnojada

food-roach-nymph = kupiona nimfa karaczana
    .counted =
        { $n ->
            [one] kupiona nimfa karaczana
            [few] kupione nimfy karaczana
            [many] kupionych nimf karaczana
           *[other] kupionej nimfy karaczana
        }
    .of = kupionej nimfy karaczana

food-silkworm = jedwabnik
    .counted =
        { $n ->
            [one] jedwabnik
            [few] jedwabniki
            [many] jedwabników
           *[other] jedwabnika
        }
    .of = jedwabnika

food-egg = gotowane jajko
    .counted = gotowane jajko
    .of = gotowanego jajka

food-protein-jelly = galaretka białkowa
    .counted = galaretka białkowa
    .of = galaretki białkowej

food-seeds = nasiona
    .counted =
        { $n ->
            [one] nasiono
            [few] nasiona
            [many] nasion
           *[other] nasiona
        }
    .of = nasion

food-chia = nasiona chia
    .counted =
        { $n ->
            [one] nasiono chia
            [few] nasiona chia
            [many] nasion chia
           *[other] nasiona chia
        }
    .of = nasion chia

food-dandelion-seed = nasiona mniszka
    .counted =
        { $n ->
            [one] nasiono mniszka
            [few] nasiona mniszka
            [many] nasion mniszka
           *[other] nasiona mniszka
        }
    .of = nasion mniszka

food-canary-seed = ziarna kanaru
    .counted =
        { $n ->
            [one] ziarno kanaru
            [few] ziarna kanaru
            [many] ziaren kanaru
           *[other] ziarna kanaru
        }
    .of = ziaren kanaru

food-leaves = liście
    .counted =
        { $n ->
            [one] liść
            [few] liście
            [many] liści
           *[other] liścia
        }
    .of = liści

## Stan porcji, w nawiasie: „2 świerszcze (po zabiciu i pocięciu)”.

form-whole-dead = po zabiciu
form-cut = po zabiciu i pocięciu
form-stunned = po ogłuszeniu
form-live = żywcem
form-feeder = w poidełku
form-crushed = po rozgnieceniu

size-tiny = najmniejszy
size-extra-small = bardzo mały
size-small = mały
size-medium = średni
size-large = duży

portion-piece = { $n } { $food }
portion-piece-sized = { $n } { $food }, rozmiar { $size }
portion-crumb =
    { $n ->
        [one] { $n } okruszek
        [few] { $n } okruszki
        [many] { $n } okruszków
       *[other] { $n } okruszka
    } { $food }
portion-drop =
    { $n ->
        [one] { $n } kropla
        [few] { $n } krople
        [many] { $n } kropli
       *[other] { $n } kropli
    } { $food }
portion-ml = { VOLUME($n) } { $food }
portion-mg = { $n } mg { $food }
portion-leg =
    { $n ->
        [one] { $n } noga
        [few] { $n } nogi
        [many] { $n } nóg
       *[other] { $n } nogi
    } { $food }
portion-leg-sized =
    { $n ->
        [one] { $n } noga
        [few] { $n } nogi
        [many] { $n } nóg
       *[other] { $n } nogi
    } { $food }, rozmiar { $size }
portion-slice =
    { $n ->
        [one] { $n } plasterek
        [few] { $n } plasterki
        [many] { $n } plasterków
       *[other] { $n } plasterka
    } { $food }
portion-slice-sized =
    { $n ->
        [one] { $n } plasterek
        [few] { $n } plasterki
        [many] { $n } plasterków
       *[other] { $n } plasterka
    } { $food }, rozmiar { $size }
portion-seed = { $n } { $food }
portion-leaf = { $n } { $food }
portion-with-form = { $portion } ({ $form })
