"""Day length against published almanacs, the window of the winter rest, and what to do in it."""

from __future__ import annotations

import datetime as dt
import json
import math
from dataclasses import replace
from pathlib import Path

import pytest
from tests.support.said import words

from broodshelf.care.catalogue import species
from broodshelf.care.colony.day_length import day_length_hours, shortest_day_near
from broodshelf.care.colony.dossier import dossier_of
from broodshelf.care.colony.history import History
from broodshelf.care.colony.stages import switches
from broodshelf.care.colony.winter_rest import rest_spells, rest_tasks, rest_window
from broodshelf.model.facts import ColonyState, Place
from broodshelf.model.gauges import DAY_MS
from broodshelf.model.quantities import OutOfRange

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


@pytest.mark.parametrize("latitude_sign", [1, -1])
@pytest.mark.parametrize("summer", [False, True])
def test_every_year_has_one_rest_leap_years_too(latitude_sign, summer):
    kind = replace(LASIUS, rest=replace(LASIUS.rest, summer=summer))
    for year in range(2020, 2041):
        spells = rest_spells(kind, dt.date(year, 5, 2), latitude_sign)
        middles = [begin + (end - begin) / 2 for begin, end in spells]

        assert [middle.year for middle in middles] == list(range(year - 2, year + 2))
        assert {middle.month for middle in middles} == {12 if (latitude_sign > 0) != summer else 6}


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
    window = rest_window(species()["prenolepis"], "2026-06-01", 1)
    assert window is not None
    assert window.holds("2026-06-21")
    assert not window.holds("2026-12-21")


def said(today: str, species_code: str = "lasius_niger", **values) -> dict[str, dict]:
    """Return the notices about the year of a colony that is kept at 22 °C unless told otherwise, by code."""
    place = values.pop("place", Place("room", 22, 20))
    state = ColonyState("c", species_code, place=place, **values)
    made = switches(dossier_of(state, species()[species_code]), 30.0, today)
    return {notice["code"]: notice["args"] for notice in (*made.notices, *(t.reasons[0] for t in made.tasks))}


FRIDGE = Place("fridge", 6, 6)


def test_the_ramp_is_announced_before_and_a_rest_that_never_came_until_it_is_too_late():
    window = rest_window(LASIUS, "2026-10-01", 1)
    assert window is not None
    assert window.begin_from == "2026-10-06"

    assert "rest_begins" not in said("2026-09-20")
    assert "rest_begins" in said("2026-09-21")  # 15 days of ramp
    assert "rest_missed" not in said("2026-11-05")
    assert "rest_missed" in said("2026-11-07")
    assert "rest_missed" in said("2027-02-01")
    assert "rest_missed" not in said("2027-03-15")
    assert not {"rest_begins", "rest_missed"} & said("2026-11-07", "camponotus_tropical").keys()


def test_a_rest_ends_by_its_own_months_and_asks_to_be_ended():
    resting = {"condition": "resting", "resting_since": "2026-11-20", "place": FRIDGE}

    assert said("2027-02-10", **resting).keys() == {"resting"}  # 3 months are not over
    assert said("2027-02-20", **resting)["rest_may_end"] == {"days": 60}
    assert said("2027-04-25", **resting)["rest_over"] == {"days": 4}  # 5 months are


def test_a_fridge_is_aired_weekly_and_its_water_looked_at_every_two_to_four_weeks():
    since = NOW_MS - 60 * DAY_MS
    history = History(water_seen_ms=NOW_MS - 10 * DAY_MS, aired_ms=NOW_MS - 3 * DAY_MS)
    tasks = {t.key.what: t for t in rest_tasks(LASIUS.rest, history, since, None, in_fridge=True)}

    assert tasks["rest_water"].due_at_ms == NOW_MS + 4 * DAY_MS
    assert tasks["rest_air"].due_at_ms == NOW_MS + 4 * DAY_MS
    assert tasks["wake_up"].due_at_ms == since + round(5 * 30.44 * DAY_MS)
    assert {r["code"] for t in tasks.values() for r in t.reasons} <= words()["reason"].keys()


def test_a_wake_up_day_that_the_keeper_set_rules_and_a_cellar_needs_no_airing():
    tasks = rest_tasks(LASIUS.rest, History(), NOW_MS, NOW_MS + 100 * DAY_MS, in_fridge=False)

    assert [t.need for t in tasks] == ["water", "rest"]
    assert tasks[1].due_at_ms == NOW_MS + 100 * DAY_MS
