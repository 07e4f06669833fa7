"""Stages of a life through whole plans: first food, queens, doubts. Common practice, no source, unless named."""

from __future__ import annotations

import pytest
from tests.care.stories import FOODS, Story, every, needs, notices, reasons, task_keys
from tests.support.said import say

from broodshelf.care.catalogue import species
from broodshelf.model.facts import Place, Rule, Vessel

# the first food, and what could not be done before


@pytest.mark.parametrize(("ago_days", "due_in"), [(2, -0.5), (4, -0.5), (7, -0.5), (9, -2.5)])
def test_the_first_food_is_due_in_its_days_and_overdue_only_after_them(ago_days, due_in):
    """From 2 to 7 days after the first workers, by calendar days: at noon of each of them it is due since midnight."""
    colony = (
        Story("2026-07-10", stage="founding").counted(ago_days + 30, workers=0).counted(ago_days, workers=3)
    )

    assert colony.due_in("sugar") == colony.due_in("protein") == pytest.approx(due_in)


@pytest.mark.parametrize("code", ["lasius_niger", "camponotus_ligniperda", "messor_barbarus", "atta"])
def test_the_notice_of_the_first_food_names_no_portion_beside_those_of_its_tasks(code):
    colony = Story("2026-07-10", code, stage="founding").counted(30, workers=0).counted(3, workers=3)
    said = say("notice", "first_food_now", notices(colony)["first_food_now"])

    assert needs(colony) & FOODS
    assert not any(food in said for food in ("drop", "leg", "fly", "flies", "seed", "prey"))


def test_a_colony_whose_workers_were_counted_yesterday_is_not_late_since_its_tube_was_filled():
    colony = Story("2026-07-10").log(60, "water", action="refill").counted(1, workers=12)

    assert colony.due_in("sugar") == pytest.approx(-1.5)


def test_a_colony_that_was_entered_today_is_due_today():
    assert Story("2026-07-10").due_in("sugar") == pytest.approx(-0.5)


def test_after_a_pause_a_need_is_due_since_the_pause_ended():
    paused = (Rule("protein", every_days=2.0, paused_until="2026-07-09"),)
    colony = Story("2026-07-10", rules=paused).counted(40).fed(30, "protein")

    assert colony.due_in("protein") == pytest.approx(-1.5)


# nobody knows, nobody there


@pytest.mark.parametrize(
    "code", ["lasius_niger", "messor_barbarus", "atta", "myrmica_rubra", "lasius_parasitic", None]
)
def test_without_a_stage_and_a_count_the_plan_asks_and_assumes_no_founding_queen(code):
    colony = Story("2026-07-10", code, stage=None)
    assumed = {"claustral", "claustral_fungus", "quiet_look", "semi_claustral", "parasitic"}
    founds = species()[code].founding if code else "claustral"

    assert "ask:stage" in task_keys(colony)
    assert "stage_unknown" in notices(colony)
    assert not assumed & notices(colony).keys()
    assert needs(colony) & FOODS  # a colony would starve without
    assert ("protein" in needs(colony)) is (founds != "claustral")  # it would disturb a founding queen
    assert len([task for task in colony.plan().tasks if task.need == "glance"]) == 1


def test_a_count_answers_the_question():
    queen, colony = (Story("2026-07-10", stage=None).counted(0, workers=n) for n in (0, 12))

    assert "ask:stage" not in task_keys(queen) | task_keys(colony)
    assert "claustral" in notices(queen)
    assert "protein" in needs(colony)


def test_no_queen_is_heard_from_the_count_and_from_the_colony():
    counted = Story("2026-06-20").counted(4, larvae="none", queens=0)
    entered = Story("2026-06-20", queens=0).counted(4)

    for colony in (counted, entered):
        assert "no_queen" in notices(colony)
        assert "next_workers_in" not in notices(colony)
        assert every(colony, "protein") >= 7
    assert "no_brood_expected" in reasons(entered, "protein")
    assert "quiet_season" not in reasons(entered, "protein")
    assert every(Story("2026-06-20", queens=0).counted(4, larvae="many"), "protein") < 7  # larvae are fed
    assert "no_queen" not in notices(Story("2026-06-20", queens=0).counted(4, queens=1))


