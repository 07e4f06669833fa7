"""a household's calendar knows who made its address, and comes in their language; null for those that are there."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0012"
down_revision = "0011"
branch_labels = None
depends_on = None


def upgrade() -> None:
    op.add_column("feed_tokens", sa.Column("person_id", sa.String(length=36), nullable=True))


def downgrade() -> None:
    op.drop_column("feed_tokens", "person_id")
