## The plan of a colony and the keeper's own rhythm.

plan-own = Your own interval
plan-set = Set your own interval
plan-every = { $days ->
    [one] You set this to every { $days } day.
   *[other] You set this to every { $days } days.
  }
plan-keep = Keep this interval
plan-clear = Let the plan decide

# The unit alone, beside a field with its number.
plan-days = { $count ->
    [one] day
   *[other] days
  }
plan-spread = { $high ->
    [one] Likely due in { $low } to { $high } day.
   *[other] Likely due in { $low } to { $high } days.
  }
plan-kept = Your interval is set
plan-cleared = The plan decides again

plan-rhythm-open = Days, hour or a pause

# $need is what is fed or looked at, as sugar or water.
plan-rhythm-title = { $need }: days and hour
plan-rhythm-days = On these days
plan-rhythm-hour = At this hour
plan-rhythm-until = Pause until
plan-rhythm-daily = Every day

# $days is a list of weekdays, or plan-rhythm-daily.
plan-rhythm-at = { $days } at { $hour }
plan-rhythm-paused = Paused until { $day }.
plan-rhythm-urgent = Without a choice the plan decides. What is urgent, like a leak, is told all the same.
