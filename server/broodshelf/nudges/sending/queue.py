"""The messages on their way: claimed with a lease, sent outside any transaction, then marked.

Any number of processes may do this at once. A process that dies leaves claims that run out after a minute, so
a crash repeats a message late and never loses one; a message is doubled only by a crash between the push
service's answer and our mark.
"""

from __future__ import annotations

import json
from collections.abc import Sequence
from typing import Final

from sqlalchemy import ColumnElement, Connection, and_, exists, func, or_, select, tuple_, update

from ...people.language import languages_of_people
from ...people.tables import devices
from ...records.quick.many_rows import are_among
from ...rounds.tables import occurrences
from ..channels.addresses import read_address
from ..channels.outcome import LONGEST_WAIT_S
from ..claimed import Claimed
from ..messages import Item
from ..outcomes.marking import finish
from ..tables import deliveries, nudge_items, nudges, subscriptions, vendor_pauses
from .quiet import Window, clocks_of, wakes, window

LEASE_MS: Final = 60_000
LONGEST_MS: Final = 1000 * LONGEST_WAIT_S + LEASE_MS
MOST_ATTEMPTS: Final = 20
"""A message that so many tries did not bring to an end, by crashes or otherwise, is given up."""


def waiting_hosts(connection: Connection, now_ms: int) -> dict[str, int]:
    """Return the push hosts that have messages to be tried now, and how many."""
    query = (
        select(deliveries.c.host, func.count().label("waiting"))
        .where(_may_be_tried(now_ms))
        .group_by(deliveries.c.host)
    )
    return {row.host: row.waiting for row in connection.execute(query)}


def oldest_waiting_ms(connection: Connection, now_ms: int) -> int | None:
    """Return since when the oldest message waits that could be tried now."""
    query = select(func.min(deliveries.c.wake_ms)).where(_may_be_tried(now_ms))
    found: int | None = connection.scalar(query)
    return found


def claim(connection: Connection, owner: str, host: str, now_ms: int, most: int) -> list[Claimed]:
    """Claim up to ``most`` messages for a host. What is done already, too old or tried too often is dropped here.

    What may not ring now waits for the end of the quiet hours, by steps that a clock set right does not mistake.
    """
    d = deliveries.c
    found = connection.execute(
        select(d.household_id, d.id)
        .where(_may_be_tried(now_ms, host), deliveries.c.host == host)
        .order_by(deliveries.c.wake_ms)  # and nothing else: the index gives this order and the limit ends it
        .limit(most)
        .with_for_update(skip_locked=True)
    ).all()
    keys = [(row.household_id, row.id) for row in found]
    if not keys:
        return []
    connection.execute(
        update(deliveries)
        .where(are_among(connection, (d.household_id, d.id), keys), d.state == "waiting")
        .values(owner=owner, wake_ms=now_ms + LEASE_MS, attempts=deliveries.c.attempts + 1)
    )
    claimed = []
    for message, dropped, from_ms in _read(connection, keys, now_ms):
        if dropped is not None:
            finish(connection, message.key, owner, "dropped", dropped, now_ms)
        elif from_ms > now_ms:
            release(connection, [message], owner, min(from_ms, now_ms + 1000 * LONGEST_WAIT_S))
        else:
            claimed.append(message)
    return claimed


def release(connection: Connection, messages: Sequence[Claimed], owner: str, wake_ms: int) -> None:
    """Give claims back unsent, to be tried from ``wake_ms`` on; the try does not count."""
    connection.execute(
        update(deliveries)
        .where(
            are_among(connection, (deliveries.c.household_id, deliveries.c.id), [m.key for m in messages]),
            deliveries.c.owner == owner,
            deliveries.c.state == "waiting",
        )
        .values(owner=None, wake_ms=wake_ms, attempts=deliveries.c.attempts - 1)
    )


