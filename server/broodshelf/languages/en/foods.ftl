### Foods, how they are served, and a serving in words.

## Foods. The name alone stands in lists, and a capital is put where it begins a line.
## `.counted` follows a number ("2 crickets"); the number itself is in the message `portion-…`. $n (number): how many.
## `.of` follows what a serving is measured in ("1 drop of sugar water", "a slice of a mealworm"): bring the case or the
## preposition with it that your language needs there.

food-sugar-water = sugar water
    .counted = sugar water
    .of = sugar water

food-honey-water = honey water
    .counted = honey water
    .of = honey water

food-honey = honey
    .counted = honey
    .of = honey

food-maple-syrup = maple syrup
    .counted = maple syrup
    .of = maple syrup

food-jam = jam
    .counted = jam
    .of = jam

food-white-sugar = white sugar
    .counted = white sugar
    .of = white sugar

food-fruit = fruit
    .counted = fruit
    .of = fruit

food-fruit-fly = fruit fly
    .counted =
        { $n ->
            [one] fruit fly
           *[other] fruit flies
        }
    .of = fruit fly

food-web-spider = web spider
    .counted =
        { $n ->
            [one] web spider
           *[other] web spiders
        }
    .of = web spider

food-hunting-spider = hunting spider
    .counted =
        { $n ->
            [one] hunting spider
           *[other] hunting spiders
        }
    .of = hunting spider

food-cricket = cricket
    .counted =
        { $n ->
            [one] cricket
           *[other] crickets
        }
    .of = cricket

food-mealworm = mealworm
    .counted =
        { $n ->
            [one] mealworm
           *[other] mealworms
        }
    .of = mealworm

food-waxworm = waxworm
    .counted =
        { $n ->
            [one] waxworm
           *[other] waxworms
        }
    .of = waxworm

food-superworm = superworm
    .counted =
        { $n ->
            [one] superworm
           *[other] superworms
        }
    .of = superworm

food-roach-nymph = bought roach nymph
    .counted =
        { $n ->
            [one] bought roach nymph
           *[other] bought roach nymphs
        }
    .of = bought roach nymph

food-silkworm = silkworm
    .counted =
        { $n ->
            [one] silkworm
           *[other] silkworms
        }
    .of = silkworm

food-egg = boiled egg
    .counted = boiled egg
    .of = boiled egg

food-protein-jelly = protein jelly
    .counted = protein jelly
    .of = protein jelly

food-seeds = seeds
    .counted =
        { $n ->
            [one] seed
           *[other] seeds
        }
    .of = seeds

food-chia = chia seeds
    .counted =
        { $n ->
            [one] chia seed
           *[other] chia seeds
        }
    .of = chia seeds

food-dandelion-seed = dandelion seeds
    .counted =
        { $n ->
            [one] dandelion seed
           *[other] dandelion seeds
        }
    .of = dandelion seeds

food-canary-seed = canary seeds
    .counted =
        { $n ->
            [one] canary seed
           *[other] canary seeds
        }
    .of = canary seeds

food-leaves = leaves
    .counted =
        { $n ->
            [one] leaf
           *[other] leaves
        }
    .of = leaves

## How a food is served, at the end of a serving: "2 crickets, killed and cut".

form-whole-dead = killed
form-cut = killed and cut
form-stunned = stunned
form-live = live
form-feeder = in a feeder
form-crushed = crushed

## Size words of prey, as sellers use them; about how long they are: tiny 2–3 mm, extra small 3–5 mm, small 5–8 mm,
## medium 8–14 mm, large 16 mm and more.

size-tiny = tiny
size-extra-small = extra small
size-small = small
size-medium = medium
size-large = large

## A serving. $n (number): how many or how much; $food: the food's `.counted` in the messages `portion-piece…`,
## `portion-seed` and `portion-leaf`, else its `.of`; $size: the size word. $food_code and $size_class are the codes
## behind them (cricket, extra_small): choose by them where an article or an ending depends on the food.

portion-piece = { $n } { $food }
portion-piece-sized = { $n } { $size } { $food }
# Of what is no animal: egg, jelly, fruit.
portion-crumb =
    { $n ->
        [one] { $n } crumb
       *[other] { $n } crumbs
    } of { $food }
portion-drop =
    { $n ->
        [one] { $n } drop
       *[other] { $n } drops
    } of { $food }
portion-ml = { VOLUME($n) } of { $food }
portion-mg = { $n } mg of { $food }
portion-leg =
    { $n ->
        [one] { $n } leg
       *[other] { $n } legs
    } of a { $food }
portion-leg-sized =
    { $n ->
        [one] { $n } leg
       *[other] { $n } legs
    } of { $size_class ->
        [extra_small] an { $size }
       *[other] a { $size }
    } { $food }
portion-slice =
    { $n ->
        [one] { $n } slice
       *[other] { $n } slices
    } of a { $food }
portion-slice-sized =
    { $n ->
        [one] { $n } slice
       *[other] { $n } slices
    } of { $size_class ->
        [extra_small] an { $size }
       *[other] a { $size }
    } { $food }
portion-seed = { $n } { $food }
portion-leaf = { $n } { $food }
# $portion: one of the above in words; $form: one of the messages `form-…`.
portion-with-form = { $portion }, { $form }
