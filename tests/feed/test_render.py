"""The calendar's bytes against RFC 5545 by a lint of our own, and its meaning by three independent parsers."""

from __future__ import annotations

import datetime as dt
import json
import subprocess
from pathlib import Path

import vobject
from hypothesis import given, settings
from hypothesis import strategies as st
from ical.calendar_stream import IcsCalendarStream

from broodshelf.feed.render import Part, Round, render

FEED = "019dd000-0000-7000-8000-00000000feed"
URL = "https://shelf.example.org"
NOON_MS = 1_777_636_800_000
HARD = 'Ämber, "the; old\\ one"\nDTSTART:19700101T000000Z\r\x07' + "🐜" * 60

names = st.text(min_size=1, max_size=80).filter(lambda name: name.strip())
parts = st.builds(
    Part,
    colony=names,
    need=st.sampled_from(["sugar", "protein", "water", "leftovers"]),
    done=st.booleans(),
    urgent=st.booleans(),
    changed_ms=st.integers(NOON_MS - 10**9, NOON_MS),
)
rounds_of_any_shelf = st.lists(
    st.tuples(st.integers(0, 10**7), st.lists(parts, min_size=1, max_size=4)), max_size=6
).map(lambda made: [Round(f"{n}", NOON_MS + s * 1000, tuple(p)) for n, (s, p) in enumerate(made)])


def one(*some: Part) -> list[Round]:
    return [Round("2026-05-01/08:00", NOON_MS, some)]


def lint(calendar: bytes) -> list[str]:
    """Return what breaks RFC 5545 sections 3.1 and 3.3.11: line ends, lengths in octets, control characters."""
    found = []
    if not calendar.endswith(b"\r\n"):
        found.append("no line end at the end")
    for line in calendar.split(b"\r\n"):
        if len(line) > 75:
            found.append(f"{len(line)} octets: {line!r}")
        if any(byte < 32 and byte != 9 for byte in line):
            found.append(f"control character: {line!r}")
        line.decode()  # folding must not cut a character of several octets: raises
    return found


@settings(deadline=None, max_examples=60)
@given(rounds_of_any_shelf)
def test_the_bytes_keep_to_the_standard_and_two_parsers_read_every_round(rounds):
    calendar = render(FEED, HARD, URL, rounds)

    assert lint(calendar) == []
    read = vobject.readOne(calendar.decode())
    read.validate(raiseException=True)
    strict = IcsCalendarStream.calendar_from_ics(calendar.decode())
    expected = [dt.datetime.fromtimestamp(each.at_ms / 1000, dt.UTC) for each in rounds]
    assert [e.dtstart.value for e in read.contents.get("vevent", [])] == expected
    assert [e.dtstart for e in strict.events] == expected
    assert all(e.dtend - e.dtstart == dt.timedelta(minutes=15) for e in strict.events)
    assert len({e.uid for e in strict.events}) == len(rounds)


def test_the_lint_sees_what_it_is_for():
    assert lint(b"BEGIN:VCALENDAR\nEND:VCALENDAR\r\n") and lint(b"A" * 76 + b"\r\n") and lint(b"A")


def test_a_third_parser_reads_hard_names_as_they_were():
    calendar = render(FEED, "Shelf", URL, one(Part(HARD, "protein", False, False, NOON_MS)))
    script = Path(__file__).parent / "read_calendar.mjs"
    said = subprocess.run(["node", script], input=calendar, capture_output=True, check=True, timeout=60)
    (event,) = json.loads(said.stdout)

    shown = HARD.replace("\n", " ").replace("\r", " ").replace("\x07", " ").strip()
    assert event["starts"] == NOON_MS
    assert event["summary"] == f"Protein for {shown}"
    assert event["description"] == f"{shown}: Protein"
    assert event["status"] == "CONFIRMED"


def test_a_round_says_what_is_left_and_is_cancelled_when_nothing_is():
    done, left = Part("Amber", "sugar", True, False, NOON_MS), Part("Ink", "protein", False, False, NOON_MS)
    (half,) = IcsCalendarStream.calendar_from_ics(render(FEED, "S", URL, one(done, left)).decode()).events
    (whole,) = IcsCalendarStream.calendar_from_ics(render(FEED, "S", URL, one(done)).decode()).events

    assert (half.summary, half.description, half.status) == ("Protein for Ink", "Ink: Protein", "CONFIRMED")
    assert (whole.status, len(whole.alarm)) == ("CANCELLED", 0)
    assert len(half.alarm) == 1
    assert half.uid == whole.uid


def test_uids_say_nothing_about_the_household_and_differ_between_feeds():
    part = Part("Amber", "sugar", False, True, NOON_MS)
    here = IcsCalendarStream.calendar_from_ics(render(FEED, "S", URL, one(part)).decode()).events[0]
    there = IcsCalendarStream.calendar_from_ics(render(FEED[:-1] + "e", "S", URL, one(part)).decode()).events[
        0
    ]
    assert here.uid != there.uid
    assert "shelf" not in here.uid and "2026" not in here.uid
    assert here.summary == "Now: Sugar for Amber"
