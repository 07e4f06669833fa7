"""What a plan says of the warmth as it was: beside what was set, and summed up over the season."""

from __future__ import annotations

import datetime as dt
from typing import Final

from ...model.kinds.plan import Reason, SeasonWarmth
from ...model.tasks import reason
from ..colony.census import life_group
from ..colony.climate import sensed_halves
from ..colony.day_climate import degree_days, share_assumed
from ..colony.history import day_number, day_of_number, local_day
from .known import Known

TOLD_C: Final = 2.0
"""A sensor that differs by less from what was set is not told: so well is a setting known (``SETTING_SPREAD_C``)."""


def otherwise_than_set(known: Known) -> Reason | None:
    """Return the notice that it is colder or warmer than the keeper set, by the sensors of the last three days.

    None without a sensor, without a setting, or where both agree.
    """
    state = known.state
    sensed = sensed_halves(state.hours, known.now_ms, state.utc_offset_min)
    halves = ((sensed.day_c, state.place.day_temp_c), (sensed.night_c, state.place.night_temp_c))
    pairs = [(was, setting) for was, setting in halves if was is not None and setting is not None]
    off = [pair for pair in pairs if round(abs(pair[0] - pair[1]), 6) >= TOLD_C]
    if not off:
        return None
    was_c, set_c = max(off, key=lambda pair: abs(pair[0] - pair[1]))
    code = "colder_than_set" if was_c < set_c else "warmer_than_set"
    return reason(code, measured_c=round(was_c), set_c=round(set_c, 1))


def season_warmth(known: Known) -> SeasonWarmth | None:
    """Return the degree-days of this season so far (``kinds.plan.SeasonWarmth``).

    The season begins with the day after the last rest, else with the calendar's coldest half; it counts what exceeds
    the threshold of the eggs of the colony's group. None in a rest, and where nothing of it was measured or read.
    """
    season = known.switched.season
    if season is None or known.switched.resting or not known.by_day:
        return None
    today = dt.date.fromisoformat(known.today)
    begin = season.rested[1] if season.rested is not None else _new_year(today, known.state.latitude_sign)
    known_since = local_day(known.since_ms, known.state.utc_offset_min)
    since = max(day_number(begin), known.by_day[0].day, day_number(known_since))
    days = [day for day in known.by_day if day.day >= since]
    assumed = share_assumed(days)
    if assumed == 1:
        return None
    threshold_c = life_group(known.species.genus).eggs.threshold_c
    return {
        "since_on": day_of_number(since).isoformat(),
        "degree_days": round(degree_days(days, threshold_c)),
        "threshold_c": threshold_c,
        "assumed": round(assumed, 2),
    }


def _new_year(today: dt.date, latitude_sign: int) -> dt.date:
    """Return the last New Year, in the south of the equator the last first of July."""
    begin = dt.date(today.year, 1 if latitude_sign > 0 else 7, 1)
    return begin if begin <= today else begin.replace(year=today.year - 1)
