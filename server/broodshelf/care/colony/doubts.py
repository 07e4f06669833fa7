"""When to doubt the queen: no eggs for 6 to 8 active weeks of counts, or males only. Common practice, no source."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any, Final

from ..catalogue import Species
from ..gauges import DAY_MS
from .history import Count, local_day
from .yearly_clock import still_days_between

DOUBT_DAYS: Final = (42, 56)
"""Active days without an egg from which to suspect the queen, and from which forecasts stop."""
FEWEST_COUNTS: Final = 2


@dataclass(frozen=True, slots=True)
class Doubt:
    """What to say, and whether it is strong enough to stop forecasts."""

    notice: Mapping[str, Any]
    certain: bool


def queen_doubt(
    counts: Sequence[Count], species: Species, latitude_sign: int, utc_offset_min: int = 0
) -> Doubt | None:
    """Return a doubt about the queen, or None.

    The run of latest counts without eggs must hold two at least; a count that did not look for eggs neither
    ends nor lengthens it. Days in winter rest or in the species' slow season do not count.
    """
    if counts and counts[-1].males_only:
        return Doubt({"code": "males_only", "args": {}}, certain=True)
    looked = 0
    first_ms = last_ms = 0
    for count in reversed(counts):
        if count.eggs is None:
            continue
        if count.eggs != "none":
            break
        looked += 1
        first_ms, last_ms = count.at_ms, last_ms or count.at_ms
    if looked < FEWEST_COUNTS or last_ms - first_ms < DOUBT_DAYS[0] * DAY_MS:
        return None
    first, last = local_day(first_ms, utc_offset_min), local_day(last_ms, utc_offset_min)
    active = (last - first).days - still_days_between(first, last, species, latitude_sign)
    if active < DOUBT_DAYS[0]:
        return None
    notice = {"code": "queen_doubt", "args": {"weeks": active // 7}}
    return Doubt(notice, certain=active >= DOUBT_DAYS[1])
