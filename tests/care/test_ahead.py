"""What larder and holidays read of a plan's census: the same curve as everything else."""

from __future__ import annotations

from dataclasses import replace

import pytest

from broodshelf.care.plan.ahead import Planned, use_ratio, workers_at
from broodshelf.care.plan.holiday import plan_holiday
from broodshelf.care.plan.known import know
from broodshelf.care.plan.make import make_plan
from broodshelf.model.facts import ColonyState, Event, Place, Vessel
from broodshelf.model.gauges import DAY_MS
from broodshelf.model.kinds import read

NOW_MS = 1_777_636_800_000


def growing() -> ColonyState:
    counts = [
        Event(f"c{i}", "count", NOW_MS - (40 - 20 * i) * DAY_MS, {"workers": 30 + 10 * i, "larvae": "many"})
        for i in range(3)
    ]
    return ColonyState(
        "c", "lasius_niger", stage="growing", place=Place("room", 26, 24), vessel=Vessel("tube_16x150"),
        events=tuple(counts),
    )  # fmt: skip


def test_the_use_of_sugar_goes_with_the_workers_that_the_census_expects_and_protein_with_its_larvae():
    state = growing()
    plan, living = read(Planned, make_plan(state, NOW_MS).as_json()), know(state, NOW_MS).living
    then = living.on(living.day + 60)

    sugar, protein = (use_ratio(plan, need, NOW_MS + 60 * DAY_MS) for need in ("sugar", "protein"))
    assert sugar.best == pytest.approx(then.workers.best / living.today.workers.best, rel=0.05)
    assert protein.best == pytest.approx(then.larvae.best / living.today.larvae.best, rel=0.1)
    assert workers_at(plan, NOW_MS + 60 * DAY_MS).best == pytest.approx(then.workers.best, rel=0.05)


def test_without_a_census_nothing_changes():
    plan = Planned("c", NOW_MS)

    assert use_ratio(plan, "sugar", NOW_MS + 60 * DAY_MS).best == 1
    assert workers_at(plan, NOW_MS) is None


def test_a_colony_that_grows_while_its_keeper_is_away_is_no_small_one():
    plan = read(Planned, make_plan(growing(), NOW_MS).as_json())
    sugar = {
        "need": "sugar", "unit": "days", "level": 2.0, "capacity": 4.0, "rate_per_day": 1.0, "rate_low": 1.0,
        "rate_high": 1.0, "as_of_ms": NOW_MS, "due_level": 0.0, "basis": "common_practice",
    }  # fmt: skip
    plan = replace(plan, gauges=[sugar], tasks=[])
    without = replace(plan, census=None)
    later_ms = NOW_MS + 110 * DAY_MS

    (grown,), (small,) = (
        plan_holiday([one], {"c": 50.0}, later_ms, later_ms + 9 * DAY_MS) for one in (plan, without)
    )
    assert workers_at(plan, later_ms).best > 100
    assert (grown.verdict, small.verdict) == ("visit", "nobody_after_top_up")
