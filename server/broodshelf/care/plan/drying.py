"""How the days of a colony's place dried its water, from how warm and moist they were."""

from __future__ import annotations

from collections.abc import Sequence
from statistics import fmean

from ...model.facts import Place
from ..colony.climate import SENSED_DAYS
from ..colony.day_climate import DayClimate
from ..water.drying_days import BY_SETTINGS, DryingDays
from ..water.evaporation import drying
from ..water.hydration import MOISTEST_PCT
from ..water.vessel_sizes import air_of

SLOWEST, FASTEST = 0.1, 5.0
"""A day counts for no less and no more: beyond it a sensor lies in the water or on the heater."""


def drying_days(
    climate: Sequence[DayClimate], place: Place, *, now_ms: int, utc_offset_min: int = 0
) -> DryingDays:
    """Return how the days of a place dried, up to today; the days to come dry like the last three."""
    if not climate or all(day.basis == day.humidity_basis == "assumed" for day in climate):
        return BY_SETTINGS
    usual = drying(*air_of(place))
    paces = tuple(_pace(day, place, usual) for day in climate)
    return DryingDays(climate[0].day, paces, fmean(paces[-SENSED_DAYS:]), now_ms, utc_offset_min)


def _pace(day: DayClimate, place: Place, usual: float) -> float:
    set_c, set_pct = air_of(place)
    temp_c = set_c if day.basis == "assumed" else min(50.0, max(0.0, day.mean_c))
    humidity_pct = set_pct if day.humidity_basis == "assumed" else min(MOISTEST_PCT, day.humidity_pct)
    if (temp_c, humidity_pct) == (set_c, set_pct):
        return 1.0
    return min(FASTEST, max(SLOWEST, drying(temp_c, humidity_pct) / usual))
