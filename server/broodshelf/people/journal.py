"""The keepers' journal: what happened to a household's doors. Stored with the household, bounded, for keepers only.

``note`` is called by whoever does such a thing, in the transaction that does it.
"""

from __future__ import annotations

import json
from collections.abc import Iterable
from dataclasses import dataclass
from typing import Any, Final, Literal, get_args

from sqlalchemy import Connection, delete, insert, select, update

from ..model.gauges import DAY_MS
from ..records.ids import uuid7
from ..records.tables import households
from .actor import Actor
from .tables import claim_codes, journal, pass_secrets

What = Literal[
    "new_phone",
    "phone_removed",
    "person_removed",
    "way_back",
    "link_made",
    "pass_opened",
    "pass_ended",
    "wrong_codes",
    "export",
    "import",
    "restore",
]
MOST: Final = 500
"""Entries that a household keeps; older ones go."""
MOST_CONCERNED: Final = 50
"""A wrong code of a stranger is told to the households that such a code could open, on a small server."""


@dataclass(frozen=True, slots=True)
class Doer:
    """At whose doors something happened, who did it and on which phone, as far as that is known."""

    household_id: str
    person_id: str | None = None
    device_id: str | None = None

    @classmethod
    def of(cls, actor: Actor) -> Doer:
        """Return somebody who is signed in."""
        return cls(actor.household_id, actor.person_id, actor.device_id)


def note(connection: Connection, doer: Doer, what: What, now_ms: int, **args: str | int) -> None:
    """Write down what happened; ``args`` are names and numbers as they then were."""
    if what not in get_args(What):
        raise ValueError(f"The journal has no words for {what!r}.")
    connection.execute(
        insert(journal).values(
            household_id=doer.household_id,
            id=uuid7(now_ms),
            at_ms=now_ms,
            what=what,
            person_id=doer.person_id,
            device_id=doer.device_id,
            args=json.dumps(args, ensure_ascii=False),
        )
    )
    j = journal.c
    mine = j.household_id == doer.household_id
    last = connection.scalar(select(j.id).where(mine).order_by(j.id.desc()).offset(MOST - 1).limit(1))
    if last is not None:
        connection.execute(delete(journal).where(mine, j.id < last))


def note_for_all(connection: Connection, what: What, now_ms: int) -> None:
    """Write down for every household what the operator did to the whole server."""
    for household_id in connection.scalars(select(households.c.id)).all():
        note(connection, Doer(household_id), what, now_ms)


def note_wrong_code(connection: Connection, doer: Doer, where: str, now_ms: int) -> None:
    """Count a wrong code: one entry a day, place and person, so that guessing cannot push out the rest."""
    j = journal.c
    query = (
        select(j.id, j.args)
        .where(
            j.household_id == doer.household_id,
            j.what == "wrong_codes",
            j.at_ms > now_ms - DAY_MS,
            j.person_id.is_not_distinct_from(doer.person_id),
        )
        .order_by(j.id.desc())
    )
    for row in connection.execute(query):
        args = json.loads(row.args)
        if args["where"] == where:
            more = json.dumps({**args, "count": args["count"] + 1}, ensure_ascii=False)
            connection.execute(
                update(journal).where(j.household_id == doer.household_id, j.id == row.id).values(args=more)
            )
            return
    note(connection, doer, "wrong_codes", now_ms, where=where, count=1)


def concerned(connection: Connection, where: Literal["claim", "pass"], now_ms: int) -> list[str]:
    """Return the households that a code of this sort could open now; none on a server with very many."""
    if where == "pass":
        query = select(pass_secrets.c.household_id).distinct()
    else:
        c = claim_codes.c
        query = (
            select(c.for_household)
            .where(c.for_household.is_not(None), c.used_ms.is_(None), c.expires_ms >= now_ms)
            .distinct()
        )
    found = connection.scalars(query.limit(MOST_CONCERNED + 1)).all()
    return list(found) if len(found) <= MOST_CONCERNED else []


def entries(connection: Connection, household_id: str) -> list[dict[str, Any]]:
    """Return the household's entries, newest first, in the shape of docs/http-api.md."""
    j = journal.c
    rows = connection.execute(
        select(j.id, j.at_ms, j.what, j.person_id, j.args)
        .where(j.household_id == household_id)
        .order_by(j.id.desc())
    )
    return list(_told(rows))


def _told(rows: Iterable[Any]) -> Iterable[dict[str, Any]]:
    for row in rows:
        args = json.loads(row.args)
        yield {"id": row.id, "at_ms": row.at_ms, "what": row.what, "by": row.person_id, "args": args}
