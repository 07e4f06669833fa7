## What is in the nest and what comes of it: the days, the question, and why.

brood-first = The first workers
brood-next = New workers

# When workers hatch, in days from today.
brood-days = { $high ->
    [one] In { $low } to { $high } day.
   *[other] In { $low } to { $high } days.
  }
brood-days-about = { $days ->
    [one] In about { $days } day.
   *[other] In about { $days } days.
  }
brood-between = Between { $from } and { $to }
brood-on = About { $day }
brood-any-by = Any day now, by { $day }
brood-any = Any day now
brood-at-latest = { $days ->
    [one] At the latest in { $days } day.
   *[other] At the latest in { $days } days.
  }
brood-not-before = Not before { $day }
brood-likely = { $days ->
    [one] Most likely around { $best }, in { $days } day, perhaps as late as { $high }.
   *[other] Most likely around { $best }, in { $days } days, perhaps as late as { $high }.
  }
brood-perhaps = Perhaps as late as { $high }.

# Follows “Not before …” or “Any day now”.
brood-no-end = How long after that cannot be said yet.

# Follows the days of hatching: they are reckoned at this warmth.
brood-warm = At { DEGREES($mean_c) }.
brood-none = None are in sight for half a year, as warm as it is now.

# $brood is a code: eggs, larvae or pupae. The question of a tap, and the plain statement.
brood-ask-by-seen = { $brood ->
    [eggs] Eggs should be there by { $day }: seen them?
    [larvae] Larvae should be there by { $day }: seen them?
   *[pupae] Pupae should be there by { $day }: seen them?
  }
brood-ask-by = { $brood ->
    [eggs] Eggs should be there by { $day }.
    [larvae] Larvae should be there by { $day }.
   *[pupae] Pupae should be there by { $day }.
  }
brood-ask-now-seen = { $brood ->
    [eggs] Eggs should be there by now: seen them?
    [larvae] Larvae should be there by now: seen them?
   *[pupae] Pupae should be there by now: seen them?
  }
brood-ask-now = { $brood ->
    [eggs] Eggs should be there by now.
    [larvae] Larvae should be there by now.
   *[pupae] Pupae should be there by now.
  }
brood-ask-yes = Yes
brood-ask-not-yet = Not yet
brood-ask-cannot-see = Cannot see
brood-ask-early = Seen already
brood-ask-looked = Somebody looked on { $day }. You are asked again from { $again }: until then peace helps more.
brood-ask-told = { $brood ->
    [eggs] Eggs were seen on { $day }.
    [larvae] Larvae were seen on { $day }.
   *[pupae] Pupae were seen on { $day }.
  }
brood-ask-waits = The days are reckoned anew with the next connection.

# Written into the diary as a remark.
brood-ask-remark = { $brood ->
    [eggs] Looked for eggs, could not see
    [larvae] Looked for larvae, could not see
   *[pupae] Looked for pupae, could not see
  }

brood-open = The brood on one line of time

brood-why-title = Why these days
brood-why-nothing = Nothing that was seen has moved them yet: they are those of its kind at this warmth.
brood-why-eight = Of ten colonies like this one, eight fall into the range.
brood-why-unmeasured = Nobody has measured how long the stages of its group take. The days rest on common practice, so they are told wide. What you see narrows them.
brood-why-source = They begin with: { $source }.

# $seen is a list of the messages below, $moved one of brood-why-moved-… or its like.
brood-why-line = { $day }: { $seen }, { $moved }.
brood-why-counted = { $count ->
    [0] no workers
    [one] { $count } worker counted
   *[other] { $count } workers counted
  }
brood-why-workers = workers counted

# $brood is a code: eggs, larvae, pupae or workers.
brood-why-seen-none = { $brood ->
    [eggs] no eggs
    [larvae] no larvae
    [pupae] no pupae
   *[workers] no workers
  }
brood-why-seen-seen = { $brood ->
    [eggs] eggs seen
    [larvae] larvae seen
    [pupae] pupae seen
   *[workers] workers seen
  }
brood-why-seen-few = { $brood ->
    [eggs] few eggs
    [larvae] few larvae
    [pupae] few pupae
   *[workers] few workers
  }
