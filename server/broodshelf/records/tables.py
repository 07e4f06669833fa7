"""The tables of a household's records. Instants are milliseconds since 1970 UTC (``*_ms``)."""

from __future__ import annotations

from sqlalchemy import BigInteger, Boolean, Column, ForeignKey, Index, Integer, String, Table, Text, text

from .database import metadata

households = Table(
    "households",
    metadata,
    Column("id", String(36), primary_key=True),
    Column("rev", BigInteger, nullable=False, default=0),
    Column("epoch", String(36), nullable=False),
    Column("purged_rev", BigInteger, nullable=False, default=0),
    Column("created_ms", BigInteger, nullable=False),
)
"""One row a household. Its lock serialises writes; ``rev`` numbers every change; see docs/sync.md."""

records = Table(
    "records",
    metadata,
    Column("household_id", ForeignKey("households.id", ondelete="CASCADE"), primary_key=True),
    Column("id", String(36), primary_key=True),
    Column("kind", String(20), nullable=False),
    Column("rev", BigInteger, nullable=False),
    Column("gone", Boolean, nullable=False, default=False),
    Column("colony_id", String(36)),
    Column("happened_ms", BigInteger),
    Column("topic", String(20), nullable=False, server_default=""),
    Column("task_key", String(120)),
    Column("made_ms", BigInteger, nullable=False),
    Column("person_id", String(36)),
    Column("device_id", String(36)),
    Column("fields", Text, nullable=False),
    Column("stamps", Text, nullable=False),
    Index("ix_records_feed", "household_id", "rev"),
    Index("ix_records_log", "household_id", "colony_id", "kind", "topic", "happened_ms"),
    Index(
        "ix_records_task",
        "household_id",
        "task_key",
        sqlite_where=text("task_key IS NOT NULL"),
        postgresql_where=text("task_key IS NOT NULL"),
    ),
    Index("ix_records_kind", "household_id", "kind", "id"),
    Index(
        "uq_records_household",
        "household_id",
        unique=True,
        sqlite_where=text("kind = 'household' AND NOT gone"),
        postgresql_where=text("kind = 'household' AND NOT gone"),
    ),
)
"""Every record, its present fields as JSON, and for each field who set it last (``stamps``).

A household has one record of itself.

``colony_id``, ``happened_ms``, ``topic`` (records/recent.py) and ``task_key`` repeat fields for the indexes.
"""

revisions = Table(
    "revisions",
    metadata,
    Column("household_id", ForeignKey("households.id", ondelete="CASCADE"), primary_key=True),
    Column("rev", BigInteger, primary_key=True),
    Column("part", Integer, primary_key=True, default=0),
    Column("record_id", String(36), nullable=False),
    Column("op_id", String(36)),
    Column("person_id", String(36)),
    Column("device_id", String(36)),
    Column("at_ms", BigInteger, nullable=False),
    Column("asked", Text, nullable=False),
    Column("before", Text, nullable=False),
    Column("lost", Text, nullable=False),
    Index("ix_revisions_record", "household_id", "record_id", "rev"),
)
"""The history: what each operation asked for, what stood there before, and which fields it did not win."""

operations = Table(
    "operations",
    metadata,
    Column("household_id", ForeignKey("households.id", ondelete="CASCADE"), primary_key=True),
    Column("op_id", String(36), primary_key=True),
    Column("device_id", String(36)),
    Column("verdict", String(10), nullable=False),
    Column("answer", Text, nullable=False),
    Column("received_ms", BigInteger, nullable=False),
    Index(
        "ix_operations_refused",
        "household_id",
        "received_ms",
        sqlite_where=text("verdict = 'rejected'"),
        postgresql_where=text("verdict = 'rejected'"),
    ),
)
"""The verdict on each operation, so that one sent twice gets its original answer."""

purged = Table(
    "purged",
    metadata,
    Column("household_id", ForeignKey("households.id", ondelete="CASCADE"), primary_key=True),
    Column("record_id", String(36), primary_key=True),
)
"""The ids of records that were purged, and nothing else of them: no phone that was away brings one back."""
