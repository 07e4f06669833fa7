"""Faults and how each comes to its end. All days: common practice, no source."""

from __future__ import annotations

import pytest
from tests.support.said import words

from broodshelf.care.plan.make import make_plan
from broodshelf.model.facts import ColonyState, Event, Vessel
from broodshelf.model.gauges import DAY_MS
from broodshelf.model.needs import FAULTS

NOW_MS = 1_777_636_800_000  # 2026-05-01T12:00:00Z


def at(days_ago: float, kind: str, event_id: str = "", **values) -> Event:
    return Event(event_id or f"{kind}{days_ago}", kind, NOW_MS - round(days_ago * DAY_MS), values)


def about(*events: Event):
    """Return the tasks about a fault or mould of a colony with this log."""
    count = at(100, "count", workers=20)
    read = at(90, "water", action="read", reading="full")
    log = tuple(sorted((count, read, *events), key=lambda e: e.happened_ms))
    state = ColonyState("c", "lasius_niger", stage="growing", vessel=Vessel("tube_16x150"), events=log)
    return [t for t in make_plan(state, NOW_MS).tasks if t.key.what in ("fault", "mould_look")]


def spot(days_ago: float, **values) -> Event:
    return at(days_ago, "fault", "x", fault="mould", **values)


def test_a_distant_spot_of_mould_is_a_photo_now_and_no_alarm():
    (task,) = about(spot(0))

    assert (str(task.key), task.urgent, task.due_at_ms) == ("fault:x", False, NOW_MS)
    assert [r["code"] for r in task.reasons] == ["mould_far"]


@pytest.mark.parametrize(
    "seen", [at(1, "photo", sha256="0" * 64), at(1, "check", need="glance")], ids=["a photo", "a look"]
)
def test_after_the_photo_it_is_looked_at_seven_days_after_it_was_reported(seen):
    (task,) = about(spot(2), seen)

    assert (str(task.key), task.urgent) == ("mould_look:x", False)
    assert task.due_at_ms == NOW_MS + 5 * DAY_MS


def test_the_look_after_seven_days_ends_it_and_so_do_four_weeks_of_silence():
    assert about(spot(7), at(6, "photo", sha256="0" * 64))[0].due_at_ms == NOW_MS
    assert about(spot(7), at(6, "photo", sha256="0" * 64), at(0, "check", need="glance")) == []
    assert about(spot(20)) != []
    assert about(spot(29)) == []


@pytest.mark.parametrize("values", [{"mould_near_brood": True}, {"mould_share": 0.4}])
def test_mould_near_the_brood_or_on_a_third_of_the_cotton_is_an_alarm(values):
    (task,) = about(spot(1, **values))

    assert (str(task.key), task.urgent) == ("fault:x", True)
    assert [r["code"] for r in task.reasons] == ["mould_near"]


def test_once_a_nest_was_offered_for_the_mould_nobody_is_told_to_offer_one():
    near = spot(3, mould_near_brood=True)

    assert about(near, at(2, "move", how="offered")) == []
    assert about(near, at(4, "move", how="offered")) != []  # an older offer did not help against it
    assert about(near, at(2, "move", how="finished")) == []


@pytest.mark.parametrize("fault", FAULTS)
def test_every_alarm_has_an_end(fault):
    def told(days_ago, *events):
        return about(at(days_ago, "fault", "x", fault=fault, mould_near_brood=True), *events)

    (alarm,), (question,) = told(13), told(15)
    assert alarm.urgent
    assert not question.urgent
    assert [r["code"] for r in question.reasons] == ["fault_over"]
    assert told(15, Event("k", "check", NOW_MS, question.suggested["set"])) == []
    assert told(29) == []
    assert {"mould_far", "mould_near", "mould_look", "fault_over"} <= words()["reason"].keys()
