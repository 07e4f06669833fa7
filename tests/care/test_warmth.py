"""A plan says where the sensor and the setting differ, and sums the season's warmth up; without a sensor nothing."""

from __future__ import annotations

import pytest

from broodshelf.care.plan.make import make_plan
from broodshelf.model.facts import ColonyState, Event, Hour, MeasuredDay, Place
from broodshelf.model.gauges import DAY_MS, HOUR_MS

TODAY = 20_635  # 2 July 2026
NOW_MS = TODAY * DAY_MS + 12 * HOUR_MS
NEW_YEAR = 20_454  # 1 January 2026
CABINET = Place("cabinet", 26.0, 22.0)


def hours_at(day_c: float, night_c: float) -> tuple[Hour, ...]:
    """Three days of hours up to now."""
    return tuple(
        Hour(NOW_MS - ago * HOUR_MS, day_c if 8 <= (12 - ago) % 24 < 20 else night_c)
        for ago in range(72, -1, -1)
    )


def plan_of(**known) -> dict:
    state = ColonyState("c", "lasius_niger", stage="growing", **{"place": CABINET, **known})
    return make_plan(state, NOW_MS).as_json()


def told(plan: dict) -> list[tuple[str, dict]]:
    return [(why["code"], why["args"]) for why in plan["notices"] if why["code"].endswith("_than_set")]


@pytest.mark.parametrize(
    ("day_c", "night_c", "expected"),
    [
        (23.0, 21.5, [("colder_than_set", {"measured_c": 23, "set_c": 26.0})]),
        (26.5, 25.0, [("warmer_than_set", {"measured_c": 25, "set_c": 22.0})]),
        (25.0, 21.0, []),
    ],
)
def test_a_place_that_is_not_as_warm_as_it_was_set_is_told(day_c, night_c, expected):
    assert told(plan_of(hours=hours_at(day_c, night_c))) == expected


def test_nothing_is_told_of_a_place_that_nobody_set_or_measures():
    assert told(plan_of(hours=hours_at(12.0, 12.0), place=Place("cabinet"))) == []
    assert told(plan_of()) == []


def test_a_season_begins_with_new_year_and_says_how_much_of_it_is_assumed():
    """What exceeds the threshold of the eggs of *Lasius* (census/groups.py): at 20 °C measured, 24 °C as set."""
    measured = tuple(MeasuredDay(day, 24, day_c=20.0, night_c=20.0) for day in range(TODAY - 100, TODAY))
    first = Event("n", "note", (NEW_YEAR - 30) * DAY_MS, {"text": "They are here."})
    warmth = plan_of(measured_days=measured, events=(first,))["warmth"]
    days = TODAY - NEW_YEAR + 1
    threshold_c = warmth["threshold_c"]
    assumed = days - 100

    assert warmth["since_on"] == "2026-01-01"
    assert warmth["degree_days"] == round(100 * (20 - threshold_c) + assumed * (24 - threshold_c))
    assert warmth["assumed"] == round(assumed / days, 2)


def test_without_a_sensor_and_a_reading_no_season_is_summed_up():
    assert plan_of()["warmth"] is None
    old = (MeasuredDay(NEW_YEAR - 10, 24, day_c=20.0, night_c=20.0),)
    assert plan_of(measured_days=old)["warmth"] is None
