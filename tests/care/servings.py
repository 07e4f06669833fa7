"""A colony, its feedings and checks, and what a plan serves it."""

from __future__ import annotations

from broodshelf.care.feeding.content import content_mg
from broodshelf.care.plan.make import Plan, make_plan
from broodshelf.model.facts import ColonyState, Event, Lot, Place, Vessel
from broodshelf.model.gauges import DAY_MS, HOUR_MS
from broodshelf.model.kinds import read
from broodshelf.model.kinds.log import Feeding

NOW_MS = 1_777_636_800_000  # 2026-05-01T12:00:00Z
SIZES = (8, 20, 60, 100, 101, 300, 301, 1_000, 1_001, 5_000, 20_000)


def colony(workers: int = 60, larvae: str = "many", *log: Event, **values) -> ColonyState:
    first = Event("f", "check", NOW_MS - 90 * DAY_MS, {"need": "glance"})
    seen = Event("n", "count", NOW_MS - 1, {"workers": workers, "larvae": larvae})
    vessel = Vessel("tube_16x150" if workers < 100 else "nest_large")
    usual = {"id": "c", "species_code": "lasius_niger", "stage": "growing", "vessel": vessel}
    return ColonyState(
        **{**usual, "place": Place("room", 25, 22, 50), "events": (first, *log, seen), **values}
    )


def served(state: ColonyState, need: str = "protein", at_ms: int = NOW_MS):
    return served_by(make_plan(state, at_ms), need)


def served_by(plan: Plan, need: str):
    return next((t for t in plan.tasks if t.need == need and t.portion), None)


def days(state: ColonyState, need: str, at_ms: int = NOW_MS) -> float:
    return next(g.capacity for g in make_plan(state, at_ms).gauges if g.need == need)


def codes(task) -> list[str]:
    return [r["code"] for r in task.reasons]


def held_mg(portion, need: str = "protein") -> float:
    protein_mg, sugar_mg = content_mg(read(Feeding, {"need": need, **portion}))
    return protein_mg if need == "protein" else sugar_mg


def fed(n: int, ago_days: float, portion, need: str = "protein") -> Event:
    return Event(f"f{n}", "feeding", NOW_MS - round(ago_days * DAY_MS), {"need": need, **portion})


def check(n: int, feeding: Event, outcome: str | None, after_h: float = 24, **values) -> Event:
    told = {"need": feeding.values["need"], "feeding_id": feeding.id, **values}
    if outcome:
        told["outcome"] = outcome
    return Event(f"k{n}", "check", feeding.happened_ms + round(after_h * HOUR_MS), told)


def lot(food: str, size: str | None = None, **values) -> Lot:
    return Lot("l", food, "bought_or_bred", size_class=size, **values)
