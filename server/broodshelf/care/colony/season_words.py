"""What is said of a colony's year: its rest and when it begins, ends or does not fit, and its quiet months."""

from __future__ import annotations

import datetime as dt
from typing import Final

from ...model.facts import ColonyState
from ...model.kinds.plan import Reason
from ...model.tasks import Task, TaskKey, reason
from ..catalogue import Species
from .climate import Climate
from .history import midnight_ms
from .season import Season, warmest_rest_c
from .temperature import FREEZING_C, limits_of
from .winter_rest import MONTH_DAYS, RAMP_DAYS, RestWindow, rest_window, usual_months

TROPICAL_LEAST_C: Final = 20
"""What tropical ants are kept at, at least (common practice, no source)."""
OWN_REST_DAYS: Final = 120
"""A rest that ended so shortly before the usual season was this season's."""

Said = Reason


def season_notices(
    season: Season,
    state: ColonyState,
    species: Species,
    day: dt.date,
    *,
    larvae_counted: bool | None = None,
    protein: bool = True,
) -> list[Said]:
    """Return the notices of a colony's year on a day. ``larvae_counted``: lately, and whether there were some.

    ``protein``: it is fed some; where it is not, nothing is said of it.
    """
    summer = species.rest is not None and species.rest.summer
    if season.resting:
        return [reason("resting_summer" if summer else "resting"), *_end_of_rest(season, state, species, day)]
    found: list[Said] = []
    if season.slow and (summer or season.kept_warm):
        code = {True: "yearly_clock_larvae", False: "yearly_clock_none", None: "yearly_clock"}[
            larvae_counted if protein else False
        ]
        found.append(reason(f"{code}_summer" if summer else code))
    window = rest_window(species, day.isoformat(), state.latitude_sign, state.latitude_deg)
    if window is not None and not season.marked and not _rested_this_season(season, window):
        found += _beginning(window, season, state, day)
    return found


def season_tasks(
    season: Season, state: ColonyState, species: Species, climate: Climate, day: dt.date
) -> list[Task]:
    """Return what is to be put right at once: a rest that does not fit its place or its species."""
    if not season.marked:
        return []
    today_ms = midnight_ms(day.isoformat(), state.utc_offset_min)
    coldest_c = min(climate.day_c.best, climate.night_c.best)
    if season.misfit == "rest_not_for_species":
        why = reason("rest_not_for_species", mean_c=_c(climate.mean_c.best), least_c=TROPICAL_LEAST_C)
    elif season.misfit == "rest_too_warm":
        args = {"mean_c": _c(climate.mean_c.best), "limit_c": _c(warmest_rest_c(species))}
        why = reason("rest_too_warm", **args)
    elif coldest_c < limits_of(species).frost_c or coldest_c <= FREEZING_C:
        why = reason("rest_frost", coldest_c=_c(coldest_c), limit_c=_c(limits_of(species).frost_c))
        return [Task(TaskKey("rest_fits", "rest_frost"), "rest", today_ms, urgent=True, reasons=(why,))]
    else:
        return []
    return [Task(TaskKey("rest_fits", season.misfit), "rest", today_ms, reasons=(why,))]


def usual_end(season: Season, species: Species) -> tuple[dt.date, dt.date] | None:
    """Return from and until which day a rest that goes on usually ends; None where nobody knows its beginning."""
    if season.began_on is None:
        return None
    low, high = (dt.timedelta(days=round(months * MONTH_DAYS)) for months in usual_months(species.rest))
    return season.began_on + low, season.began_on + high


def _end_of_rest(season: Season, state: ColonyState, species: Species, day: dt.date) -> list[Said]:
    if season.over_days is not None:
        return [reason("rest_over", days=season.over_days)]
    if state.condition_until is not None:
        return [reason("wakes_in", days=(dt.date.fromisoformat(state.condition_until) - day).days)]
    ends = usual_end(season, species)
    if ends is None or day < ends[0]:
        return []
    if day >= ends[1]:
        return [reason("rest_over", days=(day - ends[1]).days)]
    return [reason("rest_may_end", days=(ends[1] - day).days)]


def _beginning(window: RestWindow, season: Season, state: ColonyState, day: dt.date) -> list[Said]:
    """Return that the rest may begin, or that it should have begun by now, as long as it can be made up for."""
    rest, ramp = window.rest, dt.timedelta(days=RAMP_DAYS)
    begin_from, begin_until, end_from = map(
        dt.date.fromisoformat, (window.begin_from, window.begin_until, window.end_from)
    )
    named = {"low_c": rest.low_c, "high_c": rest.high_c, "ramp_days": RAMP_DAYS}
    if not season.kept_warm and begin_from <= day <= end_from and not rest.summer:
        return [reason("rest_unmarked", mean_c=_c(season.mean_c), low_c=rest.low_c, high_c=rest.high_c)]
    if begin_from - ramp <= day <= begin_until:
        low, high = max(0, (begin_from - day).days), (begin_until - day).days
        if rest.summer:
            return [reason("rest_begins_summer", low=low, high=high)]
        return [reason("rest_begins", low=low, high=high, hours=round(window.begin_hours, 1), **named)]
    came = None if state.acquired_on is None else dt.date.fromisoformat(state.acquired_on)
    elsewhere = came is not None and came > begin_from  # it may have rested where it came from
    if begin_until < day <= end_from and not rest.summer and not elsewhere:
        months = {"low_months": rest.low_months, "high_months": rest.high_months}
        return [reason("rest_missed", **months, **named)]
    return []


def _rested_this_season(season: Season, window: RestWindow) -> bool:
    if season.rested is None:
        return False
    return season.rested[1] > dt.date.fromisoformat(window.begin_from) - dt.timedelta(days=OWN_REST_DAYS)


def _c(celsius: float) -> float:
    rounded = round(celsius, 1)
    return int(rounded) if float(rounded).is_integer() else rounded
