"""The tables of sensing. Instants in ms since 1970 UTC, temperatures in °C, relative humidity in percent.

Readings stay for days, hours for years; phones get days (records of the kind ``place_day``).
"""

from __future__ import annotations

from sqlalchemy import (
    BigInteger,
    Boolean,
    Column,
    Float,
    ForeignKey,
    ForeignKeyConstraint,
    Index,
    Integer,
    String,
    Table,
    text,
)

from ..records.database import metadata

sensors = Table(
    "sensors",
    metadata,
    Column("household_id", ForeignKey("households.id", ondelete="CASCADE"), primary_key=True),
    Column("id", String(36), primary_key=True),
    Column("place_id", String(36), nullable=False),
    Column("name", String(60), nullable=False),
    Column("broker", String(30)),
    Column("topic", String(250)),
    Column("temperature_path", String(120)),
    Column("humidity_path", String(120)),
    Column("unit", String(1), nullable=False),
    Column("made_ms", BigInteger, nullable=False),
    Column("heard_ms", BigInteger),
    Column("away_ms", BigInteger),
    Column("broken_ms", BigInteger),
    Column("broken_word", String(40)),
    Column("told_word", String(10)),
)
"""A source of readings for one place: with a token (HTTP), or with a topic of one of the operator's brokers (MQTT).

``heard_ms``: the instant of its newest good reading; ``away_ms``: since when it is said to be offline; ``broken_ms``:
since when it says nothing but nonsense, null while it is sound; ``told_word``: what of this the keepers were told.
"""

readings = Table(
    "readings",
    metadata,
    Column("household_id", String(36), primary_key=True),
    Column("sensor_id", String(36), primary_key=True),
    Column("at_ms", BigInteger, primary_key=True),
    Column("place_id", String(36), nullable=False),
    Column("temperature_c", Float),
    Column("humidity_pct", Float),
    ForeignKeyConstraint(
        ["household_id", "sensor_id"], ["sensors.household_id", "sensors.id"], ondelete="CASCADE"
    ),
    Index("ix_readings_household_id_at_ms", "household_id", "at_ms"),
)
"""What was sent, as it was sent, kept for ``intake.KEPT_MS``. The same instant twice is the same reading."""

place_hours = Table(
    "place_hours",
    metadata,
    Column("household_id", ForeignKey("households.id", ondelete="CASCADE"), primary_key=True),
    Column("place_id", String(36), primary_key=True),
    Column("hour_ms", BigInteger, primary_key=True),
    Column("temperatures", Integer, nullable=False),
    Column("temperature_sum_c", Float, nullable=False),
    Column("temperature_low_c", Float),
    Column("temperature_high_c", Float),
    Column("humidities", Integer, nullable=False),
    Column("humidity_sum_pct", Float, nullable=False),
    Column("humidity_low_pct", Float),
    Column("humidity_high_pct", Float),
    Column("day_due", Boolean, nullable=False, server_default=text("true")),
    Index(
        "ix_place_hours_due",
        "household_id",
        "hour_ms",
        sqlite_where=text("day_due"),
        postgresql_where=text("day_due"),
    ),
)
"""An hour of a place, from its beginning (UTC): how many readings, their sum, least and most. Kept for years.

``day_due``: something was measured that the record of its day does not know yet.
"""
