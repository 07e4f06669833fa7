"""Inserting, changing or asking for many rows at once, without the cost that each would have by itself.

On SQLite the rows go straight to the driver: preparing each one's parameters anew would take as long as storing it.
On PostgreSQL, where each row would be a message to the server, all travel as one JSON text that it takes apart.

``python -m tests.bench.sync_cost`` (the push of 1,000 logs) and ``python -m tests.bench.tick_cost`` (occurrences that
are due in as many households) pay for it.
"""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping, Sequence
from functools import lru_cache
from operator import itemgetter
from typing import Any, Final, cast

from sqlalchemy import (
    Column,
    ColumnElement,
    Connection,
    Insert,
    Table,
    TableValuedAlias,
    Text,
    Update,
    bindparam,
    column,
    func,
    insert,
    select,
    tuple_,
    update,
)
from sqlalchemy.dialects import sqlite
from sqlalchemy.dialects.postgresql import ARRAY, JSON
from sqlalchemy.types import NullType


def insert_rows(connection: Connection, table: Table, rows: Sequence[Mapping[str, Any]]) -> None:
    """Insert rows that all name the same columns; the table's defaults fill the others. None may be given."""
    if not rows:
        return
    names = tuple(rows[0])
    if connection.dialect.name == "postgresql":
        connection.execute(_from_json(table, names), {"rows": json.dumps(rows)})
    else:
        text, order, rest = _for_sqlite(table, names)
        whole = [{**rest, **row} for row in rows] if rest else rows
        connection.exec_driver_sql(text, list(map(itemgetter(*order), whole)))


def is_among(connection: Connection, column: Column[str], values: Iterable[str]) -> ColumnElement[bool]:
    """Return the condition that a text column holds one of many values: one parameter, however many they are.

    On PostgreSQL an array in its text form, of no type until the server reads it as one: over an array of its own the
    driver takes far longer, and only what is constant when the statement is planned is looked up by hashing.
    """
    given = list(values)
    if connection.dialect.name == "postgresql":
        array = bindparam(None, _as_array(given), type_=NullType()).cast(ARRAY(Text))
        return column == func.any(array)
    return column.in_(select(func.json_each(json.dumps(given)).table_valued("value").c.value))


SOME: Final = "some"


def is_among_some(dialect: str, column: Column[str]) -> ColumnElement[bool]:
    """Return the condition that a text column holds one of the values that ``some`` gives, for a statement that is
    made once: making one takes about as long as having PostgreSQL answer it (``python -m tests.bench.many_homes``).
    """
    given = bindparam(SOME, type_=NullType())
    if dialect == "postgresql":
        return column == func.any(given.cast(ARRAY(Text)))
    return column.in_(select(func.json_each(given).table_valued("value").c.value))


def some(connection: Connection, values: Iterable[str]) -> dict[str, str]:
    """Return the parameter of a statement that asks ``is_among_some``."""
    given = list(values)
    return {SOME: _as_array(given) if connection.dialect.name == "postgresql" else json.dumps(given)}


def are_among(
    connection: Connection, columns: tuple[Column[str], Column[str]], pairs: Iterable[tuple[str, str]]
) -> ColumnElement[bool]:
    """Return the condition that two text columns hold one of many pairs, such as a household and an id in it.

    Two ids of one household never find what belongs to another one, as two conditions side by side would.
    """
    given = list(pairs)
    if connection.dialect.name == "postgresql":
        arrays = [
            bindparam(None, _as_array(pair[n] for pair in given), type_=NullType()).cast(ARRAY(Text))
            for n in (0, 1)
        ]
        rows = func.unnest(*arrays).table_valued(column("a", Text), column("b", Text))
        named = rows.render_derived(name="given")
        return tuple_(*columns).in_(select(named.c.a, named.c.b))
    each = func.json_each(json.dumps(given)).table_valued("value").c.value
    return tuple_(*columns).in_(select(func.json_extract(each, "$[0]"), func.json_extract(each, "$[1]")))


def _as_array(values: Iterable[str]) -> str:
    """Return the text form of an array (PostgreSQL manual, 8.15.6): quotes and backslashes escaped by a backslash."""
    escaped = (value.replace("\\", "\\\\").replace('"', '\\"') for value in values)
    return "{" + ",".join(f'"{value}"' for value in escaped) + "}"


def update_rows(
    connection: Connection, table: Table, rows: Sequence[Mapping[str, Any]], **same: str | int | None
) -> None:
    """Change rows by their primary key, household and id; all name the same columns.

    ``same`` is what becomes of all of them alike.
    """
    if not rows:
        return
    names, keys = tuple(rows[0]), _keys(table)
    # two that change the same rows lock them alike
    ordered = sorted(rows, key=lambda row: tuple(str(row[key]) for key in keys))
    if connection.dialect.name == "postgresql":
        connection.execute(
            _change_from_json(table, names, tuple(same)), {"rows": json.dumps(ordered), **same}
        )
    else:
        text, order = _change_for_sqlite(table, (*names, *same))
        connection.exec_driver_sql(
            text, [tuple([row[n] if n in row else same[n] for n in order]) for row in ordered]
        )


@lru_cache(maxsize=64)
def _from_json(table: Table, names: tuple[str, ...]) -> Insert:
    return insert(table).from_select(names, select(_given(table, names)))


@lru_cache(maxsize=64)
def _change_from_json(table: Table, names: tuple[str, ...], same: tuple[str, ...]) -> Update:
    given = _given(table, names)
    keys = _keys(table)
    new = {name: given.c[name] for name in names if name not in keys}
    alike = {name: bindparam(name, type_=table.c[name].type) for name in same}
    here = [table.c[key] == given.c[key] for key in keys]
    return update(table).where(*here).values({**new, **alike})


def _keys(table: Table) -> tuple[str, ...]:
    return tuple(column.name for column in table.primary_key)


def _given(table: Table, names: tuple[str, ...]) -> TableValuedAlias:
    text = bindparam("rows", type_=Text).cast(JSON)
    given = func.json_to_recordset(text).table_valued(*(column(name, table.c[name].type) for name in names))
    return given.render_derived(name="given", with_types=True)


@lru_cache(maxsize=64)
def _change_for_sqlite(table: Table, names: tuple[str, ...]) -> tuple[str, tuple[str, ...]]:
    """Return the statement, and the columns in its order."""
    new: dict[str, Any] = {name: bindparam(f"b_{name}") for name in names}
    here = [table.c[key] == new.pop(key) for key in _keys(table)]
    made = update(table).where(*here).values(new).compile(dialect=sqlite.dialect())
    return made.string, tuple(name.removeprefix("b_") for name in made.positiontup or ())


@lru_cache(maxsize=64)
def _for_sqlite(table: Table, names: tuple[str, ...]) -> tuple[str, tuple[str, ...], dict[str, Any]]:
    """Return the statement, the columns in its order, and the defaults of those that are not named."""
    made = insert(table).compile(dialect=sqlite.dialect(), column_keys=names)
    order = tuple(made.positiontup or ())
    return made.string, order, {name: cast("Any", table.c[name].default).arg for name in {*order} - {*names}}
