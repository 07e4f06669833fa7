"""claim codes that are invitations have a number, and know which household came of them."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0013"
down_revision = "0012"
branch_labels = None
depends_on = None


def upgrade() -> None:
    op.add_column("claim_codes", sa.Column("number", sa.Integer(), nullable=True))
    op.add_column("claim_codes", sa.Column("founded", sa.String(length=36), nullable=True))


def downgrade() -> None:
    op.drop_column("claim_codes", "founded")
    op.drop_column("claim_codes", "number")
