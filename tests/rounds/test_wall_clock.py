"""Care hours in every IANA zone on the days when clocks change, against a scan of UTC minute by minute."""

from __future__ import annotations

import datetime as dt
import zoneinfo
from itertools import islice, pairwise

import pytest
from tests.rounds.zone_oracle import Stretches, all_zones, wall_s

from broodshelf.model.kinds import Household
from broodshelf.rounds.wall_clock import CareClock

MINUTE_MS = 60_000
HOURS = ("00:00", "00:30", "02:15", "02:30", "08:00", "23:45")
FIRST_YEAR, LAST_YEAR = 2011, 2035


def ms(text: str) -> int:
    return round(dt.datetime.fromisoformat(text).timestamp() * 1000)


def scan(zone: zoneinfo.ZoneInfo, start_ms: int, end_ms: int) -> dict[tuple[dt.date, str], int]:
    """The oracle: walk UTC minute by minute and take, for each date that is met and each wall time, the first
    minute that shows it or a later time (of that date or a later one)."""
    minutes = [
        (dt.datetime.fromtimestamp(at // 1000, zone).replace(tzinfo=None), at)
        for at in range(start_ms, end_ms, MINUTE_MS)
    ]
    days = sorted({wall.date() for wall, _ in minutes})[1:-1]  # the first and last may be cut short
    found = {}
    for day in days:
        for slot in HOURS:
            wanted = dt.datetime.combine(day, dt.time.fromisoformat(slot))
            exact = [at for wall, at in minutes if wall == wanted]
            later = [at for wall, at in minutes if wall > wanted]
            found[day, slot] = min(exact) if exact else _end_of_gap(minutes, wanted, later)
    return found


def _end_of_gap(minutes, wanted, later):
    passed = False
    for wall, at in minutes:
        if wall < wanted:
            passed = True
        elif passed and wall > wanted:
            return at
    return min(later)


def distinct_changes() -> list[tuple[str, int]]:
    """One transition of every kind: (zone, instant) with zones that change alike at that instant left out."""
    seen, found = set(), []
    for name in all_zones():
        zone = zoneinfo.ZoneInfo(name)
        for at in Stretches(zone, FIRST_YEAR, LAST_YEAR).changes:
            kind = (
                dt.datetime.fromtimestamp(at - 1, zone).strftime("%H:%M%z"),
                dt.datetime.fromtimestamp(at, zone).strftime("%H:%M%z"),
            )
            if kind not in seen:
                seen.add(kind)
                found.append((name, at))
    return found


@pytest.mark.long
def test_every_kind_of_clock_change_gives_each_care_hour_once_at_the_minute_that_a_scan_of_utc_finds():
    changes = distinct_changes()
    assert len(changes) > 100
    for name, at_s in changes:
        zone = zoneinfo.ZoneInfo(name)
        start = at_s // 60 * MINUTE_MS - 40 * 60 * MINUTE_MS
        end = at_s // 60 * MINUTE_MS + 64 * 60 * MINUTE_MS
        expected = scan(zone, start, end)
        clock = CareClock(zone, HOURS)
        made = {}
        for hour in clock.care_hours_from(start):
            if hour.at_ms >= end:
                break
            assert (hour.local_date, hour.slot) not in made
            made[hour.local_date, hour.slot] = hour.at_ms
        assert {key: made.get(key) for key in expected} == expected, name


def test_every_zone_gives_each_care_hour_once_around_each_of_its_clock_changes():
    """Every IANA zone, every change 2020 to 2035, three dates around it (Antarctica and all links included)."""
    looked_at = 0
    for name in all_zones():
        zone = zoneinfo.ZoneInfo(name)
        oracle, clock = Stretches(zone, 2020, 2035), CareClock(zone, HOURS[:4])
        for at_s in oracle.changes:
            middle = dt.datetime.fromtimestamp(at_s, zone).date()
            days = [middle + dt.timedelta(n) for n in (-1, 0, 1)]
            expected = [
                (day, slot, oracle.first_instant_s(wall_s(day, slot)) * 1000)
                for day in days
                if oracle.date_exists(day)
                for slot in clock.care_hours
            ]
            made = islice(clock.care_hours_from(expected[0][2], days[0] - dt.timedelta(1)), len(expected))
            assert [(hour.local_date, hour.slot, hour.at_ms) for hour in made] == expected, name
            looked_at += len(expected)

    assert looked_at > 50_000


def test_every_zone_has_every_local_date_once_over_a_year_with_both_changes():
    """A year of care hours: one for each date, in order, for all zones (2026, no zone leaves out a date)."""
    start = ms("2026-01-01T12:00:00+00:00")
    for name in sorted(zoneinfo.available_timezones() - {"localtime", "Factory"}):
        hours = list(islice(CareClock(zoneinfo.ZoneInfo(name), ("02:30",)).care_hours_from(start), 360))
        days = [hour.local_date.toordinal() for hour in hours]

        assert days == list(range(days[0], days[0] + 360)), name
        assert all(a.at_ms < b.at_ms for a, b in pairwise(hours)), name


@pytest.mark.parametrize(
    ("zone", "now", "slot", "expected"),
    [
        # Vienna 2026-03-29: 02:00 becomes 03:00 at 01:00 UTC (EU summer time rule, last Sunday of March)
        ("Europe/Vienna", "2026-03-28T23:30:00+00:00", "02:30", "2026-03-29T01:00:00+00:00"),
        # Vienna 2026-10-25: 03:00 becomes 02:00 at 01:00 UTC; the first 02:30 is 00:30 UTC
        ("Europe/Vienna", "2026-10-24T23:30:00+00:00", "02:30", "2026-10-25T00:30:00+00:00"),
        # between the two 02:30 of that night the next one is the day after's, at 01:30 UTC
        ("Europe/Vienna", "2026-10-25T00:45:00+00:00", "02:30", "2026-10-26T01:30:00+00:00"),
        # Samoa left out 2011-12-30: after the 29th's evening (UTC-10) comes the 31st's (UTC+14)
        ("Pacific/Apia", "2011-12-30T09:00:00+00:00", "18:30", "2011-12-31T04:30:00+00:00"),
        # Lord Howe moves by half an hour: 2026-10-04 02:00 becomes 02:30, at 15:30 UTC the day before
        ("Australia/Lord_Howe", "2026-10-03T15:00:00+00:00", "02:15", "2026-10-03T15:30:00+00:00"),
    ],
)
def test_the_next_care_hour_on_a_day_when_clocks_change(zone, now, slot, expected):
    clock = CareClock(zoneinfo.ZoneInfo(zone), (slot,))

    assert ms(expected) == clock.next_care_hour(ms(now)).at_ms


def test_a_care_hour_that_is_now_counts_and_one_a_moment_ago_does_not():
    clock = CareClock(zoneinfo.ZoneInfo("UTC"), ("08:00", "18:30"))

    assert clock.next_care_hour(ms("2026-05-01T18:30:00+00:00")).slot == "18:30"
    assert clock.next_care_hour(ms("2026-05-01T18:30:00.001+00:00")).local_date == dt.date(2026, 5, 2)


def test_quiet_hours_span_midnight_and_end_at_their_wall_time():
    clock = CareClock(zoneinfo.ZoneInfo("Europe/Vienna"), ("18:30",), "21:30", "07:30")

    assert clock.is_quiet(ms("2026-05-01T23:00:00+02:00"))
    assert not clock.is_quiet(ms("2026-05-01T21:29:00+02:00"))
    assert not clock.is_quiet(ms("2026-05-01T07:30:00+02:00"))
    assert clock.after_quiet(ms("2026-05-01T23:00:00+02:00")) == ms("2026-05-02T07:30:00+02:00")
    assert clock.after_quiet(ms("2026-05-02T12:00:00+02:00")) == ms("2026-05-02T12:00:00+02:00")


@pytest.mark.parametrize(
    ("now", "begins"),
    [
        ("2026-05-01T12:00:00+02:00", "2026-05-01T21:30:00+02:00"),
        ("2026-05-01T21:30:00+02:00", "2026-05-02T21:30:00+02:00"),
        ("2026-05-02T03:00:00+02:00", "2026-05-02T21:30:00+02:00"),
        ("2026-03-28T22:00:00+01:00", "2026-03-29T21:30:00+02:00"),  # the clocks go forward in between
    ],
)
def test_quiet_hours_begin_next_at_their_wall_time(now, begins):
    clock = CareClock(zoneinfo.ZoneInfo("Europe/Vienna"), ("18:30",), "21:30", "07:30")

    assert clock.quiet_begins(ms(now)) == ms(begins)


def test_without_quiet_hours_none_begin():
    zone = zoneinfo.ZoneInfo("UTC")
    clocks = [CareClock(zone), CareClock(zone, quiet_from="21:30"), CareClock(zone, (), "21:30", "21:30")]

    assert [clock.quiet_begins(0) for clock in clocks] == [None] * 3


def test_quiet_hours_that_end_inside_a_doubled_hour_end_the_second_time_too():
    clock = CareClock(zoneinfo.ZoneInfo("Europe/Vienna"), ("18:30",), "22:00", "02:30")

    assert clock.after_quiet(ms("2026-10-25T01:10:00+00:00")) == ms("2026-10-25T01:30:00+00:00")


def test_quiet_hours_that_end_inside_a_gap_end_with_the_gap():
    clock = CareClock(zoneinfo.ZoneInfo("Europe/Vienna"), ("18:30",), "22:00", "02:30")

    assert clock.after_quiet(ms("2026-03-29T00:30:00+00:00")) == ms("2026-03-29T01:00:00+00:00")


def test_a_household_without_care_hours_is_still_looked_after_once_a_day():
    clock = CareClock.of(Household(name="Ours", zone="UTC", care_hours=[]))

    assert clock.next_care_hour(ms("2026-05-01T12:00:00+00:00")).slot == "18:30"
