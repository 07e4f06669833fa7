"""Devices and their sessions: a 256-bit token in a cookie, hashed at rest, ended by time or by a keeper."""

from __future__ import annotations

from dataclasses import asdict, dataclass
from itertools import chain, count
from typing import Any, Final

from sqlalchemy import Connection, and_, bindparam, insert, select, update

from ..errors import BadRequest, NotFound, SignedOut
from ..languages import told
from ..model.gauges import DAY_MS
from ..records.home.ending import note_ended
from ..records.tables import records
from .actor import Actor, ActorRole
from .passes import window_of
from .secrets import hash_code, hash_token, new_token
from .tables import devices

IDLE_MS = 90 * DAY_MS
"""A phone that was not used for 90 days asks to be paired again: longer than a winter rest without looks."""
ABSOLUTE_MS = 400 * DAY_MS
"""The longest that browsers keep a cookie."""
AGAIN_MS = 10 * 60_000
"""How long a phone that did not hear that it was let in may ask again."""
MOST_NAME = 80
SEEN_EVERY_MS = 10 * 60_000


@dataclass(frozen=True, slots=True)
class Phone:
    """A phone as it introduces itself."""

    id: str
    name: str
    again_hash: str | None = None
    """By which it may ask again (``again_hash``); None for a phone that has no secret."""


@dataclass(frozen=True, slots=True)
class Owner:
    """Whose a phone is: a keeper's, or a stand-in's by a pass."""

    household_id: str
    person_id: str
    role: ActorRole = "keeper"
    pass_id: str | None = None


@dataclass(frozen=True, slots=True)
class Session:
    """A new session: the token goes into the cookie and is not kept."""

    token: str
    device_id: str


def again_hash(secret: str | None, asked_with: str) -> str | None:
    """Return the hash of a phone's own secret and of what it asks with, a code or nothing; None without a secret."""
    return hash_token(f"{secret} {hash_code(asked_with)}") if secret else None


def sign_in_again(connection: Connection, asks: str | None, now_ms: int) -> Session | None:
    """Renew the session of a phone that was let in and did not hear of it; None for any other, which is let in anew.

    ``asks``: an ``again_hash``. It holds for ten minutes from the phone's being let in, and until the phone leaves or a
    keeper removes it. The session is that of the device id with which the phone was let in, whatever it says now.
    """
    if asks is None:
        return None
    if connection.dialect.name == "postgresql":  # its first request may still be under way
        connection.exec_driver_sql(f"SELECT pg_advisory_xact_lock({int(asks[:15], 16)})")
    d = devices.c
    query = select(d.household_id, d.id, d.token_hash).where(
        d.again_hash == asks, d.created_ms >= now_ms - AGAIN_MS, d.revoked_ms.is_(None)
    )
    row = connection.execute(query.order_by(d.created_ms.desc())).first()
    if row is None:
        return None
    token = new_token()
    note_ended(connection, "session", row.household_id, [row.token_hash], now_ms)
    connection.execute(
        update(devices).where(*_of(row.household_id, row.id)).values(token_hash=hash_token(token))
    )
    return Session(token, row.id)


def sign_in(connection: Connection, phone: Phone, owner: Owner, now_ms: int) -> Session:
    """Make or renew a device's session. A device id in use belongs to its owner; to anybody else it is refused.

    Phones of a kind call themselves the same; the second of a household gets a number after its name.
    """
    token = new_token()
    row = connection.execute(select(devices).where(devices.c.id == phone.id)).one_or_none()
    values: dict[str, Any] = {
        **asdict(owner),
        "name": _free_name(connection, owner.household_id, phone),
        "token_hash": hash_token(token),
        "created_ms": now_ms,
        "last_seen_ms": now_ms,
        "revoked_ms": None,
        "again_hash": phone.again_hash,
    }
    if row is None:
        connection.execute(insert(devices).values(id=phone.id, **values))
    elif Owner(row.household_id, row.person_id, row.role, row.pass_id) == owner and row.revoked_ms is None:
        note_ended(connection, "session", owner.household_id, [row.token_hash], now_ms)
        connection.execute(update(devices).where(*_of(owner.household_id, phone.id)).values(**values))
    else:
        raise BadRequest(
            told("problem-device-id-taken"),
            code="device_id_taken",
            fields={"device.id": "taken"},
        )
    return Session(token, phone.id)


