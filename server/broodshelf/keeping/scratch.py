"""A backup opened beside the server's database: a file of SQLite at the present schema, whatever made the backup.

A dump of PostgreSQL is read line by line into a file of its own schema; then the migrations do the rest, as they would
for the server.
"""

from __future__ import annotations

import re
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any, Final

from alembic import command
from flask import Flask
from sqlalchemy import Connection, Engine, MetaData, Table, insert
from sqlalchemy.types import Boolean, LargeBinary, TypeEngine

from .. import migrations
from ..errors import CannotKeep
from ..languages import told
from ..records import database
from .backup import FORMAT, unpack
from .dumps import check_database, require_households, run

_COPY: Final = re.compile(r'COPY public\.(?P<table>"?\w+"?) \((?P<columns>[^)]*)\) FROM stdin;\n')
_END: Final = "\\.\n"
_ESCAPED: Final = re.compile(r"\\([0-7]{1,3}|x[0-9A-Fa-f]{1,2}|.)")
_MEANT: Final = {"b": "\b", "f": "\f", "n": "\n", "r": "\r", "t": "\t", "v": "\v"}
PORTION: Final = 500


@contextmanager
def opened_backup(source: Path, beside: Path) -> Iterator[tuple[Connection, Path]]:
    """Open a backup to be read; yield a connection and the folder of its unpacked files.

    ``beside``: a folder on whose disk there is room. Raises ``CannotKeep`` for what is no whole backup.
    """
    with tempfile.TemporaryDirectory(dir=beside) as scratch:
        folder = Path(scratch)
        manifest = unpack(source, folder)
        engine = manifest.get("engine")
        if manifest.get("format") != FORMAT or engine not in ("sqlite", "postgresql"):
            raise CannotKeep(told("backup-unknown-format", path=source))
        dumped = folder / "database"
        require_households(check_database(dumped, engine))
        if engine == "postgresql":
            dumped = _to_sqlite(dumped, folder / "read")
        with engine_of(f"sqlite:///{dumped}") as opened:
            migrations.upgrade(opened)
            with opened.connect() as connection, connection.begin():
                yield connection, folder


@contextmanager
def engine_of(url: str) -> Iterator[Engine]:
    """Open a database as the server does, and let go of it at the end."""
    app = Flask("beside")
    app.config["SQLALCHEMY_DATABASE_URI"] = url
    database.prepare(app)
    with app.app_context():
        engine = database.db.engine
    try:
        yield engine
    finally:
        engine.dispose()


def _to_sqlite(dumped: Path, made: Path) -> Path:
    """Read a dump of PostgreSQL into a file of SQLite at the dump's own schema; return it."""
    script = made.with_name("script")
    run("pg_restore", "--data-only", f"--file={script}", str(dumped))
    revision = next((row["version_num"] for table, row in _rows(script) if table == "alembic_version"), None)
    if revision is None:
        raise CannotKeep(told("backup-none", path=dumped))
    with engine_of(f"sqlite:///{made}") as engine:
        command.upgrade(migrations.config(engine), revision)
        with engine.connect().execution_options(writes=True) as connection:
            driver: Any = connection.connection.dbapi_connection
            driver.execute(
                "PRAGMA foreign_keys=OFF"
            )  # said before a transaction begins; a dump has its own order
            tables = MetaData()
            tables.reflect(connection)
            _fill(connection, tables, script)
            connection.commit()
    return made


def _fill(connection: Connection, tables: MetaData, script: Path) -> None:
    waiting: list[dict[str, Any]] = []
    at = ""
    for name, row in _rows(script):
        if name == "alembic_version":
            continue
        if waiting and (name != at or len(waiting) == PORTION):
            connection.execute(insert(tables.tables[at]), waiting)
            waiting = []
        at = name
        waiting.append(_typed(tables.tables[name], row))
    if waiting:
        connection.execute(insert(tables.tables[at]), waiting)


def _typed(table: Table, row: dict[str, str | None]) -> dict[str, Any]:
    """Return a row as SQLite keeps it; numbers it makes of texts by itself, by the type of their column."""
    return {name: _of_type(table.c[name].type, value) for name, value in row.items()}


def _of_type(kind: TypeEngine[Any], value: str | None) -> Any:
    if value is None:
        return None
    if isinstance(kind, Boolean):
        return value == "t"
    return bytes.fromhex(value.removeprefix("\\x")) if isinstance(kind, LargeBinary) else value


def _rows(script: Path) -> Iterator[tuple[str, dict[str, str | None]]]:
    """Yield the rows that a script copies, each with its table (https://www.postgresql.org/docs/current/sql-copy.html)."""
    table = ""
    columns: list[str] = []
    with script.open(encoding="utf-8", newline="\n") as lines:
        for line in lines:
            if columns:
                if line == _END:
                    columns = []
                else:
                    cells = line.removesuffix("\n").split("\t")
                    yield table, dict(zip(columns, map(_cell, cells), strict=True))
            elif begins := _COPY.fullmatch(line):
                table = begins["table"].strip('"')
                columns = [name.strip().strip('"') for name in begins["columns"].split(",")]


def _cell(text: str) -> str | None:
    if text == "\\N":
        return None
    return _ESCAPED.sub(_unescaped, text) if "\\" in text else text


def _unescaped(match: re.Match[str]) -> str:
    meant = match[1]
    if meant[0] in "01234567":
        return chr(int(meant, 8))
    if meant[0] == "x" and len(meant) > 1:
        return chr(int(meant[1:], 16))
    return _MEANT.get(meant, meant)
