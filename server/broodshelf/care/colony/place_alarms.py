"""What the sensors of a place tell before it is too hot or too cold, each learnt from the place's own days.

Rising fast, a heater that stays on or off, a fridge that stands open in a rest, air that dries a nest. An alarm begins
with the first hour of its run and ends with the first hour that is as usual. All thresholds: common practice, no
source.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from itertools import pairwise, takewhile
from statistics import median
from typing import Any, Final

from ...model.facts import Hour
from ...model.gauges import DAY_MS, HOUR_MS
from ...model.tasks import Task, TaskKey, What, check_of, reason
from .history import clock_hour
from .temperature import SENSED_ALARM_MS

OWN_DAYS: Final = 5
"""So many days must have known an hour of the clock before it counts as usual."""
RUN_HOURS: Final = 4
"""So long the temperature must be unusual: a door or a window is open for less."""
UNUSUAL_C: Final = 3.0
SPREADS: Final = 4.0
"""It is unusual by at least so many degrees, and so many times what that hour differs from day to day."""
NORMAL_MAD: Final = 1.4826
"""The standard deviation of a normal distribution, in median absolute deviations."""
RISE_C, RISE_BEYOND_USUAL_C, AHEAD_HOURS = 2.0, 1.5, 2.0
"""Rising fast: by so much an hour, so much more than that hour usually brings, and over the limit within so long."""
DRY_PCT, DRIER_BY_PCT, DRY_HOURS = 30.0, 10.0, 12
"""Dry air: below this and so much below the usual in at least so many of the last 24 hours."""


@dataclass(frozen=True, slots=True)
class Usual:
    """What an hour of the clock usually has, and how much days differ (a standard deviation)."""

    best: float
    spread: float


@dataclass(frozen=True, slots=True)
class Around:
    """What an alarm depends on besides the hours.

    ``hot_c``: over it is too hot for who lives there, by ``hot_source``. ``resting_fridge``: a colony rests there in a
    fridge. ``nest_dries``: its nest is watered and no tube. ``looked_ms``, ``water_seen_ms``: when somebody last looked
    at the colony, and at its water.
    """

    hot_c: float
    hot_source: str = "common practice"
    resting_fridge: bool = False
    nest_dries: bool = False
    utc_offset_min: int = 0
    looked_ms: int | None = None
    water_seen_ms: int | None = None


def place_alarms(hours: Sequence[Hour], around: Around, now_ms: int) -> list[Task]:
    """Return what the sensors of a place ask a look for: at most one task by warmth, and one by dry air.

    ``hours``: of the last two weeks, oldest first. The first of open fridge, rising fast and heater speaks for warmth.
    """
    warmth = [hour for hour in hours if hour.temperature_c is not None and hour.hour_ms <= now_ms]
    found = []
    if warmth and now_ms - warmth[-1].hour_ms <= SENSED_ALARM_MS:
        usual = _usual_warmth(warmth, around)
        for ask in (_fridge_open, _rising, _heater):
            task = ask(warmth, usual, around)
            if task is not None:
                found.append(task)
                break
    dry = _dry_air(hours, around, now_ms) if around.nest_dries else None
    return found if dry is None else [*found, dry]


def usual_by_clock(
    hours: Sequence[Hour], value: Callable[[Hour], float | None], utc_offset_min: int, before_ms: int
) -> dict[int, Usual]:
    """Return what each hour of the clock (0 to 23) usually has, from the days before an instant.

    Medians: days on which the heater was stuck must not teach that this is usual. Hours that too few days knew are
    left out.
    """
    by_clock: dict[int, list[float]] = {}
    for hour in hours:
        known = value(hour)
        if known is not None and hour.hour_ms < before_ms:
            by_clock.setdefault(clock_hour(hour.hour_ms, utc_offset_min), []).append(known)
    usual = {}
    for clock, measured in by_clock.items():
        if len(measured) >= OWN_DAYS:
            middle = median(measured)
            usual[clock] = Usual(middle, NORMAL_MAD * median(abs(each - middle) for each in measured))
    return usual


def _fridge_open(warmth: Sequence[Hour], usual: Mapping[int, Usual], around: Around) -> Task | None:
    if not around.resting_fridge:
        return None
    run = _run_at_the_end(warmth, lambda hour: _beyond(hour, usual, around) > UNUSUAL_C)
    if not run:
        return None
    now_c, usual_c = _degrees(run[-1]), _usual_at(run[-1], usual, around)
    return _look(
        "fridge_open", run, around, urgent=True, temperature_c=_tenth(now_c), usual_c=_tenth(usual_c)
    )


def _rising(warmth: Sequence[Hour], usual: Mapping[int, Usual], around: Around) -> Task | None:
    rises = {hour.hour_ms: _rise(before, hour) for before, hour in pairwise(warmth)}

    def fast(hour: Hour) -> bool:
        rise = rises.get(hour.hour_ms)
        if rise is None or rise < RISE_C or _degrees(hour) > around.hot_c:
            return False
        if _beyond(hour, usual, around) < 0:
            return False  # it only comes back to what is usual
        usual_rise = _usual_at(hour, usual, around) - _usual_at(_hour_before(hour), usual, around)
        return (
            rise - max(0.0, usual_rise) >= RISE_BEYOND_USUAL_C
            and _degrees(hour) + rise * AHEAD_HOURS > around.hot_c
        )

    run = _run_at_the_end(warmth, fast)
    if not run:
        return None
    said = {"rise_c": _tenth(rises[run[-1].hour_ms] or 0.0), "temperature_c": _tenth(_degrees(run[-1]))}
    return _look(
        "rising_fast", run, around, urgent=True, limit_c=round(around.hot_c), source=around.hot_source, **said
    )


def _heater(warmth: Sequence[Hour], usual: Mapping[int, Usual], around: Around) -> Task | None:
    """Return the look at a heater: for hours it has been warmer, or colder, than these hours ever are."""
    for what, sign in (("heater_on", 1), ("heater_off", -1)):
        run = _run_at_the_end(warmth, lambda hour, sign=sign: _is_unusual(hour, sign, usual, around))  # type: ignore[misc]
        if len(run) >= RUN_HOURS:
            by_c = _degrees(run[-1]) - _usual_at(run[-1], usual, around)
            said = {"by_c": _tenth(abs(by_c)), "hours": len(run), "temperature_c": _tenth(_degrees(run[-1]))}
            return _look(what, run, around, **said)  # type: ignore[arg-type]
    return None


def _dry_air(hours: Sequence[Hour], around: Around, now_ms: int) -> Task | None:
    """Return the watering of a nest in air that has become dry; quiet once its water was seen to since that began."""
    last = [h for h in hours if h.humidity_pct is not None and now_ms - DAY_MS < h.hour_ms <= now_ms]
    usual = usual_by_clock(hours, lambda hour: hour.humidity_pct, around.utc_offset_min, now_ms - DAY_MS)
    if not last or now_ms - last[-1].hour_ms > SENSED_ALARM_MS or not usual:
        return None
    usual_pct = median(each.best for each in usual.values())
    dry = [h for h in last if _percent(h) < min(DRY_PCT, usual_pct - DRIER_BY_PCT)]
    if len(dry) < DRY_HOURS:
        return None
    since = _run_at_the_end(hours, lambda h: h.humidity_pct is None or _percent(h) < usual_pct - DRIER_BY_PCT)
    began_ms = since[0].hour_ms if since else dry[0].hour_ms
    if around.water_seen_ms is not None and around.water_seen_ms > began_ms:
        return None
    why = reason("dry_air", humidity_pct=round(median(map(_percent, dry))), usual_pct=round(usual_pct))
    key = TaskKey("dry_air", f"sensor-{began_ms}")
    return Task(key, "water", now_ms, suggested=check_of("water"), reasons=(why,))


def _look(
    what: What, run: Sequence[Hour], around: Around, *, urgent: bool = False, **said: Any
) -> Task | None:
    """Return a look at the colony; None where somebody looked since the run began."""
    began_ms = run[0].hour_ms
    if around.looked_ms is not None and around.looked_ms > began_ms:
        return None
    key = TaskKey(what, f"sensor-{began_ms}")
    why = reason(what, **said)
    return Task(key, "glance", began_ms, urgent=urgent, suggested=check_of("glance"), reasons=(why,))


def _usual_warmth(warmth: Sequence[Hour], around: Around) -> Mapping[int, Usual]:
    """Return the usual temperatures of the days before the last one: what runs now must not teach itself."""
    before_ms = warmth[-1].hour_ms - DAY_MS + HOUR_MS
    return usual_by_clock(warmth, lambda hour: hour.temperature_c, around.utc_offset_min, before_ms)


def _is_unusual(hour: Hour, sign: int, usual: Mapping[int, Usual], around: Around) -> bool:
    its = usual.get(clock_hour(hour.hour_ms, around.utc_offset_min))
    return its is not None and sign * (_degrees(hour) - its.best) > max(UNUSUAL_C, SPREADS * its.spread)


def _beyond(hour: Hour, usual: Mapping[int, Usual], around: Around) -> float:
    """Return by how much it is warmer than usual; nothing where nobody knows the usual."""
    return _degrees(hour) - _usual_at(hour, usual, around)


def _usual_at(hour: Hour, usual: Mapping[int, Usual], around: Around) -> float:
    its = usual.get(clock_hour(hour.hour_ms, around.utc_offset_min))
    return _degrees(hour) if its is None else its.best


def _hour_before(hour: Hour) -> Hour:
    return Hour(hour.hour_ms - HOUR_MS, hour.temperature_c)


def _rise(before: Hour, hour: Hour) -> float | None:
    """Return the rise in °C an hour; None over a gap."""
    gap_hours = (hour.hour_ms - before.hour_ms) / HOUR_MS
    return None if gap_hours > 2 else (_degrees(hour) - _degrees(before)) / gap_hours


def _run_at_the_end(hours: Sequence[Hour], holds: Callable[[Hour], bool]) -> list[Hour]:
    """Return the hours at the end for which something holds without a break, oldest first."""
    return list(takewhile(holds, reversed(hours)))[::-1]


def _degrees(hour: Hour) -> float:
    return hour.temperature_c if hour.temperature_c is not None else 0.0


def _percent(hour: Hour) -> float:
    return hour.humidity_pct if hour.humidity_pct is not None else 100.0


def _tenth(value: float) -> float:
    return round(value, 1)
