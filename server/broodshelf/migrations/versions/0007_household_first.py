"""keys begin with the household; a household's one record, journal and usage.

The tables whose keys change are made anew beside the old ones and filled from them: a database that runs with foreign
keys on would empty the children of a table that is dropped, so the old ones go children first.

Longer than 300 lines because it spells out nine tables as they then are.
"""

from __future__ import annotations

import json
from collections.abc import Callable
from typing import Final

import sqlalchemy as sa
from alembic import op

revision = "0007"
down_revision = "0006"
branch_labels = None
depends_on = None

_OLD: Final = "old_"


def upgrade() -> None:
    for name in _REMADE:
        _put_aside(name)
    for name, (make, source, others) in _REMADE.items():
        make()
        whose = "t" if " AS t " in source else "e"
        names = others.split()
        op.execute(
            f"INSERT INTO {name} (household_id, {', '.join(names)})"  # noqa: S608 - our own words
            f" SELECT {whose}.household_id, {', '.join(f'e.{name}' for name in names)} FROM {source}"
        )
    for name in reversed(_REMADE):
        op.drop_table(f"{_OLD}{name}")
    _make_journal()
    _make_usage()
    for table in ("claim_codes", "pairings"):
        op.execute(f"ALTER TABLE {table} RENAME COLUMN household_id TO for_household")
    _one_record_of_itself()
    refused = sa.text("verdict = 'rejected'")
    op.create_index(
        "ix_operations_refused",
        "operations",
        ["household_id", "received_ms"],
        sqlite_where=refused,
        postgresql_where=refused,
    )


def downgrade() -> None:
    raise RuntimeError(
        "What joined households is not kept, so there is no way back; restore the backup from before."
    )


def _put_aside(table: str) -> None:
    """Rename a table and, where their names are unique in the database, what belongs to it."""
    connection = op.get_bind()
    inspector = sa.inspect(connection)
    constraints = [c["name"] for c in inspector.get_unique_constraints(table)]
    indexes = [i["name"] for i in inspector.get_indexes(table) if not i.get("duplicates_constraint")]
    foreign = [c["name"] for c in inspector.get_foreign_keys(table)]
    key = inspector.get_pk_constraint(table)["name"]
    for name in indexes:
        op.drop_index(str(name), table_name=table)
    op.rename_table(table, f"{_OLD}{table}")
    if connection.dialect.name == "postgresql":
        for name in (key, *constraints, *foreign):
            op.execute(f"ALTER TABLE {_OLD}{table} RENAME CONSTRAINT {name} TO {_OLD}{name}")


def _one_record_of_itself() -> None:
    """Let further records of a household go, as a deletion that its phones hear of, and keep new ones out."""
    connection = op.get_bind()
    surplus = connection.execute(
        sa.text(
            "SELECT household_id, id, fields FROM records WHERE kind = 'household' AND NOT gone AND id <> household_id"
        )
    ).all()
    next_rev = sa.text("UPDATE households SET rev = rev + 1 WHERE id = :h")
    let_go = sa.text(
        "UPDATE records SET gone = true, fields = :fields, rev = (SELECT rev FROM households WHERE id = :h)"
        " WHERE household_id = :h AND id = :i"
    )
    for row in surplus:
        fields = json.dumps({**json.loads(row.fields), "gone": True}, ensure_ascii=False)
        connection.execute(next_rev, {"h": row.household_id})
        connection.execute(let_go, {"h": row.household_id, "i": row.id, "fields": fields})
    one = sa.text("kind = 'household' AND NOT gone")
    op.create_index(
        "uq_records_household",
        "records",
        ["household_id"],
        unique=True,
        sqlite_where=one,
        postgresql_where=one,
    )


