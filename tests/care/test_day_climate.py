"""The climate of a colony day by day: measured before typed, typed before assumed, each half of the day by itself."""

from __future__ import annotations

import pytest

from broodshelf.care.colony.day_climate import climate_by_day, degree_days, share_assumed
from broodshelf.care.colony.measured_days import days_of
from broodshelf.model.facts import ColonyState, Event, Hour, MeasuredDay, Place
from broodshelf.model.gauges import DAY_MS, HOUR_MS

CABINET = Place("cabinet")
"""24 °C by day and 21 °C by night where nobody said anything (``climate.USUAL``)."""


def state_of(**known) -> ColonyState:
    return ColonyState("c", "lasius_niger", **{"place": CABINET, **known})


def typed(day: int, hour: int, temperature_c: float, **more) -> Event:
    return Event("e", "climate", day * DAY_MS + hour * HOUR_MS, {"temperature_c": temperature_c, **more})


def test_without_any_reading_every_day_is_as_is_usual_and_assumed():
    days = climate_by_day(state_of(), 100, 103)
    assert [day.day for day in days] == [100, 101, 102, 103]
    assert {(day.day_c, day.night_c, day.humidity_pct, day.basis) for day in days} == {
        (24, 21, 50, "assumed")
    }
    assert share_assumed(days) == 1


def test_a_setting_stands_in_where_nothing_was_measured():
    days = climate_by_day(state_of(place=Place("cabinet", 28.0, None, 60.0)), 100, 100)
    assert [(day.day_c, day.night_c, day.humidity_pct, day.basis) for day in days] == [
        (28, 26, 60, "assumed")
    ]


def test_a_typed_reading_speaks_for_its_half_of_the_day_for_two_weeks():
    readings = (typed(100, 12, 30.0), typed(100, 22, 18.0, humidity_pct=70.0), typed(103, 9, 27.0))
    days = {day.day: day for day in climate_by_day(state_of(climate_readings=readings), 99, 118)}
    assert (days[99].basis, days[100].basis) == ("assumed", "typed")
    assert [days[at].day_c for at in (100, 102, 103, 117)] == [30, 30, 27, 27]
    assert (days[114].night_c, days[114].basis, days[114].humidity_basis) == (18, "typed", "typed")
    assert (days[115].night_c, days[115].basis) == (21, "assumed")  # its night was read 15 days ago
    assert days[118].day_c == 24


def test_what_was_measured_goes_before_what_was_typed_and_half_a_day_is_no_day():
    measured = (MeasuredDay(100, 24, day_c=22.0, night_c=16.0), MeasuredDay(101, 8, night_c=15.0))
    readings = (typed(99, 12, 30.0), typed(99, 22, 25.0))
    first, second, third = climate_by_day(
        state_of(measured_days=measured, climate_readings=readings), 100, 102
    )
    assert (first.day_c, first.night_c, first.basis) == (22, 16, "measured")
    assert (second.day_c, second.night_c, second.basis) == (30, 15, "typed")
    assert (third.day_c, third.night_c, third.basis) == (30, 25, "typed")


def test_the_hours_of_the_last_days_go_before_what_was_written_of_them():
    hours = tuple(Hour(100 * DAY_MS + hour * HOUR_MS, 10.0 + hour) for hour in range(24))
    state = state_of(hours=hours, measured_days=(MeasuredDay(100, 3, day_c=5.0),))
    (day,) = climate_by_day(state, 100, 100)
    assert (day.day_c, day.night_c) == (23.5, 19.5)  # means of 18 to 29, and of 10 to 17 and 30 to 33
    assert day.basis == "measured"


def test_what_was_measured_before_the_colony_came_says_nothing_of_it():
    measured = tuple(MeasuredDay(day, 24, day_c=6.0, night_c=6.0) for day in range(95, 105))
    state = state_of(measured_days=measured, place_since="1970-04-11")  # day 100
    days = climate_by_day(state, 98, 101)
    assert [day.basis for day in days] == ["assumed", "assumed", "measured", "measured"]


def test_a_broken_sensor_or_a_slip_of_the_pen_is_no_climate():
    measured = (MeasuredDay(100, 24, day_c=60.0, night_c=-20.0),)
    (day,) = climate_by_day(
        state_of(measured_days=measured, climate_readings=(typed(100, 12, 70.0),)), 100, 100
    )
    assert (day.day_c, day.night_c, day.basis) == (24, 21, "assumed")


def test_degree_days_count_each_half_that_is_warmer_than_the_threshold():
    measured = (MeasuredDay(100, 24, day_c=22.0, night_c=8.0), MeasuredDay(101, 24, day_c=20.0, night_c=14.0))
    days = climate_by_day(state_of(measured_days=measured), 100, 101)
    assert degree_days(days, 10.0) == pytest.approx(6 + 5 + 2)  # 12/2, 10/2 and 4/2
    assert degree_days(days, 30.0) == 0


def test_a_day_is_made_of_its_hours_in_the_zone_of_the_household():
    hours = [
        Hour(100 * DAY_MS + hour * HOUR_MS, 20.0, 19.0, 21.0, 50.0, 45.0, 55.0) for hour in range(22, 27)
    ]
    first, second = days_of(hours, 60)
    assert (first.day, first.hours, second.day, second.hours) == (100, 1, 101, 4)
    assert (second.low_c, second.high_c, second.mean_c, second.day_c) == (19, 21, 20, None)
    assert (second.humidity_pct, second.humidity_low_pct, second.humidity_high_pct) == (50, 45, 55)
