"""What a plan says of the growth to come, and of the vessel that fills. The bands are common practice, no source."""

from __future__ import annotations

import math

import pytest

from broodshelf.care.colony.crowding import FULL_SHARE
from broodshelf.care.plan.growing import AHEAD_DAYS, WARN_DAYS
from broodshelf.care.plan.make import make_plan
from broodshelf.model.facts import ColonyState, Event, Vessel
from broodshelf.model.gauges import DAY_MS

NOW_MS = 1_777_636_800_000  # 2026-05-01T12:00:00Z
RATE = math.log(2) / 30
"""Of the colony below: it doubles in thirty days."""


def plan_of(counts, *, code="tube_16x150", last_days_ago=0, now_ms=NOW_MS, brood=None, **state):
    """The plan of a colony with these counts, ten days apart."""
    first, brood = len(counts) - 1, brood or {"larvae": "some"}
    events = tuple(
        Event(str(i), "count", now_ms - ((first - i) * 10 + last_days_ago) * DAY_MS, {"workers": n, **brood})
        for i, n in enumerate(counts)
    )  # fmt: skip
    made = ColonyState(
        "c", "lasius_niger", vessel=Vessel(code), events=events, **{"stage": "growing", **state}
    )
    return make_plan(made, now_ms)


def doubling(last, number=5):
    """Counts that double in thirty days and end with ``last``."""
    return [last * math.exp(-RATE * 10 * (number - 1 - i)) for i in range(number)]


def notice(plan):
    return next((n for n in plan.notices if n["code"].startswith("room_fills")), None)


def test_the_curve_goes_from_the_last_count_to_a_month_from_now_near_what_the_doubling_says():
    curve = plan_of(doubling(30), last_days_ago=5).growth["curve"]
    (first_ms, *_), (last_ms, low, best, high) = curve[0], curve[-1]

    assert (first_ms, last_ms) == (NOW_MS - 5 * DAY_MS, NOW_MS + AHEAD_DAYS * DAY_MS)
    assert low < 30 * 2 ** (35 / 30) < high
    assert low < best < high
    assert all(row[1] <= row[2] <= row[3] for row in curve)


def test_a_colony_that_shrinks_without_brood_is_believed_and_not_forecast_to_grow():
    none = dict.fromkeys(("eggs", "larvae", "pupae"), "none")
    curve = plan_of([60, 50, 42, 35], brood=none).growth["curve"]

    assert 33 < curve[0][2] < 39
    assert curve[-1][2] < 1.1 * curve[0][2]
    assert curve[-1][1] < curve[0][2]


@pytest.mark.parametrize(
    ("counts", "state"),
    [
        ([10, 14, 20], {"condition": "resting"}),
        ([10, 14, 20], {"condition": "queenless_suspected"}),
        ([10, 14, 20], {"last_days_ago": 91}),  # older than a quarter of a year
    ],
)
def test_no_growth_is_forecast_in_rest_without_a_queen_or_long_after_the_last_count(counts, state):
    assert plan_of(counts, **state).growth is None


def test_a_nest_that_fills_soon_is_announced_with_the_days():
    plan = plan_of(doubling(30))
    args = notice(plan)["args"]
    days = math.log(args["room"] * (1 - FULL_SHARE) / 30) / RATE

    assert notice(plan)["code"] == "room_fills"
    assert args["low"] <= args["best"] <= args["high"]
    assert args["low"] <= days <= args["high"]
    assert not [task for task in plan.tasks if task.need == "room"]


def test_days_count_from_today_and_not_from_the_last_count():
    fresh, old = (notice(plan_of(doubling(30), last_days_ago=days))["args"] for days in (0, 9))

    assert fresh["best"] - old["best"] == pytest.approx(9, abs=3)


def test_a_wide_guess_says_that_it_may_take_much_longer():
    july_ms = NOW_MS + 90 * DAY_MS  # it may not be there by mid August, when its year slows it

    assert notice(plan_of([40], now_ms=july_ms))["code"] == "room_fills_perhaps"


@pytest.mark.parametrize(
    ("counts", "code"),
    [
        (doubling(5), "tube_16x150"),  # 5 to 75 workers take 117 days, more than WARN_DAYS
        ([30, 30, 30, 30], "tube_16x150"),
        (doubling(30), None),
    ],
)
def test_nothing_is_announced_that_is_far_off_never_comes_or_is_unknown(counts, code):
    assert WARN_DAYS < 117
    assert notice(plan_of(counts, code=code)) is None


def test_a_nest_that_should_be_full_since_the_last_count_asks_for_a_new_one():
    said = next(n for n in plan_of(doubling(60), last_days_ago=30).notices if n["code"] == "room_full_by_now")

    assert said["args"]["days"] == 30


@pytest.mark.parametrize("state", [{"condition": "settling"}, {"last_days_ago": 91}])
def test_a_colony_that_settles_or_was_not_counted_for_long_is_not_told_of_its_room(state):
    assert not [n for n in plan_of(doubling(60), **state).notices if n["code"].startswith("room_")]


def test_a_full_nest_has_a_task_and_no_announcement():
    plan = plan_of(doubling(82))

    assert notice(plan) is None
    assert [task for task in plan.tasks if task.need == "room"]


def test_a_countdown_with_far_ends_says_why_and_what_brings_them_closer():
    """A wait of 2 to 78 days is of no use without it."""
    look = Event("look", "count", NOW_MS - 20 * DAY_MS, {"workers": 0, "eggs": "some"})
    unknown = ColonyState("c", "camponotus_ligniperda", stage="founding", events=(look,))
    known = ColonyState(
        "c", "camponotus_ligniperda", stage="founding", events=(look,), founded_on="2026-04-05"
    )

    (said, of_known) = ([n["code"] for n in make_plan(state, NOW_MS).notices] for state in (unknown, known))
    assert "first_workers_in" in said
    assert said[said.index("first_workers_in") + 1] == "coming_wide_flight"
    assert "coming_wide_flight" not in of_known