def _make_devices() -> None:
    op.create_table(
        "devices",
        sa.Column("household_id", sa.String(length=36), nullable=False),
        sa.Column("id", sa.String(length=36), nullable=False),
        sa.Column("person_id", sa.String(length=36), nullable=False),
        sa.Column("pass_id", sa.String(length=36), nullable=True),
        sa.Column("role", sa.String(length=10), nullable=False),
        sa.Column("name", sa.String(length=80), nullable=False),
        sa.Column("token_hash", sa.String(length=64), nullable=False),
        sa.Column("created_ms", sa.BigInteger(), nullable=False),
        sa.Column("last_seen_ms", sa.BigInteger(), nullable=False),
        sa.Column("revoked_ms", sa.BigInteger(), nullable=True),
        sa.ForeignKeyConstraint(
            ["household_id"], ["households.id"], name=op.f("fk_devices_household_id"), ondelete="CASCADE"
        ),
        sa.PrimaryKeyConstraint("household_id", "id", name=op.f("pk_devices")),
        sa.UniqueConstraint("token_hash", name=op.f("uq_devices_token_hash")),
    )


def _make_pass_secrets() -> None:
    op.create_table(
        "pass_secrets",
        sa.Column("household_id", sa.String(length=36), nullable=False),
        sa.Column("pass_id", sa.String(length=36), nullable=False),
        sa.Column("secret_hash", sa.String(length=64), nullable=False),
        sa.Column("code_hash", sa.String(length=64), nullable=False),
        sa.Column("made_ms", sa.BigInteger(), nullable=False),
        sa.ForeignKeyConstraint(
            ["household_id"], ["households.id"], name=op.f("fk_pass_secrets_household_id"), ondelete="CASCADE"
        ),
        sa.PrimaryKeyConstraint("household_id", "pass_id", name=op.f("pk_pass_secrets")),
        sa.UniqueConstraint("code_hash", name=op.f("uq_pass_secrets_code_hash")),
        sa.UniqueConstraint("secret_hash", name=op.f("uq_pass_secrets_secret_hash")),
    )


def _make_feed_tokens() -> None:
    op.create_table(
        "feed_tokens",
        sa.Column("household_id", sa.String(length=36), nullable=False),
        sa.Column("id", sa.String(length=36), nullable=False),
        sa.Column("pass_id", sa.String(length=36), nullable=True),
        sa.Column("token_hash", sa.String(length=64), nullable=False),
        sa.Column("made_ms", sa.BigInteger(), nullable=False),
        sa.Column("expires_ms", sa.BigInteger(), nullable=False),
        sa.ForeignKeyConstraint(
            ["household_id"], ["households.id"], name=op.f("fk_feed_tokens_household_id"), ondelete="CASCADE"
        ),
        sa.PrimaryKeyConstraint("household_id", "id", name=op.f("pk_feed_tokens")),
        sa.UniqueConstraint("token_hash", name=op.f("uq_feed_tokens_token_hash")),
    )


def _make_feed_events() -> None:
    op.create_table(
        "feed_events",
        sa.Column("household_id", sa.String(length=36), nullable=False),
        sa.Column("feed_id", sa.String(length=36), nullable=False),
        sa.Column("key", sa.String(length=140), nullable=False),
        sa.Column("local_date", sa.String(length=10), nullable=False),
        sa.Column("slot", sa.String(length=120), nullable=False),
        sa.Column("at_ms", sa.BigInteger(), nullable=False),
        sa.Column("sequence", sa.Integer(), nullable=False),
        sa.Column("moved_ms", sa.BigInteger(), nullable=True),
        sa.ForeignKeyConstraint(
            ["household_id", "feed_id"],
            ["feed_tokens.household_id", "feed_tokens.id"],
            name=op.f("fk_feed_events_household_id_feed_id"),
            ondelete="CASCADE",
        ),
        sa.PrimaryKeyConstraint("household_id", "feed_id", "key", name=op.f("pk_feed_events")),
    )


