"""A colony on a day in May, what was seen and given, and what a plan asks for."""

from __future__ import annotations

from broodshelf.model.facts import ColonyState, Event, Vessel
from broodshelf.model.gauges import DAY_MS

NOW_MS = 1_777_636_800_000  # 2026-05-01T12:00:00Z


def state(**values) -> ColonyState:
    return ColonyState(
        **{"id": "c", "species_code": "lasius_niger", "vessel": Vessel("tube_16x150"), **values}
    )


def count(workers: int, larvae: str = "some", ago_days: float = 1) -> Event:
    return Event(
        f"count{workers}", "count", NOW_MS - round(ago_days * DAY_MS), {"workers": workers, "larvae": larvae}
    )


def fed(need: str, ago_days: float, event_id: str = "f", food: str = "fruit_fly") -> Event:
    return Event(event_id, "feeding", NOW_MS - round(ago_days * DAY_MS), {"need": need, "food_code": food})


def task(plan, need):
    return next((t for t in plan.tasks if t.need == need), None)
