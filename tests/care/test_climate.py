"""Climate of a place: readings before settings before defaults. Spreads: common practice, no source."""

from __future__ import annotations

import math

import pytest

from broodshelf.care.colony.climate import climate_of
from broodshelf.model.facts import Event, Hour, Place
from broodshelf.model.gauges import HOUR_MS
from broodshelf.model.quantities import Estimate, OutOfRange

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


def hours(temperatures: dict[int, float], humidity_pct: float | None = None) -> list[Hour]:
    """Hours by how many hours ago they began, oldest first."""
    return [
        Hour(NOW_MS - ago * HOUR_MS, value, value, value, humidity_pct)
        for ago, value in sorted(temperatures.items(), reverse=True)
    ]


def test_what_sensors_measured_in_three_days_goes_before_what_somebody_read_or_set():
    measured = {ago: 27.0 if (12 - ago) % 24 in range(8, 20) else 21.0 for ago in range(1, 73)}
    made = climate_of(Place("cabinet", 24, 20, 60), [reading(2, 30, 40)], hours(measured, 55), now_ms=NOW_MS)

    assert (made.day_c.best, made.night_c.best) == (27, 21)
    assert made.humidity_pct.best == 55
    assert made.basis == "sensor"


def test_a_few_hours_of_a_sensor_are_no_climate_and_old_ones_neither():
    few, old = dict.fromkeys(range(1, 6), 30.0), dict.fromkeys(range(80, 200), 30.0)
    for measured in (few, old):
        made = climate_of(Place(day_temp_c=24), (), hours(measured), now_ms=NOW_MS)
        assert (made.day_c.best, made.basis) == (24, "place")


def test_a_sensor_that_measures_only_humidity_leaves_the_temperature_to_others():
    dry = [Hour(NOW_MS - ago * HOUR_MS, humidity_pct=33.0) for ago in range(20, 0, -1)]
    made = climate_of(Place(day_temp_c=24), (), dry, now_ms=NOW_MS)

    assert (made.day_c.best, made.humidity_pct.best) == (24, 33)
