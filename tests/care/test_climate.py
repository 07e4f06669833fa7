"""Climate of a place: readings before settings before defaults. Spreads: common practice, no source."""

from __future__ import annotations

import math

import pytest

from broodshelf.care.colony.climate import climate_of
from broodshelf.model.facts import Event, Place
from broodshelf.model.quantities import Estimate, OutOfRange

HOUR_MS = 3_600_000
NOW_MS = 1_779_278_400_000  # 2026-05-20T12:00:00Z


def reading(ago_h: float, temperature_c: float | None = None, humidity_pct: float | None = None) -> Event:
    values = {"temperature_c": temperature_c, "humidity_pct": humidity_pct}
    return Event(f"r{ago_h}", "climate", NOW_MS - round(ago_h * HOUR_MS), values)


def test_the_latest_readings_of_day_and_night_go_before_the_settings():
    place = Place("cabinet", 24, 20, 60)
    readings = [reading(50, 22), reading(10, 17.0), reading(2, 27, 40)]  # 02:00 and 10:00 UTC
    made = climate_of(place, readings, now_ms=NOW_MS)

    assert (made.day_c.best, made.night_c.best, made.mean_c.best) == (27, 17, 22)
    assert made.humidity_pct == Estimate(35, 40, 45)
    assert made.basis == "reading"


def test_day_and_night_follow_the_households_clock():
    made = climate_of(Place(), [reading(2, 27)], now_ms=NOW_MS, utc_offset_min=-600)  # midnight there

    assert made.night_c.best == 27


def test_readings_older_than_two_weeks_or_of_tomorrow_do_not_count():
    made = climate_of(Place(day_temp_c=24), [reading(15 * 24, 30), reading(-5, 35)], now_ms=NOW_MS)

    assert made.day_c.best == 24
    assert made.basis == "place"


def test_without_a_word_the_default_is_wide_and_says_what_it_is():
    room, fridge = climate_of(Place(), now_ms=NOW_MS), climate_of(Place("fridge"), now_ms=NOW_MS)

    assert room.basis == "common_practice"
    assert room.day_c.high - room.day_c.low == 6
    assert fridge.day_c.best == 6
    known = climate_of(Place(day_temp_c=22), now_ms=NOW_MS)
    assert known.day_c.high - known.day_c.low < 6


@pytest.mark.parametrize(
    "place",
    [Place(day_temp_c=60), Place(day_temp_c=math.nan), Place(night_temp_c=-20), Place(humidity_pct=101)],
)
def test_impossible_settings_are_refused(place):
    with pytest.raises(OutOfRange):
        climate_of(place, now_ms=NOW_MS)


def test_a_reading_of_60_degrees_is_no_climate():
    assert climate_of(Place(), [reading(1, 60)], now_ms=NOW_MS).basis == "common_practice"
