### What a colony needs, and what a task asks for.

## Needs. `.inside` is the same word inside a sentence or a list.

need-sugar = Sugar
    .inside = sugar
need-protein = Protein
    .inside = protein
need-seeds = Seeds
    .inside = seeds
need-leaves = Leaves
    .inside = leaves
need-water = Water
    .inside = water
need-leftovers = Leftovers
    .inside = leftovers
need-room = Room
    .inside = room
need-barrier = Barrier
    .inside = barrier
need-rest = Yearly rest
    .inside = yearly rest
need-glance = A quiet look
    .inside = a quiet look

## What a task asks for: the headline of a task.

todo-water = See to the water
todo-water-look = Look how much water there is
todo-leak = Look whether it leaks
todo-too-hot = Cool it down
todo-too-cold = Bring it somewhere warmer
todo-overheating = Cool it down at once
todo-freezing = Bring it out of the frost
todo-rising-fast = See why it warms up so fast
todo-heater-on = Look whether the heater is stuck on
todo-heater-off = Look whether the heater has failed
todo-fridge-open = Close the fridge
todo-dry-air = Look at the water: the air is dry
todo-risk-look = Look whether they are well
todo-move-look = Look whether they have moved
todo-move-end = Look whether they have moved
todo-leftovers = Take the leftovers out
todo-room = Offer a new nest
todo-mould-look = Look at the mould again
todo-barrier = Look at the barrier
todo-glance = Take a quiet look
todo-rest = See to its rest
todo-rest-air = Open the fridge box for a minute
todo-rest-fits = Put its rest right
todo-wake-up = Wake it up
todo-ask = Look and count