def _may_be_tried(now_ms: int, host: str | None = None) -> ColumnElement[bool]:
    """A wait or pause that reaches further than any we give was set under a clock that ran ahead.

    ``wake_ms > 0`` says nothing new but lets the database use its index of what waits. ``host``: only
    this one's are asked for, so its pause is looked at once and not for each message.
    """
    wake_ms, until_ms = deliveries.c.wake_ms, vendor_pauses.c.until_ms
    paused = exists().where(
        vendor_pauses.c.host == (deliveries.c.host if host is None else host),
        until_ms > now_ms,
        until_ms <= now_ms + LONGEST_MS,
    )
    ripe = or_(wake_ms <= now_ms, wake_ms > now_ms + LONGEST_MS)
    return and_(deliveries.c.state == "waiting", wake_ms > 0, ripe, ~paused)


def _read(
    connection: Connection, keys: Sequence[tuple[str, str]], now_ms: int
) -> list[tuple[Claimed, str | None, int]]:
    """Return these messages, each with the reason to drop it or None and the instant from which it may ring."""
    open_items = _open_items(connection, keys)
    d, s, n, p = deliveries.c, subscriptions.c, nudges.c, devices.c
    found: list[tuple[Claimed, str | None, int]] = []
    query = (
        select(
            deliveries,
            subscriptions.c.host,
            subscriptions.c.person_id.label("listener_id"),
            subscriptions.c.endpoint,
            subscriptions.c.p256dh,
            subscriptions.c.auth,
            nudges.c.urgent,
            nudges.c.person_id,
            nudges.c.local_date,
            nudges.c.slot,
            devices.c.revoked_ms,
        )
        .join(subscriptions, and_(s.household_id == d.household_id, s.id == d.subscription_id))
        .outerjoin(nudges, and_(n.household_id == d.household_id, n.id == d.nudge_id))
        .outerjoin(devices, and_(p.household_id == s.household_id, p.id == s.device_id))
        .where(are_among(connection, (d.household_id, d.id), keys))
        .order_by(deliveries.c.attempts, deliveries.c.made_ms, deliveries.c.id)
    )
    rows = connection.execute(query).all()
    languages = languages_of_people(connection, {(row.household_id, row.listener_id) for row in rows})
    clocks = clocks_of(connection, {row.household_id for row in rows})
    for row in rows:
        items = tuple(open_items.get((row.household_id, row.nudge_id), ()))
        rings = Window(now_ms, row.useless_ms)
        if row.nudge_id is not None and not wakes(items):
            rings = window(clocks[row.household_id], row.made_ms, row.useless_ms, now_ms)
        message = Claimed(
            household_id=row.household_id,
            id=row.id,
            nudge_id=row.nudge_id,
            subscription_id=row.subscription_id,
            host=row.host,
            to=read_address(row.endpoint, row.p256dh, row.auth),
            attempts=row.attempts,
            short=row.short,
            urgent=row.nudge_id is None or bool(row.urgent),
            useless_ms=rings.until_ms,
            topic=f"{row.person_id}/{row.local_date}/{row.slot}" if row.nudge_id else row.id,
            items=items,
            due_ms=row.due_ms,
            notice=row.notice,
            language=languages.get((row.household_id, row.listener_id)),
        )
        dropped = None
        if row.nudge_id is not None and not items:
            dropped = "done_already"
        elif row.useless_ms <= now_ms:
            dropped = "too_late"
        elif row.attempts > MOST_ATTEMPTS:
            dropped = "gave_up"
        elif row.revoked_ms is not None:
            dropped = "phone_revoked"
        found.append((message, dropped, rings.from_ms))
    return found


def _open_items(connection: Connection, keys: Sequence[tuple[str, str]]) -> dict[tuple[str, str], list[Item]]:
    """Return, by household and nudge, the items whose occurrence is still open."""
    found: dict[tuple[str, str], list[Item]] = {}
    i, o, d = nudge_items.c, occurrences.c, deliveries.c
    here = are_among(connection, (d.household_id, d.id), keys)
    for row in connection.execute(
        select(i.household_id, i.nudge_id, i.item)
        .join(occurrences, and_(o.household_id == i.household_id, o.id == i.occurrence_id))
        .where(
            tuple_(i.household_id, i.nudge_id).in_(select(d.household_id, d.nudge_id).where(here)),
            o.state != "done",
        )
        .order_by(i.household_id, i.nudge_id, i.position)
    ):
        found.setdefault((row.household_id, row.nudge_id), []).append(Item(**json.loads(row.item)))
    return found
