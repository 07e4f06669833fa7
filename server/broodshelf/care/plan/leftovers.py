"""Leftovers: what of which feeding has to come out, and when."""

from __future__ import annotations

from ...model.facts import Event, only
from ...model.gauges import DAY_MS, HOUR_MS
from ...model.kinds.log import Check, Feeding
from ...model.kinds.plan import Suggested
from ...model.tasks import Task, TaskKey, reason
from ..feeding.removal import remove_after_h

LATELY_EVENTS = 60
"""Leftovers older than so many events are gone one way or another, logged or not."""
GONE_DAYS = 14
"""So long after they should have come out leftovers were taken out, or are dust (common practice, no source)."""
MOST_LEFTOVERS = 3
"""More reminders than this for one colony would only be noise."""


def leftovers_tasks(
    events: tuple[Event, ...], now_ms: int, risky_ids: frozenset[str] = frozenset()
) -> list[Task]:
    """Every feeding makes its own removal task, until a check says that it was eaten or taken out, or it is old.

    ``risky_ids``: feedings that may carry poison; what is left of them comes out at once, whatever food it is.
    A check that names no feeding ends what was due by then, but never an alarm.
    Who fills a feeder takes the old one away: a later filling of the same need ends the task of the one before.
    The same rule stands in ``pwa/care/round.js``.
    """
    lately = events[-LATELY_EVENTS:]
    checks, feedings = list(only(Check, lately)), list(only(Feeding, lately))
    removals = [check for check in checks if check.said.leftovers_removed]
    cleared = {check.said.feeding_id for check in checks if check.said.outcome == "all"}
    cleared |= {check.said.feeding_id for check in removals}
    last_sweep_ms = max((check.happened_ms for check in removals if not check.said.feeding_id), default=-1)
    filled_ms = {fed.said.need: fed.happened_ms for fed in feedings if fed.said.form == "feeder"}
    tasks = []
    for feeding in feedings:
        risky = feeding.id in risky_ids
        after_h = 0.0 if risky else remove_after_h(feeding.said)
        if after_h is None:
            continue
        in_feeder = feeding.said.form == "feeder"
        if in_feeder and feeding.happened_ms < filled_ms.get(feeding.said.need, 0):
            continue
        due = feeding.happened_ms + round(after_h * HOUR_MS)
        if feeding.id in cleared or (due <= last_sweep_ms and not risky):
            continue
        if not risky and now_ms - due > GONE_DAYS * DAY_MS:
            continue
        check: Suggested = {
            "kind": "check",
            "set": {"feeding_id": feeding.id, "need": "leftovers", "leftovers_removed": True},
        }
        key = TaskKey("leftovers", feeding.id)
        why = reason("leftovers", at_ms=feeding.happened_ms, after=round(after_h))
        if risky:
            why = reason("risk_out", at_ms=feeding.happened_ms)
        tasks.append(Task(key, "leftovers", due, urgent=risky, suggested=check, reasons=(why,)))
    alarms = [task for task in tasks if task.urgent]
    return alarms + [task for task in tasks if not task.urgent][-MOST_LEFTOVERS:]
