"""The tables of people and access. Secrets are stored as SHA-256 only; instants are ms since 1970 UTC.

What belongs to a household has it first in its key. ``claim_codes``, ``pairings`` and ``attempts`` stand before the
door: they belong to nobody until a household lets somebody in.
"""

from __future__ import annotations

from sqlalchemy import BigInteger, Column, ForeignKey, Integer, String, Table, Text

from ..records.database import metadata

devices = Table(
    "devices",
    metadata,
    Column("household_id", ForeignKey("households.id", ondelete="CASCADE"), primary_key=True),
    Column("id", String(36), primary_key=True),
    Column("person_id", String(36), nullable=False),
    Column("pass_id", String(36)),
    Column("role", String(10), nullable=False),
    Column("name", String(80), nullable=False),
    Column("token_hash", String(64), nullable=False, unique=True),
    Column("created_ms", BigInteger, nullable=False),
    Column("last_seen_ms", BigInteger, nullable=False),
    Column("revoked_ms", BigInteger),
    Column("again_hash", String(64), index=True),
)
"""A phone that is or was signed in. ``token_hash`` is replaced at every sign-in. ``again_hash``: of the secret and the
code that it came in with, so that it may ask again for an answer that was lost (``people.devices``)."""

claim_codes = Table(
    "claim_codes",
    metadata,
    Column("code_hash", String(64), primary_key=True),
    Column("for_household", String(36)),
    Column("person_id", String(36)),
    Column("created_ms", BigInteger, nullable=False),
    Column("expires_ms", BigInteger, nullable=False),
    Column("used_ms", BigInteger),
    Column("number", Integer),
    Column("founded", String(36)),
)
"""One-time codes that the server's owner prints: a new household, or the way back into one. ``number``: of an
invitation, as it stands on its sheet; ``founded``: which household came of it."""

pairings = Table(
    "pairings",
    metadata,
    Column("id", String(36), primary_key=True),
    Column("code_hash", String(64), nullable=False, unique=True),
    Column("collect_hash", String(64), nullable=False),
    Column("device_id", String(36), nullable=False),
    Column("device_name", String(80), nullable=False),
    Column("asked_ms", BigInteger, nullable=False),
    Column("expires_ms", BigInteger, nullable=False),
    Column("for_household", String(36)),
    Column("person_id", String(36)),
    Column("collected_ms", BigInteger),
)
"""A new phone that shows a code and waits for a signed-in keeper."""

pass_secrets = Table(
    "pass_secrets",
    metadata,
    Column("household_id", ForeignKey("households.id", ondelete="CASCADE"), primary_key=True),
    Column("pass_id", String(36), primary_key=True),
    Column("secret_hash", String(64), nullable=False, unique=True),
    Column("code_hash", String(64), nullable=False, unique=True),
    Column("made_ms", BigInteger, nullable=False),
)
"""What opens a pass: a link's secret and a short code. Made anew whenever the keeper asks for a link."""

feed_tokens = Table(
    "feed_tokens",
    metadata,
    Column("household_id", ForeignKey("households.id", ondelete="CASCADE"), primary_key=True),
    Column("id", String(36), primary_key=True),
    Column("pass_id", String(36)),
    Column("token_hash", String(64), nullable=False, unique=True),
    Column("made_ms", BigInteger, nullable=False),
    Column("expires_ms", BigInteger, nullable=False),
    Column("person_id", String(36)),
)
"""What opens a calendar feed: of the household (``pass_id`` null) or of a pass. At most one each. ``person_id``: who
made that of the household; it comes in their language. Null where an earlier version made it."""

sensor_tokens = Table(
    "sensor_tokens",
    metadata,
    Column("household_id", ForeignKey("households.id", ondelete="CASCADE"), primary_key=True),
    Column("sensor_id", String(36), primary_key=True),
    Column("token_hash", String(64), nullable=False, unique=True),
    Column("made_ms", BigInteger, nullable=False),
)
"""What lets a sensor send readings for its place, and nothing else."""

mail_addresses = Table(
    "mail_addresses",
    metadata,
    Column("household_id", ForeignKey("households.id", ondelete="CASCADE"), primary_key=True),
    Column("person_id", String(36), primary_key=True),
    Column("address", String(254), nullable=False),
    Column("code_hash", String(64)),
    Column("asked_ms", BigInteger, nullable=False),
    Column("confirmed_ms", BigInteger),
)
"""Where a person gets mail. No record of the shelf, so no phone but a keeper's ever sees it; used once confirmed."""

attempts = Table(
    "attempts",
    metadata,
    Column("bucket", String(100), primary_key=True),
    Column("window_ms", BigInteger, primary_key=True),
    Column("count", Integer, nullable=False),
)
"""Counted tries, so that codes cannot be guessed by any number of server processes."""

journal = Table(
    "journal",
    metadata,
    Column("household_id", ForeignKey("households.id", ondelete="CASCADE"), primary_key=True),
    Column("id", String(36), primary_key=True),
    Column("at_ms", BigInteger, nullable=False),
    Column("what", String(20), nullable=False),
    Column("person_id", String(36)),
    Column("device_id", String(36)),
    Column("args", Text, nullable=False),
)
"""What happened to a household's doors, for its keepers to read (``people.journal``)."""

household_sizes = Table(
    "household_sizes",
    metadata,
    Column("household_id", ForeignKey("households.id", ondelete="CASCADE"), primary_key=True),
    Column("records", BigInteger, nullable=False),
    Column("pictures", BigInteger, nullable=False),
    Column("bytes", BigInteger, nullable=False),
    Column("counted_ms", BigInteger, nullable=False),
)
"""What a household keeps, as it was counted, and what came since (``people.room``)."""

usage = Table(
    "usage",
    metadata,
    Column("household_id", ForeignKey("households.id", ondelete="CASCADE"), primary_key=True),
    Column("subject", String(36), primary_key=True),
    Column("day", Integer, primary_key=True),
    Column("operations", Integer, nullable=False),
    Column("bytes", BigInteger, nullable=False),
    Column("pictures", Integer, nullable=False),
)
"""What a household (``subject`` is its own id) or a pass sent on a day, counted from 1970 UTC (``people.quotas``)."""
