"""Which occurrences a colony should have: closed, opened again and the next of each need. Pure.

Only the next occurrence of a need exists. It moves with the plan while it waits and stays as it is once told.
What is told and not done comes again on the next local date, at most once a date.
"""

from __future__ import annotations

import datetime as dt
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field, replace
from itertools import islice
from typing import Final

from ..model.facts import Event, only, tells
from ..model.kinds import log
from ..model.needs import NEEDS, Need
from ..model.tasks import TASKS, Task, TaskKey, is_care_hour, later_slot, urgent_slot
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


@dataclass(frozen=True, slots=True)
class ToDo:
    """What one colony's occurrences follow from: the tasks of its plan, its events in order, its own rules by need."""

    colony_id: str
    tasks: Sequence[Task]
    events: Sequence[Event] = ()
    rules: Mapping[Need, OwnRule] = field(default_factory=dict)


def settle(rows: Iterable[Occurrence], todo: ToDo, now_ms: int) -> list[Occurrence]:
    """Return the told occurrences that change: done because their task is, or open again after a void.

    An occurrence is open while the plan still has its task and the task is due. One that is opened again is
    not woken: its slot has had its nudge. One that was put off is not told a second time by itself.
    """
    due_keys = {task.key for task in todo.tasks if task.due_at_ms <= now_ms}
    put_off = laters(todo.events)
    changed = []
    for row in rows:
        is_open = row.task in due_keys
        if row.state in ("sent", "missed") and not is_open:
            changed.append(closed(row, _closing_ms(row, todo.events, now_ms)))
        elif row.state == "done" and is_open:
            changed.append(opened_again(row))
        elif row.state == "sent" and row.wake_ms is not None and not row.urgent:
            later = put_off.get(row.need)
            if later is not None and later.until_ms > (row.told_ms or 0):
                changed.append(not_again(row))
    return changed


def arrange(rows: Sequence[Occurrence], todo: ToDo, clock: CareClock, now_ms: int) -> list[Occurrence]:
    """Return the waiting occurrences that a colony should have, after ``settle``; new ones have an empty id.

    The keeper's own rhythms choose the days and the time.
    """
    slots = _Slots(rows, todo, clock, now_ms)
    made: list[Occurrence] = []
    needs: set[Need] = set()
    for task in sorted(todo.tasks, key=lambda task: task.order):
        if not task.urgent:
            if task.need in needs:
                continue  # the earliest task of a need speaks for all: one line in the nudge
            needs.add(task.need)
        row = slots.take(task)
        if row is not None:
            made.append(row)
    return made


def laters(events: Sequence[Event]) -> dict[Need, Later]:
    """Return, for each need, the last wish to put it off. ``events`` are in the order in which they happened."""
    return {
        later.said.need: Later(later.id, happened_ms(later.said.until)) for later in only(log.Later, events)
    }


