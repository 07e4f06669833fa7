"""The tables of the feed: what each calendar was last told of each round. Instants in ms since 1970 UTC."""

from __future__ import annotations

from sqlalchemy import BigInteger, Column, ForeignKeyConstraint, Integer, String, Table

from ..records.database import metadata

feed_events = Table(
    "feed_events",
    metadata,
    Column("household_id", String(36), primary_key=True),
    Column("feed_id", String(36), primary_key=True),
    Column("key", String(140), primary_key=True),
    Column("local_date", String(10), nullable=False),
    Column("slot", String(120), nullable=False),
    Column("at_ms", BigInteger, nullable=False),
    Column("sequence", Integer, nullable=False),
    Column("moved_ms", BigInteger),
    ForeignKeyConstraint(
        ["household_id", "feed_id"], ["feed_tokens.household_id", "feed_tokens.id"], ondelete="CASCADE"
    ),
)
"""A round as a feed shows it: ``key`` makes its UID and stays when the round moves; ``sequence`` counts the moves."""
