"""A row in every table of a schema, whatever it has: made by reading the tables themselves, of any version."""

from __future__ import annotations

from typing import Any

from sqlalchemy import Boolean, Column, Connection, Float, Integer, LargeBinary, MetaData, Table, insert
from sqlalchemy.types import NullType

NAMES_A_HOUSEHOLD = ("household_id", "for_household", "founded")
NOT_OURS = ("alembic_version",)


def read_tables(connection: Connection) -> MetaData:
    """Return the tables that are there."""
    found = MetaData()
    found.reflect(connection)
    return found


def fill_every_table(
    connection: Connection, tables: MetaData, household_id: str, mark: str
) -> dict[str, int]:
    """Put one row of this household into every table, each value telling ``mark``; return how many rows each has."""
    made: dict[str, dict[str, Any]] = {}
    for table in tables.sorted_tables:
        if table.name in NOT_OURS:
            continue
        row = {column.name: _value(table, column, household_id, mark) for column in table.columns}
        for constraint in table.foreign_key_constraints:
            for column, element in zip(constraint.columns, constraint.elements, strict=True):
                row[column.name] = made[element.column.table.name][element.column.name]
        connection.execute(insert(table), [row])
        made[table.name] = row
    return dict.fromkeys(made, 1)


def _value(table: Table, column: Column[Any], household_id: str, mark: str) -> Any:
    if column.name in NAMES_A_HOUSEHOLD or (table.name == "households" and column.name == "id"):
        return household_id
    if table.name == "records" and column.name == "kind":
        return "note"  # a household has one record of itself
    if isinstance(column.type, Boolean):
        return False
    if isinstance(column.type, LargeBinary):
        return f"{mark} {table.name}".encode()
    if isinstance(column.type, Float):
        return 1.5
    if isinstance(column.type, (Integer, NullType)):
        return 1
    if column.name in ("fields", "stamps", "asked", "before", "lost", "answer", "args", "item"):
        return f'{{"text": "{mark} {table.name}"}}' if column.name != "lost" else "[]"
    text = f"{mark}-{table.name}-{column.name}"
    length = getattr(column.type, "length", None)
    return text if length is None else text[-length:] if length >= 8 else text[:length]
