"""Forgetting what was told and what went long ago, once a day and a portion a tick, so that no nudge waits for it."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Final

from sqlalchemy import ColumnElement, Table, and_, delete, select

from ..model.gauges import DAY_MS
from ..people import pairing, quotas
from ..people.households import forget_old_codes
from ..people.passes import ended_passes
from ..records.database import reading, writing
from ..records.purge import forget_refused, purge_gone, to_purge
from ..records.quick.many_rows import are_among
from ..records.store import lock_idle
from ..records.tables import households
from ..records.thinning import thin, whose_turn
from ..rounds.tables import occurrences
from ..sensing.intake import forget_old_readings
from .channels.push.subscriptions import forget_guests
from .tables import deliveries, nudger_state, nudges, put_row

KEPT_MS: Final = 90 * DAY_MS
"""How long nudges and closed occurrences are kept: three times as long as a late log can reach back."""
HOUSEHOLDS_A_TICK: Final = 50
ROWS_A_TICK: Final = 1000
"""Of each table."""


def tidy_some(now_ms: int) -> bool:
    """Go on with the day's tidying, if it is not done; say whether this was its end.

    Rows gone for over 400 days are purged, answers to what was refused over 90 days ago forgotten and once a month what
    only repeats thinned, some households a tick; then what was told over 90 days ago is deleted, and pairings and codes
    that ended a day ago.
    """
    with reading() as connection:
        rows = connection.execute(select(nudger_state.c.name, nudger_state.c.at_ms))
        state = {row.name: row.at_ms for row in rows}
        if "tidy" in state and 0 <= now_ms - state["tidy"] < DAY_MS:
            return False
        done = state.get("tidied", 0)
        query = select(households.c.id).order_by(households.c.id).offset(done).limit(HOUSEHOLDS_A_TICK)
        portion = connection.scalars(query).all()
        purgeable = to_purge(connection, portion, now_ms) if portion else []
    if portion:
        with writing() as connection:  # first, so that one that fails does not hold up those after it
            put_row(connection, nudger_state, {"name": "tidied"}, {"at_ms": done + len(portion)})
        _tidy_doors(portion, now_ms)
    if purgeable:
        with writing() as connection:
            for household_id in lock_idle(connection, purgeable):
                purge_gone(connection, household_id, now_ms)
    for household_id in whose_turn(portion, now_ms):
        with writing() as connection:
            for each in lock_idle(connection, [household_id]):
                thin(connection, each, now_ms)
    if len(portion) == HOUSEHOLDS_A_TICK or _forget(now_ms - KEPT_MS):
        return False
    with writing() as connection:
        pairing.forget_old(connection, now_ms)
        forget_old_codes(connection, now_ms)
        put_row(connection, nudger_state, {"name": "tidied"}, {"at_ms": 0})
        put_row(connection, nudger_state, {"name": "tidy"}, {"at_ms": now_ms})
    return True


def _tidy_doors(household_ids: Sequence[str], now_ms: int) -> None:
    """Forget what was refused long ago, old counts and readings, and where phones of ended passes listened."""
    with reading() as connection:  # looking for them blocks nobody
        ended = ended_passes(connection, household_ids, now_ms)
    with writing() as connection:
        forget_refused(connection, household_ids, now_ms - KEPT_MS)
        quotas.forget_old(connection, household_ids, now_ms)
        forget_old_readings(connection, household_ids, now_ms)
        for household_id, passes in ended.items():
            forget_guests(connection, household_id, passes)


def _forget(before_ms: int) -> bool:
    """Delete a portion of what was told before; say whether there may be more."""
    with reading() as connection:  # looking for them takes longer than deleting them, and blocks nobody
        old = {
            table: [
                (row.household_id, row.id)
                for row in connection.execute(
                    select(table.c.household_id, table.c.id).where(too_old(before_ms)).limit(ROWS_A_TICK)
                )
            ]
            for table, too_old in _TOO_OLD.items()
        }
    if any(old.values()):
        with writing() as connection:
            for table, keys in old.items():
                among = are_among(connection, (table.c.household_id, table.c.id), keys)
                connection.execute(delete(table).where(among, _TOO_OLD[table](before_ms)))
    return any(len(keys) == ROWS_A_TICK for keys in old.values())


_TOO_OLD: Final[dict[Table, Callable[[int], ColumnElement[bool]]]] = {
    nudges: lambda before_ms: nudges.c.made_ms < before_ms,
    deliveries: lambda before_ms: and_(deliveries.c.nudge_id.is_(None), deliveries.c.made_ms < before_ms),
    occurrences: lambda before_ms: and_(
        occurrences.c.at_ms < before_ms,
        occurrences.c.state.in_(("sent", "missed", "done")),
        occurrences.c.wake_ms.is_(None),
    ),
}
"""What may go of each table; the messages of a nudge go with it."""
