"""The phones that listen: subscribing, leaving, acknowledging."""

from __future__ import annotations

import secrets
from collections.abc import Collection, Mapping
from typing import Any, Final

from marshmallow import Schema, ValidationError, fields, validate
from sqlalchemy import Connection, and_, delete, exists, func, insert, or_, select, update

from ....errors import BadRequest
from ....languages import told
from ....people.actor import Actor
from ....people.tables import devices
from ....records.ids import uuid7
from ....records.store import lock
from ...tables import deliveries, subscriptions
from ..addresses import MAIL
from .hosts import Blocked, PushHosts, check_keys

MOST_PER_PERSON: Final = 20

_KEYS = Schema.from_dict(
    {
        "p256dh": fields.String(required=True, validate=validate.Length(max=100)),
        "auth": fields.String(required=True, validate=validate.Length(max=40)),
    }
)
BODY: Final = Schema.from_dict(
    {
        "endpoint": fields.String(required=True),
        "keys": fields.Nested(_KEYS, required=True),
        "key_id": fields.String(required=True, validate=validate.Length(max=100)),
    }
)
"""What a phone sends to be nudged."""


def subscribe(
    connection: Connection, actor: Actor, body: Mapping[str, Any], policy: PushHosts, key_id: str, now_ms: int
) -> dict[str, str]:
    """Remember where a phone listens; the phone repeats this at every start. Returns ``{id}``.

    Raises ``BadRequest`` naming the field: an address that is not a push service's, keys that cannot encrypt,
    a server key (``other_key``) that is no longer the present one, or an address that another phone listens at
    (``endpoint_taken``); after the last two the phone subscribes anew.
    """
    try:
        asked = BODY().load(dict(body))
    except ValidationError as error:
        names = ", ".join(sorted(map(str, error.messages_dict)))
        raise BadRequest(told("problem-wrong-fields", names=names), fields=error.messages_dict) from None
    try:
        endpoint = policy.read(asked["endpoint"])
    except Blocked as error:
        raise BadRequest(
            error.told,
            code="push_host",
            fields={"endpoint": str(error)},
        ) from None
    check_keys(asked["keys"]["p256dh"], asked["keys"]["auth"])
    if asked["key_id"] != key_id:
        raise BadRequest(
            told("problem-push-other-key"),
            code="other_key",
            fields={"key_id": "not the present key"},
        )
    s = subscriptions.c
    lock(connection, actor.household_id)
    _take_over(connection, actor, endpoint.host, endpoint.url, asked["keys"])
    values = {
        "household_id": actor.household_id,
        "person_id": actor.person_id,
        "endpoint": endpoint.url,
        "host": endpoint.host,
        "p256dh": asked["keys"]["p256dh"].rstrip("="),
        "auth": asked["keys"]["auth"].rstrip("="),
        "key_id": key_id,
        "seen_ms": now_ms,
    }
    before = connection.execute(
        select(subscriptions).where(s.household_id == actor.household_id, s.device_id == actor.device_id)
    ).one_or_none()
    if before is None:
        _check_room(connection, actor)
        made = uuid7(now_ms)
        connection.execute(
            insert(subscriptions).values(
                id=made, device_id=actor.device_id, created_ms=now_ms, failures=0, **values
            )
        )
        return {"id": made}
    if before.endpoint != endpoint.url:  # a new start: what was said of the old address does not hold
        values |= {"failures": 0, "suspect_since_ms": None, "outcome": None, "created_ms": now_ms}
    connection.execute(
        update(subscriptions).where(s.household_id == actor.household_id, s.id == before.id).values(**values)
    )
    if before.host != endpoint.host:
        d = deliveries.c
        connection.execute(
            update(deliveries)
            .where(d.household_id == actor.household_id, d.subscription_id == before.id)
            .values(host=endpoint.host)
        )
    return {"id": before.id}


