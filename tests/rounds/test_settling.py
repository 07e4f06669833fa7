"""Settling over sync: since when a condition holds is told by the field's own stamp, and refusals in it ban nothing."""

from __future__ import annotations

import datetime as dt

import pytest
from tests.support.households import NOON_MS, Requester

from broodshelf.care.plan.known import know
from broodshelf.model.gauges import DAY_MS
from broodshelf.records.database import reading
from broodshelf.rounds.colony_state import colony_states, read_shelf
from broodshelf.rounds.recompute import touched


@pytest.fixture
def phone(household_id: str) -> Requester:
    return Requester(household_id)


def iso(days_ago: float) -> str:
    return dt.datetime.fromtimestamp((NOON_MS - days_ago * DAY_MS) / 1000, dt.UTC).isoformat()


def colony(phone: Requester, **values: object) -> str:
    made = phone.write(
        "colony", {"name": "Amber", "stage": "growing", "species_code": "lasius_niger", **values}
    )
    return str(made["id"])


def refused(phone: Requester, colony_id: str, days_ago: float, **values: object) -> None:
    fed = {"need": "protein", "food_code": "cricket", "amount": 1, "unit": "piece", **values}
    feeding = phone.write("feeding", {"colony_id": colony_id, "happened_at": iso(days_ago), **fed})
    seen = {"need": "protein", "feeding_id": feeding["id"], "outcome": "ignored"}
    phone.write("check", {"colony_id": colony_id, "happened_at": iso(days_ago - 0.5), **seen})


def state_of(phone: Requester, colony_id: str, now_ms: int = NOON_MS):
    phone.sync(recompute=touched)
    assert {verdict["verdict"] for verdict in phone.verdicts.values()} == {"applied"}
    with reading() as connection:
        (state,) = colony_states(read_shelf(connection, phone.household_id, now_ms), [colony_id]).told
    return state


def plan_of(phone: Requester, colony_id: str) -> dict:
    return next(
        row["set"] for row in phone.rows().values()
        if row["kind"] == "plan" and row["set"]["colony_id"] == colony_id
    )  # fmt: skip


def test_a_condition_holds_since_the_day_on_which_it_was_set(phone):
    colony_id = colony(phone)
    phone.now_ms -= 3 * DAY_MS
    phone.write("colony", {"condition": "settling"}, colony_id)
    phone.sync()
    phone.now_ms += 3 * DAY_MS
    phone.write("colony", {"name": "Amber the second"}, colony_id)

    assert state_of(phone, colony_id).condition_since == "2026-04-28"
    settles = next(n for n in plan_of(phone, colony_id)["notices"] if n["code"] == "settles")
    assert settles["args"] == {"low": 0, "high": 4}


@pytest.mark.parametrize(
    ("acquired_on", "banned"), [("2026-04-29", frozenset()), ("2026-03-01", frozenset({"cricket"}))]
)
def test_what_a_colony_refused_while_it_settled_is_not_banned(phone, acquired_on, banned):
    colony_id = colony(phone, acquired_on=acquired_on)
    refused(phone, colony_id, 1)

    assert know(state_of(phone, colony_id), NOON_MS).state.refused_foods == banned


def test_what_a_colony_refused_while_it_settled_is_no_verdict_on_its_taste(phone):
    settled, settling, next_one = colony(phone), colony(phone, acquired_on="2026-04-29"), colony(phone)
    offered = {"name": "Spring", "food_codes": ["cricket", "mealworm"], "started_on": "2026-01-01"}
    for colony_id in (settled, settling, next_one):
        tasting = phone.write("tasting", {**offered, "colony_ids": [colony_id]})
        if colony_id != next_one:
            refused(phone, colony_id, 1, tasting_id=tasting["id"])

    assert [tally.offered for tally in state_of(phone, next_one).likes["cricket"]] == [1]
    assert {row["food_code"]: row["offers"] for row in plan_of(phone, settling)["tasting"]}["cricket"] == 0


def test_a_rest_that_was_ended_on_the_phone_starts_the_year_of_the_colony(phone):
    colony_id = colony(phone, condition="resting", resting_since="2026-01-10")
    phone.sync()
    phone.write("colony", {"condition": "well"}, colony_id)
    state = state_of(phone, colony_id)

    assert (state.condition, state.condition_since) == ("well", "2026-05-01")
    sugar = next(task for task in plan_of(phone, colony_id)["tasks"] if task["need"] == "sugar")
    assert sugar["due_at_ms"] == NOON_MS - DAY_MS // 2  # today, since it woke today
