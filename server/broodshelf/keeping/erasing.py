"""Erasing a household with all that it has: rows, codes, counted tries, pictures, marks and what was ended of it."""

from __future__ import annotations

from typing import Any

from sqlalchemy import Connection, delete, or_, select

from ..errors import CannotKeep
from ..languages import told
from ..people.limits import buckets_of_phone
from ..people.tables import attempts, claim_codes, devices, pairings
from ..records.database import db, writing
from ..records.ended import erased_among
from ..records.epochs import Marks
from ..records.home.ending import note_ended
from ..records.home.port import Endings
from ..records.photo_files import PhotoFiles
from ..records.quick.many_rows import is_among
from ..records.tables import households
from ..records.whole import erase


def erase_household(
    household_id: str, photos: PhotoFiles, marks: Marks, endings: Endings, now_ms: int
) -> int:
    """Erase a household, the server running or not; return how many rows it had.

    That it was erased is noted outside the database first, so that an older backup does not bring it back. Raises
    ``CannotKeep`` for an unknown household; what an interrupted erasing left beside the database goes all the same.
    """
    with writing() as connection:
        if connection.dialect.name == "sqlite":  # nothing may be left in pages that are free now
            connection.exec_driver_sql("PRAGMA secure_delete=ON")
        query = select(households.c.id).where(households.c.id == household_id).with_for_update()
        known = connection.scalar(query) is not None
        if not known and household_id not in erased_among(endings.all_of(connection)):
            raise CannotKeep(told("household-unknown", id=household_id))
        note_ended(connection, "household", household_id, [household_id], now_ms)
        erased = _erase_before_the_door(connection, household_id) + erase(connection, household_id)
        endings.forget(connection, household_id)
    _empty_the_wal()
    photos.forget(household_id)
    marks.forget(household_id)
    return erased


def _empty_the_wal() -> None:
    """Let SQLite bring its log into the file and cut it off: the log still has pages as they were."""
    with db.engine.connect() as connection:
        if connection.dialect.name == "sqlite":
            driver: Any = connection.connection.dbapi_connection
            driver.execute("PRAGMA wal_checkpoint(TRUNCATE)")


def _erase_before_the_door(connection: Connection, household_id: str) -> int:
    """Delete the codes that let into a household or that it came from, and the tries of its phones."""
    phones = connection.scalars(select(devices.c.id).where(devices.c.household_id == household_id)).all()
    tried = [bucket for phone in phones for bucket in buckets_of_phone(phone)]
    c = claim_codes.c
    mine = (
        (claim_codes, or_(c.for_household == household_id, c.founded == household_id)),
        (pairings, pairings.c.for_household == household_id),
        (attempts, is_among(connection, attempts.c.bucket, tried)),
    )
    return sum(connection.execute(delete(table).where(which)).rowcount for table, which in mine)
