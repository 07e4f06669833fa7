"""The tables of what lies in a data folder with SQLite (``port``). On SQLite they stay empty."""

from __future__ import annotations

from sqlalchemy import BigInteger, Column, ForeignKey, Index, Integer, LargeBinary, String, Table, Text

from ..database import metadata

pictures = Table(
    "pictures",
    metadata,
    Column("household_id", ForeignKey("households.id", ondelete="CASCADE"), primary_key=True),
    Column("sha256", String(64), primary_key=True),
    Column("size_bytes", Integer, nullable=False),
    Column("came_ms", BigInteger, nullable=False),
    Column("drawn", LargeBinary, nullable=False),
    Index("ix_pictures_came_ms", "came_ms"),
)
"""The pictures as they were drawn. JPEG does not get smaller, so PostgreSQL is told not to try."""

endings = Table(
    "endings",
    metadata,
    Column("household_id", String(36), primary_key=True),
    Column("what", String(20), primary_key=True),
    Column("ended_id", String(64), primary_key=True),
    Column("at_ms", BigInteger, primary_key=True),
    Index("ix_endings_one", "household_id", "ended_id"),
)
"""What was ended (``records.ended``). It outlives the household: nothing refers to it, and it refers to nothing."""

builds = Table(
    "builds",
    metadata,
    Column("build", String(16), primary_key=True),
    Column("started_ms", BigInteger, nullable=False),
    Column("packed", LargeBinary, nullable=False),
)
"""The files of the app's builds, one archive each, and when a server last started with it."""

taken = Table(
    "taken",
    metadata,
    Column("delivery_id", String(43), primary_key=True),
    Column("at_ms", BigInteger, nullable=False),
    Index("ix_taken_at_ms", "at_ms"),
)
"""Messages that a push service has taken, noted before they are marked; kept a day."""

server_notes = Table(
    "server_notes",
    metadata,
    Column("name", String(20), primary_key=True),
    Column("text", Text, nullable=False),
)
"""The few texts that all servers of a database share: the sealed push key, what the database was when a server last
looked (``restored``), when it was backed up."""
