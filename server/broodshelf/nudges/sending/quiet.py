"""Quiet hours of what is on its way: a nudge that was put off does not ring in them, unless it is to wake."""

from __future__ import annotations

import json
from collections.abc import Collection, Iterable
from dataclasses import dataclass
from typing import Final

from sqlalchemy import Connection, select

from ...model import kinds
from ...model.tasks import TASKS
from ...records.quick.many_rows import are_among
from ...records.tables import records
from ...rounds.occurrence_states import ON_TIME_MS
from ...rounds.wall_clock import CareClock
from ..messages import Item

_WAKING: Final = frozenset(what for what, row in TASKS.items() if row.wakes)


@dataclass(frozen=True, slots=True)
class Window:
    """When a message may be sent: held back until ``from_ms``, of use until ``until_ms``."""

    from_ms: int
    until_ms: int


def window(clock: CareClock, made_ms: int, useless_ms: int, now_ms: int) -> Window:
    """Return when a nudge that wakes nobody may be sent, as seen from now.

    One that was made in the quiet hours is of a care hour that lies in them, and goes if it is on time.
    """
    meant = now_ms - made_ms <= ON_TIME_MS and clock.is_quiet(made_ms)
    from_ms = now_ms if meant else clock.after_quiet(now_ms)
    return Window(from_ms, min(useless_ms, clock.quiet_begins(from_ms) or useless_ms))


def wakes(items: Iterable[Item]) -> bool:
    """Say whether one of these is told in the quiet hours, too: waiting could kill."""
    return any(item.what in _WAKING for item in items)


def clocks_of(connection: Connection, household_ids: Collection[str]) -> dict[str, CareClock]:
    """Return the clocks of households."""
    r = records.c
    themselves = are_among(connection, (r.household_id, r.id), [(h, h) for h in sorted(household_ids)])
    found = connection.execute(select(r.household_id, r.fields).where(themselves))
    said = {row.household_id: kinds.read(kinds.Household, json.loads(row.fields)) for row in found}
    return {h: CareClock.of(said.get(h)) for h in household_ids}
