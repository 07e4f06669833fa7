"""A nest that was offered and not moved into yet: looked at after a week, lit, and given four weeks.

An offer is no move: the water stays theirs, and settling begins when they have moved. Common practice, no source.
"""

from __future__ import annotations

from typing import Final

from ...model.gauges import DAY_MS
from ...model.tasks import Task, TaskKey, check_of, reason
from .history import History

LOOK_DAYS: Final = 7
LAST_DAYS: Final = 28
GIVEN_UP_DAYS: Final = 42
"""Two weeks after the last look an offer that nobody spoke of any more is over: nothing asks for ever."""
EARLY_DAYS: Final = 1
"""A look so much before its day counts as that look."""


def offer_stands(history: History, now_ms: int) -> bool:
    """Say whether a nest lies offered: not moved into, and not given up after four weeks."""
    offered = history.offered
    if offered is None or now_ms > offered.happened_ms + GIVEN_UP_DAYS * DAY_MS:
        return False
    return not _looked(history, LAST_DAYS)


def offered_tasks(history: History, now_ms: int) -> list[Task]:
    """Return the one look that is next for an offered nest; none without one or after four weeks and a look.

    A look is a check of the need ``room``; a move ends the offer.
    """
    offered = history.offered
    if offered is None or not offer_stands(history, now_ms):
        return []
    first = not _looked(history, LOOK_DAYS)
    days = LOOK_DAYS if first else LAST_DAYS
    key = TaskKey("move_look" if first else "move_end", offered.id)
    steps = ["offer_light", "move_wait", "move_no_shaking"] if first else ["offer_ends", "move_no_shaking"]
    why = (reason(f"offer_{'look' if first else 'last'}", at_ms=offered.happened_ms), *map(reason, steps))
    due_ms = offered.happened_ms + days * DAY_MS
    return [Task(key, "room", due_ms, suggested=check_of("room"), reasons=why)]


def _looked(history: History, days: int) -> bool:
    """Say whether somebody looked so many days after the offer."""
    if history.offered is None or history.room_looked_ms is None:
        return False
    return history.room_looked_ms >= history.offered.happened_ms + (days - EARLY_DAYS) * DAY_MS
