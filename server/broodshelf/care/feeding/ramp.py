"""From the first third to the whole serving: how much more than last time may be offered.

Common practice, no source: a new colony is served a third of what its size says. After 'all taken' a serving rises at
most 1.5 times, whatever the estimate says; where nobody checked it rises slowly, since a keeper who never reports
an outcome must not underfeed for ever. After 'some' or a refusal it does not rise.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

FIRST_SHARE: Final = 1 / 3
"""A new colony starts at a third of what its physiology says."""
AFTER_ALL: Final = 1.5
UNCHECKED: Final = 1.15
"""From a third to the whole in eight servings that nobody checked: three to four weeks (no source)."""
REMEMBERED_FEEDINGS: Final = 24


@dataclass(frozen=True, slots=True)
class Served:
    """A feeding of the past: what it held [mg; None: unknown], in how many pieces, and what became of it."""

    mg: float | None
    pieces: float | None
    outcome: str | None


@dataclass(frozen=True, slots=True)
class Ramp:
    """The most to offer next [mg], and how many servings led there. ``rising``: still below the need."""

    most_mg: float
    feedings: int
    rising: bool


def ramp(
    served: Sequence[Served], usual_mg: float, wanted_mg: float, *, first_share: float = FIRST_SHARE
) -> Ramp:
    """Return how much of ``wanted_mg`` may be offered after what was ``served``, in the order of happening.

    ``usual_mg``: what the colony's size says without its own checks. A third of it is always allowed: brood that was
    counted since the last serving is not starved by what was right without it. What the rounding to whole pieces cut
    off is kept for the next time, so one piece becomes two in the end: half a piece cannot be served.
    """
    first_mg = first_share * usual_mg
    most_mg = first_mg
    for each in served[-REMEMBERED_FEEDINGS:]:
        factor = AFTER_ALL if each.outcome == "all" else UNCHECKED if each.outcome is None else 1.0
        if each.mg is None:
            most_mg *= factor
        else:
            piece_mg = each.mg / max(1.0, each.pieces or 1.0)
            rounded_down = each.mg <= most_mg < each.mg + piece_mg
            before_mg = most_mg if rounded_down else each.mg
            most_mg = min(before_mg * factor, max(AFTER_ALL * each.mg, each.mg + piece_mg))
    most_mg = max(most_mg, min(first_mg, wanted_mg))
    return Ramp(most_mg, len(served), most_mg < wanted_mg)
