"""Day length against published almanacs, the window of the winter rest, and what to do in it."""

from __future__ import annotations

import datetime as dt
import json
import math
from dataclasses import replace
from pathlib import Path

import pytest

from broodshelf.care.catalogue import Rest, species, words
from broodshelf.care.colony.day_length import day_length_hours, shortest_day_near
from broodshelf.care.colony.history import History
from broodshelf.care.colony.winter_rest import rest_days_between, rest_notices, rest_tasks, rest_window
from broodshelf.care.quantities import OutOfRange

DAY_MS = 86_400_000
NOW_MS = 1_779_278_400_000
PUBLISHED = json.loads((Path(__file__).parents[2] / "fixtures/published/day_lengths.json").read_text())
LASIUS = species()["lasius_niger"]


@pytest.mark.parametrize("case", PUBLISHED["cases"], ids=lambda c: f"{c['city']} {c['day']}")
def test_day_length_agrees_with_the_almanac_within_three_minutes(case):
    made = day_length_hours(case["latitude_deg"], dt.date.fromisoformat(case["day"]))

    assert made == pytest.approx(case["hours"], abs=3 / 60)


def test_the_poles_have_night_and_sun_all_day_and_the_equator_neither():
    assert day_length_hours(85, dt.date(2026, 12, 21)) == 0
    assert day_length_hours(85, dt.date(2026, 6, 21)) == 24
    for month in range(1, 13):
        assert day_length_hours(0, dt.date(2026, month, 15)) == pytest.approx(12.1, abs=0.05)


@pytest.mark.parametrize("latitude", [-91, 90.5, math.nan, math.inf])
def test_a_latitude_off_the_globe_is_refused(latitude):
    with pytest.raises(OutOfRange):
        day_length_hours(latitude, dt.date(2026, 1, 1))


def test_the_shortest_day_of_each_hemisphere_is_found_across_the_new_year():
    assert shortest_day_near(dt.date(2027, 2, 1), 1) == dt.date(2026, 12, 21)
    assert shortest_day_near(dt.date(2026, 5, 1), -1) == dt.date(2026, 6, 21)


def test_the_rest_of_lasius_takes_the_darkest_three_to_five_months():
    window = rest_window(LASIUS, "2026-11-01", 1, 50.0)
    assert window is not None

    def days(first: str, last: str) -> int:
        return (dt.date.fromisoformat(last) - dt.date.fromisoformat(first)).days

    assert days(window.begin_until, window.end_from) == pytest.approx(3 * 30.44, abs=1)
    assert days(window.begin_from, window.end_until) == pytest.approx(5 * 30.44, abs=1)
    assert window.shortest_hours < window.begin_hours < 12
    begin, end = (dt.date.fromisoformat(d) for d in (window.begin_from, window.end_until))
    assert day_length_hours(50, begin) == pytest.approx(day_length_hours(50, end), abs=0.3)


def test_the_southern_rest_lies_half_a_year_away_and_tropical_species_have_none():
    north, south = rest_window(LASIUS, "2026-11-01", 1), rest_window(LASIUS, "2026-05-01", -1)
    assert north is not None
    assert south is not None
    assert north.begin_from.startswith("2026-10")
    assert south.begin_from.startswith("2026-04")
    assert rest_window(species()["camponotus_tropical"], "2026-11-01", 1) is None


def test_a_summer_rester_rests_around_the_longest_day():
    kind = replace(species()["prenolepis"], rest=Rest(18, 24, 3, 5))
    window = rest_window(kind, "2026-06-01", 1)
    assert window is not None
    assert window.holds("2026-06-21")
    assert not window.holds("2026-12-21")


def test_the_ramp_is_announced_before_and_the_end_from_the_shortest_rest_on():
    window = rest_window(LASIUS, "2026-10-01", 1)
    assert window is not None
    assert window.begin_from == "2026-10-06"

    def said(today: str, *, resting: bool) -> list[str]:
        return [n["code"] for n in rest_notices(window, today, resting=resting)]

    assert said("2026-09-20", resting=False) == []
    assert said("2026-09-21", resting=False) == ["rest_begins"]  # 15 days of ramp
    assert said("2026-11-07", resting=False) == []  # too late to begin by rule
    assert said("2027-01-10", resting=True) == []
    assert said("2027-02-20", resting=True) == ["rest_may_end"]
    assert rest_notices(None, "2026-10-01", resting=False) == []
    assert {"rest_begins", "rest_may_end"} <= words()["notice"].keys()


def test_a_fridge_is_aired_weekly_and_its_water_looked_at_every_two_to_four_weeks():
    since = NOW_MS - 60 * DAY_MS
    history = History(watered_ms=NOW_MS - 10 * DAY_MS, aired_ms=NOW_MS - 3 * DAY_MS)
    tasks = {t.key.split(":")[0]: t for t in rest_tasks(LASIUS.rest, history, since, None, in_fridge=True)}

    assert tasks["rest_water"].due_at_ms == NOW_MS + 4 * DAY_MS
    assert tasks["rest_air"].due_at_ms == NOW_MS + 4 * DAY_MS
    assert tasks["wake_up"].due_at_ms == since + round(5 * 30.44 * DAY_MS)
    assert {r["code"] for t in tasks.values() for r in t.reasons} <= words()["reason"].keys()


def test_a_wake_up_day_that_the_keeper_set_rules_and_a_cellar_needs_no_airing():
    tasks = rest_tasks(LASIUS.rest, History(), NOW_MS, NOW_MS + 100 * DAY_MS, in_fridge=False)

    assert [t.need for t in tasks] == ["water", "rest"]
    assert tasks[1].due_at_ms == NOW_MS + 100 * DAY_MS


def test_days_of_rest_are_counted_over_a_year_once():
    inside = rest_days_between(dt.date(2026, 1, 1), dt.date(2026, 12, 31), LASIUS, 1)

    assert inside == pytest.approx(5 * 30.44, abs=2)
    assert rest_days_between(dt.date(2026, 5, 1), dt.date(2026, 8, 1), LASIUS, 1) == 0
    assert rest_days_between(dt.date(2026, 1, 1), dt.date(2026, 12, 31), LASIUS, -1) == pytest.approx(
        5 * 30.44, abs=2
    )
