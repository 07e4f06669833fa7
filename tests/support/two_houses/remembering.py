"""What is stored at the beginning, what was changed since, and putting it back."""

from __future__ import annotations

from functools import cache
from typing import Any

from sqlalchemy import Table, insert, text, update

from broodshelf.records.database import db, metadata, reading, writing
from broodshelf.records.tables import households
from broodshelf.settings import Settings


class Remembering:
    """The rows of every table and the pictures of a server whose ``settings`` these are; inside its app's context."""

    settings: Settings
    _seen: tuple[Any, dict[str, list[tuple[Any, ...]]]] | None = None

    def remember(self) -> None:
        """Take what is stored now as the beginning of every request."""
        self._rows = self.rows()
        self._files = self._pictures()
        self._moved = self.moved()

    def rows(self) -> dict[str, list[tuple[Any, ...]]]:
        """Return every row of every table, its values in the order of ``columns``."""
        seen = self.moved()
        if self._seen is None or self._seen[0] != seen:
            with reading() as connection:
                found = {
                    table.name: [tuple(row) for row in connection.exec_driver_sql(_everything(table.name))]
                    for table in metadata.sorted_tables
                }
            self._seen = (seen, found)
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

    def before(self) -> dict[str, list[tuple[Any, ...]]]:
        """Return the rows of the beginning."""
        return self._rows

    def reset(self) -> None:
        """Put the rows and the pictures of the beginning back, if anything was written."""
        if not self.changed():
            return
        now = self.rows()
        other: list[Table] = []
        for table in metadata.sorted_tables:
            hangs_on = {key.column.table for key in table.foreign_keys}
            moved = now[table.name] != self._rows[table.name] or hangs_on.intersection(other)
            if moved and table is not households:
                other.append(table)
        known = [dict(zip(columns("households"), row, strict=True)) for row in self._rows["households"]]
        with writing() as connection:
            connection.execute(
                households.delete().where(households.c.id.not_in([row["id"] for row in known]))
            )
            for row in known:  # not deleted: whatever hangs on them would go, too
                connection.execute(update(households).where(households.c.id == row["id"]).values(**row))
            for table in reversed(other):
                connection.execute(table.delete())
            for table in other:
                names = columns(table.name)
                old = [dict(zip(names, row, strict=True)) for row in self._rows[table.name]]
                if old:
                    connection.execute(insert(table), old)
        for file in self._pictures() - self._files:
            (self.settings.data / "photos" / file).unlink()
        self._moved = self.moved()

    def _pictures(self) -> set[str]:
        folder = self.settings.data / "photos"
        return {file.relative_to(folder).as_posix() for file in folder.rglob("*") if file.is_file()}


@cache
def columns(table: str) -> tuple[str, ...]:
    """Return the names of a table's columns in the order in which ``TwoHouses.rows`` gives their values."""
    return tuple(metadata.tables[table].columns.keys())


@cache
def _everything(table: str) -> str:
    names = ", ".join(f'"{name}"' for name in columns(table))
    return f"SELECT {names} FROM {table}"