def _make_occurrences() -> None:
    op.create_table(
        "occurrences",
        sa.Column("household_id", sa.String(length=36), nullable=False),
        sa.Column("id", sa.String(length=36), nullable=False),
        sa.Column("subject_kind", sa.String(length=10), nullable=False),
        sa.Column("subject_id", sa.String(length=36), nullable=False),
        sa.Column("need", sa.String(length=20), nullable=False),
        sa.Column("local_date", sa.String(length=10), nullable=False),
        sa.Column("slot", sa.String(length=120), nullable=False),
        sa.Column("task_key", sa.String(length=120), nullable=False),
        sa.Column("urgent", sa.Boolean(), nullable=False),
        sa.Column("follows", sa.Boolean(), nullable=False),
        sa.Column("due_ms", sa.BigInteger(), nullable=False),
        sa.Column("at_ms", sa.BigInteger(), nullable=False),
        sa.Column("state", sa.String(length=10), nullable=False),
        sa.Column("steps", sa.Integer(), nullable=False),
        sa.Column("told_ms", sa.BigInteger(), nullable=True),
        sa.Column("closed_ms", sa.BigInteger(), nullable=True),
        sa.Column("wake_ms", sa.BigInteger(), nullable=True),
        sa.ForeignKeyConstraint(
            ["household_id"], ["households.id"], name=op.f("fk_occurrences_household_id"), ondelete="CASCADE"
        ),
        sa.PrimaryKeyConstraint("household_id", "id", name=op.f("pk_occurrences")),
        sa.UniqueConstraint(
            "household_id",
            "subject_kind",
            "subject_id",
            "need",
            "local_date",
            "slot",
            name="uq_occurrences_round",
        ),
    )
    op.create_index("ix_occurrences_house_wake_ms", "occurrences", ["household_id", "wake_ms"], unique=False)
    op.create_index("ix_occurrences_wake_ms", "occurrences", ["wake_ms"], unique=False)


def _make_push_subscriptions() -> None:
    op.create_table(
        "push_subscriptions",
        sa.Column("household_id", sa.String(length=36), nullable=False),
        sa.Column("id", sa.String(length=36), nullable=False),
        sa.Column("person_id", sa.String(length=36), nullable=False),
        sa.Column("device_id", sa.String(length=36), nullable=False),
        sa.Column("endpoint", sa.Text(), nullable=False),
        sa.Column("host", sa.String(length=255), nullable=False),
        sa.Column("p256dh", sa.String(length=100), nullable=False),
        sa.Column("auth", sa.String(length=40), nullable=False),
        sa.Column("key_id", sa.String(length=32), nullable=False),
        sa.Column("created_ms", sa.BigInteger(), nullable=False),
        sa.Column("seen_ms", sa.BigInteger(), nullable=False),
        sa.Column("delivered_ms", sa.BigInteger(), nullable=True),
        sa.Column("acked_ms", sa.BigInteger(), nullable=True),
        sa.Column("outcome", sa.String(length=40), nullable=True),
        sa.Column("failures", sa.Integer(), nullable=False),
        sa.Column("suspect_since_ms", sa.BigInteger(), nullable=True),
        sa.ForeignKeyConstraint(
            ["household_id"],
            ["households.id"],
            name=op.f("fk_push_subscriptions_household_id"),
            ondelete="CASCADE",
        ),
        sa.PrimaryKeyConstraint("household_id", "id", name=op.f("pk_push_subscriptions")),
        sa.UniqueConstraint(
            "household_id", "device_id", name=op.f("uq_push_subscriptions_household_id_device_id")
        ),
    )
    op.create_index("ix_push_subscriptions_host", "push_subscriptions", ["host"], unique=False)
    op.create_index(
        "ix_push_subscriptions_person", "push_subscriptions", ["household_id", "person_id"], unique=False
    )


def _make_nudges() -> None:
    op.create_table(
        "nudges",
        sa.Column("household_id", sa.String(length=36), nullable=False),
        sa.Column("id", sa.String(length=36), nullable=False),
        sa.Column("person_id", sa.String(length=36), nullable=False),
        sa.Column("local_date", sa.String(length=10), nullable=False),
        sa.Column("slot", sa.String(length=120), nullable=False),
        sa.Column("step", sa.Integer(), nullable=False),
        sa.Column("urgent", sa.Boolean(), nullable=False),
        sa.Column("made_ms", sa.BigInteger(), nullable=False),
        sa.ForeignKeyConstraint(
            ["household_id"], ["households.id"], name=op.f("fk_nudges_household_id"), ondelete="CASCADE"
        ),
        sa.PrimaryKeyConstraint("household_id", "id", name=op.f("pk_nudges")),
        sa.UniqueConstraint(
            "household_id",
            "person_id",
            "local_date",
            "slot",
            "step",
            name=op.f("uq_nudges_household_id_person_id_local_date_slot_step"),
        ),
    )


