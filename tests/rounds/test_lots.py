"""Lots, feeders and tints over sync: what a keeper noted about them reaches the plan."""

from __future__ import annotations

import pytest
from tests.rounds.test_settling import colony, iso, plan_of, state_of
from tests.support.households import Requester


@pytest.fixture
def phone(household_id: str) -> Requester:
    return Requester(household_id)


def test_the_size_of_a_lot_decides_what_the_plan_names(phone):
    colony_id = colony(phone)
    phone.write("count", {"colony_id": colony_id, "happened_at": iso(1), "workers": 20, "larvae": "many"})
    lot = phone.write("lot", {"food_code": "mealworm", "origin": "bought_or_bred", "size_class": "large"})
    state_of(phone, colony_id)
    portion = next(t["portion"] for t in plan_of(phone, colony_id)["tasks"] if t["need"] == "protein")

    assert (portion["unit"], portion["size_class"], portion["lot_id"]) == ("slice", "large", lot["id"])


def test_a_tinted_lot_and_where_its_colour_was_seen_come_back_as_notices(phone):
    colony_id = colony(phone)
    lot = phone.write("lot", {"food_code": "sugar_water", "origin": "home_mixed", "tint": "blue"})
    fed = {"need": "sugar", "food_code": "sugar_water", "amount": 1, "unit": "drop", "lot_id": lot["id"]}
    feeding = phone.write("feeding", {"colony_id": colony_id, "happened_at": iso(1), **fed})
    seen = {"need": "sugar", "feeding_id": feeding["id"], "colour_seen": ["gasters"]}
    phone.write("check", {"colony_id": colony_id, "happened_at": iso(0.5), **seen})
    state_of(phone, colony_id)
    told = [notice["code"] for notice in plan_of(phone, colony_id)["notices"]]

    assert {"tint_offered", "tint_in_gasters"} <= set(told)


def test_the_level_of_a_feeder_is_kept_with_its_check(phone):
    colony_id = colony(phone)
    fed = {"need": "sugar", "food_code": "sugar_water", "amount": 0.5, "unit": "ml", "form": "feeder"}
    feeding = phone.write("feeding", {"colony_id": colony_id, "happened_at": iso(2), **fed})
    seen = {"need": "sugar", "feeding_id": feeding["id"], "level": "quarter"}
    phone.write("check", {"colony_id": colony_id, "happened_at": iso(0.1), **seen})
    events = state_of(phone, colony_id).events

    assert [e.values["level"] for e in events if e.kind == "check"] == ["quarter"]


def test_a_lot_that_is_used_up_is_no_longer_offered_and_what_it_held_is_not_forgotten(phone):
    colony_id = colony(phone)
    phone.write("count", {"colony_id": colony_id, "happened_at": iso(20), "workers": 800, "larvae": "some"})
    weak, blue = (
        phone.write("lot", {"food_code": "sugar_water", "origin": "home_mixed", **more})["id"]
        for more in ({"percent_ww": 10}, {"tint": "blue"})
    )
    fed = {"colony_id": colony_id, "need": "sugar", "food_code": "sugar_water", "unit": "ml"}
    phone.write("feeding", {**fed, "happened_at": iso(2), "amount": 0.05, "form": "feeder", "lot_id": blue})
    phone.write("feeding", {**fed, "happened_at": iso(1), "amount": 0.45, "form": "feeder", "lot_id": weak})

    def told() -> tuple[int, set[str], str | None]:
        state_of(phone, colony_id)
        plan = plan_of(phone, colony_id)
        sugar = next(task for task in plan["tasks"] if task["need"] == "sugar")
        return sugar["due_at_ms"], {n["code"] for n in plan["notices"]}, sugar["portion"].get("lot_id")

    due_at_ms, notices, offered = told()
    assert ("tint_offered" in notices, offered) == (True, weak)
    for lot in (weak, blue):
        phone.write("lot", {"finished_on": "2026-05-01"}, lot)

    assert told() == (due_at_ms, notices, None)
