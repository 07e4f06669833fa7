"""What each feed last said of its rounds, kept in the database."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import asdict

from sqlalchemy import Connection, delete, insert, select

from ..people.tables import feed_tokens
from .moves import Known, follow
from .render import Round
from .tables import feed_events
from .tokens import Feed


def read_known(connection: Connection, feed: Feed) -> list[Known]:
    """Return what a feed last said, in order of time."""
    f = feed_events.c
    rows = connection.execute(
        select(f.key, f.local_date, f.slot, f.at_ms, f.sequence, f.moved_ms)
        .where(f.household_id == feed.household_id, f.feed_id == feed.id)
        .order_by(f.at_ms, f.local_date, f.slot)
    )
    return [Known(*row) for row in rows]


def remember(connection: Connection, feed: Feed, rounds: Sequence[Round], now_ms: int) -> list[Round]:
    """Follow the rounds from what was last said, write down what is said now, and return them.

    The feed's row is locked, so of two calendars that ask at once the second starts from what the first was told.
    What lies behind the feed's reach is forgotten.
    """
    t, f = feed_tokens.c, feed_events.c
    mine = (t.household_id == feed.household_id, t.id == feed.id)
    connection.execute(select(t.id).where(*mine).with_for_update())
    followed, known = follow(read_known(connection, feed), rounds, now_ms)
    connection.execute(delete(feed_events).where(f.household_id == feed.household_id, f.feed_id == feed.id))
    if known:
        key = {"household_id": feed.household_id, "feed_id": feed.id}
        connection.execute(insert(feed_events), [{**key, **asdict(each)} for each in known])
    return followed
