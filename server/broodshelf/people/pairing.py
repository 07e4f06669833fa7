"""Pairing a new phone: it shows a code, a signed-in keeper looks at it and approves."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from sqlalchemy import Connection, delete, func, insert, or_, select, update

from ..errors import Gone, NotFound, TooMany
from ..languages import told
from ..model.gauges import DAY_MS
from ..model.kinds import Person
from ..records.home.ending import note_ended
from ..records.ids import uuid7
from ..records.store import Ledger, read_record
from .actor import Actor
from .devices import AGAIN_MS
from .households import add_person
from .secrets import hash_code, hash_token, new_code, new_token
from .tables import pairings

LASTS_MS = 10 * 60_000
KEPT_MS = DAY_MS
"""How long a pairing that is over is kept, so that a phone that collects late is told so."""
MOST_OPEN = 5_000
"""Pairings that wait at once on a server; each is a few hundred bytes and gone after a day."""


@dataclass(frozen=True, slots=True)
class Asked:
    """What the new phone gets: the code to show and the secret with which only it can collect."""

    pairing_id: str
    code: str
    collect_secret: str
    expires_ms: int


@dataclass(frozen=True, slots=True)
class Collected:
    """An approved pairing, ready to sign the device in."""

    device_id: str
    device_name: str
    household_id: str
    person_id: str


@dataclass(frozen=True, slots=True)
class KnownKeeper:
    """Somebody of the household, who gets one more phone."""

    person_id: str


@dataclass(frozen=True, slots=True)
class NewKeeper:
    """Somebody whom the household does not know yet."""

    name: str


def ask(
    connection: Connection, device_id: str, device_name: str, now_ms: int, secret: str | None = None
) -> Asked:
    """Open a pairing for a new phone. Lasts ten minutes, works once.

    ``secret``: the phone's own, to collect with. One that asks again, as its page was loaded anew, gets another code
    for the pairing that it has, which somebody may have approved meanwhile.
    """
    code, collect_secret, expires_ms = new_code(), secret or new_token(), now_ms + LASTS_MS
    c = pairings.c
    values = {"code_hash": hash_code(code), "asked_ms": now_ms, "expires_ms": expires_ms}
    its = select(c.id).where(
        c.collect_hash == hash_token(collect_secret),
        c.expires_ms >= now_ms,
        or_(c.collected_ms.is_(None), c.collected_ms >= now_ms - AGAIN_MS),
    )
    known = connection.scalars(its.order_by(c.id.desc())).first()
    if known is not None:
        connection.execute(update(pairings).where(c.id == known).values(**values))
        return Asked(known, code, collect_secret, expires_ms)
    waiting = select(func.count()).select_from(pairings).where(c.expires_ms >= now_ms)
    if connection.execute(waiting).scalar_one() >= MOST_OPEN:
        raise TooMany(told("problem-too-many-phones-ask"), retry_after_s=600)
    asked = Asked(uuid7(now_ms), code, collect_secret, expires_ms)
    connection.execute(
        insert(pairings).values(
            id=asked.pairing_id,
            collect_hash=hash_token(collect_secret),
            device_id=device_id,
            device_name=device_name,
            **values,
        )
    )
    return asked


def look(connection: Connection, code: str, now_ms: int) -> dict[str, Any]:
    """Return which phone shows this code, so that the keeper can compare."""
    row = _open(connection, code, now_ms)
    return {"device_name": row.device_name, "asked_ms": row.asked_ms}


def approve(
    connection: Connection, actor: Actor, code: str, whom: KnownKeeper | NewKeeper, now_ms: int
) -> None:
    """Let the phone with this code in. Raises ``Gone`` where none shows it, ``NotFound`` for an unknown keeper."""
    row = _open(connection, code, now_ms, locked=True)
    if isinstance(whom, NewKeeper):
        ledger = Ledger(connection, actor.household_id)
        person_id = add_person(ledger, Person(name=whom.name, role="keeper"), now_ms)
        ledger.flush()
    else:
        person_id = whom.person_id
        person = read_record(connection, actor.household_id, person_id)
        if person is None or person.gone or person.kind != "person" or person.values.get("role") != "keeper":
            raise NotFound(told("problem-no-keeper"))
    connection.execute(
        update(pairings)
        .where(pairings.c.id == row.id)
        .values(for_household=actor.household_id, person_id=person_id)
    )


def collect(connection: Connection, pairing_id: str, collect_secret: str, now_ms: int) -> Collected | None:
    """Return the approved pairing once, or None while it waits. Raises ``Gone`` when it is over."""
    row = connection.execute(
        select(pairings).where(
            pairings.c.id == pairing_id, pairings.c.collect_hash == hash_token(collect_secret)
        )
    ).one_or_none()
    if row is None or row.collected_ms is not None or row.expires_ms < now_ms:
        raise Gone(told("problem-pairing-over"), code="pairing_ended")
    if row.person_id is None:
        return None
    done = connection.execute(
        update(pairings)
        .where(pairings.c.id == row.id, pairings.c.collected_ms.is_(None))
        .values(collected_ms=now_ms)
    )
    if done.rowcount != 1:
        raise Gone(told("problem-pairing-used"), code="pairing_ended")
    note_ended(connection, "pairing", row.for_household, [row.id], now_ms)
    return Collected(row.device_id, row.device_name, row.for_household, row.person_id)


def forget_old(connection: Connection, now_ms: int) -> None:
    """Delete pairings that ended a day ago."""
    connection.execute(delete(pairings).where(pairings.c.expires_ms < now_ms - KEPT_MS))


def _open(connection: Connection, code: str, now_ms: int, *, locked: bool = False) -> Any:
    query = select(pairings).where(
        pairings.c.code_hash == hash_code(code),
        pairings.c.expires_ms >= now_ms,
        pairings.c.person_id.is_(None),
    )
    row = connection.execute(query.with_for_update() if locked else query).one_or_none()
    if row is None:
        raise Gone(told("problem-pairing-unknown"), code="pairing_ended")
    return row
