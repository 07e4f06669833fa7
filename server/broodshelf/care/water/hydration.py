"""Water for nests that are not tubes: how often, how much, and who needs a drinker. Common practice, no source."""

from __future__ import annotations

import math
from typing import Final

from ...model.kinds.plan import Reason
from ...model.quantities import Estimate, within
from ...model.tasks import reason
from .evaporation import drying

ROOM_DAYS: Final = Estimate(3.0, 5.5, 10.0)
"""A nest is watered every 3 to 10 days in a room (common practice, no source); 5.5 is the middle on a log scale."""
SHORTEST_DAYS, LONGEST_DAYS = 3.0, 28.0
"""Looked at this often at most and at least: in a cold rest every 2 to 4 weeks (common practice, no source)."""
MOISTEST_PCT: Final = 95.0
"""Moister air counts as this: nothing would dry, and 'never' is no plan."""
SMALLEST_ML: Final = 0.5
DRINKER_WORKERS: Final = 500
"""From so many workers on a drinker in the outworld is advised beside the damp end (common practice, no source)."""


def hydration_days(temp_c: float, humidity_pct: float) -> Estimate:
    """Return the days between waterings of a nest, 3 to 10 in a usual room, scaled by how much vapour the air lacks.

    0 to 50 °C and 0 to 100 % relative humidity; held inside 3 to 28 days.
    """
    within("humidity_pct", humidity_pct, "%", 0, 100)
    dry = drying(temp_c, min(MOISTEST_PCT, humidity_pct))
    days = (ROOM_DAYS.low / dry, ROOM_DAYS.best / dry, ROOM_DAYS.high / dry)
    return Estimate(*(min(LONGEST_DAYS, max(SHORTEST_DAYS, d)) for d in days))


def hydration_ml(reservoir_ml: float, level_share: float) -> float:
    """Return how many mL fill a nest's reservoir up, in steps of half a mL that a syringe can do; at least half."""
    missing = within("reservoir_ml", reservoir_ml, "mL", 0, 5000) * (
        1 - within("level", level_share, "", 0, 1)
    )
    return max(SMALLEST_ML, math.floor(missing / SMALLEST_ML) * SMALLEST_ML)


def hydration_reasons(workers: float) -> list[Reason]:
    """Return what to say with every watering: a damp and a dry end, and a drinker for many workers."""
    reasons = [reason("water_damp_end")]
    if within("workers", workers, "workers", 0, 1e7) >= DRINKER_WORKERS:
        reasons.append(reason("water_drinker"))
    return reasons
