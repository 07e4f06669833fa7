"""How sugar is drunk: what is missing in the crops is filled up first, then the colony drinks what it uses.

All amounts in days of the usual use of a colony of this size, so one appetite stands for all of them. What the crops
lack is carried from feeding to feeding: time without sugar adds to it, drinking takes from it, and it never exceeds
what the crops hold. They fill up with the pace of eating (``EATING_H``).
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from functools import lru_cache
from typing import NamedTuple

from .learning import EATING_H

_STEPS = 12
_LEAST, _MOST = math.log(0.02), math.log(50.0)


class Filling(NamedTuple):
    """A sugar feeding: days of use that it held, days that it stays good, days until the next one."""

    offered: float
    fresh: float
    until_next: float


class Crop(NamedTuple):
    """What the crops of a colony hold when they are full, and what they lack, both in days of use."""

    holds: float
    lacks: float


@lru_cache(maxsize=2048)  # tests.bench.plan_cost, where sugar is checked: a quarter of a plan
def sugar_appetite(
    before: Sequence[Filling],
    offered: float,
    fresh: float,
    crop: Crop,
    *,
    gone: float,
    hours: float,
) -> float:
    """Return the appetite at which ``gone`` [share] of an offer is drunk after ``hours``.

    ``before``: the feedings before it, the oldest first; ``crop``: before all of them. Found by halving between 0.02
    and 50, since more appetite drinks more. Example: crops full before, half of 4 days' use gone after 48 h: 1.
    """
    passed = [_Passed.of(each) for each in before]
    days = min(hours / 24, fresh)
    unfilled = _unfilled(days)
    low, high = _LEAST, _MOST
    for _ in range(_STEPS):
        middle = (low + high) / 2
        appetite = math.exp(middle)
        missing = crop.lacks
        for each in passed:
            missing = each.missing_after(missing, appetite, crop.holds)
        enough = _drunk(missing, days, unfilled, appetite) >= gone * offered
        low, high = (low, middle) if enough else (middle, high)
    return math.exp((low + high) / 2)


def _unfilled(days: float) -> float:
    """Return the share of what the crops lacked that they lack still after so many days beside more than enough."""
    return math.exp(-days * 24 / EATING_H)


def _drunk(missing: float, days: float, unfilled: float, appetite: float) -> float:
    """Return what would be drunk of more than enough."""
    return missing * (1 - unfilled) + appetite * days


class _Passed(NamedTuple):
    """A filling that lies behind, with what is the same for each appetite: the days it was there, and ``_unfilled``."""

    offered: float
    until_next: float
    there: float
    unfilled: float

    @classmethod
    def of(cls, filling: Filling) -> _Passed:
        """Return a filling that lies behind."""
        there = min(filling.fresh, filling.until_next)
        return cls(filling.offered, filling.until_next, there, _unfilled(there))

    def missing_after(self, missing: float, appetite: float, crop: float) -> float:
        """Return what the crops lack when the next feeding comes."""
        offered, until_next, there, unfilled = self
        if _drunk(missing, there, unfilled, appetite) >= offered:
            left = missing + appetite * until_next - offered
        else:
            left = missing * unfilled + appetite * (until_next - there)
        return min(crop, max(0.0, left))
