"""The phones that listen: subscribing, leaving, acknowledging, testing, and how well each one hears."""

from __future__ import annotations

import secrets
from collections.abc import Mapping
from typing import Any, Final

from marshmallow import Schema, ValidationError, fields, validate
from sqlalchemy import Connection, delete, exists, func, insert, or_, select, update

from ..errors import BadRequest, NotFound
from ..people.actor import Actor
from ..people.tables import devices
from ..records.database import writing
from ..records.ids import uuid7
from .answers import Gone, Outcome, Sent
from .grouping import compose_test
from .push_hosts import Blocked, PushHosts, check_keys
from .queue import LEASE_MS, Claimed, mark
from .sender import SHORTEST_TTL_S, Message, Sender, Target, topic_of
from .tables import deliveries, subscriptions

MOST_PER_PERSON: Final = 20
UNSEEN_MS: Final = 30 * 86_400_000
"""After so long without a start of the app a phone's subscription may have died without a word."""

_KEYS = Schema.from_dict(
    {
        "p256dh": fields.String(required=True, validate=validate.Length(max=100)),
        "auth": fields.String(required=True, validate=validate.Length(max=40)),
    }
)
_BODY = Schema.from_dict(
    {
        "endpoint": fields.String(required=True),
        "keys": fields.Nested(_KEYS, required=True),
        "key_id": fields.String(required=True, validate=validate.Length(max=100)),
    }
)


def subscribe(
    connection: Connection, actor: Actor, body: Mapping[str, Any], policy: PushHosts, key_id: str, now_ms: int
) -> dict[str, str]:
    """Remember where a phone listens; the phone repeats this at every start. Returns ``{id}``.

    Raises ``BadRequest`` naming the field: an address that is not a push service's, keys that cannot encrypt,
    or a server key (``other_key``) that is no longer the present one, so that the phone subscribes anew.
    """
    try:
        asked = _BODY().load(dict(body))
    except ValidationError as error:
        names = ", ".join(sorted(map(str, error.messages_dict)))
        raise BadRequest(f"These fields are wrong or missing: {names}.", fields=error.messages_dict) from None
    try:
        endpoint = policy.read(asked["endpoint"])
    except Blocked as error:
        raise BadRequest(
            f"This push address cannot be used: {error}. The server's owner can allow more push services.",
            code="push_host",
            fields={"endpoint": str(error)},
        ) from None
    check_keys(asked["keys"]["p256dh"], asked["keys"]["auth"])
    if asked["key_id"] != key_id:
        raise BadRequest(
            "The phone listens with an older key of this server; subscribe again.",
            code="other_key",
            fields={"key_id": "not the present key"},
        )
    s = subscriptions.c
    connection.execute(  # the same browser under another device: it listens for one household only
        delete(subscriptions).where(
            s.host == endpoint.host, s.endpoint == endpoint.url, s.device_id != actor.device_id
        )
    )
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
    before = connection.execute(select(subscriptions).where(s.device_id == actor.device_id)).one_or_none()
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
    connection.execute(update(subscriptions).where(s.id == before.id).values(**values))
    return {"id": before.id}


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


def anybody_listens(connection: Connection) -> bool:
    """Say whether there is any subscription on this server, so that its key must not be lost."""
    return bool(connection.scalar(select(exists().where(subscriptions.c.id.is_not(None)))))


def acknowledge(connection: Connection, delivery_id: str, shown: bool, now_ms: int) -> None:
    """Note that a phone's worker got a message and whether it showed it. An unknown id changes nothing."""
    d = deliveries.c
    row = connection.execute(
        select(d.subscription_id).where(d.id == delivery_id, d.acked_ms.is_(None))
    ).one_or_none()
    if row is None:
        return
    connection.execute(update(deliveries).where(d.id == delivery_id).values(acked_ms=now_ms, shown=shown))
    connection.execute(
        update(subscriptions).where(subscriptions.c.id == row.subscription_id).values(acked_ms=now_ms)
    )


