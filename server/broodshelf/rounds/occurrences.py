"""Which occurrences a colony should have: closed, opened again and the next of each need. Pure.

Only the next occurrence of a need exists. It moves with the plan while it waits and stays as it is once told.
What is told and not done comes again on the next local date, at most once a date.
"""

from __future__ import annotations

import datetime as dt
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from itertools import islice
from typing import Final

from ..model.facts import Event
from ..model.kinds.words import CANNOT_WAIT, FOOD_NEEDS
from ..model.tasks import Task
from ..records.types import happened_ms
from .occurrence_states import Occurrence, closed, not_again, opened_again
from .own_rules import OwnRule
from .wall_clock import CareClock, CareHour

ROUNDING_MS: Final = 1000
"""A due instant that went through a gauge's days may lie a moment after the wall time that it came from."""
MOST_SLOTS: Final = 5
"""How many care hours are tried for a free one before a need waits for the next recomputation."""


@dataclass(frozen=True, slots=True)
class Later:
    """The last wish to put a need off: the event's id and until when."""

    event_id: str
    until_ms: int


def settle(
    rows: Iterable[Occurrence], tasks: Sequence[Task], events: Sequence[Event], now_ms: int
) -> list[Occurrence]:
    """Return the told occurrences that change: done because their task is, or open again after a void.

    An occurrence is open while the plan still has its task and the task is due. One that is opened again is
    not woken: its slot has had its nudge. One that was put off is not told a second time by itself.
    """
    due_keys = {task.key for task in tasks if task.due_at_ms <= now_ms}
    put_off = laters(events)
    changed = []
    for row in rows:
        is_open = row.task_key in due_keys
        if row.state in ("sent", "missed") and not is_open:
            changed.append(closed(row, _closing_ms(row, events, now_ms)))
        elif row.state == "done" and is_open:
            changed.append(opened_again(row))
        elif row.state == "sent" and row.wake_ms is not None and not row.urgent:
            later = put_off.get(row.need)
            if later is not None and later.until_ms > (row.told_ms or 0):
                changed.append(not_again(row))
    return changed


def arrange(
    colony_id: str,
    rows: Sequence[Occurrence],
    tasks: Sequence[Task],
    events: Sequence[Event],
    clock: CareClock,
    now_ms: int,
    rules: Mapping[str, OwnRule] | None = None,
) -> list[Occurrence]:
    """Return the waiting occurrences that a colony should have, after ``settle``; new ones have an empty id.

    ``rules``: the keeper's own rhythms by need; they choose the days and the time.
    """
    later = laters(events)
    waiting = {(row.need, row.slot): row for row in rows if row.state == "waiting"}
    taken = {row.place for row in rows if row.state != "waiting"}
    made: list[Occurrence] = []
    needs: set[str] = set()
    for task in sorted(tasks, key=lambda task: (not task.urgent, task.due_at_ms, task.key)):
        if not task.urgent:
            if task.need in needs:
                continue  # the earliest task of a need speaks for all: one line in the nudge
            needs.add(task.need)
        told = _last_told(rows, task.key, clock.local_date(now_ms))
        put_off = None if task.urgent else later.get(task.need)
        # sync refuses a rule for what cannot wait; one that was stored before it did moves nothing
        rule = None if task.urgent or task.need in CANNOT_WAIT else (rules or {}).get(task.need)
        when = _when(task, told, put_off, rule, waiting, taken, colony_id, clock, now_ms)
        if when is None:
            continue
        before = waiting.get((task.need, when.slot))
        row = Occurrence(
            id=before.id if before else "",
            subject_id=colony_id,
            need=task.need,
            local_date=when.local_date.isoformat(),
            slot=when.slot,
            task_key=task.key,
            due_ms=task.due_at_ms,
            at_ms=when.at_ms,
            urgent=task.urgent,
            follows=told is not None and not when.slot.startswith("later:"),
            wake_ms=when.at_ms,
        )
        if row.place not in taken:
            taken.add(row.place)
            made.append(row)
    return made


def laters(events: Sequence[Event]) -> dict[str, Later]:
    """Return, for each need, the last wish to put it off. ``events`` are in the order in which they happened."""
    return {
        str(e.values["need"]): Later(e.id, happened_ms(e.values["until"]))
        for e in events
        if e.kind == "later"
    }


def _when(
    task: Task,
    told: Occurrence | None,
    put_off: Later | None,
    rule: OwnRule | None,
    waiting: Mapping[tuple[str, str], Occurrence],
    taken: set[tuple[str, str, str, str]],
    colony_id: str,
    clock: CareClock,
    now_ms: int,
) -> CareHour | None:
    """Return date, slot and instant of a task's next occurrence."""

    def free(hour: CareHour) -> bool:
        return (colony_id, task.need, hour.local_date.isoformat(), hour.slot) not in taken

    after = told.date if told is not None else None
    if put_off is not None and put_off.until_ms > max(task.due_at_ms, (told and told.told_ms) or 0):
        at_ms = clock.after_quiet(put_off.until_ms)
        hour = CareHour(clock.local_date(at_ms), f"later:{put_off.event_id}", at_ms)
        if free(hour):
            return hour
    slots = {f"urgent:{task.key}"} if task.urgent else None
    for (need, slot), row in waiting.items():
        if (
            need == task.need
            and row.urgent == task.urgent
            and row.at_ms <= now_ms
            and task.due_at_ms <= now_ms
            and (not slots or slot in slots)
        ):
            return CareHour(row.date, slot, row.at_ms)  # due this moment: the nudger has it in hand
    if task.urgent:
        slot = f"urgent:{task.key}"
        if after is None:
            at_ms = clock.after_quiet(max(task.due_at_ms, now_ms))
            return CareHour(clock.local_date(at_ms), slot, at_ms)
        return replace(clock.next_care_hour(now_ms, after), slot=slot)
    if rule is None:
        hours = clock.care_hours_from(max(task.due_at_ms, now_ms), after)
    else:  # what was told and not done comes again at any care hour, but not in a pause
        rhythm = rule if told is None else replace(rule, weekdays=frozenset(), at=None)
        hours = rhythm.hours_from(clock, max(task.due_at_ms - ROUNDING_MS, now_ms), after)
    return next((hour for hour in islice(hours, MOST_SLOTS) if free(hour)), None)


def _last_told(rows: Sequence[Occurrence], task_key: str, today: dt.date) -> Occurrence | None:
    """Return the latest open occurrence of a task. One dated after today was told under a wrong clock."""
    told = [r for r in rows if r.task_key == task_key and r.state in ("sent", "missed") and r.date <= today]
    return max(told, key=lambda row: row.at_ms, default=None)


def _closing_ms(row: Occurrence, events: Sequence[Event], now_ms: int) -> int:
    """Return when the event happened that did what was due; the present if no event did."""
    for event in reversed(events):
        if row.task_key == f"fault:{event.id}" and event.values.get("resolved_at"):
            return happened_ms(event.values["resolved_at"])
        if row.task_key.endswith(event.id):
            break  # where the run began; what came before did not end it
        if event.values.get("task_key") == row.task_key or _answers(row.need, event):
            return event.happened_ms
    return now_ms


def _answers(need: str, event: Event) -> bool:
    if need in FOOD_NEEDS:
        return event.kind == "feeding" and event.values.get("need") == need
    return event.kind == {"water": "water", "room": "move"}.get(need, "check")
