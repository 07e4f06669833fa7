"""A species that the catalogue does not have: from the keeper's words over sync to its plan."""

from __future__ import annotations

import pytest
from tests.support.households import Requester

from broodshelf.rounds.recompute import touched


@pytest.fixture
def phone(household_id: str) -> Requester:
    return Requester(household_id)


def plan_of(phone: Requester, **values) -> dict:
    colony = phone.write("colony", {"name": "Amber", "stage": "growing", "species_code": None, **values})
    phone.sync(recompute=touched)
    assert phone.verdicts[colony["op_id"]]["verdict"] == "applied"
    return next(row["set"] for row in phone.rows().values() if row["kind"] == "plan")


def test_length_alone_gives_an_own_species_a_plan(phone):
    plan = plan_of(phone, species_name="Seen once in a hedge", worker_length_mm=6.5)

    assert {"sugar", "protein", "water"} <= {gauge["need"] for gauge in plan["gauges"]}
    assert plan["cautions"] == []


def test_an_own_species_is_fed_by_the_guild_and_guarded_by_the_sting_that_the_keeper_names(phone):
    plan = plan_of(phone, worker_length_mm=6.5, guild="harvester", stings=True)

    needs = {gauge["need"] for gauge in plan["gauges"]}
    assert "seeds" in needs
    assert "sugar" not in needs
    assert [caution["code"] for caution in plan["cautions"]] == ["stings"]


@pytest.mark.parametrize(("mode", "fed"), [("claustral", False), ("semi_claustral", True)])
def test_the_founding_that_the_keeper_chose_decides_whether_a_queen_is_fed(phone, mode, fed):
    plan = plan_of(phone, stage="founding", worker_length_mm=6.5, founding_mode=mode)

    assert ("sugar" in {gauge["need"] for gauge in plan["gauges"]}) is fed


def test_a_guild_that_is_none_is_refused_with_its_field(phone):
    colony = phone.write("colony", {"name": "Amber", "guild": "carnivore"})
    phone.sync()

    verdict = phone.verdicts[colony["op_id"]]
    assert (verdict["verdict"], verdict["code"], verdict["args"]["field"]) == (
        "rejected",
        "bad_value",
        "guild",
    )
