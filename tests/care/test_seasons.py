"""The year of a colony: its rest, its own year and the calendar. Common practice, no source, unless named."""

from __future__ import annotations

import pytest
from tests.care.stories import (
    FOODS,
    FRIDGE,
    WARM,
    Story,
    every,
    needs,
    noon_ms,
    notices,
    reasons,
    task_keys,
)
from tests.support.said import words

from broodshelf.model.facts import Place, Vessel
from broodshelf.model.gauges import DAY_MS

# what is counted beats the calendar


@pytest.mark.parametrize("today", ["2026-08-20", "2026-09-10", "2026-12-01", "2027-02-10"])
def test_larvae_that_were_counted_last_week_are_fed_at_any_date(today):
    colony = Story(today).counted(6, larvae="many", eggs="some")

    assert every(colony, "protein") <= 4
    assert "brood_grows" in reasons(colony, "protein")
    assert "quiet_season" not in reasons(colony, "protein")
    assert "yearly_clock_larvae" in notices(colony)


def test_where_nobody_counted_lately_the_yearly_clock_says_what_to_expect():
    colony = Story("2026-11-20").counted(100, larvae="many")

    assert every(colony, "protein") >= 7
    assert "quiet_season" in reasons(colony, "protein")
    assert "yearly_clock" in notices(colony)


def test_a_look_that_found_no_larvae_is_named_as_such_and_not_as_the_season():
    colony = Story("2026-11-20").counted(6, larvae="none")

    assert {"no_larvae", "maintenance_only"} <= reasons(colony, "protein").keys()
    assert "quiet_season" not in reasons(colony, "protein")
    assert "yearly_clock_none" in notices(colony)


RESTED = {"condition": "well", "resting_since": "2026-10-10", "condition_until": "2027-01-10"}


def test_a_finished_rest_of_its_own_starts_the_year_of_a_colony():
    woken = Story("2027-02-10", **RESTED).counted(130, larvae="some")
    never_rested = Story("2027-02-10").counted(130, larvae="some")

    assert "yearly_clock" not in notices(woken)
    assert every(woken, "protein") < 7 <= every(never_rested, "protein")


def test_a_late_rest_puts_off_the_next_quiet_season_by_as_much():
    """A year has 196 slow and 169 active days: a colony that woke on 1 May slows on 17 October, not in August."""
    rest = {"resting_since": "2027-01-10", "condition_until": "2027-05-01"}

    assert "yearly_clock" not in notices(Story("2027-10-16", **rest).counted(100))
    assert "yearly_clock" in notices(Story("2027-10-17", **rest).counted(100))


def test_three_weeks_of_cold_are_a_rest_and_less_is_none():
    """Myrmica rubra larvae restart only after chilling of at least 3 weeks (Pearson & Raybould 1997)."""
    short, long = (
        Story("2027-01-20", resting_since="2026-12-01", condition_until=until).counted(60)
        for until in ("2026-12-21", "2026-12-22")
    )

    assert "yearly_clock" in notices(short)
    assert "yearly_clock" not in notices(long)


def test_a_rest_that_was_ended_before_its_day_ends_when_the_condition_changed():
    told = {"condition_since": "2027-01-15", "condition_until": "2027-03-01"}
    colony = Story("2027-01-20", resting_since="2026-10-10", **told).fed(110, "sugar")

    assert colony.due_in("sugar") == pytest.approx(-5.5)  # midnight of 15 January


def test_a_founding_queen_kept_warm_is_told_of_her_year_and_of_no_protein():
    said = notices(Story("2027-01-10", stage="founding").counted(40, workers=0, larvae="few"))

    assert {"claustral", "yearly_clock_none", "rest_missed"} <= said.keys()
    assert "protein" not in words()["notice"]["yearly_clock_none"]


# a rest and its place


