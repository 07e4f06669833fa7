"""What is stored at the beginning, what was changed since, and putting it back."""

from __future__ import annotations

import os
from functools import cache
from pathlib import Path
from typing import Any

from sqlalchemy import Connection, Delete, Table, bindparam, insert, update

from broodshelf.records.database import db, metadata, reading, writing
from broodshelf.records.tables import households
from broodshelf.settings import Settings

Rows = list[tuple[Any, ...]]
Versions = dict[str, tuple[int, Any]]
_MOVED = {
    "sqlite": "PRAGMA data_version",
    "postgresql": "SELECT pg_current_wal_insert_lsn()::text",
}
_AS_IT_WAS = update(households).where(households.c.id == bindparam("key_id"))


class Remembering:
    """The rows of every table and the pictures of a server whose ``settings`` these are; inside its app's context."""

    settings: Settings
    _seen: tuple[Any, dict[str, Rows], Versions] = (None, {}, {})

    def remember(self) -> None:
        """Take what is stored now as the beginning of every request."""
        self._rows = self.rows()
        self._files = self._pictures()
        self._moved = self.moved()

    def rows(self) -> dict[str, Rows]:
        """Return every row of every table, its values in the order of ``columns``.

        The driver is asked: of forty small reads SQLAlchemy's part is the larger one.
        """
        seen, known, before = self._seen
        if (moved := self.moved()) != seen:
            with reading() as connection:
                ask: Any = connection.connection.dbapi_connection
                versions = _versions(connection)
                same = {name for name, version in versions.items() if version == before.get(name)}
                found = {
                    name: known[name] if name in same else ask.execute(everything).fetchall()
                    for name, everything in _everything().items()
                }
            self._seen = (moved, found, versions)
        return self._seen[1]

    def moved(self) -> Any:
        """Return something that is another value after any write to the database."""
        if not hasattr(self, "_watching"):
            self._watching = db.engine.raw_connection()
        return self._watching.cursor().execute(_MOVED[db.engine.dialect.name]).fetchone()[0]

    def let_go(self) -> None:
        """Give back the connection that watches."""
        self._watching.close()

    def changed(self) -> bool:
        """Say whether anything was written since the beginning."""
        return self.moved() != self._moved or self._pictures() != self._files

    def before(self) -> dict[str, Rows]:
        """Return the rows of the beginning."""
        return self._rows

    def reset(self) -> None:
        """Put the rows and the pictures of the beginning back, if anything was written."""
        if not self.changed():
            return
        now = self.rows()
        other = {name for name, rows in self._rows.items() if rows is not now[name] and rows != now[name]}
        if other:
            self._put_back(now, other)
        for file in self._pictures() - self._files:
            Path(file).unlink()
        self._moved = self.moved()

    def _put_back(self, now: dict[str, Rows], other: set[str]) -> None:
        """Write what these other tables had at the beginning; the rest of the tables are as they were."""
        whole = self._wholly_put_back(now, other)
        others = [t for t in _tables() if t is not households and (t.name in other or t in whole)]
        with writing() as connection:
            if households.name in other:
                self._put_households_back(connection)
            for table in reversed(others):
                if table in whole:
                    connection.execute(table.delete())
                elif new := _without(now[table.name], self._rows[table.name]):
                    connection.execute(_one_of(table), _keys(table, new))
            for table in others:
                kept: Rows = [] if table in whole else now[table.name]
                if old := _without(self._rows[table.name], kept):
                    connection.execute(insert(table), _named(table, old))

    def _put_households_back(self, connection: Connection) -> None:
        """Not by deleting them: whatever hangs on them would go, too."""
        known = _named(households, self._rows["households"])
        connection.execute(households.delete().where(households.c.id.not_in([row["id"] for row in known])))
        connection.execute(_AS_IT_WAS, [{"key_id": row["id"], **row} for row in known])

    def _wholly_put_back(self, now: dict[str, Rows], other: set[str]) -> set[Table]:
        """Return the tables whose old rows others hang on, where one of these was changed or went; and those others.

        To delete such a row would delete what hangs on it.
        """
        held = {of for table in _tables() for of in _hangs_on(table)}
        found: set[Table] = set()
        for table in _tables():
            may_lose = table in held and table.name in other
            lost = may_lose and _without(self._rows[table.name], now[table.name])
            if table is not households and (lost or _hangs_on(table) & found):
                found.add(table)
        return found

    def _pictures(self) -> set[str]:
        there = os.walk(self.settings.data / "photos")
        return {str(Path(folder, file)) for folder, _, files in there for file in files}


@cache
def _tables() -> list[Table]:
    """Return every table after those that it hangs on."""
    return metadata.sorted_tables  # sorted anew at each look


@cache
def columns(table: str) -> tuple[str, ...]:
    """Return the names of a table's columns in the order in which ``TwoHouses.rows`` gives their values."""
    return tuple(metadata.tables[table].columns.keys())


@cache
def _everything() -> dict[str, str]:
    """Return by table, each after those that it hangs on, what asks for all its rows."""
    names = {table.name: ", ".join(f'"{name}"' for name in columns(table.name)) for table in _tables()}
    return {table: f"SELECT {of} FROM {table}" for table, of in names.items()}


def _versions(connection: Connection) -> Versions:
    """Return, on PostgreSQL, what of each table is as it was only if its rows are.

    That is their number and the sum of the transactions that wrote them: a later transaction has a higher number.
    """
    if connection.dialect.name == "sqlite":
        return {}  # to ask for the rows costs no more
    return {name: (count, written) for name, count, written in connection.exec_driver_sql(_all_versions())}


@cache
def _all_versions() -> str:
    each = (f"SELECT '{name}', count(*), sum(xmin::text::bigint) FROM {name}" for name in _everything())
    return " UNION ALL ".join(each)


@cache
def _hangs_on(table: Table) -> frozenset[Table]:
    return frozenset(key.column.table for key in table.foreign_keys)


@cache
def _one_of(table: Table) -> Delete:
    """Return what deletes the row whose key is given."""
    return table.delete().where(*(column == bindparam(f"key_{column.name}") for column in table.primary_key))


def _keys(table: Table, rows: Rows) -> list[dict[str, Any]]:
    """Return what ``_one_of`` wants to know of rows."""
    places = {f"key_{column.name}": columns(table.name).index(column.name) for column in table.primary_key}
    return [{name: row[place] for name, place in places.items()} for row in rows]


def _named(table: Table, rows: Rows) -> list[dict[str, Any]]:
    """Return rows as values by column."""
    return [dict(zip(columns(table.name), row, strict=True)) for row in rows]


def _without(rows: Rows, others: Rows) -> Rows:
    """Return the rows that are not among others, in their order."""
    known = set(others)
    return [row for row in rows if row not in known]
