"""How far a founding has come: which brood should be there by when, and when it is too late to go on hoping."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Final

from ....model.kinds.words import Brood
from ..history import Count
from .facts import BROOD, Facts
from .likelihood import FOUND_EACH
from .outlook import Census, of
from .reckoning import start_of
from .spread import SERIES

GRACE_DAYS: Final = 10
"""Nothing is called stalled sooner after nine of ten such foundings had workers (common practice, no source)."""
SURE: Final = 2.0
"""So much brood is expected where nine of ten looks find some of it (common practice, no source)."""
_SERIES_OF: Final = {"eggs": ("eggs",), "larvae": ("small_larvae", "large_larvae"), "pupae": ("pupae",)}


@dataclass(frozen=True, slots=True)
class Awaited:
    """The next brood that nobody has seen yet, and the day by which it should be there."""

    brood: Brood
    by_day: int


def awaited(census: Census, counts: Sequence[Count]) -> Awaited | None:
    """Return which brood is to be looked for: the oldest that should be there by now, else the next to come.

    None where all of it was seen, or none comes in half a year.
    """
    seen = {brood for count in counts for brood in BROOD if getattr(count, brood) not in (None, "none")}
    latest = max((BROOD.index(brood) for brood in seen), default=-1)
    due = _due(census)
    found: Awaited | None = None
    for brood in BROOD[latest + 1 :]:
        day = due[brood]
        if day is None or (found is not None and day > census.day):
            break
        found = Awaited(brood, max(census.day, day))
    return found


def _due(census: Census) -> Mapping[Brood, int | None]:
    """Return by when each brood should be there: so much of it that a look finds some; None in half a year.

    What becomes of it does not come first: pupae are there before the first workers, and so on down to eggs.
    """
    states, workers = census.states(1), census.first_workers
    days: dict[Brood, int | None] = {}
    later = None if workers is None or workers.best is None else round(workers.best)
    for brood in reversed(BROOD):
        places = [SERIES.index(name) for name in _SERIES_OF[brood]]
        sure = (day for day, numbers in states if sum(numbers[place].best for place in places) >= SURE)
        known = [day for day in (next(sure, None), later) if day is not None]
        days[brood] = later = min(known, default=None)
    return days


def stalled(facts: Facts, day: int) -> int | None:
    """Return for how many days the first workers are overdue, had nobody looked; None while they are not.

    Only where the day of the flight is known: else nobody can say since when she founds.
    """
    start = start_of(facts)
    if start.kind != "founded":
        return None
    plain = of(replace(facts, seen=(), known_day=min(facts.known_day, day)), start.day).first_workers
    if plain is None or plain.high is None:
        return None
    late = day - plain.high
    return round(late) if late >= GRACE_DAYS else None


def missed(facts: Facts, day: int, looks: Sequence[int], brood: str) -> float:
    """Return the odds that looks on these days found no eggs or larvae though there were as many as would be usual.

    As many as the census expects of a colony of its size and warmth of whose brood nobody ever said anything.
    """
    plain = of(replace(facts, seen=tuple(seen for seen in facts.seen if seen.what not in BROOD)), day)
    there = 0.0
    for look in looks:
        numbers = plain.course.on(look)
        there += sum(numbers[SERIES.index(name)].best for name in _SERIES_OF[brood])
    return math.exp(-FOUND_EACH[brood] * there)
