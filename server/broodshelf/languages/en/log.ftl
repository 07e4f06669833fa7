## The sheet that logs.

log-food = Food
log-more = More foods
log-amount = Amount
log-size = Size
log-from = Where it comes from
log-lot = Which lot
log-no-lot = From elsewhere
log-go = Log the feeding
log-despite = It already happened: log it all the same

log-stop-refuse = Do not offer this.
log-stop-wait = Not yet.
log-stop-hold = Hold it first.

log-outcome-later = { $hours ->
    [one] What became of it can wait: the round asks for the leftovers after about { $hours } hour.
   *[other] What became of it can wait: the round asks for the leftovers after about { $hours } hours.
  }
log-which-feeding = Which feeding
log-feeder-level = How full is the feeder
log-offered-in = Offered as

log-vessel-drop = Drops
log-vessel-feeder = In a feeder

log-colour-seen = Where the colour shows
log-colour-only = Log only where it shows
log-colour-when = Look after 1, 8, 24 and 72 hours, through pale stretched gasters and into the brood. Dark ants hide it (common practice).
log-what-became = What became of it
log-leftovers = Leftovers taken out
log-calm = Looked in, all calm
log-barrier-good = The barrier is good
log-level = Water level
log-drag = Drag the level until it matches the real tube, or use the arrow keys.
log-bubble = In a lying tube a bubble floats over the water: read the end at the cotton.
log-mm = Or type it, in mm
log-read = Log this level
log-filled = Filled up
log-new-tube = New tube offered
log-hydrate = Nest watered
log-wrong = What is wrong
log-report = Report it
log-workers = Workers seen
log-guess = (a guess is fine)
log-count = Log the count
log-more-brood = Eggs, pupae, queens
log-move-words = Offer the new tube beside the old one, darken it and light the old. Give them 1 to 4 weeks (common practice). Never shake them out unless the old one is flooded or dry.
log-offered = New nest offered
log-moved = They have moved
log-note = Note
log-keep-note = Keep the note
log-mould-where = Where is it

log-mould-far = Spots away from the brood
log-mould-near = Near the brood, or a third of the cotton (common practice)

log-queens = Queens seen
log-queens-hint = (leave it open if you did not look; 0 means that none is left)
log-males-only = Only males came out
log-donor = From which colony
log-from-elsewhere = From elsewhere
log-which-brood = What was added
log-how-many = How many
log-boost = Log the brood
log-boost-words = Only brood of the same species (a parasitic queen: of her host), from a colony that is healthy. Pupae are taken best (common practice).

## Putting a task off, or skipping it with a reason.

later-title = Later, or not this time
later-when = Remind the round
later-hour = In an hour
later-evening = This evening
later-tomorrow = Tomorrow
later-skip = Or skip it this time, because

later-own = Your reason
later-go = Skip it
later-cannot-wait = This can wait over night at most: somebody has to look.

## Several colonies at once.

several-title = Several at once
several-what = What they got
several-who = Which colonies
several-none = Choose at least one colony.
several-water = Filled up
several-look = Looked in, all calm
several-go = { $count ->
    [one] Log it for { $count } colony
   *[other] Log it for { $count } colonies
  }