def _free_name(connection: Connection, household_id: str, phone: Phone) -> str:
    c = devices.c
    taken = set(
        connection.scalars(
            select(c.name).where(c.household_id == household_id, c.revoked_ms.is_(None), c.id != phone.id)
        )
    )
    numbered = (f"{phone.name[: MOST_NAME - 4]} {n}" for n in count(2))
    return next(name for name in chain([phone.name], numbered) if name not in taken)


@dataclass(frozen=True, slots=True)
class Visit:
    """Who is behind a session token, and whether that phone was marked as seen in the last ten minutes."""

    actor: Actor
    seen_lately: bool


_BY_TOKEN: Final = (
    select(devices, records.c.gone.label("person_gone"))
    .outerjoin(
        records, and_(records.c.household_id == devices.c.household_id, records.c.id == devices.c.person_id)
    )
    .where(devices.c.token_hash == bindparam("token_hash"))
)


def visit_of(connection: Connection, token: str | None, now_ms: int) -> Visit:
    """Return who is behind a session token. Raises ``SignedOut`` with the reason in its code."""
    if not token:
        raise SignedOut
    row = connection.execute(_BY_TOKEN, {"token_hash": hash_token(token)}).one_or_none()
    if row is None:
        raise SignedOut
    if row.revoked_ms is not None:
        raise SignedOut(told("problem-device-revoked"), code="device_revoked")
    if now_ms - row.last_seen_ms > IDLE_MS or now_ms - row.created_ms > ABSOLUTE_MS:
        raise SignedOut(
            told("problem-session-old"),
            code="session_old",
        )
    if row.person_gone:
        raise SignedOut(told("problem-person-removed"), code="device_revoked")
    window = window_of(connection, row.household_id, row.pass_id, now_ms) if row.pass_id else None
    actor = Actor(row.household_id, row.person_id, row.id, row.role, window)
    return Visit(actor, row.last_seen_ms >= now_ms - SEEN_EVERY_MS)


def actor_of(connection: Connection, token: str | None, now_ms: int) -> Actor:
    """Return who is behind a session token. Raises ``SignedOut`` with the reason in its code."""
    return visit_of(connection, token, now_ms).actor


def mark_seen(connection: Connection, household_id: str, device_id: str, now_ms: int) -> None:
    """Note that a device was here."""
    connection.execute(update(devices).where(*_of(household_id, device_id)).values(last_seen_ms=now_ms))


def list_devices(connection: Connection, actor: Actor) -> list[dict[str, Any]]:
    """Return a household's devices that are not revoked, newest use first."""
    rows = connection.execute(
        select(devices)
        .where(devices.c.household_id == actor.household_id, devices.c.revoked_ms.is_(None))
        .order_by(devices.c.last_seen_ms.desc())
    )
    return [
        {
            "id": row.id,
            "name": row.name,
            "person_id": row.person_id,
            "role": row.role,
            "pass_id": row.pass_id,
            "created_ms": row.created_ms,
            "last_seen_ms": row.last_seen_ms,
            "here": row.id == actor.device_id,
        }
        for row in rows
    ]


def revoke_device(connection: Connection, household_id: str, device_id: str, now_ms: int) -> str:
    """End a device's session for good and return its name. Raises ``NotFound`` for another household's device."""
    name = connection.execute(
        select(devices.c.name).where(*_of(household_id, device_id))
    ).scalar_one_or_none()
    if name is None:
        raise NotFound(told("problem-no-phone"))
    connection.execute(update(devices).where(*_of(household_id, device_id)).values(revoked_ms=now_ms))
    return str(name)


def sign_out(connection: Connection, household_id: str, device_id: str, now_ms: int) -> None:
    """End a session at the phone's own wish: the token stops working, the device may sign in again."""
    ended = connection.scalars(select(devices.c.token_hash).where(*_of(household_id, device_id))).all()
    note_ended(connection, "session", household_id, ended, now_ms)
    connection.execute(
        update(devices)
        .where(*_of(household_id, device_id))
        .values(token_hash=hash_token(new_token()), again_hash=None)
    )


def _of(household_id: str, device_id: str) -> tuple[Any, Any]:
    return devices.c.household_id == household_id, devices.c.id == device_id
