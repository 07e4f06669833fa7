### First steps where something is wrong, and after food that may carry poison.

reason-leak = Reported as leaking. First steps: stand the tube over a saucer with the cotton up, look whether brood is wet, put a fresh tube beside it. Do not shake.
reason-flood = First steps: tilt so that the water runs away from the brood, soak it up with cotton, offer a dry tube.
reason-mould = Distant spots: take a photo and look again in 7 days (common practice). Near the brood or a third of the cotton: offer a fresh tube today. Yellow cotton alone is nothing.
reason-mould-far = A distant spot is no alarm: take a photo now, and look again in 7 days whether it has grown (common practice). Yellow cotton alone is nothing.
reason-mould-look =
    A spot of mould was reported { $days ->
        [one] { $days } day
       *[other] { $days } days
    } ago: compare it with the photo. No larger: leave it. Nearer to the brood or a third of the cotton: report it again as near (common practice).
reason-mould-near = First steps: offer a fresh tube today, mouth to mouth beside this one, and leave the old one in the light. Do not scrape, spray or shake (common practice).
reason-fault-over =
    Reported { $days ->
        [one] { $days } day
       *[other] { $days } days
    } ago, and nobody has said since that it is over. If it is, mark it as mended; if not, report it again.
reason-escape = First steps: close the lid, renew the barrier, collect the runners with a soft brush. Never release them outdoors.
reason-mites = First steps: feed this colony last, use its own tweezers, keep it apart, note which lot it was fed from.
reason-many-dead = First steps: stop the food that was offered last, remove it, check water and temperature, and write down what you see.
reason-heater = First steps: switch the heater off, move the colony to a place of { DEGREES(20) } to { DEGREES(25) } (common practice), do not cool it with a fridge.
reason-risk-out =
    It was given although it was refused, or another colony got the same lot so: it may carry poison. Take all that is left out at once, { $hours ->
        [one] { $hours } hour
       *[other] { $hours } hours
    } after it was offered.
reason-risk-look =
    Food that may carry poison was given here { $days ->
        [one] { $days } day
       *[other] { $days } days
    } ago: look once a day for { $of } days; this is day { $day }.
reason-risk-times = Published times until half of the workers were dead: 1 to 4 days at strong doses of three bait poisons (Rust et al. 2004), 8 days at a weak dose of boric acid (Klotz et al. 1997).
reason-risk-signs = Many dead, slow or twitching workers: report 'many dead', and give clean water and fresh sugar water (common practice).
