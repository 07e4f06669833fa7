### Wärme, Trockenheit und die Ruhezeit im Jahr: warum etwas zu tun ist.

reason-too-hot = { DEGREES($temperature_c) }: Über { DEGREES($limit_c) } ist diese Art in Gefahr ({ $source }). Schalt die Heizung aus, nimm sie aus der Sonne, gib ihr ein kühles und ein feuchtes Ende. Kein Kühlschrank. Trag eine neue Messung ein, wenn es kühler ist.
reason-too-cold = { DEGREES($temperature_c) }: Unter { DEGREES($limit_c) } ist diese Art in Gefahr, solange sie wach ist ({ $source }). Bring sie heute an einen wärmeren Platz und lass sie langsam warm werden. Trag eine neue Messung ein, wenn es wärmer ist.
reason-overheating = Der Sensor misst { DEGREES($temperature_c) }: Über { DEGREES($limit_c) } ist diese Art in Gefahr ({ $source }). Schalt die Heizung aus, nimm sie aus der Sonne, gib ihr ein kühles und ein feuchtes Ende. Kein Kühlschrank.
reason-freezing = Der Sensor misst { DEGREES($temperature_c) }: Das Wasser gefriert, und das Reagenzglas kann platzen. Bring sie an einen kühlen Platz über { DEGREES($limit_c) }, ohne Hast und ohne Heizung.
reason-rest-colder = Der Sensor misst { DEGREES($temperature_c) }, weniger als die { DEGREES($limit_c) }, die diese Art in der Ruhezeit verträgt (gängige Praxis). Bring sie an einen kühlen Platz darüber, ohne Hast und ohne Heizung.
reason-rising-fast = Es sind { DEGREES($temperature_c) }, und es steigt um { DEGREES_APART($rise_c) } in der Stunde: So ist es in zwei Stunden über { DEGREES($limit_c) }, wo diese Art in Gefahr ist ({ $source }). Sieh nach, ob die Sonne darauf scheint oder die Heizung kein Ende findet, und stell das ab.
reason-heater-on = Seit { $hours } Stunden ist es { DEGREES_APART($by_c) } wärmer als sonst um diese Zeit: jetzt { DEGREES($temperature_c) }. Wird sie beheizt, sieh nach, ob der Thermostat hängt; sonst such die Sonne oder einen Heizkörper.
reason-heater-off = Seit { $hours } Stunden ist es { DEGREES_APART($by_c) } kälter als sonst um diese Zeit: jetzt { DEGREES($temperature_c) }. Wird sie beheizt, sieh nach, ob die Heizung noch geht; sonst such ein offenes Fenster.
reason-fridge-open = Im Kühlschrank sind es { DEGREES($temperature_c) } statt { DEGREES($usual_c) }: Sieh nach, ob die Tür zu ist und der Kühlschrank läuft. Eine Kolonie, die in der Ruhezeit warm wird, verbraucht, wovon sie lebt.
reason-dry-air = Die Luft hat { $humidity_pct } % Feuchte statt { $usual_pct } %: Das Nest trocknet schneller als zuvor. Sieh nach dem feuchten Ende und befeuchte es, wenn es trocken ist.
reason-rest-water =
    Vor { $days ->
        [one] { $days } Tag
       *[other] { $days } Tagen
    } nachgesehen. In der Ruhezeit wird alle { $low } bis { $high } Tage nach dem Wasser gesehen (gängige Praxis).
reason-rest-airing = Öffne die Kühlschrankbox einmal in der Woche für eine Minute: Die Luft darin ist verbraucht (gängige Praxis). Zuletzt vor { $days } Tagen gelüftet.
reason-wake-up = An diesem Tag endet die Ruhezeit: Wärme sie in etwa { $ramp_days } Tagen auf, biete zuerst Zucker an (gängige Praxis) und stell den Zustand auf „Wohlauf“.
reason-wake-up-summer = An diesem Tag endet die Sommerruhe: Stell den Zustand auf „Wohlauf“ und biete wieder Zucker und kleine Futtertiere an (gängige Praxis).
reason-rest-too-warm = Sie ist als ruhend markiert, aber ihr Platz hat { DEGREES($mean_c) }; über { DEGREES($limit_c) } ist sie wach und zehrt ihre Reserven auf (gängige Praxis). Entweder steht sie doch kühler: Wähle diesen Platz. Oder kühle sie ab. Oder stell den Zustand auf „Wohlauf“. Bis dahin wird ihr Futter angeboten, als wäre sie wach.
reason-rest-not-for-species = Sie ist als ruhend markiert, aber diese Art hat keine Ruhezeit im Jahr: Halte sie bei mindestens { DEGREES($least_c) } (gängige Praxis; jetzt { DEGREES($mean_c) }) und stell den Zustand auf „Wohlauf“. Bis dahin wird sie gefüttert, als wäre sie wach.
reason-rest-frost = Zu kalt für die Ruhezeit: { DEGREES($coldest_c) }. Bring sie heute an einen Platz über { DEGREES($limit_c) }, ohne sie aufzuwärmen (gängige Praxis).

source-common-practice = gängige Praxis
