## Why the server refused what a phone sent, beside the name of the field; the codes of docs/sync.md.

refused-empty = This may not be empty.
# $most is sixty or more.
refused-text = At most { $most } characters.
refused-number = A number from { $low } to { $high }.
refused-choice = The server does not know this choice.
refused-day = A day from 1970 to 2100.
refused-instant = A time from 2000 to 2100.
refused-form = The server cannot read this value.
refused-other-kind = This names something of another kind.
refused-pass-end = This can be put off until the pass ends.
refused-a-year = This can be put off for a year at most.
# $hours stands before the sign of the hour, which is the same for any number.
refused-cannot-wait = Water, room and leftovers can wait { $hours } h at most; then somebody has to look.
