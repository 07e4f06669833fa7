"""The states of an occurrence, and every step from one to another. Pure.

::

    waiting ── told ──▶ sent ─┐              ┌─▶ sent
       │                      ├─ closed ─▶ done ── opened_again
       └─── missed ─▶ missed ─┘              └─▶ missed

``wake_ms`` is when the nudger looks at it next; None is never. What was told or missed and not done has a
``follower`` on the next local date.
"""

from __future__ import annotations

import datetime as dt
from dataclasses import dataclass, replace
from typing import Final, Literal

from ..model.gauges import HOUR_MS
from ..model.needs import Need
from ..model.tasks import TASKS, Slot, TaskKey, What
from .wall_clock import CareClock

State = Literal["waiting", "sent", "missed", "done"]
Verdict = Literal["tell", "miss", "wait", "leave"]
LATE_MS: Final = 12 * HOUR_MS
"""What is later than this is not told any more but marked missed; the next care hour tells it as it then is."""
ON_TIME_MS: Final = 15 * 60_000
"""A care hour that lies in the quiet hours is kept if the server is on time; a late nudge waits for their end."""


@dataclass(frozen=True, slots=True)
class Occurrence:
    """One need of one colony in one round; the columns of ``rounds.tables.occurrences``."""

    id: str
    subject_id: str
    need: Need
    local_date: str
    slot: Slot
    task_what: What
    task_about: str
    due_ms: int
    at_ms: int
    urgent: bool = False
    follows: bool = False
    state: State = "waiting"
    steps: int = 0
    told_ms: int | None = None
    closed_ms: int | None = None
    wake_ms: int | None = None
    subject_kind: str = "colony"

    @property
    def task(self) -> TaskKey:
        """The task that it is about."""
        return TaskKey(self.task_what, self.task_about)

    @property
    def wakes(self) -> bool:
        """It is told in the quiet hours, too: waiting could kill."""
        return self.urgent and TASKS[self.task_what].wakes

    @property
    def place(self) -> tuple[str, str, str, str]:
        """What is unique in a household, besides the kind of the subject."""
        return self.subject_id, self.need, self.local_date, self.slot

    @property
    def date(self) -> dt.date:
        """The local date of its round."""
        return dt.date.fromisoformat(self.local_date)


def verdict(row: Occurrence, clock: CareClock, now_ms: int) -> Verdict:
    """Return what to do with a due occurrence: tell it, count it as missed, wait for morning, or leave it told."""
    if row.state == "sent":  # the household's patience is over
        late = clock.is_quiet(now_ms) or clock.local_date(now_ms).isoformat() != row.local_date
        return "leave" if late else "tell"
    if now_ms - row.at_ms > LATE_MS:
        return "miss"
    if row.wakes:
        return "tell"
    return "wait" if clock.is_quiet(now_ms) and now_ms - row.at_ms > ON_TIME_MS else "tell"


def told(row: Occurrence, clock: CareClock, patience_ms: int, now_ms: int) -> Occurrence:
    """Somebody hears of it now. After the first time it is told once more that day, when the patience is over."""
    again_ms = now_ms + patience_ms
    same_day = clock.local_date(again_ms).isoformat() == row.local_date
    wake_ms = again_ms if row.steps == 0 and same_day and not clock.is_quiet(again_ms) else None
    return replace(row, state="sent", steps=row.steps + 1, told_ms=now_ms, wake_ms=wake_ms)


def missed(row: Occurrence) -> Occurrence:
    """Nobody heard of it: the server was away for long, or nobody's phone listens."""
    return replace(row, state="missed" if row.steps == 0 else row.state, wake_ms=None)


def kept_till_morning(row: Occurrence, clock: CareClock, now_ms: int) -> Occurrence:
    """It is told when the quiet hours end."""
    return replace(row, wake_ms=clock.after_quiet(now_ms))


def not_again(row: Occurrence) -> Occurrence:
    """It stays told and is not told a second time."""
    return replace(row, wake_ms=None)


def closed(row: Occurrence, closed_ms: int) -> Occurrence:
    """What was due is done."""
    return replace(row, state="done", closed_ms=closed_ms, wake_ms=None)


def opened_again(row: Occurrence) -> Occurrence:
    """What did it was taken back. It is not woken: its slot has had its nudge."""
    return replace(row, state="sent" if row.told_ms is not None else "missed", closed_ms=None, wake_ms=None)


def has_follower(row: Occurrence, now_ms: int) -> bool:
    """Say whether what became of it now begins the next date's occurrence: told for the first time, or missed."""
    return row.state == "missed" or (row.state == "sent" and row.told_ms == now_ms and row.steps == 1)


def follower(row: Occurrence, clock: CareClock, now_ms: int) -> Occurrence:
    """Return the occurrence of the next local date for one that was told or missed: the need until it is done."""
    hour = clock.next_care_hour(now_ms, row.date)
    return replace(
        row,
        id="",
        local_date=hour.local_date.isoformat(),
        slot=row.slot if row.urgent else hour.slot,
        at_ms=hour.at_ms,
        wake_ms=hour.at_ms,
        follows=True,
        state="waiting",
        steps=0,
        told_ms=None,
        closed_ms=None,
    )
