"""The tables of nudges: who listens where, what was told, each message on its way. Instants in ms since 1970 UTC."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from sqlalchemy import (
    BigInteger,
    Boolean,
    Column,
    Connection,
    ForeignKey,
    ForeignKeyConstraint,
    Index,
    Integer,
    String,
    Table,
    Text,
    UniqueConstraint,
    text,
)
from sqlalchemy.dialects import postgresql, sqlite

from ..records.database import metadata

subscriptions = Table(
    "push_subscriptions",
    metadata,
    Column("household_id", ForeignKey("households.id", ondelete="CASCADE"), primary_key=True),
    Column("id", String(36), primary_key=True),
    Column("person_id", String(36), nullable=False),
    Column("device_id", String(36), nullable=False),
    Column("endpoint", Text, nullable=False),
    Column("host", String(255), nullable=False),
    Column("p256dh", String(100), nullable=False),
    Column("auth", String(40), nullable=False),
    Column("key_id", String(32), nullable=False),
    Column("created_ms", BigInteger, nullable=False),
    Column("seen_ms", BigInteger, nullable=False),
    Column("delivered_ms", BigInteger),
    Column("acked_ms", BigInteger),
    Column("outcome", String(40)),
    Column("failures", Integer, nullable=False, default=0),
    Column("suspect_since_ms", BigInteger),
    UniqueConstraint("household_id", "device_id"),
    Index("ix_push_subscriptions_person", "household_id", "person_id"),
    Index("ix_push_subscriptions_host", "host"),
)
"""Where a phone listens. One a device; ``key_id`` names the server key that it was made for.

A confirmed mailbox is a row like a phone's: host and ``key_id`` say ``mail``, the endpoint is ``mailto:…``, the keys
are empty and ``device_id`` names no device. So it has the same queue and the same promises.
"""

nudges = Table(
    "nudges",
    metadata,
    Column("household_id", ForeignKey("households.id", ondelete="CASCADE"), primary_key=True),
    Column("id", String(36), primary_key=True),
    Column("person_id", String(36), nullable=False),
    Column("local_date", String(10), nullable=False),
    Column("slot", String(120), nullable=False),
    Column("step", Integer, nullable=False),
    Column("urgent", Boolean, nullable=False),
    Column("made_ms", BigInteger, nullable=False),
    UniqueConstraint("household_id", "person_id", "local_date", "slot", "step"),
)
"""What one person is told about one round; ``step`` 1 is the first time, 2 after the household's patience."""

nudge_items = Table(
    "nudge_items",
    metadata,
    Column("household_id", String(36), primary_key=True),
    Column("nudge_id", String(36), primary_key=True),
    Column("occurrence_id", String(36), primary_key=True),
    Column("position", Integer, nullable=False),
    Column("item", Text, nullable=False),
    ForeignKeyConstraint(
        ["household_id", "nudge_id"], ["nudges.household_id", "nudges.id"], ondelete="CASCADE"
    ),
    ForeignKeyConstraint(
        ["household_id", "occurrence_id"],
        ["occurrences.household_id", "occurrences.id"],
        ondelete="CASCADE",
    ),
    Index("ix_nudge_items_occurrence", "household_id", "occurrence_id"),
)
"""The occurrences of a nudge, each with what the message says of it (JSON, ``nudges.messages.Item``)."""

deliveries = Table(
    "deliveries",
    metadata,
    Column("household_id", String(36), primary_key=True),
    Column("id", String(43), primary_key=True),
    Column("nudge_id", String(36)),
    Column("subscription_id", String(36), nullable=False),
    Column("host", String(255), nullable=False),
    Column("state", String(10), nullable=False),
    Column("wake_ms", BigInteger),
    Column("owner", String(36)),
    Column("attempts", Integer, nullable=False, default=0),
    Column("short", Boolean, nullable=False, default=False),
    Column("made_ms", BigInteger, nullable=False),
    Column("due_ms", BigInteger),
    Column("useless_ms", BigInteger, nullable=False),
    Column("done_ms", BigInteger),
    Column("outcome", String(40)),
    Column("acked_ms", BigInteger),
    Column("shown", Boolean),
    Column("notice", Text),
    ForeignKeyConstraint(
        ["household_id", "nudge_id"], ["nudges.household_id", "nudges.id"], ondelete="CASCADE"
    ),
    ForeignKeyConstraint(
        ["household_id", "subscription_id"],
        ["push_subscriptions.household_id", "push_subscriptions.id"],
        ondelete="CASCADE",
    ),
    UniqueConstraint("household_id", "nudge_id", "subscription_id"),
    Index(
        "ix_deliveries_waiting",
        "host",
        "wake_ms",
        sqlite_where=text("wake_ms IS NOT NULL"),
        postgresql_where=text("wake_ms IS NOT NULL"),
    ),
    Index("ix_deliveries_subscription", "household_id", "subscription_id"),
    Index("ix_deliveries_id", "id"),
)
"""One message to one phone. The id is unguessable: whoever has it may acknowledge, so it is found by it alone.

``state``: waiting, sent, gone, refused or dropped. While it waits, ``wake_ms`` is when it may be tried or, once
claimed by ``owner``, when that claim runs out. ``host`` is the subscription's, here for the index by which a host's
next messages are found however many phones and other messages there are. ``due_ms``: when its round was. A test
message has no nudge; nor has a ``notice`` of the keepers' journal: what it says, as JSON.
"""

vendor_pauses = Table(
    "vendor_pauses",
    metadata,
    Column("host", String(255), primary_key=True),
    Column("until_ms", BigInteger, nullable=False),
)
"""Push hosts that asked us to wait: for all their subscriptions, whoever sends."""

nudger_state = Table(
    "nudger_state",
    metadata,
    Column("name", String(20), primary_key=True),
    Column("at_ms", BigInteger, nullable=False),
)
"""When the nudger last ticked and had tidied up, whichever process did it.

``zones``: the mark of the zone rules; ``tidied``: how many households the day's tidying has seen to so far.
"""


def put_row(connection: Connection, table: Table, key: Mapping[str, Any], values: Mapping[str, Any]) -> None:
    """Insert a row or, where its key is there already, change it; safe however many do so at once."""
    made = postgresql if connection.dialect.name == "postgresql" else sqlite
    statement = made.insert(table).values(**key, **values)
    connection.execute(statement.on_conflict_do_update(index_elements=list(key), set_=dict(values)))
