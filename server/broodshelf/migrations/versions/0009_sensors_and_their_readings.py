"""sensors, their tokens and readings, and the hours of places; each secured on PostgreSQL as in 0008."""

from __future__ import annotations

from typing import Final

import sqlalchemy as sa
from alembic import op

revision = "0009"
down_revision = "0008"
branch_labels = None
depends_on = None

_TABLES: Final = ("place_hours", "sensor_tokens", "sensors", "readings")


def upgrade() -> None:
    op.create_table(
        "place_hours",
        sa.Column("household_id", sa.String(length=36), nullable=False),
        sa.Column("place_id", sa.String(length=36), nullable=False),
        sa.Column("hour_ms", sa.BigInteger(), nullable=False),
        sa.Column("temperatures", sa.Integer(), nullable=False),
        sa.Column("temperature_sum_c", sa.Float(), nullable=False),
        sa.Column("temperature_low_c", sa.Float(), nullable=True),
        sa.Column("temperature_high_c", sa.Float(), nullable=True),
        sa.Column("humidities", sa.Integer(), nullable=False),
        sa.Column("humidity_sum_pct", sa.Float(), nullable=False),
        sa.Column("humidity_low_pct", sa.Float(), nullable=True),
        sa.Column("humidity_high_pct", sa.Float(), nullable=True),
        sa.ForeignKeyConstraint(
            ["household_id"], ["households.id"], name=op.f("fk_place_hours_household_id"), ondelete="CASCADE"
        ),
        sa.PrimaryKeyConstraint("household_id", "place_id", "hour_ms", name=op.f("pk_place_hours")),
    )
    op.create_table(
        "sensor_tokens",
        sa.Column("household_id", sa.String(length=36), nullable=False),
        sa.Column("sensor_id", sa.String(length=36), nullable=False),
        sa.Column("token_hash", sa.String(length=64), nullable=False),
        sa.Column("made_ms", sa.BigInteger(), nullable=False),
        sa.ForeignKeyConstraint(
            ["household_id"],
            ["households.id"],
            name=op.f("fk_sensor_tokens_household_id"),
            ondelete="CASCADE",
        ),
        sa.PrimaryKeyConstraint("household_id", "sensor_id", name=op.f("pk_sensor_tokens")),
        sa.UniqueConstraint("token_hash", name=op.f("uq_sensor_tokens_token_hash")),
    )
    op.create_table(
        "sensors",
        sa.Column("household_id", sa.String(length=36), nullable=False),
        sa.Column("id", sa.String(length=36), nullable=False),
        sa.Column("place_id", sa.String(length=36), nullable=False),
        sa.Column("name", sa.String(length=60), nullable=False),
        sa.Column("broker", sa.String(length=30), nullable=True),
        sa.Column("topic", sa.String(length=250), nullable=True),
        sa.Column("temperature_path", sa.String(length=120), nullable=True),
        sa.Column("humidity_path", sa.String(length=120), nullable=True),
        sa.Column("unit", sa.String(length=1), nullable=False),
        sa.Column("made_ms", sa.BigInteger(), nullable=False),
        sa.Column("heard_ms", sa.BigInteger(), nullable=True),
        sa.Column("away_ms", sa.BigInteger(), nullable=True),
        sa.Column("broken_ms", sa.BigInteger(), nullable=True),
        sa.Column("broken_word", sa.String(length=40), nullable=True),
        sa.Column("told_word", sa.String(length=10), nullable=True),
        sa.ForeignKeyConstraint(
            ["household_id"], ["households.id"], name=op.f("fk_sensors_household_id"), ondelete="CASCADE"
        ),
        sa.PrimaryKeyConstraint("household_id", "id", name=op.f("pk_sensors")),
    )
    op.create_table(
        "readings",
        sa.Column("household_id", sa.String(length=36), nullable=False),
        sa.Column("sensor_id", sa.String(length=36), nullable=False),
        sa.Column("at_ms", sa.BigInteger(), nullable=False),
        sa.Column("place_id", sa.String(length=36), nullable=False),
        sa.Column("temperature_c", sa.Float(), nullable=True),
        sa.Column("humidity_pct", sa.Float(), nullable=True),
        sa.ForeignKeyConstraint(
            ["household_id", "sensor_id"],
            ["sensors.household_id", "sensors.id"],
            name=op.f("fk_readings_household_id_sensor_id"),
            ondelete="CASCADE",
        ),
        sa.PrimaryKeyConstraint("household_id", "sensor_id", "at_ms", name=op.f("pk_readings")),
    )
    with op.batch_alter_table("readings", schema=None) as batch_op:
        batch_op.create_index("ix_readings_household_id_at_ms", ["household_id", "at_ms"], unique=False)
    if op.get_bind().dialect.name != "postgresql":
        return
    held = "(SELECT current_setting('broodshelf.household', true))"
    mine = f"CASE WHEN {held} = '*' THEN true ELSE household_id = {held} END"
    for table in _TABLES:
        op.execute(f"ALTER TABLE {table} ENABLE ROW LEVEL SECURITY")
        op.execute(f"ALTER TABLE {table} FORCE ROW LEVEL SECURITY")
        op.execute(f"CREATE POLICY one_household ON {table} USING ({mine}) WITH CHECK ({mine})")


def downgrade() -> None:
    with op.batch_alter_table("readings", schema=None) as batch_op:
        batch_op.drop_index("ix_readings_household_id_at_ms")

    op.drop_table("readings")
    op.drop_table("sensors")
    op.drop_table("sensor_tokens")
    op.drop_table("place_hours")
