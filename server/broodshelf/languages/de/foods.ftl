### Futter, wie es angeboten wird, und eine Portion in Worten.
### `.counted` folgt einer Zahl, `.of` steht hinter einem Maß („1 Tropfen Zuckerwasser“, „1 Bein einer Grille“): Tiere im Genitiv.

food-sugar-water = Zuckerwasser
    .counted = Zuckerwasser
    .of = Zuckerwasser

food-honey-water = Honigwasser
    .counted = Honigwasser
    .of = Honigwasser

food-honey = Honig
    .counted = Honig
    .of = Honig

food-maple-syrup = Ahornsirup
    .counted = Ahornsirup
    .of = Ahornsirup

food-jam = Marmelade
    .counted = Marmelade
    .of = Marmelade

food-white-sugar = weißer Zucker
    .counted = weißer Zucker
    .of = weißer Zucker

food-fruit = Obst
    .counted = Obst
    .of = Obst

food-fruit-fly = Fruchtfliege
    .counted =
        { $n ->
            [one] Fruchtfliege
           *[other] Fruchtfliegen
        }
    .of = einer Fruchtfliege

food-web-spider = Netzspinne
    .counted =
        { $n ->
            [one] Netzspinne
           *[other] Netzspinnen
        }
    .of = einer Netzspinne

food-hunting-spider = Jagdspinne
    .counted =
        { $n ->
            [one] Jagdspinne
           *[other] Jagdspinnen
        }
    .of = einer Jagdspinne

food-cricket = Grille
    .counted =
        { $n ->
            [one] Grille
           *[other] Grillen
        }
    .of = einer Grille

food-mealworm = Mehlwurm
    .counted =
        { $n ->
            [one] Mehlwurm
           *[other] Mehlwürmer
        }
    .of = eines Mehlwurms

food-waxworm = Wachsmade
    .counted =
        { $n ->
            [one] Wachsmade
           *[other] Wachsmaden
        }
    .of = einer Wachsmade

food-superworm = Zophobas-Larve
    .counted =
        { $n ->
            [one] Zophobas-Larve
           *[other] Zophobas-Larven
        }
    .of = einer Zophobas-Larve

food-roach-nymph = gekaufte Schabennymphe
    .counted =
        { $n ->
            [one] gekaufte Schabennymphe
           *[other] gekaufte Schabennymphen
        }
    .of = einer gekauften Schabennymphe

food-silkworm = Seidenraupe
    .counted =
        { $n ->
            [one] Seidenraupe
           *[other] Seidenraupen
        }
    .of = einer Seidenraupe

food-egg = gekochtes Ei
    .counted = gekochtes Ei
    .of = gekochtes Ei

food-protein-jelly = Proteingelee
    .counted = Proteingelee
    .of = Proteingelee

food-seeds = Samen
    .counted =
        { $n ->
            [one] Samenkorn
           *[other] Samenkörner
        }
    .of = Samen

food-chia = Chiasamen
    .counted =
        { $n ->
            [one] Chiasamen
           *[other] Chiasamen
        }
    .of = Chiasamen

food-dandelion-seed = Löwenzahnsamen
    .counted =
        { $n ->
            [one] Löwenzahnsamen
           *[other] Löwenzahnsamen
        }
    .of = Löwenzahnsamen

food-canary-seed = Kanariensaat
    .counted =
        { $n ->
            [one] Korn Kanariensaat
           *[other] Körner Kanariensaat
        }
    .of = Kanariensaat

food-leaves = Blätter
    .counted =
        { $n ->
            [one] Blatt
           *[other] Blätter
        }
    .of = Blätter

## Wie es angeboten wird, am Ende einer Portion.

form-whole-dead = getötet
form-cut = getötet und zerteilt
form-stunned = betäubt
form-live = lebend
form-feeder = im Futterspender
form-crushed = zerstoßen

## Größen von Futtertieren, wie Händler sie nennen. Sie stehen in Klammern hinter dem Tier.

size-tiny = winzig
size-extra-small = sehr klein
size-small = klein
size-medium = mittel
size-large = groß

## Eine Portion.

portion-piece = { $n } { $food }
portion-piece-sized = { $n } { $food } ({ $size })
portion-crumb =
    { $n ->
        [one] { $n } Krümel
       *[other] { $n } Krümel
    } { $food }
portion-drop =
    { $n ->
        [one] { $n } Tropfen
       *[other] { $n } Tropfen
    } { $food }
portion-ml = { VOLUME($n) } { $food }
portion-mg = { $n } mg { $food }
portion-leg =
    { $n ->
        [one] { $n } Bein
       *[other] { $n } Beine
    } { $food }
portion-leg-sized =
    { $n ->
        [one] { $n } Bein
       *[other] { $n } Beine
    } { $food } ({ $size })
portion-slice =
    { $n ->
        [one] { $n } Scheibe
       *[other] { $n } Scheiben
    } { $food }
portion-slice-sized =
    { $n ->
        [one] { $n } Scheibe
       *[other] { $n } Scheiben
    } { $food } ({ $size })
portion-seed = { $n } { $food }
portion-leaf = { $n } { $food }
portion-with-form = { $portion }, { $form }
