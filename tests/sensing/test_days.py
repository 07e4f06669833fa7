"""The days of a place: one record each, written after the household's midnight, mended when readings come late."""

from __future__ import annotations

import datetime as dt
import zoneinfo

import pytest
from tests.support.households import NOON_MS

from broodshelf.records import database
from broodshelf.records.ids import place_day_id, uuid7
from broodshelf.records.store import Ledger, Record, read_kind
from broodshelf.records.types import is_uuid
from broodshelf.sensing.days import days_by_place, midnight_ms, oldest_due, write_days
from broodshelf.sensing.intake import HOUR_MS, take
from broodshelf.sensing.sensors import Sensor

VIENNA = zoneinfo.ZoneInfo("Europe/Vienna")
MIDNIGHT_MS = midnight_ms(VIENNA, NOON_MS)
YESTERDAY = dt.datetime.fromtimestamp(MIDNIGHT_MS / 1000 - 3600, VIENNA).date().isoformat()


def measure(sensor: Sensor, hours: dict[int, float], now_ms: int = NOON_MS) -> None:
    """A reading in each of these hours, counted from the midnight before today's."""
    began_ms = MIDNIGHT_MS - 24 * HOUR_MS
    sent = [
        {"temperature": c, "humidity": 50.0 + hour, "at_ms": began_ms + hour * HOUR_MS}
        for hour, c in hours.items()
    ]
    with database.writing() as connection:
        take(connection, sensor, sent, now_ms)


def write(household_id: str, now_ms: int = NOON_MS) -> int:
    with database.writing() as connection:
        ledger = Ledger(connection, household_id)
        written = write_days(ledger, VIENNA, now_ms)
        ledger.flush()
    return written


def days(household_id: str) -> list[Record]:
    with database.reading() as connection:
        return read_kind(connection, household_id, "place_day")


def test_a_day_is_written_once_it_is_over_by_the_clock_of_the_household(household_id, sensor):
    measure(sensor, {hour: 24.0 if 8 <= hour < 20 else 20.0 for hour in range(30)})

    assert write(household_id) == 1
    (day,) = days(household_id)
    assert day.values == {
        "place_id": sensor.place_id,
        "on": YESTERDAY,
        "hours": 24,
        "mean_c": 22.0,
        "low_c": 20.0,
        "high_c": 24.0,
        "day_c": 24.0,
        "night_c": 20.0,
        "humidity_pct": 61.5,  # 50 and the mean of 0 to 23
        "humidity_low_pct": 50.0,
        "humidity_high_pct": 73.0,
    }
    assert is_uuid(day.id)
    assert write(household_id) == 0


def test_what_comes_late_mends_its_day_and_nothing_else_is_sent(household_id, sensor):
    measure(sensor, dict.fromkeys(range(8), 20.0))
    write(household_id)
    (before,) = days(household_id)
    measure(sensor, dict.fromkeys(range(8, 24), 26.0), NOON_MS + HOUR_MS)
    measure(sensor, {30: 30.0}, NOON_MS + HOUR_MS)  # of today

    assert write(household_id, NOON_MS + HOUR_MS) == 1
    (after,) = days(household_id)
    assert (before.values["hours"], before.values.get("day_c")) == (8, None)
    assert (after.id, after.values["hours"], after.values["day_c"]) == (before.id, 24, 26.0)
    assert after.rev == before.rev + 1


def test_readings_that_change_nothing_of_a_day_send_nothing(household_id, sensor):
    measure(sensor, dict.fromkeys(range(24), 20.0))
    write(household_id)
    (before,) = days(household_id)
    with database.writing() as connection:
        again = {"temperature": 20.0, "humidity": 50.0, "at_ms": MIDNIGHT_MS - 24 * HOUR_MS + 60_000}
        take(connection, sensor, [again], NOON_MS)

    write(household_id)

    assert days(household_id) == [before]


def test_a_day_that_runs_is_due_but_not_over(household_id, sensor):
    measure(sensor, {30: 22.0})

    with database.reading() as connection:
        assert oldest_due(connection) == {household_id: MIDNIGHT_MS + 6 * HOUR_MS}
    assert write(household_id) == 0


@pytest.mark.parametrize(("on", "hours"), [("2026-03-29", 23), ("2026-10-25", 25)])
def test_the_days_on_which_clocks_change_have_23_and_25_hours(household_id, sensor, on, hours):
    """Central European Time: clocks change on the last Sunday of March and of October."""
    began = dt.datetime.combine(dt.date.fromisoformat(on), dt.time(), VIENNA)
    began_ms = round(began.timestamp() * 1000)
    now_ms = began_ms + 48 * HOUR_MS
    sent = [{"temperature": 20.0, "at_ms": began_ms + hour * HOUR_MS} for hour in range(30)]
    with database.writing() as connection:
        take(connection, sensor, sent, now_ms)

    write(household_id, now_ms)

    assert {day.values["on"]: day.values["hours"] for day in days(household_id)}[on] == hours


def test_the_days_of_places_are_read_from_a_day_on(household_id, sensor):
    measure(sensor, {hour: 20.0 + hour for hour in range(24)})
    write(household_id)
    day = (dt.date.fromisoformat(YESTERDAY) - dt.date(1970, 1, 1)).days

    with database.reading() as connection:
        found = days_by_place(connection, household_id, [sensor.place_id, uuid7(NOON_MS)], day)
        later = days_by_place(connection, household_id, [sensor.place_id], day + 1)
        elsewhere = days_by_place(connection, household_id, [uuid7(NOON_MS)], day)

    assert [(one.day, one.hours, one.low_c) for one in found[sensor.place_id]] == [(day, 24, 20.0)]
    assert (later, elsewhere) == ({}, {})


def test_ids_of_days_stand_in_the_order_of_their_days():
    place_id = uuid7(NOON_MS)
    ids = [place_day_id(place_id, day) for day in (0, 365, 20_000, 20_001, 60_000)]
    assert ids == sorted(ids)
    assert len(set(ids)) == len(ids)
    assert all(map(is_uuid, ids))
