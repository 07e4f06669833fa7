"""How far a founding has come: which brood should be there by when, and when it is too late to go on hoping."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import Final

from ..history import Count
from .facts import BROOD, Facts
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

    brood: str
    by_day: int


def awaited(census: Census, counts: Sequence[Count]) -> Awaited | None:
    """Return which brood is to be looked for next; None where all of it was seen, or does not come in half a year."""
    seen = {brood for count in counts for brood in BROOD if getattr(count, brood) not in (None, "none")}
    latest = max((BROOD.index(brood) for brood in seen), default=-1)
    if latest + 1 >= len(BROOD):
        return None
    brood = BROOD[latest + 1]
    places = [SERIES.index(name) for name in _SERIES_OF[brood]]
    for day, numbers in census.states(1):
        if sum(numbers[place].best for place in places) >= SURE:
            return Awaited(brood, max(census.day, day))
    return None


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
