"""Noticing that a PostgreSQL database was put back, by whatever means, without a file beside it.

A dump that is loaded makes its tables anew, a copy in another place is another system or another database, and a
recovery to an earlier point begins a new timeline. So the four numbers of ``identity`` change, and the row that
remembers them comes out of the backup as it was then. What none of these tells (a disk that was set back under the
whole database) each machine's own marks tell it (``records.epochs``).
"""

from __future__ import annotations

from typing import Final

from sqlalchemy import Connection, select

from ..epochs import Marks, notice_restores, start_epoch
from ..tables import households
from .shared import put_note
from .tables import server_notes

NAME: Final = "database"
_MAY_ASK: Final = (
    "SELECT has_function_privilege('pg_control_system()', 'execute')"
    " AND has_function_privilege('pg_control_checkpoint()', 'execute')"
)
_HERE: Final = (
    "SELECT (SELECT oid FROM pg_database WHERE datname = current_database())::text"
    " || '/' || to_regclass('households')::oid::text"
)
_SYSTEM: Final = (
    "SELECT system_identifier::text || '/' || timeline_id::text"
    " FROM pg_control_system(), pg_control_checkpoint()"
)


def identity(connection: Connection) -> str:
    """Return what tells this database from what is put in its place; "" for a database that does not say."""
    here = connection.exec_driver_sql(_HERE).scalar()
    asked = connection.exec_driver_sql(_MAY_ASK).scalar()
    system = connection.exec_driver_sql(_SYSTEM).scalar() if asked else "?"
    return f"{system}/{here}" if here else ""


def notice(connection: Connection, marks: Marks, now_ms: int) -> list[str]:
    """Give new epochs where a database was put back; return the ids of their households.

    Every household, where the database is not the one that a server last saw; else those that stand behind this
    machine's marks. Of several servers the first to get here does it.
    """
    if connection.dialect.name == "postgresql":
        here = identity(connection)
        put_note(connection, NAME, here, anew=False)
        row = select(server_notes.c.text).where(server_notes.c.name == NAME).with_for_update()
        if connection.scalar(row) != here:
            put_note(connection, NAME, here)
            found = connection.scalars(select(households.c.id)).all()
            for household_id in found:
                start_epoch(connection, marks, household_id, now_ms)
            return list(found)
    return notice_restores(connection, marks, now_ms)
