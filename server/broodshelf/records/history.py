"""What a person sees of the past: the revisions of a record, and what went last and can be taken back."""

from __future__ import annotations

import json
from typing import Any

from sqlalchemy import Connection, and_, select

from .tables import records, revisions


def read_history(connection: Connection, household_id: str, record_id: str) -> list[dict[str, Any]]:
    """Return a record's revisions, newest first, in the shape of docs/http-api.md."""
    rows = connection.execute(
        select(revisions)
        .where(revisions.c.household_id == household_id, revisions.c.record_id == record_id)
        .order_by(revisions.c.rev.desc())
    )
    return [
        {
            "rev": row.rev,
            "at_ms": row.at_ms,
            "by": row.person_id,
            "op_id": row.op_id,
            "asked": json.loads(row.asked),
            "before": json.loads(row.before),
            "lost": json.loads(row.lost),
        }
        for row in rows
    ]


def read_gone(connection: Connection, household_id: str, most: int) -> list[dict[str, Any]]:
    """Return the ``most`` records that went last and can be taken back, newest first, as docs/http-api.md says."""
    rows = connection.execute(
        select(
            records.c.id,
            records.c.kind,
            records.c.rev,
            records.c.fields,
            revisions.c.at_ms,
            revisions.c.person_id,
        )
        .join(
            revisions,
            and_(
                revisions.c.household_id == records.c.household_id,
                revisions.c.rev == records.c.rev,
                revisions.c.record_id == records.c.id,
            ),
        )
        .where(records.c.household_id == household_id, records.c.gone.is_(True))
        .order_by(records.c.rev.desc())
        .limit(most)
    )
    return [
        {
            "id": row.id,
            "kind": row.kind,
            "rev": row.rev,
            "at_ms": row.at_ms,
            "by": row.person_id,
            "set": json.loads(row.fields),
        }
        for row in rows
    ]
