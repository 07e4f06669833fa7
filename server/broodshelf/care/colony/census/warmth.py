"""How warm a colony was, from now back to where its census begins: as measured where somebody did, else as set."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from statistics import fmean
from typing import Final

from ..climate import DROP_C, USUAL
from ..day_climate import DayClimate
from ..dossier import Dossier
from .facts import EVER, Spell, Warmth
from .groups import LifeGroup

WEEK: Final = 7
REST_C: Final = 7.0
"""Where the species' own temperature of rest is not known (common practice, no source)."""
GRAIN_C: Final = 0.5
"""Warmth is told in such steps: less would change nothing but the cost."""


def warmth_of(colony: Dossier, rests: Sequence[Spell], group: LifeGroup, day: int) -> tuple[Warmth, ...]:
    """Return how warm it was: the place's settings, weeks that were measured as they were, rests as rests are kept.

    Of a colony that rests the place says nothing about the time before: then it is taken to have been kept well.
    """
    place, climate, rest = colony.state.place, colony.climate, colony.species.rest
    resting = any(first <= day < end for first, end in rests)
    usual_day, usual_night, _ = USUAL.get(place.place_type or "room", USUAL["room"])
    day_c = usual_day if place.day_temp_c is None else place.day_temp_c
    night_c = place.night_temp_c
    if night_c is None:
        night_c = usual_night if place.day_temp_c is None else day_c - DROP_C
    if resting:
        day_c = night_c = group.usual_c
    entries = {0: (day_c, night_c)}
    weeks = _weeks(one for one in colony.by_day if not resting or one.basis != "assumed")
    for week, mean_c in weeks.items():
        entries[week * WEEK] = mean_c
        if week + 1 not in weeks:
            entries[(week + 1) * WEEK] = (day_c, night_c)
    now = day // WEEK * WEEK
    if not resting:
        entries[now] = climate.day_c.best, climate.night_c.best
    rest_c = REST_C if rest is None else (rest.low_c + rest.high_c) / 2
    awake = sorted(entries.items())
    for first, end in rests:
        after = next((c for at, c in reversed(awake) if at <= end), (day_c, night_c))
        entries = {at: c for at, c in entries.items() if not first <= at < end}
        entries[first] = (
            (climate.day_c.best, climate.night_c.best) if resting and end > day else (rest_c, rest_c)
        )
        if end < EVER:
            entries[end] = after
    told: list[Warmth] = []
    for at, (light_c, dark_c) in sorted(entries.items()):
        entry = Warmth(at, _grain(light_c), _grain(dark_c))
        if not told or entry[1:] != told[-1][1:]:
            told.append(entry)
    return tuple(told)


def _weeks(by_day: Iterable[DayClimate]) -> dict[int, tuple[float, float]]:
    """Return the means of the two halves of the day by week."""
    found: dict[int, list[DayClimate]] = {}
    for one in by_day:
        found.setdefault(one.day // WEEK, []).append(one)
    return {
        week: (fmean(one.day_c for one in days), fmean(one.night_c for one in days))
        for week, days in found.items()
    }


def _grain(temp_c: float) -> float:
    return round(temp_c / GRAIN_C) * GRAIN_C
