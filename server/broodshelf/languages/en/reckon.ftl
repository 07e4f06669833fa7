### The calculators. Sources stay as they are published; only what surrounds them is translated.

reckon-sugar-water = Sugar water
reckon-dilute = Dilute honey, syrup or jam
reckon-cooling = When a warm solution is cool enough
reckon-prey = Prey for a colony
reckon-tube-water = Water in a test tube
reckon-brood = From egg to worker

## How each one reckons.

reckon-formula-prey = pieces = protein need / (fresh mass x protein share); need = 20 mg per g of workers and day
reckon-formula-sugar-water = sugar = strength x mass; mass = volume x density(strength); mol/L = g/L / 342.2965
reckon-formula-dilute = sweet food = strength x mass / share of sugars in the food; the rest is water
reckon-formula-cooling = T(t) = room + (start - room) exp(-k t)
reckon-formula-tube-water = Stefan diffusion of vapour through air and cotton to the room, times 2 for a tube in use
reckon-formula-brood = days = degree days of a stage / (temperature - threshold), day and night half each

## Where its formula and figures are from.

reckon-source-prey = Macom & Porter 1995; Finke 2002/2013 and USDA SR26 compositions; sizes and handling: common practice
reckon-source-sugar-water = CRC Handbook of Chemistry and Physics, sucrose, { DEGREES(20) } (second-hand); bulk density of sugar 0.85 g/mL (from memory)
reckon-source-dilute = USDA SR26 compositions; density as of sucrose of that strength
reckon-source-cooling = Newton's law of cooling; k of the vessels is our own estimate, or from your two readings
reckon-source-tube-water = Bird, Stewart & Lightfoot (diffusion tube); vapour pressure within 0.1 % of IAPWS; the factor of a tube in use: common practice, no source
reckon-source-brood = by group of species; the last line names the source of this one

## Where it holds, and how far it may be off.

reckon-limits-prey = a colony with growing brood and sugar on offer, one species measured; other colonies differ twofold
reckon-limits-sugar-water = 0 to 67.09 % by mass, { DEGREES(20) }; by volume a spoon may hold a tenth more or less
reckon-limits-dilute = up to the sugars of the food itself; honey's own sugars differ from sucrose by about 1 % in volume
reckon-limits-cooling = still air, no lid; the room at least half a degree below the goal
reckon-limits-tube-water = a third to three times as long, by cotton, handling and draught; readings of your own tube are better
reckon-limits-brood = inside the temperatures that were studied for the group; outside them it refuses
