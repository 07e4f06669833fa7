### Why food is due, and how much of it.

reason-interval-band = Usual for this kind and size: every { $low } to { $high } days (common practice).
reason-interval-keeper =
    You set this to every { $days ->
        [one] day
       *[other] { $days } days
    }.
reason-interval-chosen = On the days and at the hour that you set.
reason-last-fed =
    Last offered { $days ->
        [one] { $days } day
       *[other] { $days } days
    } ago.
reason-never-fed = No feeding is logged yet.
reason-no-larvae = No larvae were seen: protein can wait longer.
reason-slow-species = This species eats slowly: intervals are half as long again (common practice).
reason-ignored-did-not-count = The last offer was ignored, so it does not count.
reason-leftovers =
    Offered { $hours ->
        [one] { $hours } hour
       *[other] { $hours } hours
    } ago; take the rest out before it spoils (common practice: after { $after } hours).
reason-crop-lasts =
    A full crop lasts about { $days ->
        [one] { $days } day
       *[other] { $days } days
    } at { DEGREES($temp_c) }; half of it is kept in hand.
reason-freshness-rules =
    What is offered stays good for about { $days ->
        [one] { $days } day
       *[other] { $days } days
    } (common practice); more of it does not last longer.
reason-amount-rules = { $mg } mg of sugar was offered and the colony uses about { $mg_per_day } mg a day, so it runs out first.
reason-band-rules =
    By the estimate it would be another rhythm; it is held at { $days ->
        [one] { $days } day
       *[other] { $days } days
    }, within half to twice the usual { $low } to { $high } days (common practice).
reason-brood-grows =
    About { $larvae ->
        [one] { $larvae } larva needs
       *[other] { $larvae } larvae need
    } { $mg_per_day } mg of protein a day at { DEGREES($temp_c) }.
reason-prey-rules =
    { $mg } mg of protein is about { $days ->
        [one] { $days } day
       *[other] { $days } days
    } of growth.
reason-bank-rules =
    Brood cannot bank protein for longer than about { $days ->
        [one] { $days } day
       *[other] { $days } days
    }, however big the prey (common practice).
reason-no-brood-expected = No new workers are to be expected, and nobody has counted larvae in the last 4 weeks: only a little protein (common practice).
reason-quiet-season = By its yearly clock this species slows down now, and nobody has counted larvae in the last 4 weeks: only a little protein. Larvae that you count are fed (common practice).
reason-maintenance-only = No larvae: only a little protein is needed to keep the workers well.
reason-appetite-learnt =
    Learnt from { $checks ->
        [one] { $checks } check
       *[other] { $checks } checks
    }: this colony eats about { $times } times the usual.
reason-appetite-at-least =
    All was taken at every check that tells something ({ $checks ->
        [one] one
       *[other] { $checks }
    }): this colony eats at least about { $times } times the usual. How much more shows once something is left.
reason-appetite-at-most =
    Something was left at every check that tells something ({ $checks ->
        [one] one
       *[other] { $checks }
    }): this colony eats at most about { $times } times the usual. How much less cannot be learnt while even the smallest serving is left.
reason-appetite-hidden = How much this colony eats cannot be learnt from such checks: they could hardly come out otherwise, like a whole drop before a handful of ants. The plan stays with the usual for its size.
reason-refusal-food = The last offer was left: first blame the food and try another.
reason-refusal-state = The last offer was left, but the colony is settling, slowing down before its rest, or all its brood is pupae: that says nothing about its appetite.
reason-protein-outweighs-sugar = More protein ({ $protein_mg } mg) than sugar ({ $sugar_mg } mg) in { $weeks } weeks: such a diet shortened workers' lives (Dussutour and Simpson 2012). Offer more sugar; larvae soften the harm.
reason-census-guessed = Nobody has counted yet: about { $workers } workers are assumed from the stage (common practice).
reason-census-unknown = Nobody has counted yet and no stage is set: log a count, until then the amounts are a guess.
reason-census-old =
    The last count is { $days ->
        [one] { $days } day
       *[other] { $days } days
    } old; a new look would make this surer.
reason-workers-fell-to-zero = The last look found no workers where there were some. If that was a slip, log a new count.
