### Rules for carrying a colony.

travel-no-loose-liquid = No loose liquid: no drops, no feeder; let the outworld dry.
travel-plugs-tight = All plugs and lids tight, with a little air.
travel-dark-and-calm = Dark, lying as it always lies, wrapped so that nothing rolls.
travel-travel-warmth = { DEGREES($low_c) } to { DEGREES($high_c) } the whole way; never in a parked car (common practice).
travel-quiet-after = Then { $low } to { $high } quiet days: refused food means nothing (common practice).
travel-never-tilt = Never tilt it: repletes that fall are lost.
travel-double-lid = It stings: a second closed box around it, with a label.