def _take_over(connection: Connection, actor: Actor, host: str, url: str, keys: Mapping[str, str]) -> None:
    """Let go of the same browser under another device: it listens for one person only.

    An address belongs to the phone that listens there. Only the browser itself knows the secret that came with the
    address (RFC 8291, section 2), so whoever brings another one, or only the address, is refused.
    """
    s, d = subscriptions.c, devices.c
    found = connection.execute(
        select(s.household_id, s.id, s.p256dh, s.auth, d.revoked_ms)
        .outerjoin(devices, and_(d.household_id == s.household_id, d.id == s.device_id))
        .where(s.host == host, s.endpoint == url)
        .where(or_(s.household_id != actor.household_id, s.device_id != actor.device_id))
    ).all()
    for row in found:
        same = secrets.compare_digest(row.auth, keys["auth"].rstrip("=")) and secrets.compare_digest(
            row.p256dh, keys["p256dh"].rstrip("=")
        )
        if not same and row.revoked_ms is None:
            raise BadRequest(
                told("problem-push-taken"),
                code="endpoint_taken",
                fields={"endpoint": "taken"},
            )
        connection.execute(delete(subscriptions).where(s.household_id == row.household_id, s.id == row.id))


def unsubscribe(connection: Connection, actor: Actor) -> None:
    """Forget where this phone listens."""
    forget_device(connection, actor.household_id, actor.device_id)


def forget_device(connection: Connection, household_id: str, device_id: str) -> None:
    """Forget where a phone listens: it was signed out or revoked."""
    connection.execute(
        delete(subscriptions).where(
            subscriptions.c.household_id == household_id, subscriptions.c.device_id == device_id
        )
    )


def forget_guests(connection: Connection, household_id: str, pass_ids: Collection[str]) -> None:
    """Forget where the phones of these passes listen: they hear nothing more."""
    s, d = subscriptions.c, devices.c
    phones = select(d.id).where(d.household_id == household_id, d.pass_id.in_(pass_ids))
    if pass_ids:
        connection.execute(
            delete(subscriptions).where(s.household_id == household_id, s.device_id.in_(phones))
        )


def anybody_listens(connection: Connection) -> bool:
    """Say whether there is any subscription on this server, so that its key must not be lost."""
    return bool(connection.scalar(select(exists().where(subscriptions.c.host != MAIL))))


def listen_with_other_key(connection: Connection, key_id: str) -> int:
    """Return how many phones listen with another key of this server: they hear nothing until they subscribe anew."""
    return (
        connection.scalar(
            select(func.count())
            .select_from(subscriptions)
            .where(subscriptions.c.key_id != key_id, subscriptions.c.host != MAIL)
        )
        or 0
    )


def acknowledge(connection: Connection, delivery_id: str, shown: bool, now_ms: int) -> None:
    """Note that a phone's worker got a message and whether it showed it. An unknown id changes nothing."""
    d, s = deliveries.c, subscriptions.c
    row = connection.execute(
        select(d.household_id, d.subscription_id).where(d.id == delivery_id, d.acked_ms.is_(None))
    ).one_or_none()
    if row is None:
        return
    connection.execute(
        update(deliveries)
        .where(d.household_id == row.household_id, d.id == delivery_id)
        .values(acked_ms=now_ms, shown=shown)
    )
    connection.execute(
        update(subscriptions)
        .where(s.household_id == row.household_id, s.id == row.subscription_id)
        .values(acked_ms=now_ms)
    )


def _check_room(connection: Connection, actor: Actor) -> None:
    count = connection.scalar(
        select(func.count())
        .select_from(subscriptions)
        .where(
            subscriptions.c.household_id == actor.household_id, subscriptions.c.person_id == actor.person_id
        )
    )
    if (count or 0) >= MOST_PER_PERSON:
        raise BadRequest(
            told("problem-push-too-many", n=MOST_PER_PERSON),
            code="too_many_phones",
        )
