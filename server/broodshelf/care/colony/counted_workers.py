"""How many workers a single count says, however it was made: exactly, within two ends, at least, or in a word.

All coarse figures: common practice, no source.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from ...model.kinds.log import Count
from ...model.quantities import Estimate, within

MOST_WORKERS: Final = 1_000_000.0
PART_SEEN: Final = 1.5
"""How many times as many as were seen for sure there are, where only a part of the nest was to be seen, and where that
is all that is known (common practice, no source)."""
_COARSE: Final[Mapping[str, Estimate]] = {
    "none": Estimate.exactly(0),
    "few": Estimate(2, 8, 20),
    "some": Estimate(15, 35, 100),
    "many": Estimate(80, 200, 1_000),
}


def workers_in(count: Count) -> tuple[Estimate, str] | None:
    """Return the workers of a count and how they were told: ``exact``, ``range`` or ``coarse``. None: not counted.

    Raises ``OutOfRange`` for numbers that are negative, not finite or above a million.
    """
    one_end, other_end = count.workers_low, count.workers_high
    if one_end is not None and other_end is not None:
        low, high = sorted((_workers(one_end), _workers(other_end)))
        best = (low + high) / 2 if count.workers is None else min(high, max(low, _workers(count.workers)))
        return Estimate(low, best, high), "range"
    if count.workers is not None:
        return Estimate.exactly(_workers(count.workers)), "exact"
    if count.workers_at_least:
        least = _workers(count.workers_at_least)
        return Estimate(least, PART_SEEN * least, min(MOST_WORKERS, PART_SEEN**2 * least)), "coarse"
    coarse = _COARSE.get(count.workers_coarse or "")
    return None if coarse is None else (coarse, "coarse")


def _workers(number: float) -> float:
    return within("workers", float(number), "workers", 0, MOST_WORKERS)
