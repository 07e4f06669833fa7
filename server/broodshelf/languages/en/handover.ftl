## Handing over: passes.

handover-title = Hand over
handover-about = A pass lets a family member or friend look after some colonies for some days, without an account.

handover-state-back = taken back
handover-state-ended = ended
handover-state-now = on duty now
handover-state-from = from { $day }

# From a first to a last day.
handover-days = { $from } to { $to }
handover-done-by = Done by { $who }
handover-nothing = Nothing was logged.
handover-link-once = Send this link, or let them scan it. It is shown once.
handover-by-code = Or by code:
handover-share = Share
handover-share-title = Pass for { $who }
handover-make-link = Make the link
handover-new-link = Make a new link
handover-take-back = Take it back
handover-sure = Take the pass of { $who } back? Their phone stops at once.
handover-print = Print the sheet
handover-preview = See it as they will
handover-preview-title = As { $who } sees it
handover-new = A new pass
handover-who = Who
handover-colonies = Colonies
handover-all = All of them

# Behind the name of a colony.
handover-stings = { $colony } (stings)
handover-first = First day
handover-last = Last day
handover-know = What they should know
handover-call = Whom to call
handover-none = Choose at least one colony.
handover-backwards = The last day lies before the first.
handover-go = Make the pass
handover-calendar = Calendar of the whole shelf
handover-stings-words = You chose a colony that stings. Ask first whether anyone there is allergic; only hand it over if they are sure.

## What is printed: the sheet of a pass, the record of a colony.

paper-sheet = Looking after the shelf: { $who }
paper-record = Record of { $name }
paper-print = Print
paper-colony = Colony
paper-what = What to do
paper-done = Done
paper-nothing = Nothing to do.
paper-over = The last day of this pass is over.
paper-ahead = The days were reckoned today. What you do or log until the pass begins moves them: print the sheet again on the evening before.
paper-colonies = The colonies

# Before a telephone number.
paper-call = Call:
paper-made = Printed { $day }
paper-gone = There is nothing to print here.
paper-species = Species
paper-lives = Lives in
paper-count = Last count
paper-when = When
paper-event = What
paper-by = By

## What a stand-in sees.

stand-in-from = From { $day }

# $minutes is about how long the round takes.
stand-in-today = { $count ->
    [one] Today: { $count } thing, about { $minutes } minutes
   *[other] Today: { $count } things, about { $minutes } minutes
  }
stand-in-nothing = Nothing today
stand-in-calm = A missed day is fine. Do not open the nest, shake, or give extra.
stand-in-from-keeper = From the keeper
stand-in-call = Call { $who }
stand-in-yours = Your colonies

# The buttons of a task: what was done, in the first person.
stand-in-gave = I gave it
stand-in-looked = I looked
stand-in-took = I took it out
stand-in-watered = I gave the water
stand-in-could-not = I could not
stand-in-why = What was in the way?
stand-in-why-none = There was nothing left to give
stand-in-why-closed = I could not open it
stand-in-why-unsure = I was not sure how
stand-in-why-away = I was not there
stand-in-why-other = Something else
# Written into the diary. $why: one of the above; $task: what was asked for, as it stood on the task.
stand-in-note = Could not: { $task }. { $why }
stand-in-told = Written down for the keeper. It stays on the list.
stand-in-read-aloud = Read it to me
stand-in-quiet = Stop reading
stand-in-how = How to do it
stand-in-practice = Times and amounts in the steps: common practice.

# What the keeper adds to each colony for a stand-in: a sentence and a picture.
stand-in-hint = For whoever stands in
stand-in-hint-example = for example: the flies are in the freezer door
stand-in-hint-picture = A picture for them
stand-in-hint-about = Stands above the steps of each task of this colony.

# On the printed sheet: how large a portion is, drawn at its true size beside a ruler.
paper-true-size = True size
paper-drop-of = A drop of about { $ul } µL
paper-prey-of = A piece of about { NUMBER($mm) } mm
paper-ruler = Ruler, in millimetres: check it against your own
