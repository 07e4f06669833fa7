"""Leftovers: what of which feeding has to come out, and when."""

from __future__ import annotations

from ...model.facts import Event
from ...model.gauges import DAY_MS
from ...model.tasks import Task, TaskKey, reason
from ..feeding.removal import remove_after_h

HOUR_MS = 3_600_000
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
    Who fills a feeder takes the old one away: a later filling of the same need ends the task of the one before.
    """
    lately = events[-LATELY_EVENTS:]
    cleared = {
        e.values.get("feeding_id")
        for e in lately
        if e.kind == "check" and (e.values.get("leftovers_removed") or e.values.get("outcome") == "all")
    }
    last_clear_ms = max(
        (e.happened_ms for e in lately if e.kind == "check" and e.values.get("leftovers_removed")), default=-1
    )
    tasks = []
    filled_ms = {
        e.values.get("need"): e.happened_ms
        for e in lately
        if e.kind == "feeding" and e.values.get("form") == "feeder"
    }
    for event in lately:
        if event.kind != "feeding":
            continue
        risky = event.id in risky_ids
        after_h = 0.0 if risky else remove_after_h(event.values)
        if after_h is None:
            continue
        in_feeder = event.values.get("form") == "feeder"
        if in_feeder and event.happened_ms < filled_ms.get(event.values.get("need"), 0):
            continue
        if event.id in cleared or event.happened_ms <= last_clear_ms:
            continue
        due = event.happened_ms + round(after_h * HOUR_MS)
        if not risky and now_ms - due > GONE_DAYS * DAY_MS:
            continue
        check = {
            "kind": "check",
            "set": {"feeding_id": event.id, "need": "leftovers", "leftovers_removed": True},
        }
        key = TaskKey("leftovers", event.id)
        why = reason("leftovers", at_ms=event.happened_ms, after=round(after_h))
        if risky:
            why = reason("risk_out", at_ms=event.happened_ms)
        tasks.append(Task(key, "leftovers", due, urgent=risky, suggested=check, reasons=(why,)))
    alarms = [task for task in tasks if task.urgent]
    return alarms + [task for task in tasks if not task.urgent][-MOST_LEFTOVERS:]
