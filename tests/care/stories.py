"""Invented colonies with a log of a few lines, and what their whole plans say on a day."""

from __future__ import annotations

import datetime as dt

from broodshelf.care.plan.make import make_plan
from broodshelf.model.facts import ColonyState, Event, Place, Vessel
from broodshelf.model.gauges import DAY_MS

FOODS = {"sugar", "protein", "seeds", "leaves"}
WARM = Place("room", 25, 22)
FRIDGE = Place("fridge", 6, 6)


def noon_ms(day: str) -> int:
    return round(dt.datetime.fromisoformat(f"{day}T12:00:00+00:00").timestamp() * 1000)


class Story:
    """A colony with its log, and the plan of a day."""

    def __init__(self, today: str, species_code: str | None = "lasius_niger", **values) -> None:
        self.now_ms = noon_ms(today)
        self.events: list[Event] = []
        vessel = values.pop("vessel", Vessel("tube_16x150"))
        self.values = {
            "species_code": species_code,
            "vessel": vessel,
            "place": WARM,
            "stage": "growing",
            **values,
        }

    def log(self, ago_days: float, kind: str, event_id: str = "", **values) -> Story:
        at_ms = self.now_ms - round(ago_days * DAY_MS)
        self.events.append(Event(event_id or f"{kind}{len(self.events)}", kind, at_ms, values))
        return self

    def counted(self, ago_days: float, workers: int | None = 40, **values) -> Story:
        return self.log(ago_days, "count", workers=workers, **values)

    def fed(self, ago_days: float, need: str, event_id: str = "") -> Story:
        food, unit = ("sugar_water", "drop") if need == "sugar" else ("fruit_fly", "piece")
        return self.log(ago_days, "feeding", event_id, need=need, food_code=food, amount=1, unit=unit)

    def state(self) -> ColonyState:
        events = tuple(sorted(self.events, key=lambda event: event.happened_ms))
        return ColonyState("c", events=events, **self.values)

    def plan(self):
        return make_plan(self.state(), self.now_ms)

    def due_in(self, need: str) -> float:
        """Return in how many days the task of a food is due; it must be there."""
        task = next(task for task in self.plan().tasks if task.need == need and task.from_gauge)
        return (task.due_at_ms - self.now_ms) / DAY_MS


def every(story: Story, need: str) -> float:
    return next(gauge.capacity for gauge in story.plan().gauges if gauge.need == need)


def needs(story: Story) -> set[str]:
    return {gauge.need for gauge in story.plan().gauges}


def notices(story: Story) -> dict[str, dict]:
    return {notice["code"]: notice["args"] for notice in story.plan().notices}


def reasons(story: Story, need: str) -> dict[str, dict]:
    return {r["code"]: r["args"] for task in story.plan().tasks if task.need == need for r in task.reasons}


def task_keys(story: Story) -> set[str]:
    return {task.key.what if task.from_gauge else str(task.key) for task in story.plan().tasks}