def test_a_species_whose_mated_workers_lay_is_not_mourned_for_want_of_a_queen():
    colony = Story("2026-06-20", "diacamma", vessel=Vessel("nest_small")).counted(4, queens=0, larvae="some")

    assert "gamergates" in notices(colony)
    assert "no_queen" not in notices(colony)


@pytest.mark.parametrize("stage", ["founding", "nanitics", "growing"])
def test_a_count_that_fell_to_zero_is_a_queen_alone_who_is_fed_and_looked_at_again(stage):
    colony = Story("2026-06-20", stage=stage).counted(40, workers=8).counted(4, workers=0)

    assert notices(colony)["alone"] == {"low": 3, "high": 5}
    assert "ask:workers" in task_keys(colony)
    assert every(colony, "sugar") == every(colony, "protein") == 4


def test_where_neither_queen_nor_workers_are_left_nothing_is_fed():
    colony = Story("2026-06-20", queens=0).counted(40).counted(4, workers=0)

    assert "colony_empty" in notices(colony)
    assert not needs(colony) & {*FOODS, "room", "glance"}


def eggs_only(ago_days: tuple[int, ...], **values) -> Story:
    colony = Story("2026-06-20", stage="founding", **values)
    for ago in ago_days:
        colony.counted(ago, workers=0, eggs="some", larvae="none")
    return colony


def test_eggs_for_two_months_without_a_larva_are_a_doubt_and_no_countdown():
    months = eggs_only((100, 60, 4))
    one_larva = eggs_only((100, 60)).counted(30, workers=0, eggs="some", larvae="few")

    assert notices(months)["eggs_without_larvae"] == {"weeks": 13}
    assert "first_workers_in" not in notices(months)
    assert "eggs_without_larvae" not in notices(eggs_only((40, 4)))
    assert "eggs_without_larvae" not in notices(one_larva.counted(4, workers=0, eggs="some"))


def test_eggs_in_a_place_too_cold_to_hatch_are_not_the_queens_fault():
    """Lasius japonicus: no hatching at 15 °C (Sociobiology 2015)."""
    said = notices(eggs_only((100, 60, 4), place=Place("cellar", 15, 14)))

    assert "eggs_too_cold" in said
    assert "eggs_without_larvae" not in said


def test_eggs_that_are_counted_speak_for_a_queen_who_was_doubted():
    doubted = Story("2026-06-20", condition="queenless_suspected").counted(30, eggs="none", larvae="none")
    assert "queenless" in notices(doubted)

    assert "queen_lays" in notices(doubted.counted(2, eggs="some", larvae="none"))


def test_males_only_stop_forecasts_and_the_feeding_of_larvae_that_nobody_saw():
    colony = Story("2026-06-20").counted(4, pupae="some", males_only=True)

    assert "males_only" in notices(colony)
    assert "next_workers_in" not in notices(colony)
    assert every(colony, "protein") >= 7


# queens of every kind: words, intervals and foods of one plan agree

QUEENS = {
    # species: the notice, the foods that are offered
    "myrmica_rubra": ("semi_claustral", {"sugar", "protein"}),
    "manica_rubida": ("semi_claustral", {"sugar", "protein"}),
    "myrmecia_large": ("semi_claustral", {"sugar", "protein"}),
    "harpegnathos": ("semi_claustral", {"sugar", "protein"}),
    "pogonomyrmex": ("semi_claustral_harvester", {"seeds", "protein"}),
    "acromyrmex": ("semi_claustral_fungus_grower", {"leaves"}),
    "lasius_parasitic": ("parasitic", {"sugar"}),
    "atta": ("claustral_fungus", set()),
    "messor_barbarus": ("claustral", set()),
    "lasius_niger": ("claustral", set()),
}
FOOD_WORDS = {"sugar": "sugar", "protein": "prey", "seeds": "seeds", "leaves": "leaves"}


