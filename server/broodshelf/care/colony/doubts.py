"""When to doubt the queen: none was counted, males only, no eggs for weeks, or eggs that never become larvae.

Where the census expects so few of them that each look may well have missed them, nothing is doubted. Common practice,
no source. A word of the keeper that she is in doubt is the condition's, not for here.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import Final

from ...model.gauges import DAY_MS
from ...model.kinds.plan import Reason
from ...model.tasks import reason
from ..catalogue import Species
from .history import Count

DOUBT_DAYS: Final = (42, 56)
"""Active days without an egg, or without a larva from eggs, from which to suspect the queen, and to stop forecasts."""
FEWEST_COUNTS: Final = 2

MISSED_ODDS: Final = 0.1
"""Above these odds that all looks missed what was there a run of them says nothing (common practice, no source)."""

Missed = Callable[[Sequence[Count], str], float]
"""The odds that looks found none of a brood (``eggs``, ``larvae``) though there was as much as the census expects."""
ActiveDays = Callable[[int, int], int]
"""How many days between two instants [ms] the colony was neither at rest nor slowed by its clock."""


@dataclass(frozen=True, slots=True)
class Doubt:
    """What to say, and whether it is strong enough to stop forecasts. ``queenless``: no new brood is to be expected."""

    notice: Reason
    certain: bool
    queenless: bool = False


def queens_of(counts: Sequence[Count], entered: int | None) -> int | None:
    """Return how many queens there are: as last counted, else as entered for the colony; None: nobody said."""
    return next((count.queens for count in reversed(counts) if count.queens is not None), entered)


def queen_doubt(
    counts: Sequence[Count],
    species: Species,
    queens: int | None,
    active_days: ActiveDays,
    *,
    missed: Missed = lambda looks, brood: 0.0,
    hatches: bool = True,
) -> Doubt | None:
    """Return a doubt about the queen, or None; the surest first.

    A run of latest counts must hold two at least; a count that did not look neither ends nor lengthens it. ``missed``:
    what the census says of a run, asked only where there is one.
    ``hatches``: it is warm enough for eggs to become larvae; where it is not, nobody blames the queen for that.
    """
    if queens == 0 and not species.gamergates:
        return Doubt(reason("no_queen"), certain=True, queenless=True)
    if counts and counts[-1].males_only:
        return Doubt(reason("males_only"), certain=True, queenless=True)
    looks, days = _run(
        counts, lambda count: None if count.eggs is None else count.eggs == "none", active_days
    )
    if days >= DOUBT_DAYS[0] and missed(looks, "eggs") <= MISSED_ODDS:
        return Doubt(reason("queen_doubt", weeks=days // 7), certain=days >= DOUBT_DAYS[1])
    looks, days = _run(counts, _eggs_alone, active_days)
    if days >= DOUBT_DAYS[0]:
        if not hatches:
            return Doubt(reason("eggs_too_cold", weeks=days // 7), certain=True)
        if missed(looks, "larvae") <= MISSED_ODDS:
            return Doubt(reason("eggs_without_larvae", weeks=days // 7), certain=days >= DOUBT_DAYS[1])
    if queens == 0:
        return Doubt(reason("gamergates"), certain=False)
    return None


def _eggs_alone(count: Count) -> bool | None:
    """Say whether a count found eggs and nothing that came of them; None where it did not look."""
    later = (count.larvae, count.pupae)
    if any(word not in (None, "none") for word in later):
        return False
    if count.eggs is None or count.larvae is None:
        return None
    return count.eggs != "none"


def _run(
    counts: Sequence[Count], holds: Callable[[Count], bool | None], active_days: ActiveDays
) -> tuple[Sequence[Count], int]:
    """Return the latest counts that agree and over how many active days; 0 with fewer than two of them."""
    looked: list[Count] = []
    for count in reversed(counts):
        held = holds(count)
        if held is None:
            continue
        if not held:
            break
        looked.append(count)
    if len(looked) < FEWEST_COUNTS or looked[0].at_ms - looked[-1].at_ms < DOUBT_DAYS[0] * DAY_MS:
        return looked, 0
    return looked, active_days(looked[-1].at_ms, looked[0].at_ms)
