"""The tables of the rounds: what is to be told when, and until when a plan holds. Instants in ms since 1970 UTC."""

from __future__ import annotations

from sqlalchemy import (
    BigInteger,
    Boolean,
    Column,
    ForeignKey,
    Index,
    Integer,
    String,
    Table,
    UniqueConstraint,
)

from ..records.database import metadata

occurrences = Table(
    "occurrences",
    metadata,
    Column("household_id", ForeignKey("households.id", ondelete="CASCADE"), primary_key=True),
    Column("id", String(36), primary_key=True),
    Column("subject_kind", String(10), nullable=False),
    Column("subject_id", String(36), nullable=False),
    Column("need", String(20), nullable=False),
    Column("local_date", String(10), nullable=False),
    Column("slot", String(120), nullable=False),
    Column("task_what", String(20), nullable=False),
    Column("task_about", String(100), nullable=False),
    Column("urgent", Boolean, nullable=False),
    Column("follows", Boolean, nullable=False),
    Column("due_ms", BigInteger, nullable=False),
    Column("at_ms", BigInteger, nullable=False),
    Column("state", String(10), nullable=False),
    Column("steps", Integer, nullable=False),
    Column("told_ms", BigInteger),
    Column("closed_ms", BigInteger),
    Column("wake_ms", BigInteger),
    UniqueConstraint(
        "household_id",
        "subject_kind",
        "subject_id",
        "need",
        "local_date",
        "slot",
        name="uq_occurrences_round",
    ),
    Index("ix_occurrences_wake_ms", "wake_ms"),
    Index("ix_occurrences_house_wake_ms", "household_id", "wake_ms"),
)
"""One need of one colony in one round. ``state``: waiting, sent, missed or done; ``steps``: how often it was told.

``at_ms`` is when its round is; ``wake_ms`` when the nudger has to look at it next, null for never.
``slot`` is a ``model.tasks.Slot``; ``task_what`` and ``task_about`` are the task's ``TaskKey``.
``follows``: one of an earlier date was told or missed and nothing was done.
"""

plan_times = Table(
    "plan_times",
    metadata,
    Column("household_id", ForeignKey("households.id", ondelete="CASCADE"), primary_key=True),
    Column("colony_id", String(36), primary_key=True),
    Column("valid_until_ms", BigInteger, nullable=False),
    Index("ix_plan_times_valid_until_ms", "valid_until_ms"),
)
"""Until when each colony's plan holds, so that stale ones are found without reading plans."""
