"""Before when nothing could be done: what is due since then is due, and no longer overdue."""

from __future__ import annotations

import datetime as dt

from ...model.facts import ColonyState
from .founding import first_workers_ms
from .history import local_day, midnight_ms
from .life_stage import founding_mode
from .seen import Seen


def food_from_ms(seen: Seen, first: tuple[dt.date, dt.date] | None) -> int | None:
    """Return the instant before which this colony could not be fed; None: it always could, as far as is known.

    In the days in which the first food may be given it is due on each of them, and late only after the last.
    """
    offset_min = seen.state.utc_offset_min
    days: list[dt.date] = []
    if first is not None:
        days.append(min(max(first[0], seen.day), first[1]))
    elif founding_mode(seen.state, seen.species) == "claustral" and not _ever_fed(seen.state):
        workers_ms = first_workers_ms(seen.history)
        days += [] if workers_ms is None else [local_day(workers_ms, offset_min)]
    return max((midnight_ms(day.isoformat(), offset_min) for day in days), default=None)


def awake_from_ms(seen: Seen) -> int | None:
    """Return when the colony was last taken for awake again: since its rest ended; today, if a mark is not believed.

    None: it had no rest that is known.
    """
    rested = seen.season.rested
    awake = seen.day if seen.season.misfit is not None else None if rested is None else rested[1]
    return None if awake is None else midnight_ms(awake.isoformat(), seen.state.utc_offset_min)


def larvae_from_ms(seen: Seen) -> int | None:
    """Return since when larvae are known that were not reckoned with before: after a look that found none, or where
    the yearly clock let nobody expect any. None: they were always reckoned with, or there are none.
    """
    since_ms = None
    for count in reversed(seen.history.brood_seen):
        if count.larvae is None:
            continue
        if count.larvae == "none":
            return since_ms
        since_ms = count.at_ms
    return since_ms if seen.season.slow else None


def _ever_fed(state: ColonyState) -> bool:
    return any(event.kind == "feeding" for event in state.events)
