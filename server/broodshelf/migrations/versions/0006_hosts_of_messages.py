"""each message names its push host, so that a host's next ones are found by an index of what waits."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0006"
down_revision = "0005"
branch_labels = None
depends_on = None


def upgrade() -> None:
    with op.batch_alter_table("deliveries", schema=None) as batch_op:
        batch_op.add_column(sa.Column("host", sa.String(length=255), nullable=False, server_default=""))
    op.execute(
        "UPDATE deliveries SET host = (SELECT host FROM push_subscriptions WHERE id = deliveries.subscription_id)"
    )
    op.drop_index("ix_deliveries_wake_ms", table_name="deliveries")
    condition = sa.text("wake_ms IS NOT NULL")
    op.create_index(
        "ix_deliveries_waiting",
        "deliveries",
        ["host", "wake_ms"],
        sqlite_where=condition,
        postgresql_where=condition,
    )


def downgrade() -> None:
    op.drop_index("ix_deliveries_waiting", table_name="deliveries")
    op.create_index("ix_deliveries_wake_ms", "deliveries", ["wake_ms"])
    with op.batch_alter_table("deliveries", schema=None) as batch_op:
        batch_op.drop_column("host")
