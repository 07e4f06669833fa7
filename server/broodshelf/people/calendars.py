"""The end of the secret addresses of calendars, which outlives a restore."""

from __future__ import annotations

from sqlalchemy import ColumnElement, Connection, delete, select

from ..records.home.ending import note_ended
from .tables import feed_tokens


def end_calendars(connection: Connection, household_id: str, which: ColumnElement[bool], now_ms: int) -> None:
    """End the addresses of a household's calendars for which this holds."""
    f = feed_tokens.c
    its = (f.household_id == household_id, which)
    ended = connection.scalars(select(f.token_hash).where(*its)).all()
    note_ended(connection, "feed", household_id, ended, now_ms)
    connection.execute(delete(feed_tokens).where(*its))