def _make_nudge_items() -> None:
    op.create_table(
        "nudge_items",
        sa.Column("household_id", sa.String(length=36), nullable=False),
        sa.Column("nudge_id", sa.String(length=36), nullable=False),
        sa.Column("occurrence_id", sa.String(length=36), nullable=False),
        sa.Column("position", sa.Integer(), nullable=False),
        sa.Column("item", sa.Text(), nullable=False),
        sa.ForeignKeyConstraint(
            ["household_id", "nudge_id"],
            ["nudges.household_id", "nudges.id"],
            name=op.f("fk_nudge_items_household_id_nudge_id"),
            ondelete="CASCADE",
        ),
        sa.ForeignKeyConstraint(
            ["household_id", "occurrence_id"],
            ["occurrences.household_id", "occurrences.id"],
            name=op.f("fk_nudge_items_household_id_occurrence_id"),
            ondelete="CASCADE",
        ),
        sa.PrimaryKeyConstraint("household_id", "nudge_id", "occurrence_id", name=op.f("pk_nudge_items")),
    )
    op.create_index(
        "ix_nudge_items_occurrence", "nudge_items", ["household_id", "occurrence_id"], unique=False
    )


def _make_deliveries() -> None:
    op.create_table(
        "deliveries",
        sa.Column("household_id", sa.String(length=36), nullable=False),
        sa.Column("id", sa.String(length=43), nullable=False),
        sa.Column("nudge_id", sa.String(length=36), nullable=True),
        sa.Column("subscription_id", sa.String(length=36), nullable=False),
        sa.Column("host", sa.String(length=255), nullable=False),
        sa.Column("state", sa.String(length=10), nullable=False),
        sa.Column("wake_ms", sa.BigInteger(), nullable=True),
        sa.Column("owner", sa.String(length=36), nullable=True),
        sa.Column("attempts", sa.Integer(), nullable=False),
        sa.Column("short", sa.Boolean(), nullable=False),
        sa.Column("made_ms", sa.BigInteger(), nullable=False),
        sa.Column("due_ms", sa.BigInteger(), nullable=True),
        sa.Column("useless_ms", sa.BigInteger(), nullable=False),
        sa.Column("done_ms", sa.BigInteger(), nullable=True),
        sa.Column("outcome", sa.String(length=40), nullable=True),
        sa.Column("acked_ms", sa.BigInteger(), nullable=True),
        sa.Column("shown", sa.Boolean(), nullable=True),
        sa.Column("notice", sa.Text(), nullable=True),
        sa.ForeignKeyConstraint(
            ["household_id", "nudge_id"],
            ["nudges.household_id", "nudges.id"],
            name=op.f("fk_deliveries_household_id_nudge_id"),
            ondelete="CASCADE",
        ),
        sa.ForeignKeyConstraint(
            ["household_id", "subscription_id"],
            ["push_subscriptions.household_id", "push_subscriptions.id"],
            name=op.f("fk_deliveries_household_id_subscription_id"),
            ondelete="CASCADE",
        ),
        sa.PrimaryKeyConstraint("household_id", "id", name=op.f("pk_deliveries")),
        sa.UniqueConstraint(
            "household_id",
            "nudge_id",
            "subscription_id",
            name=op.f("uq_deliveries_household_id_nudge_id_subscription_id"),
        ),
    )
    op.create_index("ix_deliveries_id", "deliveries", ["id"], unique=False)
    op.create_index(
        "ix_deliveries_subscription", "deliveries", ["household_id", "subscription_id"], unique=False
    )
    op.create_index(
        "ix_deliveries_waiting",
        "deliveries",
        ["host", "wake_ms"],
        unique=False,
        sqlite_where=sa.text("wake_ms IS NOT NULL"),
        postgresql_where=sa.text("wake_ms IS NOT NULL"),
    )


