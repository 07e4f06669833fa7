"""Forgetting what was told and what went long ago, once a day."""

from __future__ import annotations

from typing import Final

from sqlalchemy import delete, select

from ..records.database import reading, writing
from ..records.purge import purge_gone
from ..records.store import Ledger
from ..records.tables import households
from ..rounds.tables import occurrences
from .tables import deliveries, nudger_state, nudges, put_row

DAY_MS: Final = 86_400_000
KEPT_MS: Final = 90 * DAY_MS
"""How long nudges and closed occurrences are kept: three times as long as a late log can reach back."""


def tidy_when_due(now_ms: int) -> bool:
    """Delete what was told over 90 days ago and rows gone for over 400, unless the last day saw it done; say which."""
    with reading() as connection:
        last_ms = connection.scalar(select(nudger_state.c.at_ms).where(nudger_state.c.name == "tidy"))
    if last_ms is not None and 0 <= now_ms - last_ms < DAY_MS:
        return False
    before_ms = now_ms - KEPT_MS
    with writing() as connection:
        put_row(connection, nudger_state, {"name": "tidy"}, {"at_ms": now_ms})
        connection.execute(delete(nudges).where(nudges.c.made_ms < before_ms))
        connection.execute(
            delete(deliveries).where(deliveries.c.nudge_id.is_(None), deliveries.c.made_ms < before_ms)
        )
        connection.execute(
            delete(occurrences).where(
                occurrences.c.at_ms < before_ms,
                occurrences.c.state.in_(("sent", "missed", "done")),
                occurrences.c.wake_ms.is_(None),
            )
        )
        ids = connection.scalars(select(households.c.id)).all()
    for household_id in ids:
        with writing() as connection:
            Ledger(connection, household_id)  # holds the household's lock, as every change of it does
            purge_gone(connection, household_id, now_ms)
    return True
