"""Keeping households apart: whose rows a transaction may touch, and the policies that hold PostgreSQL to it.

The first lock is every statement naming its household; the second is row-level security. A transaction carries its
household in a setting that ends with it (``SET LOCAL``), so no pooled connection takes it along. Inside a web request
the household is nobody's until the session says whose; ``every_household`` opens the few doors at which a household is
only found: a session, a code, a link, an address. The nudger and the operator's commands work for all.
"""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from typing import Any, Final

from flask import has_request_context, request
from sqlalchemy import Connection, MetaData, Table, event

EVERY: Final = "*"
NOBODY: Final = ""
SETTING: Final = "broodshelf.household"
_KEY: Final = "broodshelf.household"
POLICY: Final = "one_household"


def household_in_hand() -> str:
    """Return whose rows a transaction that begins now may touch: a household's id, ``EVERY`` or ``NOBODY``."""
    if not has_request_context():
        return EVERY
    return str(request.environ.get(_KEY, NOBODY))


def enter(household_id: str) -> None:
    """Let the rest of this request touch this household's rows only."""
    request.environ[_KEY] = household_id


@contextmanager
def every_household() -> Iterator[None]:
    """Let transactions that begin inside look at all households: only to find out which one is asked for."""
    if not has_request_context():
        yield
        return
    before = request.environ.get(_KEY, NOBODY)
    request.environ[_KEY] = EVERY
    try:
        yield
    finally:
        request.environ[_KEY] = before


def hold(connection: Connection) -> str:
    """Note whose rows the transaction that begins now may touch; return the statement that says so to PostgreSQL."""
    held = household_in_hand()
    connection.info[_KEY] = held
    quoted = held.replace("'", "''")
    return f"SET LOCAL {SETTING} = '{quoted}'"


def held_by(connection: Connection) -> str:
    """Return whose rows the running transaction may touch."""
    return str(connection.info.get(_KEY, EVERY))


def column_of(table: Table) -> str | None:
    """Return the column that says whose a row is; None for a table that belongs to no household."""
    if table.name == "households":
        return "id"
    return "household_id" if "household_id" in table.c else None


def policy_of(table: str, column: str) -> tuple[str, ...]:
    """Return the statements that secure a table; forced, so that its owner, as whom the server works, is held, too.

    The setting is read once a statement. Of a ``CASE`` the planner takes half the rows to pass; of a comparison it
    takes hardly any, and then reads and sorts whole tables where an index gives the first rows.
    """
    held = f"(SELECT current_setting('{SETTING}', true))"
    mine = f"CASE WHEN {held} = '{EVERY}' THEN true ELSE {column} = {held} END"
    return (
        f"ALTER TABLE {table} ENABLE ROW LEVEL SECURITY",
        f"ALTER TABLE {table} FORCE ROW LEVEL SECURITY",
        f"CREATE POLICY {POLICY} ON {table} USING ({mine}) WITH CHECK ({mine})",
    )


def secure_when_made(metadata: MetaData) -> None:
    """Secure the tables that ``metadata.create_all`` makes on PostgreSQL, as the migrations secure theirs."""

    @event.listens_for(metadata, "after_create")
    def _secure(_target: MetaData, connection: Connection, tables: Any = (), **_: Any) -> None:
        if connection.dialect.name != "postgresql":
            return
        for table in tables or ():
            column = column_of(table)
            for statement in policy_of(table.name, column) if column else ():
                connection.exec_driver_sql(statement)
