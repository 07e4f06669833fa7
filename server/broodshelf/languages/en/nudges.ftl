### Nudges: what a phone shows on its locked screen, and the lines of a mail. Short: a title has room for about 40 letters.

# $need: a need, as in needs.ftl. $colony: the name that its keeper gave it.
nudge-one-food = { $need } for { $colony }
# $todo: what a task asks for, or what is wrong.
nudge-one-todo = { $todo }: { $colony }
# $n (number): 2 or more.
nudge-same-need = { $need } for { $n } colonies
nudge-same-todo = { $todo }: { $n } colonies
# $needs: a list of the messages `need-….inside` and `fault-….inside`.
nudge-one-colony = { $colony }: { $needs }
# $needs: a list of the messages `nudge-need-for`.
nudge-colonies = { $n } colonies: { $needs }
# $need: `need-….inside` or `fault-….inside`. $n (number): how many colonies. Short: "protein for 2, water for 1".
nudge-need-for = { $need } for { $n }
# One line of the list. $what: a serving, a task, or the first steps of a fault.
nudge-line = { $colony }: { $what }
# $n (number): how many lines had no room.
nudge-more = and { $n } more

## The message in its shortest form, and the test.

nudge-short-title = The round is due
nudge-short-body = Open the app to see what your colonies need.
nudge-test-title = Nudges work on this phone
nudge-test-body = This is only a test. Nothing is due because of it.

## What other keepers are told of the house. $phone, $person, $pass, $sensor, $place: names as people wrote them.

nudge-new-phone-title = A new phone was let in
nudge-new-phone-body = { $phone }, for { $person }. If none of you did this, sign it out under House.
nudge-link-made-title = A link for { $pass } was made
nudge-link-made-body = { $person } made it. Whoever has the link can open the pass; a new link ends it.
nudge-pass-opened-title = { $pass }: the pass was opened
nudge-pass-opened-body = On { $phone }. If it should not have been, take the pass back.
nudge-sensor-silent-title = { $sensor } says nothing any more
nudge-sensor-silent-body =
    Nothing has come from it for { $hours ->
        [one] { $hours } hour
       *[other] { $hours } hours
    } ({ $place }). Look at its power and at its way to the server; until it speaks again, plans go by what you read or set.
nudge-sensor-broken-title = { $sensor } measures nonsense
nudge-sensor-broken-body = What it sends cannot be ({ $place }). Look at its cable and its power; what it sends is left out until it makes sense again.
