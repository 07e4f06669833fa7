"""What was reckoned before and still holds: it changes no answer, only its cost.
``python -m tests.bench.plan_cost`` (a census when nothing was logged, and with a new count) pays for it.

A colony is found by a short key, its way ahead by a short hash; whether what is kept still holds is then compared in
full, which is cheap as equal facts are the same objects mostly. Of every colony some days of the past are kept, so that
neither a new log nor a corrected one of last week is answered by reckoning from the beginning.
"""

from __future__ import annotations

from collections.abc import Hashable
from dataclasses import dataclass, field
from typing import Final, Generic, NamedTuple, TypeVar

from .facts import Seen

COLONIES: Final = 512
LATEST: Final = 5
"""So many of the latest observations are kept: a count has up to four, and the next one may come the same day."""
APART_DAYS: Final = 56
"""Before them one is kept for every so many days."""

Kept = TypeVar("Kept")


class Lru(Generic[Kept]):
    """A few values by key; the one that was not asked for longest goes."""

    def __init__(self, most: int) -> None:
        self._most = most
        self._kept: dict[Hashable, Kept] = {}

    def get(self, key: Hashable) -> Kept | None:
        """Return a value, which is the latest asked for from now on."""
        found = self._kept.pop(key, None)
        if found is not None:
            self._kept[key] = found
        return found

    def put(self, key: Hashable, value: Kept) -> None:
        """Keep a value."""
        self._kept.pop(key, None)
        self._kept[key] = value
        if len(self._kept) > self._most:
            self._kept.pop(next(iter(self._kept)), None)

    def clear(self) -> None:
        """Forget everything."""
        self._kept.clear()


class Point(NamedTuple, Generic[Kept]):
    """What was reckoned from the first so many observations, and what else it rests on."""

    seen: tuple[Seen, ...]
    rests_on: tuple[object, ...]
    reckoned: Kept

    @property
    def day(self) -> int:
        """The day of its last observation."""
        return self.seen[-1].day if self.seen else 0


@dataclass(slots=True)
class Track(Generic[Kept]):
    """The points of one colony, by their number of observations."""

    points: list[Point[Kept]] = field(default_factory=list)

    def put(self, point: Point[Kept]) -> None:
        """Keep a point in the place of those that it contradicts, and thin out the older ones."""
        number = len(point.seen)
        before = [one for one in self.points if len(one.seen) < number]
        old, latest = before[: -LATEST + 1], before[-LATEST + 1 :]
        thinned: list[Point[Kept]] = []
        for one in old:
            if not thinned or one.day // APART_DAYS != thinned[-1].day // APART_DAYS:
                thinned.append(one)
        self.points = [*thinned, *latest, point]
