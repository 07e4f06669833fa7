"""What is wrong with the store, as opposed to what was to be stored: full, locked, away, damaged, not to be written.

Such an error is nobody's fault who asked, and the same may be asked again: 507 or 503, never 500.
"""

from __future__ import annotations

import errno
import sqlite3
from typing import Any, Final

from sqlalchemy.exc import DBAPIError
from sqlalchemy.exc import TimeoutError as NoConnectionFree

from ..errors import Problem, StoreFull, Unavailable
from ..languages import told

LOCKED_AGAIN_S: Final = 5
AWAY_AGAIN_S: Final = 30

_SQLITE: Final = {
    sqlite3.SQLITE_FULL: "full",
    sqlite3.SQLITE_BUSY: "locked",
    sqlite3.SQLITE_LOCKED: "locked",
    sqlite3.SQLITE_NOMEM: "locked",
    sqlite3.SQLITE_READONLY: "read_only",
    sqlite3.SQLITE_PERM: "read_only",
    sqlite3.SQLITE_CORRUPT: "damaged",
    sqlite3.SQLITE_NOTADB: "damaged",
    sqlite3.SQLITE_IOERR: "away",
    sqlite3.SQLITE_CANTOPEN: "away",
    sqlite3.SQLITE_PROTOCOL: "away",
}
"""By primary result code (sqlite.org/rescode.html)."""

_POSTGRESQL: Final = (
    ("53100", "full"),
    ("53", "locked"),
    ("55P03", "locked"),
    ("57014", "locked"),
    ("40", "locked"),
    ("25006", "read_only"),
    ("42P01", "damaged"),
    ("XX", "damaged"),
    ("58", "away"),
    ("57P", "away"),
    ("08", "away"),
)
"""By the beginning of the SQLSTATE (PostgreSQL's manual, appendix A): disk full, other resources, a lock, a statement
that was cancelled, a deadlock; no writing, a table that is missing, damage; failures of the system and the server."""

_FILES: Final = {
    errno.ENOSPC: "full",
    errno.EDQUOT: "full",
    errno.EROFS: "read_only",
    errno.EIO: "away",
}


def trouble_of(error: BaseException) -> Problem | None:
    """Return the problem that an error of the store is, or None if the store is not what failed.

    What led to the error counts, too: SQLite ends a transaction by itself when the disk is full, and whoever then
    goes back to a savepoint of it hears that there is none.
    """
    found: list[BaseException] = [error]
    for each in found:
        kind = _kind_of(each)
        if kind is not None:
            return trouble(kind)
        led_to_it = (each.__cause__, each.__context__)
        found += [one for one in led_to_it if one is not None and one not in found]
    return None


def is_damage(error: BaseException) -> bool:
    """Say whether an error is that the database is damaged, or was never begun."""
    return _kind_of(error) == "damaged"


def trouble(kind: str) -> Problem:
    """Return the problem of a kind: full, locked, away, read_only or damaged."""
    if kind == "full":
        return StoreFull(told("problem-disk-full"), code="disk_full")
    again_s = LOCKED_AGAIN_S if kind == "locked" else AWAY_AGAIN_S
    why = told(f"problem-database-{kind}".replace("_", "-"))
    return Unavailable(why, code=f"database_{kind}", retry_after_s=again_s)


def _kind_of(error: BaseException) -> str | None:
    if isinstance(error, NoConnectionFree):
        return "locked"
    if isinstance(error, DBAPIError):
        return _kind_of_database(error.orig, lost_connection=error.connection_invalidated)
    if isinstance(error, sqlite3.Error):
        return _kind_of_database(error, lost_connection=False)
    return _FILES.get(error.errno or 0) if isinstance(error, OSError) else None


def _kind_of_database(orig: Any, *, lost_connection: bool) -> str | None:
    if isinstance(orig, sqlite3.Error):
        if str(orig).startswith(
            ("no such table", "no such column")
        ):  # of which the code is that of any bad statement
            return "damaged"
        return _SQLITE.get((getattr(orig, "sqlite_errorcode", None) or 0) & 0xFF)
    state = getattr(orig, "sqlstate", None)
    if state is None:
        return "away" if lost_connection or type(orig).__name__ == "OperationalError" else None
    return next((kind for begin, kind in _POSTGRESQL if state.startswith(begin)), None)
