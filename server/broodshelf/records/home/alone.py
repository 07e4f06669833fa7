"""One at a time: what several servers of a database must not do at once, such as bringing its schema forward."""

from __future__ import annotations

import fcntl
import logging
import threading
from abc import ABC, abstractmethod
from collections.abc import Callable, Iterator
from contextlib import ExitStack, contextmanager
from pathlib import Path
from typing import Final

from flask import Flask
from sqlalchemy import Engine

from ...logs import say, say_failure
from ..database import db

START: Final = 0x62726F6F64
BROKERS: Final = START + 1
"""The numbers of the locks: of a start, and of whoever listens to the brokers of sensors. Any will do, if all servers
of a database take the same."""
ASK_S: Final = 3.0
TELL_S: Final = 5.0


@contextmanager
def alone(engine: Engine) -> Iterator[None]:
    """Wait until no other server of this database is in here. A server that dies lets go. A long wait is logged.

    On PostgreSQL it is a lock of a transaction, not of a session: poolers between us and it keep to that. On SQLite it
    is one of a file beside the database: a new file must not be two processes' first at once, and its own locks do
    not see to that (``PRAGMA journal_mode`` waits for nobody).
    """
    if engine.dialect.name != "postgresql":
        with Path(f"{engine.url.database}.start").open("a") as file:
            with _telling(f"file {file.name}"):
                fcntl.flock(file, fcntl.LOCK_EX)
            yield
        return
    with engine.begin() as connection:
        with _telling(f"advisory lock {START}"):
            connection.exec_driver_sql(f"SELECT pg_advisory_xact_lock({START})")
        yield


@contextmanager
def _telling(lock: str) -> Iterator[None]:
    """Say once what is waited for, if it takes more than some seconds: whoever looks sees no server and no reason."""

    def tell() -> None:
        say("waiting for another server of this database", logging.WARNING, lock=lock)

    timer = threading.Timer(TELL_S, tell)
    timer.daemon = True
    timer.start()
    try:
        yield
    finally:
        timer.cancel()


class Background(ABC):
    """A thread of this process that goes on until it is told to end; ``go_on`` looks at ``ended`` and waits by it."""

    def __init__(self, name: str) -> None:
        self.ended = threading.Event()
        self._thread = threading.Thread(target=self.go_on, name=name, daemon=True)

    def start(self) -> Callable[[], None]:
        """Begin; return what stops it."""
        self._thread.start()
        return self.stop

    def stop(self) -> None:
        """End; what is under way is waited for."""
        self.ended.set()
        self._thread.join()

    @abstractmethod
    def go_on(self) -> None:
        """Do what it is there for."""


class OnlyOne(Background):
    """Does something in one process of all that share a database: in the first that asks, in another when it ends.

    On PostgreSQL the lock is one of a session, over a connection of its own; on SQLite of a file in the data folder.
    """

    def __init__(self, app: Flask, data: Path, number: int, begin: Callable[[], Callable[[], None]]) -> None:
        self._app, self._file, self._number, self._begin = (
            app,
            data / f"only-one.{number - START}",
            number,
            begin,
        )
        super().__init__(f"only one {number - START}")

    def go_on(self) -> None:
        """Ask for the turn until it comes, and keep it until the end."""
        with self._app.app_context():
            while not self.ended.is_set():
                try:
                    self._try_once()
                except Exception as error:  # noqa: BLE001 - a database that is away comes back
                    say_failure("what only one process does was given up here", error)
                self.ended.wait(ASK_S)

    def _try_once(self) -> None:
        with ExitStack() as held:
            if db.engine.dialect.name != "postgresql":
                file = held.enter_context(self._file.open("w"))
                try:
                    fcntl.flock(file, fcntl.LOCK_EX | fcntl.LOCK_NB)
                except BlockingIOError:
                    return
                held.callback(self._begin())
                self.ended.wait()
                return
            connection = held.enter_context(
                db.engine.connect().execution_options(isolation_level="AUTOCOMMIT")
            )
            if not connection.exec_driver_sql(f"SELECT pg_try_advisory_lock({self._number})").scalar():
                return
            held.callback(
                connection.invalidate
            )  # a session that ends gives its lock back, whatever became of it
            held.callback(self._begin())
            while not self.ended.wait(ASK_S):
                connection.exec_driver_sql("SELECT 1")
