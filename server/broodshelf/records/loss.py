"""A database that is missing or empty beside marks that know better: a loss to be told, not a new shelf."""

from __future__ import annotations

from pathlib import Path

from sqlalchemy import Connection, select

from ..errors import DatabaseLost
from ..languages import told
from .epochs import Marks
from .tables import households


def refuse_lost_file(database: Path | None, marks: Marks) -> None:
    """Raise ``DatabaseLost`` where SQLite would make a new file in the place of one that marks know of.

    ``database``: SQLite's file, None for another engine.
    """
    known = marks.households()
    if database is None or not known or (database.is_file() and database.stat().st_size):
        return
    how = "database-empty" if database.is_file() else "database-gone"
    raise DatabaseLost(told(how, path=database, n=known))


def refuse_lost_households(connection: Connection, marks: Marks) -> None:
    """Raise ``DatabaseLost`` for a database without any household beside marks that know some."""
    known = marks.households()
    if known and connection.scalar(select(households.c.id).limit(1)) is None:
        raise DatabaseLost(told("database-without-household", n=known))