brood-why-seen-some = { $brood ->
    [eggs] some eggs
    [larvae] some larvae
    [pupae] some pupae
   *[workers] some workers
  }
brood-why-seen-many = { $brood ->
    [eggs] many eggs
    [larvae] many larvae
    [pupae] many pupae
   *[workers] many workers
  }
brood-why-seen-taken = insects taken
brood-why-seen-refused = insects refused

brood-why-moved-census-more = more than expected
brood-why-moved-census-fewer = fewer than expected
brood-why-moved-census-sooner = so this brood is faster than was thought
brood-why-moved-census-later = so this brood is slower than was thought

brood-why-none = where some were expected

brood-why-larvae-census-more = so there are more larvae than was thought
brood-why-larvae-census-fewer = so there are fewer larvae than was thought

## A founding that has stalled, with what keepers do (common practice).

stalled-title = This founding has probably stalled
stalled-days = { $days ->
    [one] In nine of ten foundings like this one workers would have come { $days } day ago or sooner.
   *[other] In nine of ten foundings like this one workers would have come { $days } days ago or sooner.
  }
stalled-about = What keepers do, in this order (common practice):
stalled-unfed-1 = Leave the tube dark and alone for two weeks, in the middle of the warmth that her kind likes. Many queens eat their brood because they are looked at often.
stalled-unfed-2 = Do not feed her in these weeks: she lives on her own reserves, and food spoils beside her.
stalled-unfed-3 = Then look once. Brood that has moved on, say larvae where eggs were, needs only more time.
stalled-unfed-4 = No brood, or less than before: offer a drop of sugar water and a speck of insect, and take out after a day what is left. A queen who has eaten her brood may lay again.
stalled-fed-1 = Leave her dark and quiet, in the middle of the warmth that her kind likes, and look once a week at most.
stalled-fed-2 = Go on feeding: sugar and a small insect every 3 to 5 days, and take out after a day what is left. A hungry queen eats her brood.
stalled-fed-3 = After two weeks look closely. Brood that has moved on, say larvae where eggs were, needs only more time.
stalled-last-1 = Water gone, or mould near the brood: lay a fresh tube before hers and let her move by herself.
stalled-last-2 = No eggs for six to eight warm weeks: she was probably never mated, or is spent. Brood of her own species from a healthy colony is the last thing to try.

## The brood on one line of time.

brood-line-ahead = How far ahead

brood-line-reach-56 = 8 weeks
brood-line-reach-182 = Half a year

brood-line-stage-eggs = Eggs
brood-line-stage-small-larvae = Small larvae
brood-line-stage-large-larvae = Large larvae
brood-line-stage-pupae = Pupae
brood-line-stage-workers = Workers

brood-line-day = Day
brood-line-today = today

# In the drawing, beside a stage: how many there are now. $number may be a range.
brood-line-now = now { $number }

# A number with its range.
brood-line-about = { $best } ({ $low }–{ $high })

# $counts is a list of the five brood-line-count-… messages.
brood-line-summary = { $best ->
    [one] Today probably { $counts }. By { $day }: about { $best } worker, likely { $low } to { $high }.
   *[other] Today probably { $counts }. By { $day }: about { $best } workers, likely { $low } to { $high }.
  }

# Parts of the list in brood-line-summary.
brood-line-count-eggs = { $count ->
    [0] no eggs
    [one] { $count } egg
   *[other] { $count } eggs
  }
brood-line-count-small-larvae = { $count ->
    [0] no small larvae
    [one] { $count } small larva
   *[other] { $count } small larvae
  }
brood-line-count-large-larvae = { $count ->
    [0] no large larvae
    [one] { $count } large larva
   *[other] { $count } large larvae
  }
brood-line-count-pupae = { $count ->
    [0] no pupae
    [one] { $count } pupa
   *[other] { $count } pupae
  }
brood-line-count-workers = { $count ->
    [0] no workers
    [one] { $count } worker
   *[other] { $count } workers
  }

brood-line-mark-line = most likely; dashed: still to come
brood-line-mark-band = eight of ten
brood-line-mark-dot = you counted, or saw some
brood-line-mark-hollow = you looked, and there were none
brood-line-mark-due = when workers hatch

brood-line-scale = Each row has a height of its own. The past is drawn as it was believed then.
