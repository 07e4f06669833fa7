"""From an ensemble to numbers with a range: what is there on a day, and when something comes for the first time."""

from __future__ import annotations

import math
from collections.abc import Sequence
from operator import mul
from typing import Final

from ....model.quantities import Estimate
from .colonies import Colonies
from .ensemble import TO_80
from .groups import STAGES
from .likelihood import OFFSET

SERIES: Final = (*STAGES, "workers")

RATE_SD: Final = 0.001
"""How far the growth of the time to come may be off besides, a day, as a logarithm: then 80 of 100 held what simulated
colonies did in 90 days (tests.bench.census_calibration)."""

Column = tuple[int, tuple[Estimate, ...]]
"""A day, and the numbers of each of ``SERIES``."""


def column_of(day: int, colonies: Colonies, ahead_days: float = 0.0) -> Column:
    """Return what is there on a day, so many days after the last look."""
    brood = tuple(numbers(colonies.total(stage), poisson=True) for stage in range(len(STAGES)))
    return day, (*brood, workers_of(colonies, ahead_days))


def workers_of(colonies: Colonies, ahead_days: float = 0.0) -> Estimate:
    """Return the workers, with what chance did to them since they were counted and will do in the days ahead."""
    middle, deviation = moments(colonies.workers)
    chance = sum(colonies.shaken) / colonies.size
    return _bell(middle, math.hypot(deviation, math.sqrt(chance) / math.exp(middle), RATE_SD * ahead_days))


def moments(values: Sequence[float]) -> tuple[float, float]:
    """Return middle and deviation of ln(n + 0.5)."""
    logs = [math.log(value + OFFSET) for value in values]
    middle = sum(logs) / len(logs)
    apart = [log - middle for log in logs]
    return middle, math.sqrt(sum(map(mul, apart, apart)) / len(logs))


def numbers(values: Sequence[float], *, poisson: bool) -> Estimate:
    """Return the members' numbers as an estimate, 80 of 100 between its ends; single ones come by chance."""
    middle, deviation = moments(values)
    return _bell(middle, math.hypot(deviation, math.exp(-middle / 2) * 0.7) if poisson else deviation)


def _bell(middle: float, deviation: float) -> Estimate:
    reach = TO_80 * deviation
    low, best, high = [math.exp(min(16.0, middle + side)) - OFFSET for side in (-reach, 0.0, reach)]
    return Estimate(max(0.0, low), max(0.0, best), max(0.0, high))


def first_days(odds: Sequence[tuple[float, float]]) -> tuple[float | None, float | None, float | None]:
    """Return the days at which rising odds pass 10, 50 and 90 in 100, in between as a line; None: they never do."""
    found: list[float | None] = []
    for wanted in (0.1, 0.5, 0.9):
        before = None
        at = None
        for day, share in odds:
            if share >= wanted:
                if before is None or share <= before[1]:
                    at = day
                else:
                    at = before[0] + (day - before[0]) * (wanted - before[1]) / (share - before[1])
                break
            before = (day, share)
        found.append(at)
    return found[0], found[1], found[2]
