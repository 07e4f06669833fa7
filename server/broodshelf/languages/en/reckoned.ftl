### What a calculator found, line by line: only the server says it, wherever it is asked.

reckoned-water-days = Lasts about { $best } days, { $low } to { $high }
reckoned-water-loss = Loses about { $best } mm a day, { $low } to { $high }
reckoned-brood-whole = From egg to worker about { $best } days, { $low } to { $high }
reckoned-brood-eggs = As an egg about { $best } days, { $low } to { $high }
reckoned-brood-larvae = As a larva about { $best } days, { $low } to { $high }
reckoned-brood-pupae = As a pupa about { $best } days, { $low } to { $high }
# $brood_group: its source in words, see brood-sources.ftl.
reckoned-brood-source = Source for this group: { $brood_group }
reckoned-first-workers =
    Of { $eggs ->
        [one] { $eggs } egg
       *[other] { $eggs } eggs
    } about { $best ->
        [one] { $best } becomes a worker
       *[other] { $best } become workers
    }, { $low } to { $high } (Ito 1988: one species of Camponotus; in others it may be quite different)
reckoned-weigh-sugar = Sugar: { $g } g
# $food: the name of a food.
reckoned-weigh-sweet = { $food }: { $g } g
reckoned-weigh-water = Water: { $g } g, which is { VOLUME($ml) }
reckoned-makes = Makes { VOLUME($ml) }, { $g } g
reckoned-strength = { $percent } % by mass, { $g_per_l } g/L, { $mol_per_l } mol/L, { $density } g/mL at { DEGREES(20) }
reckoned-parts-mean =
    { $sugar } : { $water } by { $by ->
        [volume] volume
       *[mass] mass
    }: { $percent } % by mass
reckoned-keeps = Keeps about { $days } days in the fridge, { $low } to { $high } (common practice)
reckoned-wait = Wait about { $best } min, { $low } to { $high }
reckoned-cool-already = It is cool enough already
# $portion: a serving in words, see foods.ftl.
reckoned-serve = { $portion }
reckoned-serving-protein =
    About { $mg } mg of protein, { $low } to { $high }; the colony needs about { $need } mg in { $days ->
        [one] { $days } day
       *[other] { $days } days
    }
reckoned-serving-unknown = Its protein is not known
reckoned-lasts =
    Feeds them for about { $days ->
        [one] { $days } day
       *[other] { $days } days
    }
