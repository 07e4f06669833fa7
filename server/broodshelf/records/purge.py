"""Forgetting gone rows after 400 days, all but their ids. A phone whose cursor is older gets everything anew."""

from __future__ import annotations

from collections.abc import Iterable

from sqlalchemy import ColumnElement, Connection, and_, delete, func, insert, select, update

from ..model.gauges import DAY_MS
from .home.ending import note_ended
from .quick.many_rows import is_among
from .tables import households, operations, purged, records, revisions

KEPT_MS = 400 * DAY_MS
"""How long a gone row is kept: longer than any phone stays away (docs/sync.md)."""


def to_purge(connection: Connection, household_ids: Iterable[str], now_ms: int) -> list[str]:
    """Return those of these households that have anything for ``purge_gone``."""
    among = is_among(connection, records.c.household_id, household_ids)
    return list(
        connection.scalars(select(records.c.household_id).where(among, _long_gone(now_ms)).distinct())
    )


def purge_gone(connection: Connection, household_id: str, now_ms: int) -> int:
    """Delete the rows that went more than 400 days ago, remember up to which revision; return how many.

    The caller holds the household's lock.
    """
    old = connection.execute(
        select(records.c.id, records.c.rev).where(records.c.household_id == household_id, _long_gone(now_ms))
    ).all()
    if not old:
        return 0
    ids = [row.id for row in old]
    note_ended(connection, "record", household_id, ids, now_ms)
    connection.execute(insert(purged), [{"household_id": household_id, "record_id": i} for i in ids])
    for start in range(0, len(ids), 500):
        part = ids[start : start + 500]
        connection.execute(
            delete(records).where(records.c.household_id == household_id, records.c.id.in_(part))
        )
        connection.execute(
            delete(revisions).where(revisions.c.household_id == household_id, revisions.c.record_id.in_(part))
        )
    last_rev = max(row.rev for row in old)
    connection.execute(
        update(households)
        .where(households.c.id == household_id, households.c.purged_rev < last_rev)
        .values(purged_rev=last_rev)
    )
    return len(ids)


def forget_refused(connection: Connection, household_ids: Iterable[str], before_ms: int) -> None:
    """Delete these households' answers to operations refused before; one that comes again is judged anew."""
    o = operations.c
    among = is_among(connection, o.household_id, household_ids)
    connection.execute(delete(operations).where(among, o.verdict == "rejected", o.received_ms < before_ms))


def _long_gone(now_ms: int) -> ColumnElement[bool]:
    """Return the condition that a record is gone and its last change is older than gone rows are kept."""
    last_change = (
        select(func.max(revisions.c.at_ms))
        .where(revisions.c.household_id == records.c.household_id, revisions.c.record_id == records.c.id)
        .scalar_subquery()
    )
    return and_(records.c.gone.is_(True), last_change < now_ms - KEPT_MS)


def purged_among(connection: Connection, household_id: str, ids: Iterable[str]) -> frozenset[str]:
    """Return which of these records were purged."""
    query = select(purged.c.record_id).where(
        purged.c.household_id == household_id, is_among(connection, purged.c.record_id, ids)
    )
    return frozenset(connection.scalars(query))
