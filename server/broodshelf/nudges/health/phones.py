"""How well each phone hears, so that a phone that fell silent shows on the others."""

from __future__ import annotations

from typing import Any, Final, Literal

from sqlalchemy import Connection, Row, and_, or_, select

from ...model import kinds
from ...model.gauges import DAY_MS
from ...people.actor import Actor
from ...people.tables import devices
from ...records.store import read_all, read_kind
from ..tables import deliveries, subscriptions

UNSEEN_MS: Final = 30 * DAY_MS
"""After so long without a start of the app a phone's subscription may have died without a word."""
UNHEARD: Final = 2
"""So many messages in a row, taken by the push service and not acknowledged by the phone, are no accident."""

Why = Literal["unheard", "unseen"]


def health(connection: Connection, actor: Actor, now_ms: int) -> dict[str, Any]:
    """Return how well this phone, the person's others and the household's hear: docs/http-api.md.

    A phone is ``silent`` when its last two messages were taken by the push service and never acknowledged, or
    when the app was not started on it for 30 days. ``silent_elsewhere`` tells keepers of other people's phones.
    """
    s = subscriptions.c
    rows = connection.execute(
        select(subscriptions, devices.c.name, devices.c.last_seen_ms)
        .join(devices, and_(devices.c.household_id == s.household_id, devices.c.id == s.device_id))
        .where(s.household_id == actor.household_id, devices.c.revoked_ms.is_(None))
        .order_by(s.seen_ms.desc())
    ).all()
    mine = [row for row in rows if row.person_id == actor.person_id]
    others = [row for row in rows if row.person_id != actor.person_id] if actor.role == "keeper" else []
    here = next((row for row in mine if row.device_id == actor.device_id), None)
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
                "silent": silence(connection, row, now_ms) is not None,
            }
            for row in mine
        ],
        "silent_elsewhere": _silent(connection, actor, others, now_ms),
    }


def silence(connection: Connection, row: Row[Any], now_ms: int) -> Why | None:
    """Return why a phone counts as silent, or None. ``row``: a subscription with its device's ``last_seen_ms``."""
    if now_ms - max(row.seen_ms, row.last_seen_ms) > UNSEEN_MS:
        return "unseen"
    last = connection.execute(
        select(deliveries.c.acked_ms)
        .where(
            deliveries.c.household_id == row.household_id,
            deliveries.c.subscription_id == row.id,
            or_(deliveries.c.state == "sent", deliveries.c.acked_ms.is_not(None)),
        )
        .order_by(deliveries.c.made_ms.desc())
        .limit(UNHEARD)
    ).all()
    return "unheard" if len(last) == UNHEARD and all(d.acked_ms is None for d in last) else None


def _silent(connection: Connection, actor: Actor, rows: list[Row[Any]], now_ms: int) -> list[dict[str, Any]]:
    found = [(row, why) for row in rows if (why := silence(connection, row, now_ms)) is not None]
    if not found:
        return []
    people = read_all(kinds.Person, read_kind(connection, actor.household_id, "person"))
    return [
        {
            "id": row.device_id,
            "name": row.name,
            "person_id": row.person_id,
            "person": people[row.person_id].name if row.person_id in people else None,
            "why": why,
            "last_ack_ms": row.acked_ms,
            "seen_ms": max(row.seen_ms, row.last_seen_ms),
        }
        for row, why in found
    ]
