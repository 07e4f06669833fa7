"""What a stand-in put off ends with the pass, also when the pass is taken back or made shorter."""

from __future__ import annotations

import datetime as dt

from sqlalchemy import select

from ..records.store import Ledger, read_kind
from ..records.tables import records
from ..records.types import happened_ms


def shorten_put_offs(ledger: Ledger, pass_id: str, ends_ms: int, now_ms: int) -> set[str]:
    """Let what this pass's stand-ins put off beyond its end come back then; return the colonies concerned.

    The caller flushes the ledger and makes those colonies' plans again.
    """
    people = read_kind(ledger.connection, ledger.household_id, "person", gone=True)
    guests = [person.id for person in people if person.values.get("pass_id") == pass_id]
    if not guests:
        return set()
    c = records.c
    ids = ledger.connection.scalars(
        select(c.id).where(
            c.household_id == ledger.household_id,
            c.kind == "later",
            c.gone.is_(False),
            c.person_id.in_(guests),
        )
    ).all()
    ledger.load(ids)
    colonies: set[str] = set()
    for wish_id in ids:
        wish = ledger.get(wish_id)
        if wish is not None and not wish.gone and happened_ms(wish.values["until"]) > ends_ms:
            ledger.put(wish_id, "later", {"until": _instant(ends_ms)}, now_ms=now_ms)
            colonies.add(str(wish.values["colony_id"]))
    return colonies


def _instant(at_ms: int) -> str:
    return dt.datetime.fromtimestamp(at_ms / 1000, dt.UTC).isoformat(timespec="milliseconds")
