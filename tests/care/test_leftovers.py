"""Leftovers: what a check ends, and what goes on waiting. Hours: common practice, no source (catalogue/foods.toml)."""

from __future__ import annotations

from broodshelf.care.plan.leftovers import leftovers_tasks
from broodshelf.model.facts import Event
from broodshelf.model.gauges import HOUR_MS

NOW_MS = 1_777_636_800_000  # 2026-05-01T12:00:00Z


def fed(name: str, hours_ago: float, **said) -> Event:
    return Event(name, "feeding", NOW_MS - round(hours_ago * HOUR_MS), said)


def removed(hours_ago: float, **said) -> Event:
    return Event("k", "check", NOW_MS - round(hours_ago * HOUR_MS), {"leftovers_removed": True, **said})


PREY = fed("prey", 30, need="protein", food_code="fruit_fly", form="whole_dead")
DROP = fed("drop", 29, need="sugar", food_code="sugar_water", form="drop")
FEEDER = fed("feeder", 28, need="sugar", food_code="sugar_water", form="feeder")
BAD = fed("bad", 6, need="protein", food_code="roach_nymph", despite=["home_cockroach"])
GIVEN = (PREY, DROP, FEEDER, BAD)


def about(*checks: Event) -> dict[str, bool]:
    """Return the feedings whose leftovers are asked for, and whether they are an alarm."""
    tasks = leftovers_tasks((*GIVEN, *checks), NOW_MS, frozenset({"bad"}))
    return {task.key.about: task.urgent for task in tasks}


def test_who_takes_out_one_leftover_leaves_the_others_and_the_alarm():
    assert about() == {"bad": True, "prey": False, "drop": False, "feeder": False}
    assert about(removed(2, feeding_id="prey")) == {"bad": True, "drop": False, "feeder": False}
    assert about(removed(2, feeding_id="bad")) == {"prey": False, "drop": False, "feeder": False}


def test_a_check_that_names_no_feeding_ends_what_was_due_by_then_but_never_an_alarm():
    # prey was due 24 h after it was given, 6 h ago; a drop is after 60 h, a feeder after 144 h
    assert about(removed(5)) == {"bad": True, "drop": False, "feeder": False}
    assert about(removed(7)) == {"bad": True, "prey": False, "drop": False, "feeder": False}
