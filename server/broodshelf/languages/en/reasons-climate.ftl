### Warmth, dryness and the yearly rest: why something is to be done.

reason-too-hot = { DEGREES($temperature_c) }: over { DEGREES($limit_c) } this kind is in danger ({ $source }). Switch the heating off, move it out of the sun, give it a cool and a damp end. No fridge. Log a new reading when it is cooler.
reason-too-cold = { DEGREES($temperature_c) }: under { DEGREES($limit_c) } this kind is in danger while it is awake ({ $source }). Bring it to a warmer place today and let it warm up slowly. Log a new reading when it is warmer.
reason-overheating = The sensor measures { DEGREES($temperature_c) }: over { DEGREES($limit_c) } this kind is in danger ({ $source }). Switch the heating off, move it out of the sun, give it a cool and a damp end. No fridge.
reason-freezing = The sensor measures { DEGREES($temperature_c) }: the water freezes and the tube may burst. Bring it to a cool place above { DEGREES($limit_c) }, without haste and without a heater.
reason-rest-colder = The sensor measures { DEGREES($temperature_c) }, under the { DEGREES($limit_c) } that the rest of this kind bears (common practice). Bring it to a cool place above that, without haste and without a heater.
reason-rising-fast = It is { DEGREES($temperature_c) } and rises by { DEGREES_APART($rise_c) } an hour: at this pace it is over { DEGREES($limit_c) } within two hours, where this kind is in danger ({ $source }). See whether the sun is on it or the heater has no end, and switch that off.
reason-heater-on = For { $hours } hours it has been { DEGREES_APART($by_c) } warmer than it usually is at this time: { DEGREES($temperature_c) } now. If a heater warms it, see whether its thermostat is stuck; else look for the sun or a radiator.
reason-heater-off = For { $hours } hours it has been { DEGREES_APART($by_c) } colder than it usually is at this time: { DEGREES($temperature_c) } now. If a heater warms it, see whether it still does; else look for an open window.
reason-fridge-open = It is { DEGREES($temperature_c) } in the fridge instead of { DEGREES($usual_c) }: see whether the door is closed and the fridge runs. A colony that warms up in its rest uses up what it lives on.
reason-dry-air = The air has { $humidity_pct } % humidity instead of { $usual_pct } %: the nest dries faster than it did. Look at its damp end and water it if it is dry.
reason-rest-water =
    Looked at { $days ->
        [one] { $days } day
       *[other] { $days } days
    } ago. In its rest the water is looked at every { $low } to { $high } days (common practice).
reason-rest-airing = Open the fridge box for a minute once a week: the air in it is used up (common practice). Last aired { $days } days ago.
reason-wake-up = On this day its rest ends: warm it up over about { $ramp_days } days, offer sugar first (common practice), and set its condition to well.
reason-wake-up-summer = On this day its summer rest ends: set its condition to well and offer sugar and small prey again (common practice).
reason-rest-too-warm = It is marked as resting, but its place has { DEGREES($mean_c) }; at more than { DEGREES($limit_c) } it is awake and eats up its reserves (common practice). Either it stands somewhere cooler: choose that place. Or cool it down. Or set its condition to well. Until then it is offered food as if it were awake.
reason-rest-not-for-species = It is marked as resting, but this species has no yearly rest: keep it at { DEGREES($least_c) } at least (common practice; now { DEGREES($mean_c) }) and set its condition to well. Until then it is fed as if it were awake.
reason-rest-frost = Too cold in its rest: { DEGREES($coldest_c) }. Bring it to a place above { DEGREES($limit_c) } today, without warming it up (common practice).

# $source in the messages above, where a limit has no published source: what keepers do, by experience.
source-common-practice = common practice
