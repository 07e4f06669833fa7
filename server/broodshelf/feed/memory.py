"""What each feed last said of its rounds, kept in the database."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import asdict

from sqlalchemy import Connection, delete, insert, select

from ..people.tables import feed_tokens
from .moves import Known, follow
from .render import Round
from .tables import feed_events


def read_known(connection: Connection, feed_id: str) -> list[Known]:
    """Return what a feed last said, in order of time."""
    f = feed_events.c
    rows = connection.execute(
        select(f.key, f.local_date, f.slot, f.at_ms, f.sequence, f.moved_ms)
        .where(f.feed_id == feed_id)
        .order_by(f.at_ms, f.local_date, f.slot)
    )
    return [Known(*row) for row in rows]


def remember(connection: Connection, feed_id: str, rounds: Sequence[Round], now_ms: int) -> list[Round]:
    """Follow the rounds from what was last said, write down what is said now, and return them.

    The feed's row is locked, so of two calendars that ask at once the second starts from what the first was told.
    What lies behind the feed's reach is forgotten.
    """
    connection.execute(select(feed_tokens.c.id).where(feed_tokens.c.id == feed_id).with_for_update())
    followed, known = follow(read_known(connection, feed_id), rounds, now_ms)
    connection.execute(delete(feed_events).where(feed_events.c.feed_id == feed_id))
    if known:
        connection.execute(insert(feed_events), [{"feed_id": feed_id, **asdict(each)} for each in known])
    return followed
