"""What the log says about the life of a colony, gathered in one pass so that nobody reads it twice."""

from __future__ import annotations

import datetime as dt
from collections.abc import Iterable
from dataclasses import dataclass
from typing import Final

from ...model.facts import Event, Logged, tells
from ...model.gauges import DAY_MS
from ...model.kinds import log
from ...model.needs import FAULTS
from .counted_workers import workers_in

EPOCH_DAY: Final = dt.date(1970, 1, 1).toordinal()
LOOKS: Final = frozenset({"check", "count", "photo", "move"})
"""Kinds of events for which somebody looked into the nest."""


@dataclass(frozen=True, slots=True)
class Count:
    """One count: workers (None: not counted or only coarse) and what brood was seen, coarse or None.

    ``queens``: how many were seen, None: nobody looked. ``added``: brood that was given to the colony, not counted.
    """

    at_ms: int
    workers: float | None
    any_workers: bool | None
    eggs: str | None
    larvae: str | None
    pupae: str | None
    males_only: bool = False
    queens: int | None = None
    added: bool = False


@dataclass(frozen=True, slots=True)
class History:
    """The counts in order, when things last happened (ms since 1970 UTC), and the faults that are open.

    ``looked_ms``: a count, check, photo or move, for which somebody looked into the nest. ``moves_ms``: when they
    moved; an offered nest is none. ``boosts``: brood that was added, in the shape of counts. ``offered``: the nest that
    was offered last and not moved into. ``room_looked_ms``, ``glanced_ms``: when somebody last looked whether they had
    moved, and how they are; ``water_seen_ms``: when their water was last looked at or filled. A move ends the faults of
    the nest that they left.
    """

    counts: tuple[Count, ...] = ()
    looked_ms: int | None = None
    moves_ms: tuple[int, ...] = ()
    water_seen_ms: int | None = None
    aired_ms: int | None = None
    open_faults: tuple[Logged[log.Fault], ...] = ()
    boosts: tuple[Count, ...] = ()
    offered: Logged[log.Move] | None = None
    room_looked_ms: int | None = None
    glanced_ms: int | None = None

    @property
    def brood_seen(self) -> tuple[Count, ...]:
        """Return counts and added brood in the order in which they happened: what is known about the brood."""
        if not self.boosts:
            return self.counts
        return tuple(sorted((*self.counts, *self.boosts), key=lambda count: count.at_ms))


def read_history(events: Iterable[Event]) -> History:
    """Return the history of a log whose events are in the order in which they happened. One pass."""
    counts: list[Count] = []
    faults: list[Logged[log.Fault]] = []
    moves: list[int] = []
    boosts: list[Count] = []
    looked_ms = water_seen_ms = aired_ms = room_looked_ms = glanced_ms = None
    offered: Logged[log.Move] | None = None
    for event in events:
        if event.kind == "feeding":
            continue
        if event.kind in LOOKS:
            looked_ms = event.happened_ms
        if tells(event, log.Check):
            need = event.said.need
            if need == "rest":
                aired_ms = event.happened_ms
            elif need == "room":
                room_looked_ms = event.happened_ms
            elif need == "glance":
                glanced_ms = event.happened_ms
            elif need == "water":
                water_seen_ms = event.happened_ms
        elif tells(event, log.Water):
            water_seen_ms = event.happened_ms
        elif tells(event, log.Count):
            counts.append(_count(event.happened_ms, event.said))
        elif event.moved:
            moves.append(event.happened_ms)
            offered = None
            faults = [fault for fault in faults if not FAULTS[fault.said.fault].of_nest]
        elif tells(event, log.Move):
            offered = event
        elif tells(event, log.Boost):
            boosts.append(_added(event.happened_ms, event.said))
        elif tells(event, log.Fault) and not event.said.resolved_at:
            faults.append(event)
    return History(
        tuple(counts), looked_ms, tuple(moves), water_seen_ms, aired_ms, tuple(faults), tuple(boosts), offered,
        room_looked_ms, glanced_ms,
    )  # fmt: skip


def local_day(at_ms: int, utc_offset_min: int) -> dt.date:
    """Return the calendar day of an instant in a zone that is so many minutes ahead of UTC."""
    return day_of_number((at_ms + utc_offset_min * 60_000) // DAY_MS)


def day_number(day: dt.date) -> int:
    """Return a day counted from 1970-01-01."""
    return day.toordinal() - EPOCH_DAY


def day_of_number(number: int) -> dt.date:
    """Return the day of a count from 1970-01-01."""
    return dt.date.fromordinal(number + EPOCH_DAY)


def clock_hour(at_ms: int, utc_offset_min: int) -> int:
    """Return the hour (0 to 23) that a clock of the household shows at an instant."""
    return (at_ms // 60_000 + utc_offset_min) // 60 % 24


def midnight_ms(day: str, utc_offset_min: int) -> int:
    """Return when a day (ISO) begins in a zone that is so many minutes ahead of UTC, in ms since 1970 UTC."""
    return day_number(dt.date.fromisoformat(day)) * DAY_MS - utc_offset_min * 60_000


def _count(at_ms: int, said: log.Count) -> Count:
    found = workers_in(said)
    number = None if found is None or found[1] == "coarse" else found[0].best
    seen = None if found is None else found[0].best > 0
    return Count(at_ms, number, seen, said.eggs, said.larvae, said.pupae, bool(said.males_only), said.queens)


def _added(at_ms: int, said: log.Boost) -> Count:
    """Return added brood as what is known of it: that its stage is there."""
    stage = said.brood
    eggs, larvae, pupae = ("some" if stage == name else None for name in ("eggs", "larvae", "pupae"))
    return Count(at_ms, None, None, eggs, larvae, pupae, added=True)
