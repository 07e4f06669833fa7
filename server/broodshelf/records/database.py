"""The database: engine, short transactions and the one metadata that every room's tables hang on.

SQLite is the default, PostgreSQL the engine for many households. A write transaction takes its lock at its
first statement (``BEGIN IMMEDIATE`` on SQLite), because a read that later upgrades to a write fails at once
on SQLite however long the timeout is. Each transaction knows whose rows it may touch (``apart``).
"""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from contextlib import contextmanager
from threading import Lock
from typing import Any

from flask import Flask, current_app
from flask_sqlalchemy import SQLAlchemy
from sqlalchemy import Connection, Engine, MetaData, event
from sqlalchemy.exc import DataError, IntegrityError, NotSupportedError, ProgrammingError, SQLAlchemyError

from ..errors import BroodshelfError
from .apart import hold, secure_when_made
from .trouble import trouble, trouble_of

NAMING = {
    "ix": "ix_%(table_name)s_%(column_0_N_name)s",
    "uq": "uq_%(table_name)s_%(column_0_N_name)s",
    "fk": "fk_%(table_name)s_%(column_0_N_name)s",
    "pk": "pk_%(table_name)s",
}

metadata = MetaData(naming_convention=NAMING)
"""All tables of all rooms; alembic compares the database against it."""

secure_when_made(metadata)

db = SQLAlchemy(metadata=metadata)
"""Binds the engine to an app; the tables themselves are SQLAlchemy Core."""

SQLITE_BUSY_TIMEOUT_MS = 10_000
TURN_S = 20.0
"""For the turn among a process's writers: twice what the one whose turn it is waits for a lock."""
_TURN = "broodshelf.turn"


def prepare(app: Flask) -> None:
    """Attach the engine to ``app`` and set what SQLite needs on every connection."""
    app.config["SQLALCHEMY_ENGINE_OPTIONS"] = {
        **app.config.get("SQLALCHEMY_ENGINE_OPTIONS", {}),
        "hide_parameters": True,  # an error must not carry what people wrote, or the hash of a token, into a log
        "isolation_level": "AUTOCOMMIT",  # the driver's: we say BEGIN ourselves
    }
    db.init_app(app)
    app.extensions[_TURN] = Lock()
    with app.app_context():
        if db.engine.dialect.name == "sqlite":
            _prepare_sqlite(db.engine)
        else:
            event.listen(db.engine, "begin", _begin_on_postgresql)


@contextmanager
def opened(url: str) -> Iterator[Engine]:
    """Open a database for a command that makes no app, and let go of it at the end."""
    app = Flask("command")
    app.config["SQLALCHEMY_DATABASE_URI"] = url
    prepare(app)
    with app.app_context():
        try:
            yield db.engine
        finally:
            db.engine.dispose()


def _prepare_sqlite(engine: Engine) -> None:
    @event.listens_for(engine, "connect")
    def _connect(connection: sqlite3.Connection, _record: Any) -> None:
        cursor = connection.cursor()
        for pragma in (
            "journal_mode=WAL",
            "synchronous=FULL",  # an acknowledged log must survive a power cut
            f"busy_timeout={SQLITE_BUSY_TIMEOUT_MS}",
            "foreign_keys=ON",
            "cache_size=-16384",  # 16 MiB: the indexes of a long log stay at hand
        ):
            cursor.execute(f"PRAGMA {pragma}")
        cursor.close()

    @event.listens_for(engine, "begin")
    def _begin(connection: Connection) -> None:
        immediate = connection.get_execution_options().get("writes", False)
        connection.exec_driver_sql("BEGIN IMMEDIATE" if immediate else "BEGIN")
        hold(connection)


def _begin_on_postgresql(connection: Connection) -> None:
    """Begin, say whose rows it is about and what else was asked for, in one round trip."""
    options = connection.get_execution_options()
    if options.get("isolation_level") == "AUTOCOMMIT":
        return  # asked for no transaction: it touches nobody's rows
    connection.exec_driver_sql("; ".join(("BEGIN", hold(connection), *options.get("on_postgresql", ()))))


@contextmanager
def writing(*on_postgresql: str) -> Iterator[Connection]:
    """Open a write transaction; commit when the block ends, roll back when it raises. Do not nest them.

    On SQLite the threads of a process take turns on a lock of their own: SQLite lets waiting writers ask again
    after a while, and one that asks at the wrong moments may never get its turn beside a busy one.
    ``on_postgresql``: statements that begin the transaction there.
    """
    with (
        _turn(TURN_S),
        db.engine.connect().execution_options(writes=True, on_postgresql=on_postgresql) as connection,
        connection.begin(),
    ):
        yield connection


@contextmanager
def writing_lightly() -> Iterator[Connection]:
    """Open a write transaction as ``writing`` does, for what a power cut may take: PostgreSQL does not wait for the
    disk. A process that is killed loses nothing by it.
    """
    with writing("SET LOCAL synchronous_commit = off") as connection:
        yield connection


@contextmanager
def writing_soon(within_ms: int) -> Iterator[Connection]:
    """Open a write transaction as ``writing`` does, but wait for nobody longer than ``within_ms``."""
    hurried = (f"SET LOCAL lock_timeout = {int(within_ms)}",)
    with (
        _turn(within_ms / 1000),
        db.engine.connect().execution_options(writes=True, on_postgresql=hurried) as connection,
        _hurry(connection, within_ms),
        connection.begin(),
    ):
        yield connection


@contextmanager
def _hurry(connection: Connection, within_ms: int) -> Iterator[None]:
    """Let SQLite wait for a lock no longer than this; said to the driver, because the engine would begin first."""
    driver: Any = connection.connection.dbapi_connection
    if connection.dialect.name != "sqlite":
        yield
        return
    driver.execute(f"PRAGMA busy_timeout={int(within_ms)}")
    try:
        yield
    finally:
        driver.execute(f"PRAGMA busy_timeout={SQLITE_BUSY_TIMEOUT_MS}")


def is_about_one_row(error: Exception) -> bool:
    """Say whether an error comes from what was to be stored or reckoned, so that trying the same again is no use.

    A database that is away, locked, full or damaged is another matter: then the whole request fails and is sent again.
    """
    if trouble_of(error) is not None:
        return False
    if isinstance(error, SQLAlchemyError):
        return isinstance(error, (DataError, IntegrityError, NotSupportedError, ProgrammingError))
    return not isinstance(error, (OSError, MemoryError, BroodshelfError))


@contextmanager
def _turn(within_s: float) -> Iterator[None]:
    if db.engine.dialect.name != "sqlite":
        yield
        return
    lock: Lock = current_app.extensions[_TURN]
    if not lock.acquire(timeout=within_s):
        raise trouble("locked")
    try:
        yield
    finally:
        lock.release()


@contextmanager
def reading() -> Iterator[Connection]:
    """Open a read transaction: one consistent snapshot."""
    with db.engine.connect() as connection, connection.begin():
        yield connection
