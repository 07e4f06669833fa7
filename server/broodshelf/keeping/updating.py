"""Bringing a database to the present schema with a way back: a backup first, then the migrations, then a look.

``broodshelf migrate`` does it, and so does a start on SQLite, which one server alone has. On PostgreSQL a start only
migrates: another machine may serve the database meanwhile, and the backup is its operator's.
"""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path
from typing import Final

from alembic.runtime.migration import MigrationContext
from alembic.script import ScriptDirectory
from sqlalchemy import Connection, Engine, text

from .. import migrations
from ..errors import CannotKeep
from ..languages import told
from ..records.home.alone import alone
from ..settings import Settings
from .backup import backup, restore
from .scratch import engine_of

KEPT_TABLES: Final = ("households", "records", "revisions", "operations", "devices")
"""What no migration may lose a row of; each has been there since the first version."""


@dataclass(frozen=True, slots=True)
class Updated:
    """From which schema to which, and where the backup of before lies; ``backup`` is None where nothing was to do."""

    before: str | None
    after: str
    backup: Path | None


def update(settings: Settings, now_ms: int) -> Updated:
    """Back up, migrate and look, the server stopped. Where anything fails the backup is put back.

    Raises ``CannotKeep`` saying so; then the database is as it was.
    """
    with engine_of(settings.database_url) as engine:
        head = ScriptDirectory.from_config(migrations.config(engine)).get_current_head() or ""
        before = _schema(engine)
        if before == head:
            return Updated(before, head, None)
        if before is None:
            migrations.upgrade(engine)
            return Updated(None, head, None)
        counted = _counts(engine)
    kept = settings.data / f"before-update-{now_ms}.tar.gz"
    backup(settings, kept)
    try:
        with engine_of(settings.database_url) as engine:
            migrations.upgrade(engine)
            _refuse_loss([*_lost(counted, _counts(engine)), *_broken_references(engine)])
    except Exception as error:
        if counted["households"]:  # a backup without any is not put back, and nothing is in it
            restore(settings, kept)
        raise CannotKeep(told("update-failed", path=kept, before=before, error=_why(error))) from error
    return Updated(before, head, kept)


def update_before_a_start(settings: Settings, now_ms: int) -> Path | None:
    """Do so where a start would migrate a shelf on SQLite; return where the backup lies, None where nothing was to do.

    A file that is missing or empty is left to the start, which knows whether a shelf was lost.
    """
    if settings.sqlite_file is None or not settings.sqlite_file.is_file():
        return None
    with engine_of(settings.database_url) as engine, alone(engine):
        with engine.connect() as connection, connection.begin():
            is_old = _schema_of(connection) is not None and migrations.stands(connection) == "behind"
        engine.dispose()  # a backup that is put back wants the file to itself
        return update(settings, now_ms).backup if is_old else None


def _refuse_loss(found: list[str]) -> None:
    if found:
        raise CannotKeep(told("update-lost", what=", ".join(found)))


def _schema(engine: Engine) -> str | None:
    with engine.connect() as connection, connection.begin():
        return _schema_of(connection)


def _schema_of(connection: Connection) -> str | None:
    return MigrationContext.configure(connection).get_current_revision()


def _counts(engine: Engine) -> dict[str, int]:
    with engine.connect() as connection, connection.begin():
        return {name: _count(connection, name) for name in KEPT_TABLES}


def _count(connection: Connection, table: str) -> int:
    return int(connection.scalar(text(f"SELECT count(*) FROM {table}")) or 0)  # noqa: S608 - our own names


def _lost(before: dict[str, int], after: dict[str, int]) -> list[str]:
    return [f"{name} {before[name]} > {after[name]}" for name in before if after[name] < before[name]]


def _broken_references(engine: Engine) -> list[str]:
    """Name the tables with a row that refers to none; PostgreSQL never lets one be."""
    if engine.dialect.name != "sqlite":
        return []
    with engine.connect() as connection, connection.begin():
        rows = connection.exec_driver_sql("PRAGMA foreign_key_check").all()
    return sorted({str(row[0]) for row in rows})


def _why(error: Exception) -> str:
    return str(error) if isinstance(error, CannotKeep) else type(error).__name__
