### `.of` commence par « de » ou « d’ » : « 1 goutte d’eau sucrée », « 2 pattes de grillon ».
### Le calibre s’accorde avec « taille », l’état avec « proie » : rien ne dépend du genre de l’aliment.

food-sugar-water = eau sucrée
    .counted = eau sucrée
    .of = d’eau sucrée

food-honey-water = eau miellée
    .counted = eau miellée
    .of = d’eau miellée

food-honey = miel
    .counted = miel
    .of = de miel

food-maple-syrup = sirop d’érable
    .counted = sirop d’érable
    .of = de sirop d’érable

food-jam = confiture
    .counted = confiture
    .of = de confiture

food-white-sugar = sucre blanc
    .counted = sucre blanc
    .of = de sucre blanc

food-fruit = fruit
    .counted = fruit
    .of = de fruit

food-fruit-fly = drosophile
    .counted =
        { $n ->
            [one] drosophile
           *[other] drosophiles
        }
    .of = de drosophile

food-web-spider = araignée à toile
    .counted =
        { $n ->
            [one] araignée à toile
           *[other] araignées à toile
        }
    .of = d’araignée à toile

food-hunting-spider = araignée chasseuse
    .counted =
        { $n ->
            [one] araignée chasseuse
           *[other] araignées chasseuses
        }
    .of = d’araignée chasseuse

food-cricket = grillon
    .counted =
        { $n ->
            [one] grillon
           *[other] grillons
        }
    .of = de grillon

food-mealworm = ver de farine
    .counted =
        { $n ->
            [one] ver de farine
           *[other] vers de farine
        }
    .of = de ver de farine

food-waxworm = teigne de ruche
    .counted =
        { $n ->
            [one] teigne de ruche
           *[other] teignes de ruche
        }
    .of = de teigne de ruche

food-superworm = ver morio
    .counted =
        { $n ->
            [one] ver morio
           *[other] vers morio
        }
    .of = de ver morio

food-roach-nymph = jeune blatte achetée
    .counted =
        { $n ->
            [one] jeune blatte achetée
           *[other] jeunes blattes achetées
        }
    .of = de jeune blatte achetée

food-silkworm = ver à soie
    .counted =
        { $n ->
            [one] ver à soie
           *[other] vers à soie
        }
    .of = de ver à soie

food-egg = œuf dur
    .counted = œuf dur
    .of = d’œuf dur

food-protein-jelly = gelée protéinée
    .counted = gelée protéinée
    .of = de gelée protéinée

food-seeds = graines
    .counted =
        { $n ->
            [one] graine
           *[other] graines
        }
    .of = de graines

food-chia = graines de chia
    .counted =
        { $n ->
            [one] graine de chia
           *[other] graines de chia
        }
    .of = de graines de chia

food-dandelion-seed = graines de pissenlit
    .counted =
        { $n ->
            [one] graine de pissenlit
           *[other] graines de pissenlit
        }
    .of = de graines de pissenlit

food-canary-seed = graines d’alpiste
    .counted =
        { $n ->
            [one] graine d’alpiste
           *[other] graines d’alpiste
        }
    .of = de graines d’alpiste

food-leaves = feuilles
    .counted =
        { $n ->
            [one] feuille
           *[other] feuilles
        }
    .of = de feuilles

## L’état de la portion, entre parenthèses : « 2 grillons (proie tuée et coupée) ».

form-whole-dead = proie tuée
form-cut = proie tuée et coupée
form-stunned = proie étourdie
form-live = proie vivante
form-feeder = dans un abreuvoir
form-crushed = en brisures

size-tiny = minuscule
size-extra-small = très petite
size-small = petite
size-medium = moyenne
size-large = grande

portion-piece = { $n } { $food }
portion-piece-sized = { $n } { $food }, taille { $size }
portion-crumb =
    { $n ->
        [one] { $n } miette
       *[other] { $n } miettes
    } { $food }
portion-drop =
    { $n ->
        [one] { $n } goutte
       *[other] { $n } gouttes
    } { $food }
portion-ml = { VOLUME($n) } { $food }
portion-mg = { $n } mg { $food }
portion-leg =
    { $n ->
        [one] { $n } patte
       *[other] { $n } pattes
    } { $food }
portion-leg-sized =
    { $n ->
        [one] { $n } patte
       *[other] { $n } pattes
    } { $food }, taille { $size }
portion-slice =
    { $n ->
        [one] { $n } rondelle
       *[other] { $n } rondelles
    } { $food }
portion-slice-sized =
    { $n ->
        [one] { $n } rondelle
       *[other] { $n } rondelles
    } { $food }, taille { $size }
portion-seed = { $n } { $food }
portion-leaf = { $n } { $food }
portion-with-form = { $portion } ({ $form })
