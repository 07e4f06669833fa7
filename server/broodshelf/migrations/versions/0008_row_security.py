"""row-level security on PostgreSQL: a transaction touches the rows of the household that it names, and no other."""

from __future__ import annotations

from typing import Final

from alembic import op

revision = "0008"
down_revision = "0007"
branch_labels = None
depends_on = None

_TABLES: Final = {
    "households": "id",
    "deliveries": "household_id",
    "devices": "household_id",
    "feed_events": "household_id",
    "feed_tokens": "household_id",
    "journal": "household_id",
    "mail_addresses": "household_id",
    "nudge_items": "household_id",
    "nudges": "household_id",
    "occurrences": "household_id",
    "operations": "household_id",
    "pass_secrets": "household_id",
    "plan_times": "household_id",
    "purged": "household_id",
    "push_subscriptions": "household_id",
    "records": "household_id",
    "revisions": "household_id",
    "usage": "household_id",
}


def upgrade() -> None:
    if op.get_bind().dialect.name != "postgresql":
        return
    for table, column in _TABLES.items():
        held = "(SELECT current_setting('broodshelf.household', true))"
        mine = f"CASE WHEN {held} = '*' THEN true ELSE {column} = {held} END"
        op.execute(f"ALTER TABLE {table} ENABLE ROW LEVEL SECURITY")
        op.execute(f"ALTER TABLE {table} FORCE ROW LEVEL SECURITY")
        op.execute(f"CREATE POLICY one_household ON {table} USING ({mine}) WITH CHECK ({mine})")


def downgrade() -> None:
    if op.get_bind().dialect.name != "postgresql":
        return
    for table in _TABLES:
        op.execute(f"DROP POLICY one_household ON {table}")
        op.execute(f"ALTER TABLE {table} NO FORCE ROW LEVEL SECURITY")
        op.execute(f"ALTER TABLE {table} DISABLE ROW LEVEL SECURITY")
