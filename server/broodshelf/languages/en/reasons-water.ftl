### The water of a tube or a nest.

reason-water-read =
    Read { $reading } { $days ->
        [one] { $days } day
       *[other] { $days } days
    } ago; a full reservoir lasts about { $last } days here.
reason-water-look = Nobody has logged how much water there is, so it is unknown: look once. The level, if you log it, lets the plan say when it is due.
reason-water-look-again =
    Nothing was logged about its water for { $days ->
        [one] { $days } day
       *[other] { $days } days
    }, longer than it lasts: how much there is is unknown again. Look once, and log the level.
reason-water-unread = Nobody has read the water yet; a full reservoir should last about { $last } days here.
reason-water-physics = Reckoned from the size of the tube and the warmth and dryness of its place; your readings will make it surer.
reason-water-nest = A nest like this is watered every 3 to 10 days in a room, more rarely in the cold (common practice).
reason-water-learnt = Learnt from your own readings: a full reservoir lasts { $low } to { $high } days.
reason-water-left-out = A water reading was left out: a tube of this size cannot show it.
reason-water-length-guessed = Nobody entered how long the full reservoir is: the longest reading, { $mm } mm, counts as full.
reason-water-length-unknown = Readings in mm are left out until you enter how long the full reservoir is.
reason-water-fill = About { VOLUME($ml) } fills it up.
reason-water-damp-end = Keep one end damp and one dry: the ants choose (common practice).
reason-water-drinker = So many ants also need a drinker in the outworld (common practice).
reason-leak-suspected =
    It lost more water than drying and drinking explain: { $chance } % likely a leak. At that pace it is dry in { $days ->
        [one] { $days } day
       *[other] { $days } days
    }. Look today whether the floor or the brood is wet; it may be something else.
