"""A message that somebody waits for at the screen: sent while the request is answered, past the queue."""

from __future__ import annotations

import secrets

from sqlalchemy import insert, select

from ...errors import NotFound
from ...languages import told
from ...people.actor import Actor
from ...people.language import language_of_person
from ...records.database import writing
from ...records.ids import uuid7
from .. import messages
from ..channels.addresses import MAIL, Mailbox, read_address
from ..channels.channel import Channels, Delivery
from ..channels.outcome import word
from ..channels.push.channel import SHORTEST_TTL_S
from ..claimed import Claimed
from ..outcomes.marking import mark
from ..tables import deliveries, subscriptions
from .queue import LEASE_MS


def send_test(actor: Actor, channels: Channels, public_url: str, now_ms: int) -> dict[str, str]:
    """Send this phone a message at once; return ``{delivery_id, outcome}``. Opens its own transactions.

    ``outcome``: ``sent``, ``gone`` (the phone has to subscribe again) or the reason why it was not taken.
    """
    owner = uuid7(now_ms)
    claimed = _claim_test(actor, owner, now_ms)
    message = messages.of_test(public_url, claimed.language)
    delivery = Delivery(claimed.id, message, SHORTEST_TTL_S, True, claimed.topic)
    outcome = channels.send(claimed.to, delivery, now_ms)
    with writing() as connection:
        mark(connection, claimed, owner, outcome, now_ms)
    return {"delivery_id": claimed.id, "outcome": word(outcome)}


def send_code(
    channels: Channels, address: str, code: str, public_url: str, now_ms: int, language: str | None
) -> str:
    """Send a mailbox the code that proves it; return what came of it as one word."""
    delivery = Delivery(code, messages.of_code(code, public_url, language), 0, True, MAIL)
    return word(channels.send(Mailbox(address), delivery, now_ms))


def _claim_test(actor: Actor, owner: str, now_ms: int) -> Claimed:
    """Write down a test message of this phone as claimed by ``owner``; raise ``NotFound`` if it does not listen."""
    delivery_id = secrets.token_urlsafe(32)
    s = subscriptions.c
    with writing() as connection:
        row = connection.execute(
            select(subscriptions).where(s.household_id == actor.household_id, s.device_id == actor.device_id)
        ).one_or_none()
        if row is None:
            raise NotFound(told("problem-not-subscribed"), code="not_subscribed")
        claimed = Claimed(
            household_id=actor.household_id,
            id=delivery_id,
            nudge_id=None,
            subscription_id=row.id,
            host=row.host,
            to=read_address(row.endpoint, row.p256dh, row.auth),
            attempts=1,
            short=False,
            urgent=True,
            useless_ms=now_ms + 1000 * SHORTEST_TTL_S,
            topic=delivery_id,
            language=language_of_person(connection, actor.household_id, actor.person_id),
        )
        connection.execute(
            insert(deliveries).values(
                household_id=claimed.household_id,
                id=claimed.id,
                subscription_id=claimed.subscription_id,
                host=claimed.host,
                state="waiting",
                owner=owner,
                wake_ms=now_ms + LEASE_MS,
                attempts=claimed.attempts,
                made_ms=now_ms,
                useless_ms=claimed.useless_ms,
            )
        )
    return claimed
