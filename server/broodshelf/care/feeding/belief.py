"""The posterior of a colony's appetite: a grid in the logarithm, exact up to its step of 12 %.

Appetite is a multiplier on the usual need, log-normal around 1; what a colony wants varies from day to day. Spread of
prior and of days, surprise and fading: common practice or ours, no source.
"""

from __future__ import annotations

import math
from bisect import bisect_left
from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache
from itertools import accumulate
from operator import mul
from statistics import NormalDist
from typing import Final

from ...model.gauges import DAY_MS

MOST_PER_CHECK: Final = 1.5
MOST_SURPRISE: Final = 2.0
KEPT_DAYS, FADED_DAYS = 7.0, 28.0
"""Without a check nothing fades for a week; after four weeks the prior is back (common practice, no source)."""
PRIOR_SD: Final = 1.0
"""SD of the logarithm: two colonies in three eat between 0.45 and 2.2 times the usual."""
DAY_SD: Final = 0.3
"""SD of the logarithm of what one colony wants from one day to another."""
BEYOND: Final = 8.0
"""No colony takes so many times the usual: what is gone all the same was spilled or dried up (no source)."""
FORESEEN: Final = 0.95
"""A check whose outcome was so likely whatever the appetite is said to tell nothing (no source)."""

_STEP: Final = 0.12
_HALF: Final = 16
_FINE: Final = 6
_LAPSE: Final = 0.02
"""The share of checks that tell nothing: a crumb overlooked, a spider that came by."""
_LOGS: Final = tuple(i * _STEP for i in range(-_HALF, _HALF + 1))
_FARTHEST: Final = 40 * _FINE
_PRIOR: Final = tuple(math.exp(-0.5 * (x / PRIOR_SD) ** 2) for x in _LOGS)
"""Weights along the grid; nothing here is normalised, since only shares of the whole are read."""
_GONE: Final = tuple(
    _LAPSE / 2 + (1 - _LAPSE) * 0.5 * (1 + math.erf(d * _STEP / _FINE / DAY_SD / math.sqrt(2)))
    for d in range(-_HALF * _FINE - _FARTHEST, _HALF * _FINE + _FARTHEST + 1)
)
"""The chance that an offer is gone, by log(appetite) - log(threshold) in sixths of a step."""
_LEFT: Final = tuple(1 - chance for chance in _GONE)
_FORESEEN_SD: Final = NormalDist().inv_cdf(FORESEEN) * math.hypot(PRIOR_SD, DAY_SD)
_HARDLY_GONE, _SURELY_GONE = math.exp(_FORESEEN_SD), math.exp(-_FORESEEN_SD)
"""Thresholds that nineteen colonies in twenty do not reach, or all but one do."""
_UNUSUAL_DAY: Final = math.exp(NormalDist().inv_cdf(FORESEEN) * DAY_SD)


@dataclass(frozen=True, slots=True)
class Seen:
    """A check that counts: the appetites between which it places the colony that day (None: open on that side).

    ``relative``: nobody knows what was offered, so they are multiples of what was believed by then.
    """

    at_ms: int
    above: float | None
    below: float | None
    relative: bool = False

    @property
    def foreseen(self) -> bool:
        """Say whether it could hardly have come out another way, or not by drinking and eating."""
        if self.relative:
            return False
        if self.above is None:
            return self.below is None or self.below >= _HARDLY_GONE
        return self.below is None and (self.above <= _SURELY_GONE or self.above >= BEYOND)

    def slip(self, multiplier: float) -> bool:
        """Say whether hardly one day in twenty of a colony of this appetite would show it."""
        if self.relative:
            return False
        low = self.above is not None and multiplier < self.above / _UNUSUAL_DAY
        return low or (self.below is not None and multiplier > self.below * _UNUSUAL_DAY)


@lru_cache(maxsize=1024)  # tests.bench.plan_cost
def believed(seen: tuple[Seen, ...]) -> tuple[Sequence[float], float]:
    """Return posterior and multiplier after these checks, as of the last; kept, since a plan asks again and again.

    An offer that is gone speaks for at most twice what was known: a larger surprise may be spilling, drying or
    hoarding.
    """
    weights: Sequence[float] = _PRIOR
    multiplier, last_ms = 1.0, seen[0].at_ms if seen else 0
    for each in seen:
        weights, multiplier = faded(weights, multiplier, each.at_ms - last_ms)
        times = multiplier if each.relative else 1.0
        above = None if each.above is None else min(each.above * times, MOST_SURPRISE * multiplier)
        weights = list(map(mul, weights, _chances(above, None if each.below is None else each.below * times)))
        median = quantile(weights, 0.5)
        multiplier = min(multiplier * MOST_PER_CHECK, max(multiplier / MOST_PER_CHECK, median))
        last_ms = each.at_ms
    return weights, multiplier


def _chances(above: float | None, below: float | None) -> Sequence[float]:
    """Return along the grid the chance that a day's appetite lies above one threshold and below the other."""
    if above is None:
        return _LEFT[_window(below or 1.0)]
    if below is None:
        return _GONE[_window(above)]
    gone, more = _GONE[_window(above)], _GONE[_window(max(below, above))]
    return [max(_LAPSE / 2, one - other) for one, other in zip(gone, more, strict=True)]


def _window(threshold: float) -> slice:
    offset = round(math.log(max(threshold, 1e-9)) * _FINE / _STEP)
    start = _FARTHEST - min(_FARTHEST, max(-_FARTHEST, offset))
    return slice(start, start + 2 * _HALF * _FINE + 1, _FINE)


def faded(weights: Sequence[float], multiplier: float, gap_ms: int) -> tuple[Sequence[float], float]:
    """Return posterior and multiplier after a gap without checks: drawn back to the prior, in the logarithm."""
    kept = min(1.0, max(0.0, (FADED_DAYS - gap_ms / DAY_MS) / (FADED_DAYS - KEPT_DAYS)))
    if kept == 1.0:
        return weights, multiplier
    return [p**kept * q ** (1 - kept) for p, q in zip(weights, _PRIOR, strict=True)], multiplier**kept


def quantile(weights: Sequence[float], share: float) -> float:
    """Return the multiplier below which ``share`` of the posterior lies, between the points of the grid."""
    below = list(accumulate(weights))
    wanted = share * below[-1]
    i = bisect_left(below, wanted)
    within_cell = (wanted - below[i]) / weights[i] + 0.5
    return math.exp(_LOGS[i] + within_cell * _STEP)
