"""Thinning what only repeats: never what a person logged, and only when no phone can ask for it any more.

Of a record that was never changed the line of its history says what the record itself says; after 400 days the line
goes, and the history is told from the record (``history``). Every line of a record that was changed stays, and so does
every line with a value that lost. Answers to operations go after 400 days: no session lasts longer, and an operation
that comes after all is judged anew, by the time at which it was made (docs/sync.md).
"""

from __future__ import annotations

import zlib
from collections.abc import Iterable
from typing import Final

from sqlalchemy import ColumnElement, Connection, and_, delete, exists, select

from ..model.gauges import DAY_MS
from .purge import KEPT_MS
from .tables import operations, records, revisions

EVERY_DAYS: Final = 30
"""How often a household has its turn; all of its history is looked at, so not every day."""
MOST_ROWS: Final = 20_000
"""Of each table and turn, so that nobody waits long for the lock."""


def whose_turn(household_ids: Iterable[str], now_ms: int) -> list[str]:
    """Return those of these households that are thinned today (UTC)."""
    today = now_ms // DAY_MS % EVERY_DAYS
    return [each for each in household_ids if zlib.crc32(each.encode()) % EVERY_DAYS == today]


def thin(connection: Connection, household_id: str, now_ms: int) -> int:
    """Delete what only repeats of a household; return how many rows went. The caller holds the household's lock."""
    before_ms = now_ms - KEPT_MS
    v, o = revisions.c, operations.c
    lines = select(v.rev).where(v.household_id == household_id, v.at_ms < before_ms, _says_the_record())
    answers = select(o.op_id).where(o.household_id == household_id, o.received_ms < before_ms)
    gone = 0
    for table, column, query in ((revisions, v.rev, lines), (operations, o.op_id, answers)):
        mine = table.c.household_id == household_id
        statement = delete(table).where(mine, column.in_(query.limit(MOST_ROWS)))
        gone += connection.execute(statement).rowcount
    return gone


def _says_the_record() -> ColumnElement[bool]:
    """Return the condition that a line is the only one of a record that is there as it was made."""
    other, v, r = revisions.alias("other"), revisions.c, records.c
    same = and_(other.c.household_id == v.household_id, other.c.record_id == v.record_id)
    another = exists().where(same, (other.c.rev != v.rev) | (other.c.part != v.part))
    unchanged = exists().where(
        r.household_id == v.household_id, r.id == v.record_id, r.rev == v.rev, r.gone.is_(False)
    )
    return and_(v.lost == "{}", unchanged, ~another)
