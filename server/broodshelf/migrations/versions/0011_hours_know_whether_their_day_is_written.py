"""hours know whether the record of their day knows them; of those that are there it knows none."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0011"
down_revision = "0010"
branch_labels = None
depends_on = None


def upgrade() -> None:
    due: sa.Column[bool] = sa.Column("day_due", sa.Boolean(), server_default=sa.text("true"), nullable=False)
    op.add_column("place_hours", due)
    op.create_index(
        "ix_place_hours_due",
        "place_hours",
        ["household_id", "hour_ms"],
        sqlite_where=sa.text("day_due"),
        postgresql_where=sa.text("day_due"),
    )


def downgrade() -> None:
    op.drop_index("ix_place_hours_due", "place_hours")
    op.drop_column("place_hours", "day_due")
