## The calculators.

calculator-about = Each one says how it reckons, where that comes from, and where it stops being true.
calculator-without = Sugar water can be mixed in the larder without a connection.
calculator-back = All calculators
calculator-back-larder = Back to the larder
calculator-go = Work it out
calculator-result = What comes out
calculator-how = How it is reckoned

# Stands before a formula.
calculator-formula = Formula:
calculator-source = Source:
calculator-limits = Limits:
calculator-open = Leave it open
calculator-in-unit = in { $unit }
calculator-range = { $low } to { $high }
calculator-up-to = up to { $high }
calculator-left-out = left empty: { $usual }
calculator-may-be-empty = may stay empty

calculator-input-percent = strength
calculator-input-ml = volume to make
calculator-input-sugar-parts = parts of sugar, instead of a strength
calculator-input-water-parts = parts of water
calculator-input-parts-by = what the parts are by
calculator-input-mol-per-l = molarity, instead of a strength
calculator-input-dilute-food = what to dilute
calculator-input-from-c = temperature now, or at the first of two readings
calculator-input-room-c = temperature of the room
calculator-input-to-c = temperature to offer at
calculator-input-vessel = open vessel
calculator-input-later-c = a later reading of your own vessel
calculator-input-later-min = minutes between the two readings
calculator-input-worker-mm = length of a usual worker
calculator-input-workers = workers
calculator-input-days = days until the next serving
calculator-input-protein-mg = protein need
calculator-input-worker-mg = fresh mass of a worker
calculator-input-prey-food = only this food
calculator-input-majors = the species has majors
calculator-input-hunts-by-sight = it hunts by sight
calculator-input-slow = it eats slowly
calculator-input-in-tube = they live in a test tube
calculator-input-first = first servings of a new colony: a third
calculator-input-bore-mm = inner diameter of the tube
calculator-input-length-mm = length of the tube
calculator-input-reservoir-mm = length of the full reservoir
calculator-input-temp-c = temperature around it
calculator-input-humidity-pct = relative humidity around it
calculator-input-species = species
calculator-input-day-c = day temperature
calculator-input-night-c = night temperature
calculator-input-eggs = eggs of a founding queen

# What counts where a field is left empty; stands in it.
calculator-usual-night-c = as by day
calculator-usual-protein-mg = by mass
calculator-usual-worker-mg = by length

calculator-choice-mass = mass
calculator-choice-volume = volume
calculator-choice-drop = drop
calculator-choice-small-glass = small glass
calculator-choice-cup = cup
calculator-choice-jar = jar
calculator-choice-pan = pan

calculator-unit-d = days
calculator-unit-min = minutes
calculator-unit-mg-d = mg a day
calculator-unit-by-mass = % by mass
calculator-unit-parts = parts
calculator-unit-workers = workers
calculator-unit-eggs = eggs
calculator-unit-mol-l = mol/L
