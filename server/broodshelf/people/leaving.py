"""A person who was deleted is gone at once: phones, codes, pass, mail and calendar end in the same transaction."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Final

from sqlalchemy import delete, select, update

from ..records.store import Ledger
from .calendars import end_calendars
from .passes import end_pass
from .tables import claim_codes, devices, feed_tokens, mail_addresses, pairings


@dataclass(frozen=True, slots=True)
class Left:
    """What ended with these people. Whoever called also ends where they listen, and notes it outside the database."""

    people: tuple[str, ...] = ()
    devices: tuple[str, ...] = ()
    passes: tuple[str, ...] = ()
    colonies: frozenset[str] = frozenset()
    """Whose plans have to be made again."""


NOBODY: Final = Left()


def end_people(ledger: Ledger, person_ids: Iterable[str], now_ms: int) -> Left:
    """End all that lets these people of the household in or tells them anything. The caller flushes the ledger."""
    connection, household_id = ledger.connection, ledger.household_id
    people = sorted(person_ids)
    d = devices.c
    theirs = (d.household_id == household_id, d.person_id.in_(people), d.revoked_ms.is_(None))
    phones = tuple(connection.scalars(select(d.id).where(*theirs)))
    connection.execute(update(devices).where(*theirs).values(revoked_ms=now_ms))
    m = mail_addresses.c
    connection.execute(delete(mail_addresses).where(m.household_id == household_id, m.person_id.in_(people)))
    end_calendars(connection, household_id, feed_tokens.c.person_id.in_(people), now_ms)
    for table in (claim_codes, pairings):
        t = table.c
        connection.execute(delete(table).where(t.for_household == household_id, t.person_id.in_(people)))
    ledger.load(people)
    given = {person.values.get("pass_id") for i in people if (person := ledger.get(i)) is not None}
    ended = {p: end_pass(ledger, p, now_ms) for p in sorted(filter(None, given))}
    known = {p: colonies for p, colonies in ended.items() if colonies is not None}
    return Left(tuple(people), phones, tuple(known), frozenset().union(*known.values()))
