"""The task that a suspected leak makes: look today. Never urgent: statistics do not raise an alarm."""

from __future__ import annotations

from collections.abc import Sequence

from ...model.facts import Event, tells
from ...model.kinds.log import Fault
from ...model.needs import FAULTS
from ...model.tasks import Task, TaskKey, check_of
from .reservoir import Reservoir


def look_today_task(known: Reservoir, events: Sequence[Event]) -> Task | None:
    """Return the task, due since the reading that raised the suspicion; None without one or once a fault was logged.

    A check of the water, a refill or the next reading settles it by itself, since each changes ``known``.
    """
    if not known.look_today or known.latest_id is None:
        return None
    for event in reversed(events):
        if event.happened_ms < known.as_of_ms:
            break
        if tells(event, Fault) and FAULTS[event.said.fault].loses_water:
            return None
    why = next(r for r in known.reasons if r["code"] == "leak_suspected")
    key = TaskKey("leak", known.latest_id)
    return Task(key, "water", known.as_of_ms, suggested=check_of("water"), reasons=(why,))
