"""Reading and writing occurrences. The caller holds the household's lock."""

from __future__ import annotations

import datetime as dt
from collections import defaultdict
from collections.abc import Iterable
from dataclasses import fields
from typing import Any, Final

from sqlalchemy import Connection, Row, bindparam, delete, insert, or_, select, update

from ..records.ids import uuid7
from .occurrences import Occurrence
from .tables import occurrences

LOOK_BACK_DAYS: Final = 30
"""How far back a told occurrence can still be closed by a late log or opened again by a void."""
_NAMES = tuple(f.name for f in fields(Occurrence))


def read_occurrences(
    connection: Connection, household_id: str, colony_ids: Iterable[str], today: dt.date
) -> dict[str, list[Occurrence]]:
    """Return, by colony, what waits and what was told in the last 30 days."""
    o = occurrences.c
    found: dict[str, list[Occurrence]] = defaultdict(list)
    for row in connection.execute(
        select(occurrences).where(
            o.household_id == household_id,
            o.subject_kind == "colony",
            o.subject_id.in_(sorted(colony_ids)),
            or_(
                o.state == "waiting", o.local_date >= (today - dt.timedelta(days=LOOK_BACK_DAYS)).isoformat()
            ),
        )
    ):
        found[row.subject_id].append(as_occurrence(row))
    return found


def as_occurrence(row: Row[Any]) -> Occurrence:
    """Turn a row of the table into the value that the rules work on."""
    return Occurrence(**{name: getattr(row, name) for name in _NAMES})


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


def change_occurrences(connection: Connection, changed: Iterable[Occurrence]) -> None:
    """Write occurrences that exist."""
    rows = [{f"b_{name}": value for name, value in as_row(row).items()} for row in changed]
    if rows:
        connection.execute(_CHANGE, rows)


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
        connection.execute(delete(occurrences).where(occurrences.c.id.in_(dropped)))
    change_occurrences(connection, [row for row in kept.values() if row != old.get(row.id)])
    add_occurrences(connection, household_id, [row for row in wanted if not row.id], now_ms)


_CHANGE = (
    update(occurrences)
    .where(occurrences.c.id == bindparam("b_id"))
    .values({name: bindparam(f"b_{name}") for name in _NAMES if name != "id"})
)
