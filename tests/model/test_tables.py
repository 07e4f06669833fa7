"""The tables of needs, faults and tasks are whole, and the phone gets them as they stand."""

from __future__ import annotations

from dataclasses import asdict
from typing import get_args

from tests.support.said import words

from broodshelf.care import catalogue
from broodshelf.model.needs import ALL_FOOD, CANNOT_WAIT, FAULTS, NEEDS, FaultCode, Need
from broodshelf.model.tasks import (
    AGAIN_DAYS,
    FOR_STAND_IN,
    TASKS,
    TaskKey,
    What,
    is_care_hour,
    later_slot,
    urgent_slot,
)


def test_every_need_fault_and_kind_of_task_has_its_row_and_its_words():
    said = words()

    assert set(NEEDS) == set(get_args(Need)) == said["need"].keys()
    assert set(FAULTS) == set(get_args(FaultCode)) == said["fault"].keys()
    assert set(TASKS) == set(get_args(What))
    assert said["todo"].keys() <= set(TASKS)
    assert set(TASKS) - said["todo"].keys() <= ALL_FOOD | {
        "fault",
        "rest_water",
    }  # told by portion, fault or need


def test_what_needs_no_more_than_its_row_is_not_said_twice():
    assert {need for need, row in NEEDS.items() if row.food} == ALL_FOOD
    assert {need for need, row in NEEDS.items() if row.answered_by == "feeding"} == ALL_FOOD
    assert CANNOT_WAIT.isdisjoint(need for need, row in NEEDS.items() if row.keeper_sets)
    assert {what for what in NEEDS if what in FOR_STAND_IN} == {
        need for need, row in NEEDS.items() if row.stand_in
    }
    assert AGAIN_DAYS.keys() <= FOR_STAND_IN  # only the sheet of a pass asks when a look comes again


def test_the_phone_gets_the_tables_with_the_catalogue():
    brought = catalogue.as_json()

    assert brought["needs"] == {need: asdict(row) for need, row in NEEDS.items()}
    assert brought["faults"]["leak"]["touches"] == "water"
    assert brought["tasks"]["move_look"].items() >= {"stand_in": False, "met_by": "move"}.items()
    assert brought["again_days"] == AGAIN_DAYS


def test_only_a_time_of_the_day_moves_with_the_care_hours():
    key = TaskKey("fault", "08:00")

    assert is_care_hour("08:00")
    assert not any(map(is_care_hour, (urgent_slot(key), later_slot("08:00"), "8:00", "08:00\n")))
