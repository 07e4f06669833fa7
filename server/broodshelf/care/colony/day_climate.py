"""The climate of a colony day by day: what was measured, what was typed, and what is assumed between. Pure.

What the census, the water and the season are reckoned over, instead of over one number for the whole past. Days are
counted from 1970-01-01 in the household's zone.
"""

from __future__ import annotations

import datetime as dt
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from statistics import fmean
from typing import Final, Literal

from ...model.facts import ColonyState, Logged, MeasuredDay, Place
from ...model.gauges import DAY_MS
from ...model.kinds import log
from .climate import (
    DAY_HOURS,
    DROP_C,
    FRESH_DAYS,
    HIGHEST_C,
    LOWEST_C,
    USUAL,
    USUAL_HUMIDITY_PCT,
)
from .history import day_number
from .measured_days import days_of

Basis = Literal["measured", "typed", "assumed"]
"""By sensors; by a reading of at most two weeks before; by the place's setting or what is usual for its kind."""
LOOKED_BACK_DAYS: Final = 366
WEAKEST: Final[tuple[Basis, ...]] = ("assumed", "typed", "measured")


@dataclass(frozen=True, slots=True)
class DayClimate:
    """How warm and moist a day was, in its day half (8 to 20 o'clock) and its night half.

    ``basis`` speaks of the temperature: measured or typed only where both halves are.
    """

    day: int
    day_c: float
    night_c: float
    humidity_pct: float
    basis: Basis
    humidity_basis: Basis

    @property
    def mean_c(self) -> float:
        """The mean over twelve hours of the day half and twelve of the night half."""
        return (self.day_c + self.night_c) / 2


def climate_by_day(state: ColonyState, first_day: int, last_day: int) -> tuple[DayClimate, ...]:
    """Return the climate of a colony's place on each day from ``first_day`` to ``last_day``, both included.

    Each half of each day by itself: what sensors measured (of the last two weeks hour by hour), else the latest typed
    reading of that half in the two weeks before, else the setting, else what is usual for the kind of place. What was
    measured or typed before the colony came to its place does not count, and the setting stands in.
    """
    since = _day(state.place_since) if state.place_since else 0
    offset_min = state.utc_offset_min
    measured = {one.day: one for one in (*state.measured_days, *days_of(state.hours, offset_min))}
    typed = _Typed(state.climate_readings, offset_min)
    settings = _settings(state.place)
    return tuple(
        _day_climate(day, measured.get(day) if day >= since else None, typed.on(day, since), settings)
        for day in range(first_day, last_day + 1)
    )


def lately_by_day(state: ColonyState, now_ms: int) -> tuple[DayClimate, ...]:
    """Return the climate of the last ``LOOKED_BACK_DAYS`` days up to today; none where nothing was measured or typed.

    So a colony whose place nobody measures costs nothing more.
    """
    if not (state.measured_days or state.hours or state.climate_readings):
        return ()
    today = (now_ms + state.utc_offset_min * 60_000) // DAY_MS
    return climate_by_day(state, today - LOOKED_BACK_DAYS, today)


def degree_days(climate: Iterable[DayClimate], threshold_c: float) -> float:
    """Return the degree-days above a threshold: of each half of a day, half of what it is warmer, never less than 0.

    The averaging method of entomology, for each half by itself (from memory).
    """
    halves = (half_c for one in climate for half_c in (one.day_c, one.night_c))
    return sum(max(0.0, half_c - threshold_c) for half_c in halves) / 2


def share_assumed(climate: Sequence[DayClimate]) -> float:
    """Return which share of these days nobody measured or read, 0 to 1; 1 of none."""
    return fmean(one.basis == "assumed" for one in climate) if climate else 1.0


def _day_climate(
    day: int, measured: MeasuredDay | None, typed: Mapping[str, float], settings: Mapping[str, float]
) -> DayClimate:
    seen = _seen(measured)
    day_c, of_day = _told("day_c", seen, typed, settings)
    night_c, of_night = _told("night_c", seen, typed, settings)
    humidity_pct, of_air = _told("humidity_pct", seen, typed, settings)
    return DayClimate(day, day_c, night_c, humidity_pct, min(of_day, of_night, key=WEAKEST.index), of_air)


def _told(
    what: str, seen: Mapping[str, float], typed: Mapping[str, float], settings: Mapping[str, float]
) -> tuple[float, Basis]:
    if what in seen:
        return seen[what], "measured"
    if what in typed:
        return typed[what], "typed"
    return settings[what], "assumed"


def _seen(measured: MeasuredDay | None) -> dict[str, float]:
    """Return what was measured of a day; what lies outside of what a place can be is a fault of the sensor."""
    if measured is None:
        return {}
    halves = (("day_c", measured.day_c), ("night_c", measured.night_c))
    found = {what: c for what, c in halves if c is not None and LOWEST_C <= c <= HIGHEST_C}
    return found if measured.humidity_pct is None else {**found, "humidity_pct": measured.humidity_pct}


class _Typed:
    """What was typed of a place: which of it speaks for a day."""

    def __init__(self, readings: Iterable[Logged[log.Climate]], offset_min: int) -> None:
        self._by_day: dict[str, dict[int, float]] = {}
        for day, what, value in _typed(readings, offset_min):  # the latest of a day stands
            self._by_day.setdefault(what, {})[day] = value

    def on(self, day: int, since: int) -> dict[str, float]:
        """Return the latest of each in the two weeks before the end of a day, none of before ``since``."""
        spoken_for = range(day, max(since, day - FRESH_DAYS) - 1, -1)
        found = {
            what: next((values[on] for on in spoken_for if on in values), None)
            for what, values in self._by_day.items()
        }
        return {what: value for what, value in found.items() if value is not None}


def _typed(readings: Iterable[Logged[log.Climate]], offset_min: int) -> Iterator[tuple[int, str, float]]:
    for event in readings:
        day, minute = divmod(event.happened_ms // 60_000 + offset_min, 24 * 60)
        temperature_c, humidity_pct = event.said.temperature_c, event.said.humidity_pct
        if temperature_c is not None and LOWEST_C <= temperature_c <= HIGHEST_C:
            yield day, "day_c" if minute // 60 in DAY_HOURS else "night_c", float(temperature_c)
        if humidity_pct is not None and 0 <= humidity_pct <= 100:
            yield day, "humidity_pct", float(humidity_pct)


def _settings(place: Place) -> dict[str, float]:
    usual_day, usual_night, _ = USUAL.get(place.place_type or "room", USUAL["room"])
    day_c = usual_day if place.day_temp_c is None else place.day_temp_c
    night_c = usual_night if place.day_temp_c is None else day_c - DROP_C
    return {
        "day_c": day_c,
        "night_c": night_c if place.night_temp_c is None else place.night_temp_c,
        "humidity_pct": USUAL_HUMIDITY_PCT.best if place.humidity_pct is None else place.humidity_pct,
    }


def _day(iso: str) -> int:
    return day_number(dt.date.fromisoformat(iso))
