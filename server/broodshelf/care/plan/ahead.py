"""What a plan's census says of an instant to come: how many workers, and how much more or less food they take.

Protein is for larvae, sugar and the rest for workers; so the use of each goes with what the census believes in. A plan
without a census foretells nothing: then the use stays as it is.
"""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any, Final

from ...model.kinds.plan import LivingCensus, PlannedGauge, PlannedTask
from ...model.quantities import Estimate
from .today import MOST_GROWN

OFFSET: Final = 0.5
"""Numbers are compared as n + 0.5: from nothing to something is no infinite growth."""
_LARVAE: Final = (2, 3)
_WORKERS: Final = (5,)
"""Where they stand in a row of ``stages``, behind the instant."""


@dataclass(frozen=True, slots=True)
class Planned:
    """What looks ahead from a plan as its record holds it; the record may say more."""

    colony_id: str
    computed_at_ms: int
    gauges: Sequence[PlannedGauge] = ()
    tasks: Sequence[PlannedTask] = ()
    census: LivingCensus | None = None

    @property
    def stages(self) -> Sequence[Sequence[Any]]:
        """The rows of its census; none where nothing is foretold."""
        return [] if self.census is None else self.census["stages"]


def workers_at(plan: Planned, at_ms: int) -> Estimate | None:
    """Return the workers that the census expects at an instant (ms since 1970 UTC); None where there is none.

    Beyond half a year the last known number stands.
    """
    return _number(plan.stages, _WORKERS, at_ms) if plan.stages else None


def use_ratio(plan: Planned, need: str, at_ms: int) -> Estimate:
    """Return how many times today's use of a food a colony takes at an instant, 1 where nothing is foretold."""
    stages = plan.stages
    if not stages:
        return Estimate.exactly(1)
    eaters = _LARVAE if need == "protein" else _WORKERS
    now, then = _number(stages, eaters, plan.computed_at_ms), _number(stages, eaters, at_ms)
    low, best, high = (
        min(MOST_GROWN, (later + OFFSET) / (today + OFFSET))
        for later, today in ((then.low, now.low), (then.best, now.best), (then.high, now.high))
    )
    return Estimate(min(low, best), best, max(best, high))


def _number(stages: Sequence[Sequence[Any]], places: Sequence[int], at_ms: int) -> Estimate:
    """Return the sum of some columns at an instant, between two rows as a straight line."""
    after = bisect_right(stages, at_ms, key=lambda row: row[0])
    one, other = stages[max(0, after - 1)], stages[min(after, len(stages) - 1)]
    share = (at_ms - one[0]) / (other[0] - one[0]) if other[0] > one[0] else 0.0
    low, best, high = (
        sum(one[place][end] + max(0.0, share) * (other[place][end] - one[place][end]) for place in places)
        for end in range(3)
    )
    return Estimate(low, best, high)
