"""A sensor's file becomes hours, whatever its columns and dates are called; bad rows are told by their line."""

from __future__ import annotations

import datetime as dt
import zoneinfo

import pytest
from tests.sensing.conftest import hours_of
from tests.support.households import NOON_MS

from broodshelf.errors import BadRequest
from broodshelf.model.gauges import HOUR_MS
from broodshelf.records import database
from broodshelf.sensing.intake import hours_by_place, take
from broodshelf.sensing.sheet import Columns, hours_that_are_new, read_sheet, take_in, write_sheet

VIENNA = zoneinfo.ZoneInfo("Europe/Vienna")


def named(dates="iso", unit="C", humidity=None, zone=dt.UTC) -> Columns:
    return Columns("when", "warm", humidity, unit, dates, zone)


def at_ms(text: str) -> int:
    return round(dt.datetime.fromisoformat(text).timestamp() * 1000)


@pytest.mark.parametrize(
    ("dates", "written"),
    [
        ("iso", "2026-03-05 14:30"),
        ("iso", "2026-03-05T15:30:00+01:00"),
        ("dmy", "05.03.2026 14:30"),
        ("dmy", "5/3/26 2:30 PM"),
        ("mdy", "03/05/2026, 14:30:00"),
        ("unix", "1772721000"),
        ("unix", "1772721000000"),
    ],
)
def test_a_time_is_read_as_the_keeper_says_it_is_written(dates, written):
    found = read_sheet(f'when;warm\n"{written}";21,5\n', named(dates), NOON_MS)
    assert [(one.at_ms, one.temperature_c) for one in found.readings] == [
        (at_ms("2026-03-05T14:30+00:00"), 21.5)
    ]


def test_a_time_without_an_offset_is_of_the_zone_that_was_chosen():
    (one,) = read_sheet("when,warm\n2026-01-05 14:30,20\n", named(zone=VIENNA), NOON_MS).readings
    assert one.at_ms == at_ms("2026-01-05T14:30+01:00")


def test_fahrenheit_and_humidity_are_read_too():
    (one,) = read_sheet(
        "warm\tdamp\twhen\n68\t55\t2026-01-05 14:30", named(unit="F", humidity="damp"), NOON_MS
    ).readings
    assert (one.temperature_c, one.humidity_pct) == (20.0, 55.0)


def test_rows_that_cannot_be_read_are_told_by_their_line_and_the_others_count():
    text = (
        "when,warm\n2026-01-05 14:30,20\nyesterday,20\n2026-01-05 15:30,85\n\n2026-01-05 16:30,warm\n"
        "2026-01-05 17:30,\n2099-01-05 17:30,20\n1999-01-05 17:30,20\n"
    )
    found = read_sheet(text, named(), NOON_MS)
    assert len(found.readings) == 1
    assert found.bad_rows == 6
    assert [line for line, _ in found.bad] == [3, 4, 6, 7, 8, 9]
    assert "“yesterday” is no time" in str(found.bad[0][1])


@pytest.mark.parametrize("text", ["", "time,warm\n1,2\n", "when,warm,warm\n1,2,3\n", 'when,warm\n"2026,20\n'])
def test_a_file_that_is_no_such_table_is_refused_as_a_whole(text):
    with pytest.raises(BadRequest):
        read_sheet(text, named(), NOON_MS)


def test_a_file_adds_hours_where_nothing_was_measured_and_the_same_again_adds_nothing(household_id, sensor):
    place_id = sensor.place_id
    began = dt.datetime.fromtimestamp(NOON_MS / 1000 - 3 * 3600, dt.UTC)
    rows = [f"{(began + dt.timedelta(minutes=10 * i)).isoformat()},{20 + i / 10:.1f}" for i in range(18)]
    found = read_sheet("when,warm\n" + "\n".join(rows), named(), NOON_MS)
    with database.writing() as connection:
        take(connection, sensor, [{"temperature": 30.0, "at_ms": NOON_MS - 2 * HOUR_MS}], NOON_MS)
        new = hours_that_are_new(connection, household_id, place_id, found.readings)
        take_in(connection, new)
        again = hours_that_are_new(connection, household_id, place_id, found.readings)
        stored = hours_of(connection, household_id, place_id, 0, NOON_MS)

    assert [hour["temperatures"] for hour in stored] == [6, 1, 6]
    assert (stored[0]["temperature_low_c"], stored[0]["temperature_high_c"]) == (20.0, 20.5)
    assert stored[1]["temperature_high_c"] == 30.0
    assert (len(new), again) == (2, [])


def test_what_is_written_is_read_again(household_id, sensor):
    sent = [
        {"temperature": 20.0 + hour, "humidity": 50.0, "at_ms": NOON_MS - (9 - hour) * HOUR_MS}
        for hour in range(9)
    ]
    with database.writing() as connection:
        take(connection, sensor, sent, NOON_MS)
        hours = hours_by_place(connection, household_id, 0, NOON_MS)[sensor.place_id]
    text = write_sheet(hours, VIENNA)
    columns = Columns("time", "temperature_c", "humidity_pct", "C", "iso", dt.UTC)

    found = read_sheet(text, columns, NOON_MS)

    assert [(one.at_ms, one.temperature_c, one.humidity_pct) for one in found.readings] == [
        (hour.hour_ms, hour.temperature_c, hour.humidity_pct) for hour in hours
    ]
