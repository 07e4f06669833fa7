## The round: what is due when, and what one does about it.

# How near something is.
round-due-never = not due
round-due-now = due now
round-due-since = { $days ->
    [one] due for { $days } day
   *[other] due for { $days } days
  }
round-due-hours = { $hours ->
    [one] due in { $hours } hour
   *[other] due in { $hours } hours
  }
round-due-days = { $days ->
    [one] due in { $days } day
   *[other] due in { $days } days
  }

round-title = The round
round-now = Now
round-today = Later today
round-next = Next days
round-done = Done
round-quiet = Nothing is due now.
round-next-at = Nothing until { $day }.
round-calm = Every tube is full enough. Leave them their quiet.
round-as-suggested = Done as suggested
round-done-short = Done
round-offered = New nest offered
round-not-moved = Not moved yet
round-moved = They have moved
round-other = Other
round-count = Count
round-change = Change the colony
round-later = Later
round-resolved = It is mended
round-urgent = urgent
round-why = Why
round-all = { $count ->
    [one] Done as suggested: { $colony }
   *[other] All { $count } done as suggested
  }
round-by = by { $who }
round-undo = Undo
round-empty-shelf = The shelf is empty. Add the first colony.
round-joining = Your shelf is on its way to this phone.
round-joined = { $count ->
    [0] The first entries come now.
    [one] { $count } entry so far
   *[other] { $count } entries so far
  }
round-progress = { $part } of { $whole } done
round-finished = The round is done.
round-many = Several at once
round-add = Add a colony

## The shelf and its list of colonies.

shelf-title = The shelf
shelf-search = Find a colony
shelf-none = No colony has this in its name or species.
shelf-labels = Tube labels
shelf-scan = Scan a label
shelf-species-unknown = Species not given
shelf-no-plan = The plan comes with the next connection.

# $need is what is fed or looked at; $due is one of round-due-….
shelf-next = { $need } { $due }
# How much there is of it, a share.
shelf-level = { $need } { $level }

## What was put off or skipped, and why.

# $need is what was to be done, as sugar or water.
later-was-skipped = { $need }: Skipped this time ({ $why })
later-was-put-off = { $need }: Put off
later-why-still-food = There is still food
later-why-leave-quiet = Leave them quiet
later-why-nothing-in-the-house = Nothing in the house
later-why-other = Another reason
