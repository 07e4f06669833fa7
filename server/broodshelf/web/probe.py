"""Trying whether the store still takes what it is given, for ``/healthz``: a small real write, now and then."""

from __future__ import annotations

import logging
import os
import tempfile
import time
from collections.abc import Iterable
from pathlib import Path
from threading import Lock
from typing import Final

from sqlalchemy import Table, literal, select

from ..errors import Problem
from ..logs import say
from ..nudges.tables import nudger_state, put_row
from ..records.database import db, metadata, writing_soon
from ..records.trouble import trouble, trouble_of

EVERY_S: Final = 10.0
WITHIN_MS: Final = 2_000
"""Longer than any write of ours; who holds the database for longer is in everybody's way."""
FILE_BYTES: Final = 64 * 1024
"""What is written to the data folder: more than what a file may still take on a disk without free blocks."""


class Probe:
    """What the last try found. Whoever asks while one is under way, or soon after it, hears that."""

    def __init__(self, data: Path, every_s: float = EVERY_S) -> None:
        self._data, self._every_s = data, every_s
        self._trying = Lock()
        self._found: Problem | None = None
        self._next_s = 0.0
        self._file = _identity()

    def look(self, now_ms: int) -> Problem | None:
        """Return what keeps the store from taking anything, or None. Needs an application context."""
        if time.monotonic() >= self._next_s and self._trying.acquire(blocking=False):
            try:
                found = self._try(now_ms)
                if (found is None) != (self._found is None):
                    level = logging.INFO if found is None else logging.ERROR
                    say("the store was tried", level, found="ok" if found is None else found.problem_code)
                self._found = found
                self._next_s = time.monotonic() + self._every_s
            finally:
                self._trying.release()
        return self._found

    def _try(self, now_ms: int) -> Problem | None:
        try:
            if _identity() != self._file:
                return trouble("damaged")  # what is written goes to a file that nobody finds again
            _write_a_file(self._data)
            with writing_soon(WITHIN_MS) as connection:
                put_row(connection, nudger_state, {"name": "probe"}, {"at_ms": now_ms})
                for table in _tables():
                    connection.execute(select(literal(1)).select_from(table).limit(1)).all()
        except Problem as problem:
            return problem
        except Exception as error:
            found = trouble_of(error)
            if found is None:
                raise
            return found
        return None


def _tables() -> Iterable[Table]:
    return metadata.sorted_tables


def _identity() -> tuple[int, int] | None:
    """Return what tells SQLite's file from another of its name; None without one."""
    path = db.engine.url.database if db.engine.dialect.name == "sqlite" else None
    try:
        found = os.stat(path) if path else None  # noqa: PTH116 - a path of an engine's address is a text
    except FileNotFoundError:
        return None
    return None if found is None else (found.st_dev, found.st_ino)


def _write_a_file(folder: Path) -> None:
    with tempfile.NamedTemporaryFile(dir=folder, prefix=".probe-") as scratch:
        scratch.write(os.urandom(FILE_BYTES))  # a file system may store zeros without a block
        scratch.flush()
        os.fsync(scratch.fileno())
