"""Which occurrences a colony should have, as pure rules."""

from __future__ import annotations

import datetime as dt
import zoneinfo
from dataclasses import replace

from hypothesis import given
from hypothesis import strategies as st

from broodshelf.model.facts import Event
from broodshelf.model.tasks import Task, TaskKey
from broodshelf.rounds.occurrence_states import Occurrence, follower
from broodshelf.rounds.occurrences import ToDo, arrange, settle
from broodshelf.rounds.wall_clock import CareClock

CLOCK = CareClock(zoneinfo.ZoneInfo("Europe/Vienna"), ("08:00", "18:30"), "21:30", "07:30")


def ms(text: str) -> int:
    return round(dt.datetime.fromisoformat(f"{text}+02:00").timestamp() * 1000)


NOON = ms("2026-05-04T12:00")
DUE = Task(TaskKey("protein", "a"), "protein", ms("2026-05-04T11:00"))


def plan(*tasks: Task, rows=(), events=(), now_ms: int = NOON) -> list[Occurrence]:
    return arrange(rows, ToDo("amber", tasks, events), CLOCK, now_ms)


def places(rows: list[Occurrence]) -> list[tuple[str, str, str]]:
    return [(row.need, row.local_date, row.slot) for row in rows]


def told(task: Task = DUE, at: str = "2026-05-04T08:00", **more) -> Occurrence:
    date, _, slot = at.partition("T")
    made = Occurrence(
        "told", "amber", task.need, date, slot, task.key.what, task.key.about,
        task.due_at_ms, ms(at), state="sent", steps=1, told_ms=ms(at)
    )  # fmt: skip
    return replace(made, **more)


def test_a_due_need_waits_for_the_next_care_hour_of_the_household():
    assert places(plan(DUE)) == [("protein", "2026-05-04", "18:30")]


def test_a_need_that_comes_due_after_the_last_care_hour_waits_for_the_morning():
    assert places(plan(replace(DUE, due_at_ms=ms("2026-05-04T18:31")))) == [
        ("protein", "2026-05-05", "08:00")
    ]


def test_several_tasks_of_one_need_are_one_occurrence_of_the_earliest():
    tasks = [Task(TaskKey("leftovers", str(n)), "leftovers", NOON + n) for n in (3, 1, 2)]
    [row] = plan(*tasks)

    assert str(row.task) == "leftovers:1"


def test_a_fault_beside_a_usual_need_of_the_same_name_has_a_slot_of_its_own():
    leak = Task(TaskKey("fault", "f1"), "water", NOON, urgent=True)
    rows = plan(leak, Task(TaskKey("water", "w1"), "water", NOON))

    assert places(rows) == [("water", "2026-05-04", "urgent:fault:f1"), ("water", "2026-05-04", "18:30")]
    assert rows[0].at_ms == NOON


def test_what_was_told_today_comes_again_tomorrow_at_the_earliest():
    [row] = plan(DUE, rows=[told()])

    assert places([row]) == [("protein", "2026-05-05", "08:00")]
    assert row.follows


def test_what_was_told_for_an_earlier_run_does_not_hold_back_a_new_one():
    assert places(plan(DUE, rows=[told(task_about="earlier", state="done")])) == [
        ("protein", "2026-05-04", "18:30")
    ]


def test_what_waits_keeps_its_identity_when_it_moves():
    [before] = plan(DUE)
    waiting = replace(before, id="w")
    [after] = plan(replace(DUE, due_at_ms=ms("2026-05-06T12:00")), rows=[waiting])

    assert (after.id, after.local_date) == ("w", "2026-05-06")


def test_what_is_due_this_moment_is_not_moved_away_from_the_nudger():
    waiting = replace(plan(DUE)[0], id="w")
    [row] = plan(DUE, rows=[waiting], now_ms=ms("2026-05-04T18:30:03"))

    assert row == waiting


def test_the_last_wish_to_put_a_need_off_counts_and_urgent_needs_cannot_be_put_off():
    wishes = [
        Event(f"l{n}", "later", NOON, {"need": "protein", "until": until})
        for n, until in enumerate(("2026-05-05T10:00:00+02:00", "2026-05-04T13:00:00+02:00"))
    ]

    assert places(plan(DUE, events=wishes)) == [("protein", "2026-05-04", "later:l1")]
    assert plan(replace(DUE, urgent=True), events=wishes)[0].at_ms == NOON


def test_a_wish_that_ends_in_the_quiet_hours_ends_with_them():
    wish = Event("l", "later", NOON, {"need": "protein", "until": "2026-05-04T23:00:00+02:00"})

    assert plan(DUE, events=[wish])[0].at_ms == ms("2026-05-05T07:30")


def test_a_need_whose_rule_changed_is_closed_now_and_not_at_an_old_feeding():
    feeding = Event("a", "feeding", ms("2026-05-01T11:00"), {"need": "protein"})
    [row] = settle([told()], ToDo("amber", [replace(DUE, due_at_ms=ms("2026-05-09T11:00"))], [feeding]), NOON)

    assert (row.state, row.closed_ms) == ("done", NOON)


def test_what_was_never_told_is_missed_again_when_its_log_is_voided():
    row = told(state="done", told_ms=None, closed_ms=NOON)

    assert settle([row], ToDo("amber", [DUE]), NOON)[0].state == "missed"
    assert settle([told(state="done")], ToDo("amber", [DUE]), NOON)[0].state == "sent"


def test_the_next_day_of_a_fault_keeps_its_slot():
    leak = Task(TaskKey("fault", "f1"), "water", NOON, urgent=True)
    first = replace(plan(leak)[0], state="sent", steps=1, told_ms=NOON)
    second = follower(first, CLOCK, NOON)

    assert (second.local_date, second.slot) == ("2026-05-05", "urgent:fault:f1")
    assert second.at_ms == ms("2026-05-05T08:00")


NEEDS = st.sampled_from(["sugar", "protein", "water", "leftovers"])
TASKS = st.lists(
    st.builds(
        lambda need, run, hours, urgent: Task(TaskKey(need, str(run)), need, NOON + hours * 3_600_000, urgent=urgent),
        NEEDS, st.integers(0, 3), st.integers(-100, 100), st.booleans(),
    ),
    max_size=6, unique_by=lambda task: task.key,
)  # fmt: skip
TOLD = st.lists(
    st.builds(
        lambda need, run, day, slot, state: replace(
            told(Task(TaskKey(need, str(run)), need, NOON), f"2026-05-0{day}T{slot}"), state=state
        ),
        NEEDS, st.integers(0, 3), st.integers(1, 4), st.sampled_from(["08:00", "18:30"]),
        st.sampled_from(["sent", "missed", "done"]),
    ),
    max_size=6, unique_by=lambda row: row.place,
)  # fmt: skip


@given(TASKS, TOLD)
def test_every_task_waits_once_in_a_free_place_and_arranging_again_changes_nothing(tasks, rows):
    first = plan(*tasks, rows=rows)
    named = [replace(row, id=f"w{n}") for n, row in enumerate(first)]
    again = plan(*tasks, rows=[*rows, *named])

    assert again == named
    assert len({row.place for row in [*rows, *first]}) == len(rows) + len(first)
    assert {row.need for row in first} == {task.need for task in tasks}
    assert all(row.at_ms >= NOON for row in first)
