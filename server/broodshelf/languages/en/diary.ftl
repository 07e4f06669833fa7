## What a log of the diary says.

event-kind-feeding = Feeding
event-kind-check = Check
event-kind-water = Water
event-kind-fault = Something is wrong
event-kind-count = Count
event-kind-move = Nest move
event-kind-boost = Brood added
event-kind-note = Note
event-kind-climate = Climate
event-kind-photo = Photo
event-kind-later = Put off

event-colony = A colony

# $told is the line of the diary.
event-repeat = { $told } (possible repeat, not counted)

# $brood is a code: eggs, larvae or pupae.
event-brood-added = { $brood ->
    [eggs] Brood added: eggs
    [larvae] Brood added: larvae
   *[pupae] Brood added: pupae
  }
event-brood-added-some = { $brood ->
    [eggs] { $count ->
        [one] Brood added: { $count } egg
       *[other] Brood added: { $count } eggs
      }
    [larvae] { $count ->
        [one] Brood added: { $count } larva
       *[other] Brood added: { $count } larvae
      }
   *[pupae] { $count ->
        [one] Brood added: { $count } pupa
       *[other] Brood added: { $count } pupae
      }
  }
event-leftovers = Leftovers taken out
event-mended = { $fault } (mended)
event-read = Water read: { $level }
event-read-mm = Water read: { $mm } mm
event-feeder = Feeder: { $level }

# $where is a list of event-colour-seen-….
event-colour = Colour looked for: { $where }
event-colour-nowhere = Colour looked for: nowhere

event-water-refill = Water filled up
event-water-new-tube = New tube offered
event-water-hydrate = Nest watered

# $seen is a list of the messages below.
event-counted = Counted: { $seen }
event-counted-nothing = Counted: brood

# How many were seen: none, seen, few, some, many.
event-counted-eggs = { $amount ->
    [none] eggs: none
    [seen] eggs: seen
    [few] eggs: few
    [some] eggs: some
   *[many] eggs: many
  }
event-counted-larvae = { $amount ->
    [none] larvae: none
    [seen] larvae: seen
    [few] larvae: few
    [some] larvae: some
   *[many] larvae: many
  }
event-counted-pupae = { $amount ->
    [none] pupae: none
    [seen] pupae: seen
    [few] pupae: few
    [some] pupae: some
   *[many] pupae: many
  }
event-workers = { $count ->
    [one] { $count } worker
   *[other] { $count } workers
  }
# Where only a part of the nest was to be seen; $seen is the message above.
event-workers-at-least = at least { $seen }

event-queens = { $count ->
    [one] { $count } queen
   *[other] { $count } queens
  }
event-males-only = only males

# A rough count.
event-workers-roughly = { $amount ->
    [none] No workers
    [few] Few workers
    [some] Some workers
   *[many] Many workers
  }

event-stage-larvae = Larvae
event-stage-eggs = Eggs
event-stage-pupae = Pupae

event-outcome-all = All taken
event-outcome-some = Some taken
event-outcome-ignored = Ignored

event-reading-full = Full
event-reading-three-quarters = ¾
event-reading-half = ½
event-reading-quarter = ¼
event-reading-empty = Empty

event-colour-seen-gasters = In gasters: workers drank
event-colour-seen-brood = In brood: it was passed on

event-coarse-none = None
event-coarse-few = Few
event-coarse-some = Some
event-coarse-many = Many

event-brood-seen-none = None
event-brood-seen-seen = Seen
event-brood-seen-few = Few
event-brood-seen-some = Some
event-brood-seen-many = Many

## The diary.

diary-empty = Nothing logged yet.
diary-earlier = Earlier
diary-void = Void
diary-search = Find in the diary
diary-kind = Show
diary-all = Everything
diary-none = Nothing like this in the diary.
diary-looking = Looking back to { $day } …
diary-today = Today
diary-yesterday = Yesterday

## Pictures.

photo-title = Pictures
photo-take = Take a picture
photo-busy = One moment…
photo-remove = Take this picture out
photo-unreadable = This picture could not be read. Try another, or take it again.
photo-too-large = This picture could not be made small enough.
photo-of = { $name } on { $day }
photo-large = Look at the picture of { $day }
photo-older = Older
photo-newer = Newer
photo-elsewhere = This picture is still on the phone that took it.