def test_a_rest_that_is_over_by_its_date_asks_to_be_ended_and_makes_nothing_else_due():
    rest = {"condition": "resting", "resting_since": "2026-11-01", "condition_until": "2027-02-20"}
    colony = Story("2027-03-01", place=FRIDGE, vessel=Vessel("nest_small", has_outworld=True), **rest)
    colony.counted(130, workers=400, larvae="some").fed(125, "sugar")
    wake_up = next(task for task in colony.plan().tasks if task.key.what == "wake_up")

    assert needs(colony) == {"water"}
    assert not {task.need for task in colony.plan().tasks} & {*FOODS, "room", "glance", "barrier"}
    assert notices(colony)["rest_over"] == {"days": 9}
    assert wake_up.due_at_ms == noon_ms("2027-02-20") - DAY_MS // 2


def test_a_rest_of_which_only_the_mark_is_known_began_with_it_and_no_look_puts_its_end_off():
    colony = Story(
        "2027-01-20", "messor_barbarus", place=FRIDGE, condition="resting", condition_since="2026-11-01"
    )
    colony.counted(120, workers=400)

    def wakes() -> int:
        return next(task.due_at_ms for task in colony.plan().tasks if task.key.what == "wake_up")

    end_ms = noon_ms("2027-01-31") - DAY_MS // 2  # three months of 30.44 days, less some hours
    assert notices(colony)["rest_may_end"] == {"days": 11}
    assert 0 <= wakes() - end_ms < DAY_MS
    before = wakes()
    colony.log(31, "photo", sha256="0" * 64)

    assert wakes() == before


def test_what_was_offered_before_a_rest_is_no_leftover_after_it():
    def leftovers(ago_days: float) -> list[str]:
        colony = Story("2027-01-14", **RESTED).counted(130).fed(ago_days, "protein")
        return [task.need for task in colony.plan().tasks if task.need == "leftovers"]

    assert leftovers(100) == []
    assert leftovers(10) == ["leftovers"]


def test_after_a_rest_food_is_due_since_it_woke_and_not_since_autumn():
    colony = Story("2027-01-14", **RESTED).counted(130).fed(100, "sugar").fed(100, "protein")
    look = next(task for task in colony.plan().tasks if task.need == "glance")

    assert colony.due_in("sugar") == colony.due_in("protein") == pytest.approx(-4.5)
    assert look.due_at_ms == noon_ms("2027-01-10") - DAY_MS // 2


IN_WINTER = {"condition": "resting", "resting_since": "2026-11-01"}


def test_resting_in_a_warm_place_is_said_and_the_colony_does_not_starve_meanwhile():
    colony = Story("2026-12-01", place=Place("room", 24), **IN_WINTER).counted(40)
    asked = next(task for task in colony.plan().tasks if task.key.about == "rest_too_warm")

    assert asked.reasons[0]["args"] == {"mean_c": 23, "limit_c": 15}
    assert {"sugar", "protein"} <= needs(colony)
    assert colony.due_in("sugar") == pytest.approx(-0.5)  # today, not since autumn
    assert "resting" not in notices(colony)


def test_a_mark_that_is_not_believed_makes_no_look_overdue_since_autumn():
    colony = Story("2027-06-10", place=Place("room", 22), **IN_WINTER).counted(200)
    look = next(task for task in colony.plan().tasks if task.need == "glance")

    assert look.due_at_ms == colony.now_ms - DAY_MS // 2


@pytest.mark.parametrize(("today", "place"), [("2026-11-15", Place("room", 24)), ("2026-12-15", Place())])
def test_a_rest_is_believed_while_it_is_cooled_down_and_where_nobody_said_where_it_stands(today, place):
    colony = Story(today, place=place, **IN_WINTER).counted(40)

    assert "resting" in notices(colony)
    assert not needs(colony) & FOODS


