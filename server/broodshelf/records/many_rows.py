"""Inserting many rows in one statement, whichever database it is.

SQLite's ``executemany`` stays inside the process. PostgreSQL's is a message for each row, of which a common hour has
thousands; there the rows travel as one JSON text that the server takes apart.
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
    if connection.dialect.name == "postgresql":
        connection.execute(_from_json(table, tuple(rows[0])), {"rows": json.dumps(rows)})
    else:
        connection.execute(insert(table), rows)


@lru_cache(maxsize=64)
def _from_json(table: Table, names: tuple[str, ...]) -> Insert:
    text = cast(bindparam("rows", type_=Text), JSON)
    given = func.json_to_recordset(text).table_valued(*(column(name, table.c[name].type) for name in names))
    return insert(table).from_select(names, select(given.render_derived(name="given", with_types=True)))