@pytest.mark.parametrize("code", QUEENS)
@pytest.mark.parametrize("larvae", ["none", "few", None])
def test_words_intervals_and_foods_of_a_queens_plan_agree(code, larvae):
    nest = Vessel("nest_tiny")
    colony = Story("2026-07-20", code, stage="founding", vessel=nest).counted(4, workers=0, larvae=larvae)
    expected, foods = QUEENS[code]
    said = notices(colony)

    assert [each for each in said if each in {notice for notice, _ in QUEENS.values()}] == [expected]
    assert needs(colony) & FOODS == foods
    text = say("notice", expected, said[expected])
    if foods:
        assert all(FOOD_WORDS[food] in text for food in foods)
    if said[expected]:
        for food in foods - {"seeds"}:
            assert said[expected]["low"] <= every(colony, food) <= said[expected]["high"]


def test_a_parasites_queen_with_hosts_is_a_colony_that_eats():
    colony = Story("2026-07-20", "lasius_parasitic", stage="founding").counted(4, workers=20)

    assert {"sugar", "protein"} <= needs(colony)
    assert "parasitic_hosts" in notices(colony)
    assert "parasitic" not in notices(colony)


@pytest.mark.parametrize("code", [code for code, kind in species().items() if kind.founding == "claustral"])
def test_nothing_is_ever_fed_to_a_claustral_queen(code):
    for more in (
        {},
        {"condition": "settling"},
        {"condition": "queenless_suspected"},
        {"acquired_on": "2026-07-18"},
    ):
        colony = Story("2026-07-20", code, stage="founding", **more)
        assert not needs(colony.counted(4, workers=0, eggs="many", larvae="many")) & FOODS


# added brood


def test_added_larvae_are_fed_from_the_moment_that_they_are_logged():
    without = Story("2026-07-20", stage="nanitics").counted(10, workers=8, larvae="none", eggs="few")
    assert every(without.fed(9, "protein"), "protein") >= 7

    boosted = without.log(1, "boost", brood="larvae", number=20)
    assert every(boosted, "protein") <= 5
    assert boosted.due_in("protein") == pytest.approx(
        -1
    )  # since they are there, not since four days after the last
    assert reasons(boosted, "protein")["brood_grows"]["larvae"] == 20


def test_added_pupae_of_any_age_are_the_next_workers():
    eggs = Story("2026-07-20", stage="founding").counted(
        10, workers=0, eggs="few", larvae="none", pupae="none"
    )
    assert (
        notices(eggs)["first_workers_in"]["low"] > 2
    )  # eggs alone ten days ago, of a queen whose flight nobody dated

    assert notices(eggs.log(1, "boost", brood="pupae", number=15))["first_workers_in"]["low"] == 0


def test_larvae_beside_workers_that_nobody_counted_are_not_foretold_as_first_workers():
    assert "next_workers_in" in notices(
        Story("2026-06-20", stage=None).counted(2, workers=None, larvae="many")
    )
    assert "first_workers_in" in notices(
        Story("2026-06-20", stage="founding").counted(2, workers=None, larvae="few")
    )


def test_pupae_that_were_given_to_a_parasites_queen_are_heard():
    queen = Story("2026-06-20", "lasius_parasitic", stage="founding").counted(20, workers=0)
    assert "parasitic" in notices(queen)

    given = notices(queen.log(3, "boost", brood="pupae", number=30))
    assert "parasitic_pupae" in given
    assert "parasitic" not in given


def test_added_eggs_do_not_clear_a_queen_who_lays_none():
    colony = Story("2026-06-20")
    for ago in range(56, -1, -7):
        colony.counted(ago, eggs="none")

    assert "queen_doubt" in notices(colony)
    assert "queen_doubt" in notices(colony.log(3, "boost", brood="eggs", number=10))
