### Prey: which, how large, how it is offered.

reason-prey-size = These workers clear prey of up to about { $longest_mm } mm away whole; longer prey is cut or left out (common practice).
reason-prey-first-third = A first serving is a third of what the colony's size says; it grows by half when everything is taken, slowly when nobody checks (common practice).
reason-portion-rises = A serving rises step by step to what the colony's size says: at most by half after 'all taken', slowly where nobody checked, not after something was left (common practice).
reason-portion-at-once =
    Never more than { $days ->
        [one] { $days } day
       *[other] { $days } days
    } of need at once, however long it is until the next time: what is left over spoils (common practice).
reason-portion-tiny = The first food of their lives is the smallest serving there is (common practice).
reason-prey-smallest =
    This is the smallest serving at hand; it feeds them for about { $days ->
        [one] { $days } day
       *[other] { $days } days
    }.
reason-prey-most = { $pieces } pieces are as many as one serving should hold (common practice).
reason-prey-banked = A small colony banks prey for { $days } days at most, however big it is (common practice).
reason-prey-dead = Kill it first: live prey can hurt workers and brood, or hide (common practice).
reason-prey-dead-small = Small workers: freshly killed only (common practice).
reason-prey-dead-in-tube = In a test tube only freshly killed prey: nothing live, ever.
reason-prey-too-big-alive = They hunt by sight, but this prey is longer than a worker or has to be cut: kill it first.
reason-prey-stunned = They hunt by sight: prey that still twitches is found sooner. Stun it so that it cannot bite or kick (common practice).
reason-prey-live = Live because you asked for it: shorter than a worker, in an outworld, never in a tube. Take it out if it is ignored for an hour (common practice).
reason-prey-piece = A crumb: take it out before it spoils.
reason-prey-uncounted = Nobody reports the protein of this food, so it is not counted.
