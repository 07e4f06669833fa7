"""Time away: what to top up, who needs nobody, how to travel. Common practice, no source."""

from __future__ import annotations

import pytest
from tests.support.said import words

from broodshelf.care.plan.ahead import Planned
from broodshelf.care.plan.holiday import plan_holiday, travel_rules
from broodshelf.care.plan.make import make_plan
from broodshelf.model.facts import ColonyState, Event, Vessel
from broodshelf.model.gauges import DAY_MS, Gauge
from broodshelf.model.kinds import read
from broodshelf.model.quantities import OutOfRange
from broodshelf.model.tasks import reason

NOW_MS = 1_779_278_400_000


def gauge(need: str, level: float, capacity: float, rate: float, due: float = 0.0) -> Gauge:
    return Gauge(need, "days", level, capacity, rate, rate, rate, NOW_MS, due, "common_practice")


def plan(*gauges: Gauge, tasks=()) -> Planned:
    return Planned("c", NOW_MS, [gauge.as_json() for gauge in gauges], tasks)


def away(days: float, made: Planned, workers: float | None = 15.0):
    (colony,) = plan_holiday([made], {"c": workers}, NOW_MS, NOW_MS + round(days * DAY_MS))
    return colony


WATER = gauge("water", 0.8, 1.0, 0.01, 0.25)


def test_a_small_colony_needs_nobody_for_ten_days_after_a_top_up():
    made = plan(gauge("sugar", 2, 5, 1), gauge("protein", 1, 4, 1), WATER)

    week, ten = away(7, made), away(10, made)
    assert week.verdict == ten.verdict == "nobody_after_top_up"
    assert [t["need"] for t in week.top_up] == ["sugar", "protein"]
    assert week.reasons[-1]["code"] == "needs_nobody"
    assert ten.reasons[-1]["code"] == "mostly_nobody"
    assert away(11, made).verdict == "visit"


def test_a_large_colony_is_visited_at_twice_its_interval_at_most():
    made = away(10, plan(gauge("sugar", 2, 3, 1), WATER), workers=900)

    assert made.verdict == "visit"
    assert made.visit_every_days == 6
    assert made.reasons[0] == {"code": "lasts_too_short", "args": {"need": "sugar", "lasts": 6}}


def test_an_unknown_number_of_workers_counts_as_many():
    assert away(9, plan(gauge("sugar", 2, 4, 1), WATER), workers=None).verdict == "visit"


def test_water_is_never_stretched():
    low = gauge("water", 0.3, 1.0, 0.05, 0.25)  # urgent at a tenth: in 4 days; full: in 18
    assert [t["need"] for t in away(10, plan(low)).top_up] == ["water"]
    assert away(10, plan(low)).verdict == "nobody_after_top_up"
    assert away(20, plan(low)).verdict == "visit"
    assert away(20, plan(WATER)).verdict == "nobody"


def test_water_is_taken_at_its_faster_rate():
    unsure = Gauge("water", "share", 0.8, 1.0, 0.02, 0.01, 0.1, NOW_MS, 0.25, "learnt")

    assert away(8, plan(unsure)).top_up  # at the faster rate a tenth is left after 7 days
    assert away(10, plan(unsure)).verdict == "visit"  # a full one lasts 9


def test_what_is_wrong_is_put_right_before_leaving():
    urgent = {"need": "water", "urgent": True, "from_gauge": False, "portion": None}
    leak = {**urgent, "reasons": [reason("leak", fault="leak")]}
    hot = {**urgent, "need": "glance", "reasons": [reason("too_hot", temperature_c=34, limit_c=32)]}
    told = [(r["code"], r["args"].get("fault")) for r in away(3, plan(WATER, tasks=[leak, hot])).reasons]

    assert told[:2] == [("mend_before", "leak"), ("too_hot", None)]


def test_a_top_up_comes_with_the_portion_of_the_plan():
    count = Event("n", "count", NOW_MS - DAY_MS, {"workers": 12, "larvae": "some"})
    made = make_plan(ColonyState("c", "lasius_niger", vessel=Vessel("tube_16x150"), events=(count,)), NOW_MS)
    (protein,) = (task for task in made.tasks if task.need == "protein")

    colony = away(8, read(Planned, made.as_json()), 12)
    assert [top["portion"] for top in colony.top_up if top["need"] == "protein"] == [protein.portion]


@pytest.mark.parametrize("days", [0, -2, 400])
def test_a_journey_that_ends_before_it_begins_is_refused(days):
    with pytest.raises(OutOfRange):
        away(days, plan(WATER))


def test_travel_rules_are_worded_and_fit_the_colony():
    rules = travel_rules(honeypot=True, stings=True)

    assert [r["code"] for r in rules][:3] == ["no_loose_liquid", "plugs_tight", "dark_and_calm"]
    assert {"never_tilt", "double_lid"} <= {r["code"] for r in rules}
    assert {r["code"] for r in rules} <= words()["travel"].keys()
    assert len(travel_rules()) == 5
    used = {r["code"] for d in (5, 9, 30) for r in away(d, plan(gauge("sugar", 1, 3, 1), WATER)).reasons}
    assert used <= words()["reason"].keys()
