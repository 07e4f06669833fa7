"""All that the database has of one household, whatever room's table it is in: erased, copied, counted.

A row is a household's where ``apart.column_of`` says so, so a new table is among them without being named here. The
tables are those of the rooms that are imported: of all rooms in an app.
"""

from __future__ import annotations

import hashlib
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from typing import Any, Final

from sqlalchemy import ColumnElement, Connection, Table, delete, func, insert, select, true, update

from .apart import column_of
from .database import metadata
from .home.tables import builds, endings, pictures, server_notes, taken
from .tables import households

HOME: Final = (pictures, endings, builds, taken, server_notes)
"""What lies in a folder with SQLite (``home``); it goes its own ways."""
PORTION: Final = 500
"""Rows of one statement."""
_MODULUS: Final = 2**64

Rows = Mapping[str, "Content"]
"""By the name of the table."""


@dataclass(frozen=True, slots=True)
class Content:
    """How many rows there are, and a number that is the same for the same rows in any order and on any engine."""

    count: int
    sum: int


def tables_of_households() -> list[Table]:
    """Return the rooms' tables whose rows belong to households; what others refer to comes first."""
    return [table for table in metadata.sorted_tables if column_of(table) is not None and table not in HOME]


def other_tables() -> list[Table]:
    """Return the tables before the door and the server's own."""
    return [table for table in metadata.sorted_tables if column_of(table) is None and table not in HOME]


def erase(connection: Connection, household_id: str, *, itself: bool = True) -> int:
    """Delete every row that belongs to a household; return how many. The caller holds the household's lock.

    ``itself``: also its own row, and with it the pictures that a shared database has of it.
    """
    erased = 0
    for table in reversed(tables_of_households()):
        if table is households and not itself:
            continue
        erased += connection.execute(delete(table).where(_mine(table, household_id))).rowcount
    return erased


def copy(source: Connection, target: Connection, household_id: str) -> int:
    """Copy every row of a household into another database that has none of them but its own; return how many."""
    own = dict(source.execute(select(households).where(households.c.id == household_id)).mappings().one())
    if target.execute(update(households).where(households.c.id == household_id).values(**own)).rowcount == 0:
        target.execute(insert(households), [own])
    others = [table for table in tables_of_households() if table is not households]
    return 1 + sum(copy_table(source, target, table, household_id) for table in others)


def copy_table(source: Connection, target: Connection, table: Table, household_id: str | None = None) -> int:
    """Copy the rows of a table, of one household or all of them; return how many."""
    copied = 0
    for portion in _portions(source, table, household_id):
        target.execute(insert(table), portion)
        copied += len(portion)
    return copied


def contents(
    connection: Connection, tables: Iterable[Table], household_id: str | None = None
) -> dict[str, Content]:
    """Read all rows of these tables, of one household or all of them, and return what is in each."""
    found = {}
    for table in tables:
        count, total = 0, 0
        for portion in _portions(connection, table, household_id):
            count += len(portion)
            total = (total + sum(_number_of(row) for row in portion)) % _MODULUS
        found[table.name] = Content(count, total)
    return found


def counts(connection: Connection, tables: Iterable[Table]) -> dict[str, int]:
    """Return how many rows each table has."""
    return {
        table.name: int(connection.scalar(select(func.count()).select_from(table)) or 0) for table in tables
    }


def _portions(
    connection: Connection, table: Table, household_id: str | None
) -> Iterator[list[dict[str, Any]]]:
    query = select(table).where(_mine(table, household_id)).execution_options(yield_per=PORTION)
    for portion in connection.execute(query).mappings().partitions():
        yield [dict(row) for row in portion]


def _mine(table: Table, household_id: str | None) -> ColumnElement[bool]:
    column = column_of(table)
    return true() if household_id is None or column is None else table.c[column] == household_id


def _number_of(row: Mapping[str, Any]) -> int:
    """Return a number of a row's values; both engines give the same Python values for a column."""
    text = repr([row[name] for name in sorted(row)])
    return int.from_bytes(hashlib.sha256(text.encode("utf-8", "surrogatepass")).digest()[:8], "big")
