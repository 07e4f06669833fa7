"""topics and task keys in columns of their own, for reads that do not grow with the log; ids of what was purged."""

from __future__ import annotations

import json
from typing import Any

import sqlalchemy as sa
from alembic import op

revision = "0005"
down_revision = "0004"
branch_labels = None
depends_on = None

_PAGE = 2000


def upgrade() -> None:
    with op.batch_alter_table("records", schema=None) as batch_op:
        batch_op.add_column(sa.Column("topic", sa.String(length=20), nullable=False, server_default=""))
        batch_op.add_column(sa.Column("task_key", sa.String(length=120), nullable=True))
    _fill()
    _make_purged()
    op.drop_index("ix_records_log", table_name="records")
    op.create_index(
        "ix_records_log", "records", ["household_id", "colony_id", "kind", "topic", "happened_ms"]
    )
    op.drop_index("ix_records_kind", table_name="records")
    op.create_index("ix_records_kind", "records", ["household_id", "kind", "id"])
    condition = sa.text("task_key IS NOT NULL")
    op.create_index(
        "ix_records_task",
        "records",
        ["household_id", "task_key"],
        sqlite_where=condition,
        postgresql_where=condition,
    )


def _make_purged() -> None:
    op.create_table(
        "purged",
        sa.Column("household_id", sa.String(length=36), nullable=False),
        sa.Column("record_id", sa.String(length=36), nullable=False),
        sa.ForeignKeyConstraint(
            ["household_id"], ["households.id"], name=op.f("fk_purged_household_id"), ondelete="CASCADE"
        ),
        sa.PrimaryKeyConstraint("household_id", "record_id", name=op.f("pk_purged")),
    )


def _fill() -> None:
    """Copy what the fields say into the new columns, page by page."""
    connection = op.get_bind()
    read = sa.text(
        "SELECT household_id, id, kind, fields FROM records WHERE happened_ms IS NOT NULL"
        " AND (household_id, id) > (:h, :i) ORDER BY household_id, id LIMIT :n"
    )
    write = sa.text("UPDATE records SET topic = :topic, task_key = :key WHERE household_id = :h AND id = :i")
    after = {"h": "", "i": ""}
    while rows := connection.execute(read, {**after, "n": _PAGE}).all():
        filled = []
        for row in rows:
            values = json.loads(row.fields)
            filled.append(
                {
                    "h": row.household_id,
                    "i": row.id,
                    "topic": _topic(row.kind, values),
                    "key": values.get("task_key"),
                }
            )
        connection.execute(write, filled)
        after = {"h": rows[-1].household_id, "i": rows[-1].id}


def _topic(kind: str, values: dict[str, Any]) -> str:
    if kind == "fault":
        return "" if values.get("resolved_at") else "open"
    return values.get("need") or "" if kind in ("feeding", "check") else ""


def downgrade() -> None:
    op.drop_table("purged")
    op.drop_index("ix_records_kind", table_name="records")
    op.create_index("ix_records_kind", "records", ["household_id", "kind"])
    op.drop_index("ix_records_task", table_name="records")
    op.drop_index("ix_records_log", table_name="records")
    op.create_index("ix_records_log", "records", ["household_id", "colony_id", "kind", "happened_ms"])
    with op.batch_alter_table("records", schema=None) as batch_op:
        batch_op.drop_column("task_key")
        batch_op.drop_column("topic")
