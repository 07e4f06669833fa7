"""The keeper's own rhythm: weekdays, a wall-clock time, every so many days, a pause. Dates by the calendar of 2026."""

from __future__ import annotations

import datetime as dt
import zoneinfo
from itertools import islice

import pytest

from broodshelf.care.plan.make import make_plan
from broodshelf.model.facts import ColonyState, Event
from broodshelf.model.tasks import Task, TaskKey
from broodshelf.rounds.occurrences import ToDo, arrange
from broodshelf.rounds.own_rules import DAY_MS, OwnRule
from broodshelf.rounds.wall_clock import CareClock

CLOCK = CareClock(zoneinfo.ZoneInfo("Europe/Vienna"), ("08:00", "18:30"), "21:30", "07:30")
MON_WED = OwnRule("protein", weekdays=frozenset({0, 2}), at="07:00")


def ms(text: str) -> int:
    return round(dt.datetime.fromisoformat(text).replace(tzinfo=CLOCK.zone).timestamp() * 1000)


def hours(rule: OwnRule, from_: str, count: int = 3) -> list[str]:
    return [
        CLOCK.local(h.at_ms).strftime("%a %d %H:%M") for h in islice(rule.hours_from(CLOCK, ms(from_)), count)
    ]


def test_weekdays_at_a_wall_time_skip_the_days_between():
    assert hours(MON_WED, "2026-05-01T12:00") == ["Mon 04 07:00", "Wed 06 07:00", "Mon 11 07:00"]


def test_weekdays_without_a_time_are_told_at_the_households_care_hours():
    sundays = OwnRule("sugar", weekdays=frozenset({6}))
    assert hours(sundays, "2026-05-01T12:00") == ["Sun 03 08:00", "Sun 03 18:30", "Sun 10 08:00"]


def test_a_pause_ends_on_its_date():
    paused = OwnRule("sugar", paused_until="2026-05-12")
    assert hours(paused, "2026-05-01T12:00", 1) == ["Tue 12 08:00"]


def test_a_wall_time_that_the_clocks_skip_is_told_when_the_gap_ends():
    """Vienna 2026-03-29: 02:00 becomes 03:00 (EU summer time rule)."""
    nights = OwnRule("sugar", weekdays=frozenset({6}), at="02:30")
    assert hours(nights, "2026-03-28T12:00", 2) == ["Sun 29 03:00", "Sun 05 02:30"]


@pytest.mark.parametrize(
    ("rule", "fed", "due"),
    [
        (MON_WED, "2026-05-03T23:00", "2026-05-04T07:00"),  # on Sunday night: Monday stands
        (MON_WED, "2026-05-04T06:30", "2026-05-06T07:00"),  # half an hour early on Monday counts for Monday
        (MON_WED, "2026-05-04T20:00", "2026-05-06T07:00"),  # and so does a late one
        (MON_WED, "2026-05-06T07:10", "2026-05-11T07:00"),
        (OwnRule("protein", every_days=3, at="07:00"), "2026-05-04T20:00", "2026-05-07T07:00"),
    ],
)  # fmt: skip
def test_the_next_feeding_is_due_on_the_first_ruled_day_after_the_last_ones_day(rule, fed, due):
    days = rule.days_after(ms(fed), CLOCK)
    assert ms(fed) + round(days * DAY_MS) == ms(due)


def test_a_number_of_days_alone_is_taken_as_it_is():
    assert OwnRule("protein", every_days=2.5).days_after(ms("2026-05-04T20:00"), CLOCK) == 2.5


THU_MON = OwnRule("protein", weekdays=frozenset({0, 3}), at="18:00")


@pytest.mark.parametrize(
    ("outcome", "acquired_on", "due"),
    [
        (None, "2026-01-01", "2026-05-14T18:00"),
        ("some", "2026-01-01", "2026-05-14T18:00"),
        ("ignored", "2026-01-01", "2026-05-11T18:00"),  # it was not met on Monday
        (
            "ignored",
            "2026-05-08",
            "2026-05-14T18:00",
        ),  # what is ignored in a spell of settling counts as offered
    ],
)
def test_the_ruled_day_follows_on_the_last_feeding_that_counts(outcome, acquired_on, due):
    log = [
        Event("n", "count", ms("2026-05-01T12:00"), {"workers": 40, "larvae": "some"}),
        *(
            Event(day, "feeding", ms(f"{day}T18:00"), {"need": "protein", "food_code": "fruit_fly"})
            for day in ("2026-05-07", "2026-05-11")
        ),
    ]
    if outcome is not None:
        seen = {"feeding_id": "2026-05-11", "outcome": outcome}
        log.append(Event("c", "check", ms("2026-05-12T12:00"), seen))
    state = ColonyState(
        "amber", "lasius_niger", stage="growing", acquired_on=acquired_on, events=tuple(log),
        rules=(THU_MON.for_plan(CLOCK),), utc_offset_min=120,
    )  # fmt: skip
    (task,) = (t for t in make_plan(state, ms("2026-05-12T13:00")).tasks if t.need == "protein")

    assert task.due_at_ms == ms(due)


@pytest.mark.parametrize("late_ms", [0, 1])
def test_an_occurrence_is_at_the_ruled_time_even_if_rounding_made_it_due_a_moment_later(late_ms):
    task = Task(TaskKey("protein", "a"), "protein", ms("2026-05-04T07:00") + late_ms)
    [row] = arrange((), ToDo("amber", [task], rules={"protein": MON_WED}), CLOCK, ms("2026-05-01T12:00"))

    assert (row.local_date, row.slot) == ("2026-05-04", "07:00")


def test_a_need_without_a_model_is_told_on_ruled_days_and_not_in_a_pause():
    task = Task(TaskKey("barrier", "a"), "barrier", ms("2026-05-05T09:00"))
    rules = {"barrier": OwnRule("barrier", weekdays=frozenset({4}), paused_until="2026-05-09")}
    [row] = arrange((), ToDo("amber", [task], rules=rules), CLOCK, ms("2026-05-01T12:00"))

    assert (row.local_date, row.slot) == ("2026-05-15", "08:00")


@pytest.mark.parametrize("need", ["water", "room", "leftovers"])
def test_no_rule_puts_off_a_need_that_cannot_wait(need):
    now = ms("2026-05-01T12:00")
    tasks = (Task(TaskKey(need, "x"), need, now - 1000),)
    later = OwnRule(need, weekdays=frozenset({3}), paused_until="2026-12-01")

    usual = arrange((), ToDo("c", tasks), CLOCK, now)
    ruled = arrange((), ToDo("c", tasks, rules={need: later}), CLOCK, now)

    assert [row.at_ms for row in ruled] == [row.at_ms for row in usual] != []
