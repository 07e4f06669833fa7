"""what a household keeps, counted; secured on PostgreSQL as in 0008."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0015"
down_revision = "0014"
branch_labels = None
depends_on = None


def upgrade() -> None:
    op.create_table(
        "household_sizes",
        sa.Column("household_id", sa.String(length=36), nullable=False),
        sa.Column("records", sa.BigInteger(), nullable=False),
        sa.Column("pictures", sa.BigInteger(), nullable=False),
        sa.Column("bytes", sa.BigInteger(), nullable=False),
        sa.Column("counted_ms", sa.BigInteger(), nullable=False),
        sa.ForeignKeyConstraint(
            ["household_id"],
            ["households.id"],
            name=op.f("fk_household_sizes_household_id"),
            ondelete="CASCADE",
        ),
        sa.PrimaryKeyConstraint("household_id", name=op.f("pk_household_sizes")),
    )
    if op.get_bind().dialect.name != "postgresql":
        return
    held = "(SELECT current_setting('broodshelf.household', true))"
    mine = f"CASE WHEN {held} = '*' THEN true ELSE household_id = {held} END"
    op.execute("ALTER TABLE household_sizes ENABLE ROW LEVEL SECURITY")
    op.execute("ALTER TABLE household_sizes FORCE ROW LEVEL SECURITY")
    op.execute(f"CREATE POLICY one_household ON household_sizes USING ({mine}) WITH CHECK ({mine})")


def downgrade() -> None:
    op.drop_table("household_sizes")
