"""Inserting many rows at once, without the cost that each would have by itself.

On SQLite the rows go straight to the driver: preparing each one's parameters anew would take as long as storing it.
On PostgreSQL, where each row would be a message to the server, all travel as one JSON text that it takes apart.
"""

from __future__ import annotations

import json
from collections.abc import Mapping, Sequence
from functools import lru_cache
from typing import Any

from sqlalchemy import Connection, Insert, Table, Text, bindparam, cast, column, func, insert, select
from sqlalchemy.dialects.postgresql import JSON


def insert_rows(connection: Connection, table: Table, rows: Sequence[Mapping[str, Any]]) -> None:
    """Insert rows that all name the same columns; the table's defaults fill the others. None may be given."""
    if not rows:
        return
    names = tuple(rows[0])
    if connection.dialect.name == "postgresql":
        connection.execute(_from_json(table, names), {"rows": json.dumps(rows)})
    else:
        text, rest = _for_sqlite(table, names)
        connection.exec_driver_sql(text, [(*map(row.__getitem__, names), *rest) for row in rows])


@lru_cache(maxsize=64)
def _from_json(table: Table, names: tuple[str, ...]) -> Insert:
    text = cast(bindparam("rows", type_=Text), JSON)
    given = func.json_to_recordset(text).table_valued(*(column(name, table.c[name].type) for name in names))
    return insert(table).from_select(names, select(given.render_derived(name="given", with_types=True)))


@lru_cache(maxsize=64)
def _for_sqlite(table: Table, names: tuple[str, ...]) -> tuple[str, tuple[Any, ...]]:
    """Return the statement and the values of the columns that have a default and are not named."""
    rest = {c.name: c.default.arg for c in table.c if c.name not in names and c.default is not None}
    columns = ", ".join(f'"{name}"' for name in (*names, *rest))
    marks = ", ".join("?" * (len(names) + len(rest)))
    return f'INSERT INTO "{table.name}" ({columns}) VALUES ({marks})', tuple(rest.values())
