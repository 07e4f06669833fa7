"""The worked plans of docs/care-model.md, written by the code: ``python -m tests.care.plan_examples``."""

from __future__ import annotations

from tests.support.said import say, say_portion

from broodshelf.care.plan.make import make_plan
from broodshelf.model.facts import ColonyState, Event, Place, Vessel
from broodshelf.model.gauges import DAY_MS

NOW_MS = 1_777_636_800_000  # 2026-05-01T12:00:00Z
ROOM = Place("room", 25, 22, 50)
COLONIES = (
    ("8 nanitics of *Lasius niger* in a test tube", "lasius_niger", "nanitics", "tube_16x150", 8, "some"),
    ("40 workers of *Camponotus ligniperda*", "camponotus_ligniperda", "growing", "tube_20x150", 40, "some"),
    ("800 workers of *Lasius niger* in a nest", "lasius_niger", "growing", "nest_large", 800, "many"),
)  # fmt: skip


def rows() -> list[str]:
    """Return the table, one row for each colony and food need."""
    made = ["| colony | need | every | portion | because |", "|---|---|---|---|---|"]
    for words, species, stage, vessel, workers, larvae in COLONIES:
        count = Event("c", "count", NOW_MS - DAY_MS, {"workers": workers, "larvae": larvae})
        state = ColonyState(
            "x",
            species,
            stage=stage,
            vessel=Vessel(vessel),
            place=ROOM,
            events=(count,),
            acquired_on="2025-09-01",
        )
        plan = make_plan(state, NOW_MS)
        gauges = {gauge.need: gauge for gauge in plan.gauges}
        for task in sorted(plan.tasks, key=lambda task: task.need):
            if task.portion is None:
                continue
            days = gauges[task.need].capacity
            why = " ".join(
                say("reason", reason["code"], reason["args"])
                for reason in gauges[task.need].reasons
                if reason["code"] not in ("never_fed", "last_fed")
            )
            made.append(f"| {words} | {task.need} | {days:.1f} days | {say_portion(task.portion)} | {why} |")
    return made


if __name__ == "__main__":
    print("\n".join(rows()))  # noqa: T201 - that is its job
