"""an occurrence says what its task asks for and about what, each in a column of its own."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0010"
down_revision = "0009"
branch_labels = None
depends_on = None


def upgrade() -> None:
    # column by column: a table that is made anew would take the items of its nudges along
    _add("task_what", 20)
    _add("task_about", 100)
    place = "strpos(task_key, ':')" if op.get_bind().dialect.name == "postgresql" else "instr(task_key, ':')"
    op.execute(
        f"UPDATE occurrences SET task_what = substr(task_key, 1, {place} - 1),"  # noqa: S608 - no input
        f" task_about = substr(task_key, {place} + 1) WHERE {place} BETWEEN 2 AND 21"
    )
    op.drop_column("occurrences", "task_key")
    op.execute("UPDATE plan_times SET valid_until_ms = 0")  # plans name both from now on


def downgrade() -> None:
    _add("task_key", 120)
    op.execute("UPDATE occurrences SET task_key = task_what || ':' || task_about")
    op.drop_column("occurrences", "task_about")
    op.drop_column("occurrences", "task_what")


def _add(name: str, length: int) -> None:
    op.add_column("occurrences", sa.Column(name, sa.String(length=length), nullable=False, server_default=""))
