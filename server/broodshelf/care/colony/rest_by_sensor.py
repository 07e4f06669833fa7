"""A winter rest by its thermometer: it begins and ends with the days that sensors measured, whatever was marked.

Only what sensors measured decides; typed readings and settings leave a rest to the keeper's word. Common practice, no
source, unless a line names one.
"""

from __future__ import annotations

import datetime as dt
from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from typing import Final

from ...model.facts import ColonyState
from ...model.kinds.plan import Reason
from ...model.tasks import reason
from ..catalogue import Rest, Species
from .day_climate import DayClimate
from .history import day_number, day_of_number
from .season import SHORTEST_REST_DAYS, WARMER_C, warmest_rest_c
from .winter_rest import MONTH_DAYS, RAMP_DAYS, rest_window

COLD_DAYS: Final = 7
"""So many cold days on end are a rest; fewer are a cold spell."""
WARM_DAYS: Final = 5
"""So many warm days on end are its end; fewer are a fridge that was defrosted."""
GAP_DAYS: Final = 3
"""Over so many days without a measurement a run of days goes on."""
FREE: Final = frozenset({None, "well"})
"""Conditions that a rest may follow without anybody's word; of all others the keeper knows more."""


@dataclass(frozen=True, slots=True)
class Sensed:
    """A colony's state with its rest as the days tell it, and what is said of that."""

    state: ColonyState
    notices: tuple[Reason, ...] = ()


def rest_by_sensor(state: ColonyState, species: Species, by_day: Sequence[DayClimate], today: str) -> Sensed:
    """Return the state of a colony with the beginning, the end and the wake-up day of its rest as was measured.

    ``by_day``: up to ``today`` (an ISO day), which is not over and does not count.
    """
    rest = species.rest
    day = dt.date.fromisoformat(today)
    measured = [one for one in by_day if one.basis == "measured" and one.day < day_number(day)]
    if rest is None or rest.summer or not measured or day_number(day) - measured[-1].day > GAP_DAYS:
        return Sensed(state)
    if state.condition == "resting":
        return _marked(state, species, rest, measured, day)
    if state.condition in FREE:
        return _unmarked(state, species, rest, measured, day)
    return Sensed(state)


def _unmarked(
    state: ColonyState, species: Species, rest: Rest, measured: Sequence[DayClimate], day: dt.date
) -> Sensed:
    """Nobody marked a rest: a run of cold days in the season of its rest is one."""
    window = rest_window(species, day.isoformat(), state.latitude_sign, state.latitude_deg)
    run = _run(measured, lambda one: one.mean_c <= rest.high_c + WARMER_C)
    early = dt.timedelta(days=RAMP_DAYS)
    if len(run) < COLD_DAYS or window is None:
        return Sensed(state)
    if not dt.date.fromisoformat(window.begin_from) - early <= day <= dt.date.fromisoformat(window.end_until):
        return Sensed(state)
    began = day_of_number(run[0].day).isoformat()
    resting = replace(
        state, condition="resting", condition_since=began, resting_since=began, condition_until=None
    )
    said = reason("rest_by_sensor", days=day_number(day) - run[0].day, mean_c=_mean_c(run))
    return Sensed(resting, (said,))


def _marked(
    state: ColonyState, species: Species, rest: Rest, measured: Sequence[DayClimate], day: dt.date
) -> Sensed:
    """The keeper marked a rest: enough cold days and then warm ones end it, warm ones in between put its end off."""
    began_on = state.resting_since or state.condition_since
    if began_on is None or began_on > day.isoformat():
        return Sensed(state)
    began = day_number(dt.date.fromisoformat(began_on))
    since = [one for one in measured if one.day >= began]
    limit_c = warmest_rest_c(species)
    warm = _run(since, lambda one: one.mean_c > limit_c)
    cold = [one for one in since if one.mean_c <= limit_c]
    enough = max(SHORTEST_REST_DAYS, round(rest.low_months * MONTH_DAYS) - RAMP_DAYS)
    if len(warm) >= WARM_DAYS and len(cold) >= enough:
        ended = day_of_number(warm[0].day).isoformat()
        awake = replace(
            state, condition=None, condition_since=None, condition_until=ended, resting_since=began_on
        )
        said = reason(
            "rest_over_by_sensor", days=day_number(day) - warm[0].day, mean_c=_mean_c(warm), cold=len(cold)
        )
        return Sensed(awake, (said,))
    return _put_off(state, species, len(since) - len(cold), day)


def _put_off(state: ColonyState, species: Species, warm_days: int, day: dt.date) -> Sensed:
    """Put the wake-up day off by the days that were too warm for a rest, beyond those of its ramp.

    Not beyond the longest rest that its year allows.
    """
    late = warm_days - RAMP_DAYS
    window = rest_window(species, day.isoformat(), state.latitude_sign, state.latitude_deg)
    if late <= 0 or state.condition_until is None or window is None:
        return Sensed(state)
    until = dt.date.fromisoformat(state.condition_until)
    put_off = min(until + dt.timedelta(days=late), max(until, dt.date.fromisoformat(window.end_until)))
    if put_off == until:
        return Sensed(state)
    said = reason("wakes_later", warm=warm_days, later=(put_off - until).days)
    return Sensed(replace(state, condition_until=put_off.isoformat()), (said,))


def _run(measured: Sequence[DayClimate], holds: Callable[[DayClimate], bool]) -> list[DayClimate]:
    """Return the days at the end for which something holds, without a gap of more than ``GAP_DAYS``, oldest first."""
    run: list[DayClimate] = []
    for one in reversed(measured):
        if not holds(one) or (run and run[-1].day - one.day > GAP_DAYS):
            break
        run.append(one)
    return run[::-1]


def _mean_c(days: Sequence[DayClimate]) -> float:
    return round(sum(one.mean_c for one in days) / len(days), 1)
