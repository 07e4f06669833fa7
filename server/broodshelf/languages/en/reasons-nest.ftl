### Room, moves and looks.

reason-settling = The colony is settling after a move: leave it quiet, refusals mean nothing now.
reason-room-full = About { $workers } workers in a vessel for about { $room } (common practice).
reason-barrier = The anti-climb barrier wears out in 2 to 8 weeks: look once a week (common practice).
reason-glance =
    Nobody has looked at this colony for { $days ->
        [one] { $days } day
       *[other] { $days } days
    }.
reason-ask-stage = Nobody has said how far this colony is. Take one quiet look today and log a count: a queen alone, or how many workers and whether there are larvae.
reason-ask-workers = The last count found no workers where there should be some. Take one quiet look and count again: was it a slip, or is the queen alone?
reason-room-fills =
    At this pace the nest is full, with about { $room } workers (common practice), in { $best ->
        [one] { $best } day
       *[other] { $best } days
    }, { $low } to { $high }: have the next one ready.
reason-room-fills-perhaps =
    At this pace the nest is full, with about { $room } workers (common practice), in { $best ->
        [one] { $best } day
       *[other] { $best } days
    }, perhaps much later: have the next one ready.
reason-room-full-by-now =
    By its pace the nest, for about { $room } workers (common practice), may be full by now; the last count is { $days ->
        [one] { $days } day
       *[other] { $days } days
    } old: count, and have the next one ready.
reason-room-growth =
    At its present pace it doubles in about { $doubling } days ({ $counts ->
        [one] one count
       *[other] { $counts } counts
    }).
reason-move-water-low = The water of this tube is low: a fresh tube is water and room in one.
reason-move-mould = Mould is near the brood or covers a third of the cotton.
reason-move-flood = The nest is flooded.
reason-move-dry = The reservoir is dry.
reason-move-beside = Lay the new tube or nest mouth to mouth beside the old one.
reason-move-darken = Darken the new one.
reason-move-light = Leave the old one in the light, without heat.
reason-move-wait = Allow 1 to 4 weeks; they choose the night (common practice).
reason-move-no-shaking = Never shake or tip them out.
reason-move-force = You saw it dry or flooded: only now help by hand. Tap them gently into the new tube, brood first, and leave them in the dark.
reason-never-tilt = Never tilt it: repletes that fall are lost.
reason-offer-look =
    A nest was offered { $days ->
        [one] { $days } day
       *[other] { $days } days
    } ago: look whether they have moved, and log it if they have.
reason-offer-light = Still in the old one? Put a light over the old one, without heat, and keep the new one dark and damp at one end (common practice).
reason-offer-last =
    A nest was offered { $days ->
        [one] { $days } day
       *[other] { $days } days
    } ago: four weeks are enough to choose (common practice). Log it if they have moved.
reason-offer-ends = Still in the old one? Then it suits them: take the new one away, look whether it is damp and dark enough, and offer another later (common practice).
reason-offer-water = The old tube should be nearly dry, and they have not moved yet: look at its water and log what you see. Only what you saw dry is emptied by hand.
