## Plätze und ihr Klima.

place-title = Plätze
place-about = Schrank, Zimmer, Keller oder Kühlschrank: Ihre Wärme und Trockenheit wirken in jedem Plan auf Futter, Wasser und Brut.
place-empty = Noch kein Platz notiert. Ohne Platz wird ein Zimmer mit { DEGREES(22) } angenommen (gängige Praxis).
place-add = Platz hinzufügen
place-change = Ändern
place-reading = Messung eintragen
place-log = Messung eintragen
place-sensors = Sensoren
place-chart = Über die Zeit
place-close = Schließen
place-open = Plätze ansehen
place-name = Name des Platzes
place-type = Was es ist

place-type-cabinet = Schrank
place-type-room = Zimmer
place-type-cellar = Keller
place-type-fridge = Kühlschrank

place-nobody = Hier steht noch keine Kolonie: Wähle den Platz in der Kolonie unter „Ändern“.

place-day-temp = Am Tag, { $unit }
place-night-temp = In der Nacht, { $unit }
place-humidity = Luftfeuchte, %
place-temperature = Temperatur, { $unit }
place-stands = Steht in
place-nowhere = nicht angegeben
place-none-yet = Füge erst unter Haus einen Platz hinzu.
place-day = { $warm } am Tag
place-night = { $warm } in der Nacht
place-moist = { $percent } % Luftfeuchte

place-last = Zuletzt abgelesen: { $what } ({ $when })
place-bad-temp = Diese Temperatur kann nicht sein: Gib sie in { $unit } ein.
place-bad-moist = Luftfeuchte liegt zwischen 0 und 100 %.
place-nothing = Gib eine Temperatur oder eine Luftfeuchte ein.