@pytest.mark.parametrize("place", [FRIDGE, WARM])
def test_a_tropical_species_has_no_rest_whatever_is_marked(place):
    colony = Story("2026-12-01", "camponotus_nicobarensis", place=place, **IN_WINTER).counted(40)

    assert "rest_fits:rest_not_for_species" in task_keys(colony)
    assert "sugar" in needs(colony)
    assert "resting" not in notices(colony)


def test_a_tropical_species_in_the_cold_is_never_told_to_rest():
    said = notices(Story("2026-12-20", "camponotus_nicobarensis", place=Place("cellar", 11, 11)).counted(9))

    assert "too_cold_for_species" in said
    assert not {"too_cold_for_protein", "rest_unmarked", "rest_begins", "rest_missed"} & said.keys()
    assert "resting" not in words()["notice"]["too_cold_for_species"]


def test_frost_in_a_rest_is_urgent_and_six_degrees_are_fine():
    frozen = Story("2026-12-01", place=Place("cellar", 1, -2), **IN_WINTER).counted(40).plan()
    fine = Story("2026-12-01", place=FRIDGE, **IN_WINTER).counted(40).plan()

    assert [str(t.key) for t in frozen.tasks if t.urgent] == ["rest_fits:rest_frost"]
    assert frozen.tasks[0].reasons[0]["args"] == {"coldest_c": -2, "limit_c": 0}
    assert not [t for t in fine.tasks if t.urgent]


def test_a_species_that_rests_is_told_so_when_it_is_kept_warm_into_winter():
    def said(**values) -> dict[str, dict]:
        return notices(Story("2027-01-20", "formica_fusca", **values).counted(10))

    assert "rest_missed" in said()
    assert "rest_missed" not in said(place=Place("cellar", 8, 8))
    assert "rest_missed" not in said(**RESTED)
    assert "rest_missed" not in said(acquired_on="2027-01-01")  # it may have rested where it came from


def test_a_place_as_cool_as_its_rest_in_the_season_of_its_rest_asks_whether_it_rests():
    december, august = (
        Story(day, place=Place("cellar", 14, 13)).counted(50) for day in ("2026-12-20", "2026-08-01")
    )

    assert notices(december)["rest_unmarked"]["mean_c"] == 13.5
    assert not {"yearly_clock", "rest_missed"} & notices(december).keys()
    assert every(december, "protein") >= 7
    assert "rest_unmarked" not in notices(august)


def test_a_species_that_nobody_knows_is_woken_after_five_months():
    colony = Story("2026-12-01", None, place=FRIDGE, worker_length_mm=5.0, **IN_WINTER)
    wake_up = next(task for task in colony.plan().tasks if task.key.what == "wake_up")

    assert wake_up.due_at_ms == noon_ms("2026-11-01") - DAY_MS // 2 + round(5 * 30.44 * DAY_MS)


def test_a_rest_that_is_planned_is_none_yet():
    planned = Story("2026-10-20", condition="resting", resting_since="2026-11-01").counted(10)

    assert "sugar" in needs(planned)
    assert "resting" not in notices(planned)


# the summer rester


def test_the_summer_rester_rests_in_summer():
    rest = {"condition": "resting", "resting_since": "2026-06-20"}
    colony = Story("2026-07-20", "prenolepis", place=Place("room", 22), **rest).counted(40)
    said = [*notices(colony), *reasons(colony, "rest")]

    assert not needs(colony) & FOODS
    assert {"resting_summer", "wake_up_summer"} <= set(said)
    assert not [code for code in said if "winter" in (words()["notice"] | words()["reason"])[code]]


def test_the_summer_rester_slows_down_in_summer_and_not_in_winter():
    july, january = (
        Story(day, "prenolepis", place=Place("room", 22)).counted(100) for day in ("2026-07-20", "2027-01-20")
    )

    assert "yearly_clock_summer" in notices(july)
    assert every(july, "protein") >= 7
    assert every(january, "protein") < 7
    assert not {"yearly_clock", "rest_begins", "rest_missed"} & notices(january).keys()
