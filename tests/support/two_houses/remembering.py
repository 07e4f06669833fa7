"""What is stored at the beginning, what was changed since, and putting it back."""

from __future__ import annotations

import os
from functools import cache
from pathlib import Path
from typing import Any

from sqlalchemy import Connection, Delete, Table, bindparam, insert, text, update

from broodshelf.records.database import db, metadata, reading, writing
from broodshelf.records.tables import households
from broodshelf.settings import Settings

Rows = list[tuple[Any, ...]]
Versions = dict[str, tuple[int, Any]]


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
        """Return every row of every table, its values in the order of ``columns``."""
        seen, known, before = self._seen
        if (moved := self.moved()) != seen:
            with reading() as connection:
                versions = _versions(connection)
                same = {name for name, version in versions.items() if version == before.get(name)}
                found = {
                    name: known[name]
                    if name in same
                    else list(map(tuple, connection.exec_driver_sql(everything)))
                    for name, everything in _everything().items()
                }
            self._seen = (moved, found, versions)
        return self._seen[1]

    def moved(self) -> Any:
        """Return something that is another value after any write to the database."""
        sqlite = db.engine.dialect.name == "sqlite"
        if not sqlite:
            with reading() as connection:
                return connection.scalar(text("SELECT pg_current_wal_insert_lsn()::text"))
        if not hasattr(self, "_watching"):
            self._watching = db.engine.raw_connection()
        return self._watching.cursor().execute("PRAGMA data_version").fetchone()[0]

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
        whole = self._wholly_put_back(now)
        known = _named(households, self._rows["households"])
        others = [table for table in metadata.sorted_tables if table is not households]
        with writing() as connection:
            connection.execute(
                households.delete().where(households.c.id.not_in([row["id"] for row in known]))
            )
            for row in known:  # not deleted: whatever hangs on them would go, too
                connection.execute(update(households).where(households.c.id == row["id"]).values(**row))
            for table in reversed(others):
                if table in whole:
                    connection.execute(table.delete())
                elif new := _without(now[table.name], self._rows[table.name]):
                    connection.execute(_one_of(table), _keys(table, new))
            for table in others:
                kept: Rows = [] if table in whole else now[table.name]
                if old := _without(self._rows[table.name], kept):
                    connection.execute(insert(table), _named(table, old))
        for file in self._pictures() - self._files:
            Path(file).unlink()
        self._moved = self.moved()

    def _wholly_put_back(self, now: dict[str, Rows]) -> set[Table]:
        """Return the tables whose old rows others hang on, where one of these was changed or went; and those others.

        To delete such a row would delete what hangs on it.
        """
        held = {of for table in metadata.sorted_tables for of in _hangs_on(table)}
        found: set[Table] = set()
        for table in metadata.sorted_tables:
            lost = table in held and _without(self._rows[table.name], now[table.name])
            if table is not households and (lost or _hangs_on(table) & found):
                found.add(table)
        return found

    def _pictures(self) -> set[str]:
        there = os.walk(self.settings.data / "photos")
        return {str(Path(folder, file)) for folder, _, files in there for file in files}


@cache
def columns(table: str) -> tuple[str, ...]:
    """Return the names of a table's columns in the order in which ``TwoHouses.rows`` gives their values."""
    return tuple(metadata.tables[table].columns.keys())


@cache
def _everything() -> dict[str, str]:
    """Return by table, each after those that it hangs on, what asks for all its rows."""
    names = {
        table.name: ", ".join(f'"{name}"' for name in columns(table.name)) for table in metadata.sorted_tables
    }
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
