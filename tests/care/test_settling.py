"""Settling after a move, a journey or by the condition. Common practice, no source."""

from __future__ import annotations

import datetime as dt

import pytest
from tests.care.stories import Story, notices, reasons

from broodshelf.care.plan.known import know

SETTLING_WAYS = {
    "by its condition": ({"condition": "settling", "condition_since": "2026-06-18"}, None),
    "after a move": ({}, 2),
    "by the day it came": ({"acquired_on": "2026-06-18"}, None),
}


def refused_while_settling(today: str, way: str) -> Story:
    values, moved_ago = SETTLING_WAYS[way]
    colony = Story(today, **values).counted(60)
    late_days = (dt.date.fromisoformat(today) - dt.date(2026, 6, 20)).days
    if moved_ago is not None:
        colony.log(moved_ago + late_days, "move", how="finished")
    colony.fed(1.5 + late_days, "protein", "offer")
    return colony.log(
        0.5 + late_days, "check", feeding_id="offer", need="protein", outcome="ignored", after_h=24
    )


@pytest.mark.parametrize("way", SETTLING_WAYS)
def test_while_it_settles_a_refusal_teaches_nothing_and_counts_as_an_offer(way):
    colony = refused_while_settling("2026-06-20", way)
    said = reasons(colony, "protein")

    assert notices(colony)["settles"] == {"low": 1, "high": 5}
    assert "refusal_state" in said
    assert "settling" in said  # why the interval is longer
    assert not {"refusal_food", "appetite_learnt", "never_fed", "ignored_did_not_count"} & said.keys()
    assert colony.due_in("protein") > 0


@pytest.mark.parametrize("way", SETTLING_WAYS)
def test_settling_ends_by_itself_after_a_week_and_what_was_refused_in_it_still_teaches_nothing(way):
    colony = refused_while_settling("2026-07-20", way)

    assert "settles" not in notices(colony)
    assert "settling" not in reasons(colony, "protein")
    assert not {"refusal_food", "appetite_learnt"} & reasons(colony, "protein").keys()


def test_a_day_that_is_left_over_from_the_rest_before_ends_no_settling_and_no_quarantine():
    rested = {"resting_since": "2026-11-01", "condition_since": "2027-03-01"}

    def told(condition: str, until: str) -> dict:
        return notices(Story("2027-03-02", **rested, condition=condition, condition_until=until).counted(20))

    for left_over in ("2027-02-20", "2027-03-01"):  # woken after the day that was set, and on it
        assert told("settling", left_over)["settles"] == {"low": 2, "high": 6}
        assert told("quarantine", left_over)["quarantine_left"] == {"low": 13, "high": 27}
    assert told("settling", "2027-03-02")["settles"] == {"low": 0, "high": 1}
    assert "quarantine" in told("quarantine", "2027-03-02")


def test_a_nest_that_was_only_offered_is_no_move():
    assert "settles" not in notices(Story("2026-06-20").counted(40).log(1, "move", how="offered"))


def test_a_food_that_was_refused_is_banned_unless_the_colony_was_settling_or_slowing_down():
    def offered(today: str, **values) -> str:
        colony = Story(today, **values).counted(20, workers=80, larvae="some")
        colony.log(3, "feeding", "f", need="protein", food_code="fruit_fly", amount=1, unit="piece")
        colony.log(2, "check", feeding_id="f", need="protein", outcome="ignored", after_h=24)
        return banned(colony)

    def banned(colony: Story) -> str:
        return " ".join(sorted(know(colony.state(), colony.now_ms).state.refused_foods))

    assert offered("2026-06-20") == "fruit_fly"
    assert offered("2026-06-20", acquired_on="2026-06-16") == ""
    assert offered("2026-10-10") == ""


def test_a_refusal_before_its_rest_is_no_low_appetite():
    colony = Story("2026-10-10").counted(50, larvae="some")
    for n in range(4):
        colony.fed(12 - 3 * n, "protein", f"f{n}")
        colony.log(11 - 3 * n, "check", feeding_id=f"f{n}", need="protein", outcome="ignored", after_h=24)

    assert "refusal_state" in reasons(colony, "protein")
    assert "appetite_learnt" not in reasons(colony, "protein")
