"""Whether the database is sound and when it was last backed up: remembered outside of it, told to the keepers.

The nudger looks once a day. PostgreSQL's pages have checksums of their own where its owner wants them; there the look
is that every row of the records can be read.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any, Final

from sqlalchemy import Connection, func, select
from sqlalchemy.exc import SQLAlchemyError

from ..model.gauges import DAY_MS
from .database import reading
from .home.port import Notes
from .tables import records
from .trouble import trouble_of

WEEK_MS: Final = 7 * DAY_MS
PATIENCE_DAYS: Final = 30
"""After how many days a backup is old, unless the household says otherwise: phones give back what is younger."""


@dataclass(frozen=True, slots=True)
class Soundness:
    """What is remembered: ``backup_ms``, ``looked_ms`` and ``damage`` (in words); instants in ms since 1970 UTC."""

    notes: Notes

    def is_due(self, now_ms: int) -> bool:
        """Say whether a day has passed since the last look."""
        looked_ms = self.notes.read().get("looked_ms")
        return not isinstance(looked_ms, int) or not 0 <= now_ms - looked_ms < DAY_MS

    def look(self, now_ms: int) -> str | None:
        """Look through the database; remember and return what is wrong with it, None if it is sound."""
        damage = find_damage()
        self.notes.note(looked_ms=now_ms, damage=damage)
        return damage

    def told(
        self, connection: Connection, patience_days: Callable[[], float | None], now_ms: int
    ) -> dict[str, Any] | None:
        """Return what a keeper should know now, or None: a damaged database always, an old backup a day in every week.

        ``patience_days`` is only asked where a backup was made: it costs a read of the household.
        A server that never made a backup is backed up in another way, or its owner wants none: nothing is told.
        """
        known = self.notes.read(connection)
        if known.get("damage"):
            return {"code": "database_damaged"}
        backup_ms = known.get("backup_ms")
        if not isinstance(backup_ms, int):
            return None
        said = patience_days()
        patience = PATIENCE_DAYS if said is None else said
        if not patience:
            return None
        late_ms = now_ms - backup_ms - patience * DAY_MS
        if late_ms < 0 or late_ms % WEEK_MS >= DAY_MS:
            return None
        return {"code": "backup_old", "backup_ms": backup_ms}


def find_damage() -> str | None:
    """Return what is wrong with the database, in its own words, or None. Raises when it cannot be asked at all."""
    try:
        with reading() as connection:
            if connection.dialect.name == "sqlite":
                said = str(connection.exec_driver_sql("PRAGMA quick_check(1)").scalar())
                return None if said == "ok" else said
            connection.execute(select(func.sum(func.length(records.c.fields)))).scalar()
    except SQLAlchemyError as error:
        trouble = trouble_of(error)
        if trouble is None or trouble.problem_code != "database_damaged":
            raise
        return str(getattr(error, "orig", error))
    return None
