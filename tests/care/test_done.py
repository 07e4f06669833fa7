"""What was done as suggested is no longer due: every kind of task, done by a keeper and by a stand-in."""

from __future__ import annotations

from dataclasses import replace
from typing import Final

from tests.care.stories import FRIDGE, Story
from tests.care.test_place_alarms import after, damp, days

from broodshelf.care.plan.make import make_plan
from broodshelf.model.facts import ColonyState, Event, Hour, Place, Vessel
from broodshelf.model.gauges import HOUR_MS
from broodshelf.model.tasks import TASKS, Task

NEST: Final = {"vessel": Vessel("nest_small")}
RESTS: Final = {"condition": "resting", "resting_since": "2026-11-01", "place": FRIDGE}
RESTED: Final = {"condition": "resting", "resting_since": "2025-12-01", "place": Place("fridge")}


def story(
    species_code: str = "lasius_niger", today: str = "2026-06-20", workers: int = 60, **values
) -> Story:
    return Story(today, species_code, **values).counted(45, workers=workers, larvae="some")


def read(ago_days: float, **level) -> Story:
    return story().log(ago_days, "water", action="read", **level)


def leaking() -> Story:
    colony = story()
    for ago_days, level_mm in ((21, 48), (14, 44), (7, 40), (0.5, 22)):
        colony.log(ago_days, "water", action="read", level_mm=level_mm)
    return colony


def sensed(hours: list[Hour], **values) -> tuple[ColonyState, int]:
    given = {"species_code": "lasius_niger", "stage": "growing", "place": Place("cabinet"), **values}
    return ColonyState("c", hours=tuple(hours), **given), hours[-1].hour_ms + HOUR_MS // 2


STORIES: Final = (
    story(),
    story("messor_barbarus"),
    story("atta"),
    story().fed(2, "protein"),
    read(10, reading="quarter"),
    story(**NEST).log(20, "water", action="hydrate"),
    leaking(),
    story(workers=400).log(3, "water", action="read", reading="full"),
    read(12, reading="quarter").log(8, "move", how="offered"),
    read(31, reading="half").log(29, "move", how="offered").log(20, "check", need="room"),
    story(workers=150, vessel=Vessel("tube_16x150", has_outworld=True)).log(9, "check", need="barrier"),
    story().log(8, "fault", fault="mould", mould_share=0.1).log(7.5, "check", need="glance"),
    story().log(20, "fault", fault="leak"),
    story().log(3, "feeding", need="protein", food_code="cricket", origin="unknown"),
    story(today="2026-12-10", **RESTS),
    story(place=Place("room", 35, 33)),
    story("camponotus_tropical", place=Place("room", 11, 11)),
)
NOON: Final = days(13, until_hour=12)
SENSED: Final = (
    sensed(after(NOON, 19.0, 19.0, 19.0, 19.0)),
    sensed(after(days(13, until_hour=20), 28.0, 28.0, 28.0, 28.0)),
    sensed(after(NOON, 28.5)),
    sensed(after(NOON, 32.0, 33.0)),
    sensed(after(days(10, value=lambda _: 6.0), 10.0), **RESTED),
    sensed(after(days(10, value=lambda _: 6.0), -0.5), **RESTED),
    sensed(damp(*[50.0] * 24 * 8, *[22.0] * 24), **NEST),
)
COLONIES: Final = (*((each.state(), each.now_ms) for each in STORIES), *SENSED)
SUGGESTS_NOTHING: Final = {"ask", "rest", "rest_fits", "wake_up"}
"""A question, a mark that is not believed, a day: they end with what the keeper writes in the colony."""


def as_done_by(role: str, task: Task) -> dict | None:
    if role == "keeper":
        return task.suggested
    return None if task.stand_in is None else task.stand_in.get("suggested", task.suggested)


def due(colony: ColonyState, now_ms: int) -> dict[str, Task]:
    return {task.key.what: task for task in make_plan(colony, now_ms).tasks if task.due_at_ms <= now_ms}


def still_due(role: str) -> tuple[set[str], set[str]]:
    """What kinds of tasks were done as suggested, and which of them are due all the same."""
    done, left = set(), set()
    for colony, now_ms in COLONIES:
        for what, task in due(colony, now_ms).items():
            log = as_done_by(role, task)
            if log is None:
                continue
            done.add(what)
            event = Event("done", log["kind"], now_ms, log["set"])
            if what in due(replace(colony, events=(*colony.events, event)), now_ms):
                left.add(what)
    return done, left


def test_what_a_keeper_did_as_suggested_is_no_longer_due():
    assert still_due("keeper") == (TASKS.keys() - SUGGESTS_NOTHING, set())


def test_what_a_stand_in_did_as_suggested_is_no_longer_due():
    done, left = still_due("stand_in")

    assert done >= {
        "protein",
        "sugar",
        "leftovers",
        "water_look",
        "leak",
        "rest_water",
        "rest_air",
        "risk_look",
    }
    assert left == {"water"}  # a look fills no tube: that stays the keeper's
