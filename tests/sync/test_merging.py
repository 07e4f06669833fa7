"""Two phones that changed one record: fields merge, the later wins, nothing is lost unseen. On both engines."""

from __future__ import annotations

import pytest
from tests.support.households import HAPPENED, NOON_MS, by_id, colony, feeding, sign_in_as

from broodshelf.model.gauges import DAY_MS
from broodshelf.records.database import reading
from broodshelf.records.history import read_history


def test_changes_of_different_fields_both_stand(phone, other):
    colony_id = colony(phone)
    phone.sync()
    other.sync()
    phone.write("colony", {"name": "Birch"}, colony_id)
    other.write("colony", {"queens": 2}, colony_id)
    phone.sync()
    answer = other.sync()

    assert [each["conflicts"] for each in answer["answers"]] == [[]]
    assert by_id(answer["rows"])[colony_id]["set"] == {"name": "Birch", "queens": 2}
    assert by_id(phone.sync()["rows"])[colony_id]["set"] == {"name": "Birch", "queens": 2}


@pytest.mark.parametrize("ahead_ms", [0, DAY_MS, -DAY_MS])
def test_the_later_edit_of_a_field_wins_whatever_the_phones_clock_says(phone, other, ahead_ms):
    colony_id = colony(phone)
    phone.sync()
    other.sync()
    sign_in_as(other)
    phone.clock_ahead_ms = ahead_ms
    phone.now_ms = NOON_MS + 1_000
    phone.write("colony", {"name": "Earlier"}, colony_id)
    other.now_ms = NOON_MS + 2_000
    other.write("colony", {"name": "Later"}, colony_id)
    other.now_ms = phone.now_ms = NOON_MS + 60_000
    other.sync()
    answer = phone.sync()

    assert by_id(answer["rows"])[colony_id]["set"]["name"] == "Later"
    assert answer["answers"][0]["conflicts"] == [
        {
            "field": "name",
            "winner": "theirs",
            "mine": "Earlier",
            "theirs": "Later",
            "by": other.person_id,
            "at_ms": NOON_MS + 2_000,
        }
    ]


def test_the_value_that_lost_stays_in_the_history(phone, other):
    colony_id = colony(phone)
    phone.sync()
    other.sync()
    phone.write("colony", {"name": "Mine"}, colony_id)
    other.now_ms += 1_000
    other.write("colony", {"name": "Theirs"}, colony_id)
    other.sync()
    phone.now_ms += 5_000
    phone.sync()
    with reading() as connection:
        newest = read_history(connection, phone.household_id, colony_id)[0]

    assert newest["lost"] == {"name": "Mine"}
    assert newest["by"] == phone.person_id


def test_a_deletion_does_not_erase_and_can_be_taken_back(phone, other):
    colony_id = colony(phone)
    phone.sync()
    other.sync()
    phone.write("colony", {"gone": True}, colony_id)
    phone.sync()
    gone = other.sync()["gone"]
    phone.write("colony", {"gone": False}, colony_id)
    phone.sync()
    back = by_id(other.sync()["rows"])

    assert [row["id"] for row in gone] == [colony_id]
    assert back[colony_id]["set"]["name"] == "Amber"


def test_two_people_answering_one_task_are_both_kept_and_the_second_is_marked(phone, other):
    colony_id = colony(phone)
    phone.sync()
    other.sync()
    first = feeding(phone, colony_id, task_key="protein:start")
    second = feeding(other, colony_id, task_key="protein:start")
    phone.sync()
    other.sync()
    phone.sync()

    assert "possible_repeat" not in phone.values()[first["id"]]
    assert phone.values()[second["id"]]["possible_repeat"] is True


def test_two_tabs_of_one_phone_answering_one_task_are_both_kept_and_the_second_is_marked(phone):
    colony_id = colony(phone)
    phone.sync()
    first = feeding(phone, colony_id, task_key="protein:start")
    second = feeding(phone, colony_id, task_key="protein:start")
    phone.sync()
    third = feeding(phone, colony_id, task_key="protein:start")
    phone.sync()

    assert "possible_repeat" not in phone.values()[first["id"]]
    assert phone.values()[second["id"]]["possible_repeat"] is True
    assert phone.values()[third["id"]]["possible_repeat"] is True


@pytest.mark.parametrize("at_once", [True, False])
def test_a_log_that_was_taken_back_is_no_first_answer(phone, at_once):
    colony_id = colony(phone)
    phone.sync()
    first = feeding(phone, colony_id, task_key="protein:start")
    phone.write("feeding", {"gone": True}, first["id"])
    if not at_once:
        phone.sync()
    second = feeding(phone, colony_id, task_key="protein:start")
    phone.sync()

    assert "possible_repeat" not in phone.values()[second["id"]]


def test_a_log_that_is_changed_repeats_nothing(phone):
    colony_id = colony(phone)
    phone.sync()
    first = feeding(phone, colony_id, task_key="protein:start")
    phone.write("feeding", {"amount": 2, "task_key": "protein:start"}, first["id"])
    phone.sync()
    phone.write("feeding", {"amount": 3, "task_key": "protein:start"}, first["id"])
    phone.sync()

    assert "possible_repeat" not in phone.values()[first["id"]]


def test_a_reading_and_the_filling_after_it_are_two_things(phone, other):
    colony_id = colony(phone)
    phone.sync()
    other.sync()
    at = {"colony_id": colony_id, "happened_at": HAPPENED, "task_key": "water:start"}
    phone.write("water", {**at, "action": "read", "reading": "quarter"})
    filled = other.write("water", {**at, "action": "refill"})
    again = other.write("water", {**at, "action": "refill"})
    phone.sync()
    other.sync()

    assert "possible_repeat" not in other.values()[filled["id"]]
    assert other.values()[again["id"]]["possible_repeat"] is True


def test_an_edit_that_meets_a_later_deletion_is_told_and_can_take_it_back(phone, other):
    colony_id = colony(phone)
    phone.sync()
    other.sync()
    sign_in_as(other)
    edit = phone.write("colony", {"name": "Edited first"}, colony_id)
    other.now_ms += 1_000
    other.write("colony", {"gone": True}, colony_id)
    other.sync()
    phone.now_ms += 5_000
    gone = phone.sync()["gone"]
    told = phone.verdicts[edit["op_id"]]["conflicts"]
    phone.write("colony", {"gone": False}, colony_id)
    phone.sync()

    assert [(met["field"], met["winner"], met["by"]) for met in told] == [("gone", "theirs", other.person_id)]
    assert [row["id"] for row in gone] == [colony_id]
    assert phone.values()[colony_id]["name"] == "Edited first"


def test_a_deletion_that_came_first_but_was_made_before_an_edit_does_not_stand(phone, other):
    colony_id = colony(phone)
    phone.sync()
    other.sync()
    other.write("colony", {"gone": True}, colony_id)
    other.sync()
    phone.now_ms += 1_000
    phone.write("colony", {"name": "Edited later"}, colony_id)
    phone.sync()
    other.sync()

    assert other.values()[colony_id]["name"] == "Edited later"
