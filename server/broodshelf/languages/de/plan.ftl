## Der Plan einer Kolonie und der eigene Rhythmus des Halters.

plan-own = Dein eigener Abstand
plan-set = Eigenen Abstand festlegen
plan-every = { $days ->
    [one] Von dir festgelegt: jeden Tag.
   *[other] Von dir festgelegt: alle { $days } Tage.
  }
plan-keep = Diesen Abstand behalten
plan-clear = Der Plan soll entscheiden

plan-days = { $count ->
    [one] Tag
   *[other] Tage
  }
plan-spread = { $high ->
    [one] Wohl fällig in { $low } bis { $high } Tag.
   *[other] Wohl fällig in { $low } bis { $high } Tagen.
  }
plan-kept = Dein Abstand ist festgelegt
plan-cleared = Der Plan entscheidet wieder

plan-rhythm-open = Tage, Uhrzeit oder eine Pause

plan-rhythm-title = { $need }: Tage und Uhrzeit
plan-rhythm-days = An diesen Tagen
plan-rhythm-hour = Um diese Uhrzeit
plan-rhythm-until = Pause bis
plan-rhythm-daily = Jeden Tag

plan-rhythm-at = { $days } um { $hour }
plan-rhythm-paused = Pause bis { $day }
plan-rhythm-urgent = Ohne eine Wahl entscheidet der Plan. Was dringend ist, etwa ein Leck, wird trotzdem gemeldet.