def _make_journal() -> None:
    op.create_table(
        "journal",
        sa.Column("household_id", sa.String(length=36), nullable=False),
        sa.Column("id", sa.String(length=36), nullable=False),
        sa.Column("at_ms", sa.BigInteger(), nullable=False),
        sa.Column("what", sa.String(length=20), nullable=False),
        sa.Column("person_id", sa.String(length=36), nullable=True),
        sa.Column("device_id", sa.String(length=36), nullable=True),
        sa.Column("args", sa.Text(), nullable=False),
        sa.ForeignKeyConstraint(
            ["household_id"], ["households.id"], name=op.f("fk_journal_household_id"), ondelete="CASCADE"
        ),
        sa.PrimaryKeyConstraint("household_id", "id", name=op.f("pk_journal")),
    )


def _make_usage() -> None:
    op.create_table(
        "usage",
        sa.Column("household_id", sa.String(length=36), nullable=False),
        sa.Column("subject", sa.String(length=36), nullable=False),
        sa.Column("day", sa.Integer(), nullable=False),
        sa.Column("operations", sa.Integer(), nullable=False),
        sa.Column("bytes", sa.BigInteger(), nullable=False),
        sa.Column("pictures", sa.Integer(), nullable=False),
        sa.ForeignKeyConstraint(
            ["household_id"], ["households.id"], name=op.f("fk_usage_household_id"), ondelete="CASCADE"
        ),
        sa.PrimaryKeyConstraint("household_id", "subject", "day", name=op.f("pk_usage")),
    )


_REMADE: Final[dict[str, tuple[Callable[[], None], str, str]]] = {
    "devices": (
        _make_devices,
        "old_devices AS e",
        "id person_id pass_id role name token_hash created_ms last_seen_ms revoked_ms",
    ),
    "pass_secrets": (_make_pass_secrets, "old_pass_secrets AS e", "pass_id secret_hash code_hash made_ms"),
    "feed_tokens": (_make_feed_tokens, "old_feed_tokens AS e", "id pass_id token_hash made_ms expires_ms"),
    "feed_events": (
        _make_feed_events,
        "old_feed_events AS e JOIN old_feed_tokens AS t ON t.id = e.feed_id",
        "feed_id key local_date slot at_ms sequence moved_ms",
    ),
    "occurrences": (
        _make_occurrences,
        "old_occurrences AS e",
        "id subject_kind subject_id need local_date slot task_key urgent follows due_ms at_ms state steps told_ms closed_ms wake_ms",
    ),
    "push_subscriptions": (
        _make_push_subscriptions,
        "old_push_subscriptions AS e",
        "id person_id device_id endpoint host p256dh auth key_id created_ms seen_ms delivered_ms acked_ms outcome failures suspect_since_ms",
    ),
    "nudges": (_make_nudges, "old_nudges AS e", "id person_id local_date slot step urgent made_ms"),
    "nudge_items": (
        _make_nudge_items,
        "old_nudge_items AS e JOIN old_nudges AS t ON t.id = e.nudge_id JOIN old_occurrences AS o ON o.id = e.occurrence_id AND o.household_id = t.household_id",
        "nudge_id occurrence_id position item",
    ),
    "deliveries": (
        _make_deliveries,
        "old_deliveries AS e JOIN old_push_subscriptions AS t ON t.id = e.subscription_id LEFT JOIN old_nudges AS n ON n.id = e.nudge_id WHERE e.nudge_id IS NULL OR n.household_id = t.household_id",
        "id nudge_id subscription_id host state wake_ms owner attempts short made_ms due_ms useless_ms done_ms outcome acked_ms shown",
    ),
}
"""How each table is made, where its rows come from (``e`` its own, ``t`` whose household they have), its columns.

What joined two households is left behind.
"""
