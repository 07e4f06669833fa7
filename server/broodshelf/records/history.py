"""What a person sees of the past: the revisions of a record, and what went last and can be taken back."""

from __future__ import annotations

import json
from collections.abc import Mapping, Sequence
from typing import Any

from sqlalchemy import Connection, and_, select

from ..model.kinds import KINDS
from .tables import records, revisions

DERIVED = tuple(name for name, kind in KINDS.items() if kind.group == "derived")
"""Kinds that the server makes; they have no history."""


def read_history(connection: Connection, household_id: str, record_id: str) -> list[dict[str, Any]]:
    """Return a record's revisions, newest first, in the shape of docs/http-api.md.

    The line of its making may have been thinned (``thinning``): then the record itself tells it.
    """
    rows = connection.execute(
        select(revisions)
        .where(revisions.c.household_id == household_id, revisions.c.record_id == record_id)
        .order_by(revisions.c.rev.desc())
    )
    found = [
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
    if found and all(value is None for value in found[-1]["before"].values()):
        return found
    return [*found, *_as_it_was_made(connection, household_id, record_id, found)]


def _as_it_was_made(
    connection: Connection, household_id: str, record_id: str, later: Sequence[Mapping[str, Any]]
) -> list[dict[str, Any]]:
    """Return the line of a record's making, from the record itself without what later lines changed."""
    mine = (records.c.household_id == household_id, records.c.id == record_id)
    row = connection.execute(select(records).where(*mine, records.c.kind.not_in(DERIVED))).one_or_none()
    if row is None:
        return []
    values = json.loads(row.fields)
    for line in later:
        values |= {name: line["before"].get(name) for name in line["asked"] if name not in line["lost"]}
    asked = {name: value for name, value in values.items() if value is not None}
    past = {"rev": row.rev if not later else 0, "at_ms": row.made_ms, "by": row.person_id, "op_id": None}
    return [{**past, "asked": asked, "before": dict.fromkeys(asked), "lost": {}}]


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
