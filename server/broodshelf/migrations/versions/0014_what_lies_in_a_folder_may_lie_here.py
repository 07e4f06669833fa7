"""what lies in a data folder with SQLite: pictures, endings, builds, what push services took, and a few notes."""

from __future__ import annotations

from typing import Final

import sqlalchemy as sa
from alembic import op

revision = "0014"
down_revision = "0013"
branch_labels = None
depends_on = None

_OF_HOUSEHOLDS: Final = ("pictures", "endings")


def upgrade() -> None:
    op.create_table(
        "pictures",
        sa.Column("household_id", sa.String(length=36), nullable=False),
        sa.Column("sha256", sa.String(length=64), nullable=False),
        sa.Column("size_bytes", sa.Integer(), nullable=False),
        sa.Column("came_ms", sa.BigInteger(), nullable=False),
        sa.Column("drawn", sa.LargeBinary(), nullable=False),
        sa.ForeignKeyConstraint(
            ["household_id"],
            ["households.id"],
            name=op.f("fk_pictures_household_id"),
            ondelete="CASCADE",
        ),
        sa.PrimaryKeyConstraint("household_id", "sha256", name=op.f("pk_pictures")),
    )
    op.create_index("ix_pictures_came_ms", "pictures", ["came_ms"])
    op.create_table(
        "endings",
        sa.Column("household_id", sa.String(length=36), nullable=False),
        sa.Column("what", sa.String(length=20), nullable=False),
        sa.Column("ended_id", sa.String(length=64), nullable=False),
        sa.Column("at_ms", sa.BigInteger(), nullable=False),
        sa.PrimaryKeyConstraint("household_id", "what", "ended_id", "at_ms", name=op.f("pk_endings")),
    )
    op.create_index("ix_endings_one", "endings", ["household_id", "ended_id"])
    op.create_table(
        "builds",
        sa.Column("build", sa.String(length=16), nullable=False),
        sa.Column("started_ms", sa.BigInteger(), nullable=False),
        sa.Column("packed", sa.LargeBinary(), nullable=False),
        sa.PrimaryKeyConstraint("build", name=op.f("pk_builds")),
    )
    op.create_table(
        "taken",
        sa.Column("delivery_id", sa.String(length=43), nullable=False),
        sa.Column("at_ms", sa.BigInteger(), nullable=False),
        sa.PrimaryKeyConstraint("delivery_id", name=op.f("pk_taken")),
    )
    op.create_index("ix_taken_at_ms", "taken", ["at_ms"])
    op.create_table(
        "server_notes",
        sa.Column("name", sa.String(length=20), nullable=False),
        sa.Column("text", sa.Text(), nullable=False),
        sa.PrimaryKeyConstraint("name", name=op.f("pk_server_notes")),
    )
    if op.get_bind().dialect.name != "postgresql":
        return
    op.execute("ALTER TABLE pictures ALTER COLUMN drawn SET STORAGE EXTERNAL")  # JPEG does not get smaller
    for table in _OF_HOUSEHOLDS:
        held = "(SELECT current_setting('broodshelf.household', true))"
        mine = f"CASE WHEN {held} = '*' THEN true ELSE household_id = {held} END"
        op.execute(f"ALTER TABLE {table} ENABLE ROW LEVEL SECURITY")
        op.execute(f"ALTER TABLE {table} FORCE ROW LEVEL SECURITY")
        op.execute(f"CREATE POLICY one_household ON {table} USING ({mine}) WITH CHECK ({mine})")


def downgrade() -> None:
    for table in ("server_notes", "taken", "builds", "endings", "pictures"):
        op.drop_table(table)
