"""A tasting starts from what the household's other colonies of the species and guild took in theirs."""

from __future__ import annotations

import datetime as dt

import pytest
from tests.support.households import NOON_MS, Requester

from broodshelf.records.database import reading
from broodshelf.rounds import likes
from broodshelf.rounds.colony_state import colony_states, read_shelf
from broodshelf.rounds.recompute import touched

FOODS = ["cricket", "mealworm"]


@pytest.fixture
def phone(household_id: str) -> Requester:
    return Requester(household_id)


def colony(phone: Requester, species_code: str | None = "lasius_niger", **values: object) -> str:
    made = phone.write(
        "colony", {"name": "Amber", "stage": "growing", "species_code": species_code, **values}
    )
    return str(made["id"])


def tasting(phone: Requester, colony_id: str) -> str:
    values = {"name": "Spring", "colony_ids": [colony_id], "food_codes": FOODS, "started_on": "2026-01-01"}
    return str(phone.write("tasting", values)["id"])


def offer(phone: Requester, colony_id: str, outcome: str, hours: int, **values: object) -> None:
    """Feed a cricket so many hours before noon and see an hour later what became of it."""
    at = [
        dt.datetime.fromtimestamp(NOON_MS / 1000 - h * 3600, dt.UTC).isoformat() for h in (hours, hours - 1)
    ]
    fed = {"need": "protein", "food_code": "cricket", "amount": 1, "unit": "piece", **values}
    feeding = phone.write("feeding", {"colony_id": colony_id, "happened_at": at[0], **fed})
    seen = {"need": "protein", "feeding_id": feeding["id"], "outcome": outcome}
    phone.write("check", {"colony_id": colony_id, "happened_at": at[1], **seen})


def told(phone: Requester, colony_id: str) -> dict[str, dict]:
    """Return what the colony's plan tells of its tasting, by food."""
    phone.sync(recompute=touched)
    assert {verdict["verdict"] for verdict in phone.verdicts.values()} == {"applied"}
    plans = [row["set"] for row in phone.rows().values() if row["kind"] == "plan"]
    plan = next(plan for plan in plans if plan["colony_id"] == colony_id)
    return {row["food_code"]: row for row in plan["tasting"]}


def likes_of_crickets(household_id: str, colony_id: str) -> list[float]:
    """Return how many offers each other colony brings in, weighed."""
    with reading() as connection:
        (state,) = colony_states(read_shelf(connection, household_id, NOON_MS), [colony_id]).told
    return [tally.offered for tally in state.likes["cricket"]]


def test_what_a_colony_of_the_species_took_is_expected_of_the_next_one(phone):
    eager, next_one = colony(phone), colony(phone)
    spring = tasting(phone, eager)
    for number in range(8):
        offer(phone, eager, "all", 200 - 10 * number, tasting_id=spring)
    tasting(phone, next_one)
    rows = told(phone, next_one)

    assert (rows["cricket"]["offers"], rows["cricket"]["likes"]) == (0, 1)
    assert rows["cricket"]["mean"] > 0.7
    assert (rows["mealworm"]["likes"], rows["mealworm"]["mean"]) == (0, 0.5)


def test_an_offer_to_another_species_of_the_guild_tells_less(phone):
    same, cousin = colony(phone), colony(phone, "formica_fusca")
    for each, outcome in ((same, "all"), (cousin, "ignored")):
        spring = tasting(phone, each)
        for number in range(8):
            offer(phone, each, outcome, 200 - 10 * number, tasting_id=spring)
    next_one = colony(phone)
    tasting(phone, next_one)
    row = told(phone, next_one)["cricket"]

    assert row["likes"] == 2
    assert row["mean"] > 0.5


@pytest.mark.parametrize(
    "other", [{"species_code": "messor_barbarus"}, {"species_code": None, "guild": "predator"}]
)
def test_a_colony_of_another_guild_says_nothing(phone, other):
    stranger, next_one = colony(phone, **other), colony(phone)
    spring = tasting(phone, stranger)
    offer(phone, stranger, "ignored", 20, tasting_id=spring)
    tasting(phone, next_one)

    assert told(phone, next_one)["cricket"]["likes"] == 0


def test_only_offers_of_a_tasting_count(phone):
    eager, next_one = colony(phone), colony(phone)
    tasting(phone, eager)
    offer(phone, eager, "ignored", 40)
    tasting(phone, next_one)

    assert told(phone, next_one)["cricket"]["likes"] == 0


def test_what_may_have_been_logged_twice_counts_once(phone, household_id):
    eager, next_one = colony(phone), colony(phone)
    spring = tasting(phone, eager)
    tasting(phone, next_one)
    phone.sync(recompute=touched)
    other = Requester(household_id)
    for each, hours in ((phone, 20), (other, 19)):
        offer(each, eager, "all", hours, tasting_id=spring, task_key="protein:start")
        each.sync(recompute=touched)
    phone.sync()
    assert [row["set"].get("possible_repeat") for row in phone.rows().values()].count(True) == 1

    assert likes_of_crickets(household_id, next_one) == [1]


def test_only_so_many_other_colonies_are_read_those_of_the_species_first(phone, household_id, monkeypatch):
    monkeypatch.setattr(likes, "MOST", 2)
    for species_code in ("formica_fusca", "formica_fusca", "lasius_niger"):
        each = colony(phone, species_code)
        spring = tasting(phone, each)
        offer(phone, each, "all" if species_code == "lasius_niger" else "ignored", 20, tasting_id=spring)
    next_one = colony(phone)
    tasting(phone, next_one)
    phone.sync(recompute=touched)

    assert likes_of_crickets(household_id, next_one) == [1, 0.25]


def test_nobody_elses_log_is_read_where_no_tasting_runs(phone, household_id, monkeypatch):
    quiet, other = colony(phone), colony(phone)
    offer(phone, other, "all", 20)
    phone.sync(recompute=touched)
    read = []
    monkeypatch.setattr(likes, "read_recent", lambda *asked: read.append(asked))
    with reading() as connection:
        (state,) = colony_states(read_shelf(connection, household_id, NOON_MS), [quiet]).told

    assert (read, state.likes) == ([], {})
