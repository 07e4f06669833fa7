### What is told before the keeper goes away.

# $need: sugar, protein, seeds, leaves or water, as in needs.ftl. A top-up: everything filled up before leaving.
reason-lasts-too-short =
    { $need }: lasts about { $lasts ->
        [one] { $lasts } day
       *[other] { $lasts } days
    } after a top-up.
reason-needs-nobody =
    It needs nobody for { $days ->
        [one] { $days } day
       *[other] { $days } days
    }.
reason-mostly-nobody = Most small colonies need nobody for 7 to 10 days (common practice); a look in between does no harm.
# $fault: what is wrong, as in faults.ftl (`.inside`).
reason-mend-before = Put this right before you leave: { $fault }.
