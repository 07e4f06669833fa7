"""a phone that did not hear that it was let in may ask again, proven by a hash."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0016"
down_revision = "0015"
branch_labels = None
depends_on = None


def upgrade() -> None:
    op.add_column("devices", sa.Column("again_hash", sa.String(length=64), nullable=True))
    op.create_index("ix_devices_again_hash", "devices", ["again_hash"])


def downgrade() -> None:
    op.drop_index("ix_devices_again_hash", table_name="devices")
    op.drop_column("devices", "again_hash")
