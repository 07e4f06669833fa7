"""Reading and writing occurrences. The caller holds the household's lock."""

from __future__ import annotations

import datetime as dt
from collections import defaultdict
from collections.abc import Iterable, Mapping
from dataclasses import fields
from typing import Any, Final

from sqlalchemy import Connection, bindparam, delete, insert, or_, select, update

from ..records.ids import uuid7
from ..records.quick.many_rows import are_among
from .occurrence_states import Occurrence
from .tables import occurrences

LOOK_BACK_DAYS: Final = 30
"""How far back a told occurrence can still be closed by a late log or opened again by a void."""
_NAMES = tuple(f.name for f in fields(Occurrence))
COLUMNS: Final = tuple(occurrences.c[name] for name in _NAMES)
"""What ``as_occurrence`` takes, in this order."""


def read_occurrences(
    connection: Connection, household_id: str, colony_ids: Iterable[str], today: dt.date
) -> dict[str, list[Occurrence]]:
    """Return, by colony, what waits and what was told in the last 30 days."""
    found: dict[str, list[Occurrence]] = defaultdict(list)
    asked = {
        "household_id": household_id,
        "colony_ids": sorted(colony_ids),
        "since": (today - dt.timedelta(days=LOOK_BACK_DAYS)).isoformat(),
    }
    for row in connection.execute(_OF_COLONIES, asked):
        occurrence = as_occurrence(row)
        found[occurrence.subject_id].append(occurrence)
    return found


def as_occurrence(values: Iterable[Any]) -> Occurrence:
    """Turn the ``COLUMNS`` of a row into the value that the rules work on."""
    return Occurrence(*values)


def as_row(row: Occurrence) -> dict[str, Any]:
    """Turn a value into the columns of the table, without the household."""
    return {name: getattr(row, name) for name in _NAMES}


def add_occurrences(
    connection: Connection, household_id: str, made: Iterable[Occurrence], now_ms: int
) -> None:
    """Insert new occurrences, each with an id of its own."""
    rows = [{**as_row(row), "household_id": household_id, "id": uuid7(now_ms)} for row in made]
    if rows:
        connection.execute(insert(occurrences), rows)


def change_occurrences(connection: Connection, household_id: str, changed: Iterable[Occurrence]) -> None:
    """Write a household's occurrences that exist."""
    rows = [
        {"b_household_id": household_id, **{f"b_{name}": value for name, value in as_row(row).items()}}
        for row in changed
    ]
    if rows:
        connection.execute(_CHANGE, rows)


def tell_occurrences(connection: Connection, told: Mapping[str, Iterable[Occurrence]]) -> None:
    """Write what telling changes of occurrences, by household, one statement for all that fare alike."""
    alike: dict[tuple[Any, ...], list[tuple[str, str]]] = defaultdict(list)
    for household_id, rows in told.items():
        for row in rows:
            alike[row.state, row.steps, row.told_ms, row.wake_ms].append((household_id, row.id))
    o = occurrences.c
    for (state, steps, told_ms, wake_ms), keys in alike.items():
        connection.execute(
            update(occurrences)
            .where(are_among(connection, (o.household_id, o.id), keys))
            .values(state=state, steps=steps, told_ms=told_ms, wake_ms=wake_ms)
        )


def replace_waiting(
    connection: Connection,
    household_id: str,
    before: Iterable[Occurrence],
    wanted: Iterable[Occurrence],
    now_ms: int,
) -> None:
    """Make the waiting occurrences of some colonies the wanted ones, touching only what differs."""
    kept = {row.id: row for row in wanted if row.id}
    old = {row.id: row for row in before if row.state == "waiting"}
    dropped = sorted(old.keys() - kept.keys())
    if dropped:
        o = occurrences.c
        connection.execute(delete(occurrences).where(o.household_id == household_id, o.id.in_(dropped)))
    change_occurrences(connection, household_id, [row for row in kept.values() if row != old.get(row.id)])
    add_occurrences(connection, household_id, [row for row in wanted if not row.id], now_ms)


_OF_COLONIES = select(*COLUMNS).where(
    occurrences.c.household_id == bindparam("household_id"),
    occurrences.c.subject_kind == "colony",
    occurrences.c.subject_id.in_(bindparam("colony_ids", expanding=True)),
    or_(occurrences.c.state == "waiting", occurrences.c.local_date >= bindparam("since")),
)
_CHANGE = (
    update(occurrences)
    .where(occurrences.c.household_id == bindparam("b_household_id"), occurrences.c.id == bindparam("b_id"))
    .values({name: bindparam(f"b_{name}") for name in _NAMES if name != "id"})
)
