## Places and their climate.

place-title = Places
place-about = Cabinet, room, cellar or fridge: their warmth and dryness move food, water and brood in every plan.
place-empty = No place is noted. Without one a room of { DEGREES(22) } is assumed (common practice).
place-add = Add a place
place-change = Change
place-reading = Log a reading
place-log = Log the reading
place-sensors = Sensors
place-chart = Over time
place-close = Close
place-open = See the places
place-name = Name of the place
place-type = What it is

place-type-cabinet = Cabinet
place-type-room = Room
place-type-cellar = Cellar
place-type-fridge = Fridge

place-nobody = No colony stands here yet: choose it in the colony under Change.

# $unit is °C or °F.
place-day-temp = By day, { $unit }
place-night-temp = At night, { $unit }
place-humidity = Humidity, %
place-temperature = Temperature, { $unit }
place-stands = Stands in
place-nowhere = not said
place-none-yet = Add a place first, under House.
place-day = { $warm } by day
place-night = { $warm } at night
place-moist = { $percent } % humidity

# $what is a list of readings, $when an instant.
place-last = Last read: { $what } ({ $when })
place-bad-temp = This temperature cannot be: type { $unit }.
place-bad-moist = Humidity lies between 0 and 100 %.
place-nothing = Type a temperature or a humidity.
