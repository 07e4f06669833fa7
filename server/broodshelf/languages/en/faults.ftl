### What may be wrong with a nest. A keeper or a stand-in chooses one of these; they stand in headlines, too.
### `.inside` is the same inside a sentence or a list.

fault-leak = Leaking reservoir
    .inside = leaking reservoir
fault-flood = Flooded nest
    .inside = flooded nest
fault-mould = Mould
    .inside = mould
fault-escape = Escape
    .inside = escape
fault-mites = Mites
    .inside = mites
fault-many-dead = Many dead
    .inside = many dead
fault-heater = Heater fault
    .inside = heater fault