def send_test(actor: Actor, sender: Sender, public_url: str, now_ms: int) -> dict[str, str]:
    """Send this phone a message at once; return ``{delivery_id, outcome}``. Opens its own transactions.

    ``outcome``: ``sent``, ``gone`` (the phone has to subscribe again) or the reason why it was not taken.
    """
    delivery_id, owner = secrets.token_urlsafe(32), uuid7(now_ms)
    useless_ms = now_ms + 1000 * SHORTEST_TTL_S
    with writing() as connection:
        row = connection.execute(
            select(subscriptions).where(
                subscriptions.c.household_id == actor.household_id,
                subscriptions.c.device_id == actor.device_id,
            )
        ).one_or_none()
        if row is None:
            raise NotFound("This phone does not listen yet; turn its nudges on first.", code="not_subscribed")
        connection.execute(
            insert(deliveries).values(
                id=delivery_id,
                subscription_id=row.id,
                state="waiting",
                owner=owner,
                wake_ms=now_ms + LEASE_MS,
                attempts=1,
                made_ms=now_ms,
                useless_ms=useless_ms,
            )
        )
    target = Target(row.endpoint, row.p256dh, row.auth)
    message = Message(compose_test(delivery_id, public_url), SHORTEST_TTL_S, True, topic_of(delivery_id))
    outcome = sender.send(target, message, now_ms)
    claimed = Claimed(
        delivery_id, None, row.id, row.host, target, 1, False, True, useless_ms, delivery_id, ()
    )
    with writing() as connection:
        mark(connection, claimed, owner, outcome, now_ms)
    return {"delivery_id": delivery_id, "outcome": _word(outcome)}


def health(connection: Connection, actor: Actor, now_ms: int) -> dict[str, Any]:
    """Return how well this phone and the person's other phones hear, in the shape of docs/http-api.md.

    A phone is ``silent`` when its last two messages were taken by the push service and never acknowledged, or
    when the app was not started on it for 30 days.
    """
    s = subscriptions.c
    rows = connection.execute(
        select(subscriptions, devices.c.name, devices.c.last_seen_ms)
        .join(devices, devices.c.id == s.device_id)
        .where(s.household_id == actor.household_id, s.person_id == actor.person_id)
        .order_by(s.seen_ms.desc())
    ).all()
    here = next((row for row in rows if row.device_id == actor.device_id), None)
    return {
        "subscribed": here is not None,
        "key_id": here.key_id if here is not None else None,
        "last_delivered_ms": here.delivered_ms if here is not None else None,
        "last_ack_ms": here.acked_ms if here is not None else None,
        "last_outcome": here.outcome if here is not None else None,
        "devices": [
            {
                "id": row.device_id,
                "name": row.name,
                "here": row.device_id == actor.device_id,
                "seen_ms": row.seen_ms,
                "last_delivered_ms": row.delivered_ms,
                "last_ack_ms": row.acked_ms,
                "last_outcome": row.outcome,
                "silent": now_ms - max(row.seen_ms, row.last_seen_ms) > UNSEEN_MS
                or _unheard(connection, row.id),
            }
            for row in rows
        ],
    }


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
            f"{MOST_PER_PERSON} phones listen for you already; sign one of them out first.",
            code="too_many_phones",
        )


def _unheard(connection: Connection, subscription_id: str) -> bool:
    """Say whether the last two messages that a push service took for a phone were never acknowledged."""
    last = connection.execute(
        select(deliveries.c.acked_ms)
        .where(
            deliveries.c.subscription_id == subscription_id,
            or_(deliveries.c.state == "sent", deliveries.c.acked_ms.is_not(None)),
        )
        .order_by(deliveries.c.made_ms.desc())
        .limit(2)
    ).all()
    return len(last) == 2 and all(row.acked_ms is None for row in last)


def _word(outcome: Outcome) -> str:
    if isinstance(outcome, Sent):
        return "sent"
    return "gone" if isinstance(outcome, Gone) else outcome.reason
