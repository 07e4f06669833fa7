### Was eine Kolonie braucht, und worum eine Aufgabe bittet.

## Bedürfnisse. `.inside` ist dasselbe in einem Satz oder einer Liste.

need-sugar = Zucker
    .inside = Zucker
need-protein = Eiweiß
    .inside = Eiweiß
need-seeds = Samen
    .inside = Samen
need-leaves = Blätter
    .inside = Blätter
need-water = Wasser
    .inside = Wasser
need-leftovers = Futterreste
    .inside = Futterreste
need-room = Platz
    .inside = Platz
need-barrier = Ausbruchschutz
    .inside = Ausbruchschutz
need-rest = Ruhezeit
    .inside = Ruhezeit
need-glance = Ein ruhiger Blick
    .inside = ein ruhiger Blick

## Worum eine Aufgabe bittet.

todo-water = Sorge für Wasser
todo-water-look = Sieh nach, wie viel Wasser da ist
todo-leak = Sieh nach, ob es ausläuft
todo-too-hot = Kühle sie ab
todo-too-cold = Stell sie wärmer
todo-overheating = Kühle sie sofort ab
todo-freezing = Hol sie aus dem Frost
todo-rising-fast = Sieh nach, warum es so schnell warm wird
todo-heater-on = Sieh nach, ob die Heizung nicht mehr ausgeht
todo-heater-off = Sieh nach, ob die Heizung ausgefallen ist
todo-fridge-open = Mach den Kühlschrank zu
todo-dry-air = Sieh nach dem Wasser: Die Luft ist trocken
todo-risk-look = Sieh nach, ob es ihnen gut geht
todo-move-look = Sieh nach, ob sie umgezogen sind
todo-move-end = Sieh nach, ob sie umgezogen sind
todo-leftovers = Nimm die Futterreste heraus
todo-room = Biete ein neues Nest an
todo-mould-look = Sieh wieder nach dem Schimmel
todo-barrier = Sieh nach dem Ausbruchschutz
todo-glance = Sieh kurz und ruhig hin
todo-rest = Sorge für die Ruhezeit
todo-rest-air = Öffne die Kühlschrankbox eine Minute
todo-rest-fits = Stell die Ruhezeit richtig
todo-wake-up = Weck sie auf
todo-ask = Sieh nach und zähle