class _Slots:
    """The places in one colony's rounds while they are given to its tasks."""

    def __init__(self, rows: Sequence[Occurrence], todo: ToDo, clock: CareClock, now_ms: int) -> None:
        self._rows, self._todo, self._clock, self._now_ms = rows, todo, clock, now_ms
        self._put_off = laters(todo.events)
        self._waiting = {(row.need, row.slot): row for row in rows if row.state == "waiting"}
        self._taken = {row.place for row in rows if row.state != "waiting"}

    def take(self, task: Task) -> Occurrence | None:
        """Return a task's next occurrence in a place that is then taken; None where there is none to be had."""
        told = _last_told(self._rows, task.key, self._clock.local_date(self._now_ms))
        hour = self._wished(task, told) or self._in_hand(task) or self._coming(task, told)
        if hour is None or not self._is_free(task, hour):
            return None
        before = self._waiting.get((task.need, hour.slot))
        row = Occurrence(
            id=before.id if before else "",
            subject_id=self._todo.colony_id,
            need=task.need,
            local_date=hour.local_date.isoformat(),
            slot=hour.slot,
            task_what=task.key.what,
            task_about=task.key.about,
            due_ms=task.due_at_ms,
            at_ms=hour.at_ms,
            urgent=task.urgent,
            follows=told is not None and (task.urgent or is_care_hour(hour.slot)),
            wake_ms=hour.at_ms,
        )
        self._taken.add(row.place)
        return row

    def _is_free(self, task: Task, hour: CareHour) -> bool:
        place = (self._todo.colony_id, task.need, hour.local_date.isoformat(), hour.slot)
        return place not in self._taken

    def _wished(self, task: Task, told: Occurrence | None) -> CareHour | None:
        """Return the instant until which a task was put off, if that is still to come for it."""
        later = None if task.urgent else self._put_off.get(task.need)
        if later is None or later.until_ms <= max(task.due_at_ms, (told and told.told_ms) or 0):
            return None
        at_ms = self._clock.after_quiet(later.until_ms)
        hour = CareHour(self._clock.local_date(at_ms), later_slot(later.event_id), at_ms)
        return hour if self._is_free(task, hour) else None

    def _in_hand(self, task: Task) -> CareHour | None:
        """Return the place where a task waits that is due this moment: the nudger has it in hand."""
        if task.due_at_ms > self._now_ms:
            return None
        for row in self._waiting.values():
            its = row.need == task.need and row.urgent == task.urgent and row.at_ms <= self._now_ms
            if its and (not task.urgent or row.slot == urgent_slot(task.key)):
                return CareHour(row.date, row.slot, row.at_ms)
        return None

    def _coming(self, task: Task, told: Occurrence | None) -> CareHour | None:
        """Return the next care hour for a task; an urgent one that was never told waits for no more than the night.

        One that could kill by then does not wait for that either.
        """
        clock, now_ms = self._clock, self._now_ms
        after = told.date if told is not None else None
        if task.urgent and after is None:
            soonest_ms = max(task.due_at_ms, now_ms)
            at_ms = soonest_ms if TASKS[task.key.what].wakes else clock.after_quiet(soonest_ms)
            return CareHour(clock.local_date(at_ms), urgent_slot(task.key), at_ms)
        if task.urgent:
            return replace(clock.next_care_hour(now_ms, after), slot=urgent_slot(task.key))
        # sync refuses a rule for what cannot wait; one that was stored before it did moves nothing
        rule = self._todo.rules.get(task.need) if NEEDS[task.need].may_wait else None
        if rule is None:
            hours = clock.care_hours_from(max(task.due_at_ms, now_ms), after)
        else:  # what was told and not done comes again at any care hour, but not in a pause
            rhythm = rule if told is None else replace(rule, weekdays=frozenset(), at=None)
            hours = rhythm.hours_from(clock, max(task.due_at_ms - ROUNDING_MS, now_ms), after)
        return next((hour for hour in islice(hours, MOST_SLOTS) if self._is_free(task, hour)), None)


def _last_told(rows: Sequence[Occurrence], key: TaskKey, today: dt.date) -> Occurrence | None:
    """Return the latest open occurrence of a task. One dated after today was told under a wrong clock."""
    told = [r for r in rows if r.task == key and r.state in ("sent", "missed") and r.date <= today]
    return max(told, key=lambda row: row.at_ms, default=None)


def _closing_ms(row: Occurrence, events: Sequence[Event], now_ms: int) -> int:
    """Return when the event happened that did what was due; the present if no event did."""
    for event in reversed(events):
        mended_at = event.said.resolved_at if tells(event, log.Fault) else None
        if mended_at and row.task == TaskKey("fault", event.id):
            return happened_ms(mended_at)
        if row.task_about == event.id:
            break  # where the run began; what came before did not end it
        if event.task_key == str(row.task) or _answers(row.need, event):
            return event.happened_ms
    return now_ms


def _answers(need: Need, event: Event) -> bool:
    row = NEEDS[need]
    if tells(event, log.Feeding) and row.food:
        return event.said.need == need
    return event.kind == row.answered_by
