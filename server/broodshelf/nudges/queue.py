"""The messages on their way: claimed with a lease, sent outside any transaction, marked by compare-and-set.

Any number of processes may do this at once. A process that dies leaves claims that run out after a minute, so
a crash repeats a message late and never loses one; a message is doubled only by a crash between the push
service's answer and our mark.
"""

from __future__ import annotations

import json
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

from sqlalchemy import ColumnElement, Connection, and_, delete, exists, func, or_, select, update

from ..logs import say
from ..people.tables import devices
from ..rounds.tables import occurrences
from .answers import LONGEST_WAIT_S, PAUSE_S, TOO_LARGE, Gone, Outcome, Refused, RetryLater, Sent, back_off_s
from .grouping import Item
from .sender import Target
from .tables import deliveries, nudge_items, nudges, put_row, subscriptions, vendor_pauses

LEASE_MS: Final = 60_000
LONGEST_MS: Final = 1000 * LONGEST_WAIT_S + LEASE_MS
MOST_ATTEMPTS: Final = 20
"""A message that so many tries did not bring to an end, by crashes or otherwise, is given up."""
SUSPECT_FAILURES: Final = 10
SUSPECT_MS: Final = 7 * 86_400_000
"""A subscription that a vendor keeps refusing is deleted after so many failures over so long, if others there work."""


@dataclass(frozen=True, slots=True)
class Claimed:
    """A message that this process may send until its lease runs out. ``items`` are those still open."""

    id: str
    nudge_id: str | None
    subscription_id: str
    host: str
    target: Target
    attempts: int
    short: bool
    urgent: bool
    useless_ms: int
    topic: str
    items: tuple[Item, ...] = ()
    due_ms: int | None = None


def waiting_hosts(connection: Connection, now_ms: int) -> dict[str, int]:
    """Return the push hosts that have messages to be tried now, and how many."""
    query = (
        select(subscriptions.c.host, func.count().label("waiting"))
        .select_from(deliveries.join(subscriptions))
        .where(_may_be_tried(now_ms))
        .group_by(subscriptions.c.host)
    )
    return {row.host: row.waiting for row in connection.execute(query)}


def oldest_waiting_ms(connection: Connection, now_ms: int) -> int | None:
    """Return since when the oldest message waits that could be tried now."""
    query = (
        select(func.min(deliveries.c.wake_ms))
        .select_from(deliveries.join(subscriptions))
        .where(_may_be_tried(now_ms))
    )
    found: int | None = connection.scalar(query)
    return found


def claim(connection: Connection, owner: str, host: str, now_ms: int, most: int) -> list[Claimed]:
    """Claim up to ``most`` messages for a host. What is done already, too old or tried too often is dropped here."""
    ids = connection.scalars(
        select(deliveries.c.id)
        .select_from(deliveries.join(subscriptions))
        .where(_may_be_tried(now_ms), subscriptions.c.host == host)
        .order_by(deliveries.c.wake_ms, deliveries.c.id)
        .limit(most)
        .with_for_update(skip_locked=True, of=deliveries)
    ).all()
    if not ids:
        return []
    connection.execute(
        update(deliveries)
        .where(deliveries.c.id.in_(ids), deliveries.c.state == "waiting")
        .values(owner=owner, wake_ms=now_ms + LEASE_MS, attempts=deliveries.c.attempts + 1)
    )
    claimed = []
    for message, dropped in _read(connection, ids, now_ms):
        if dropped is None:
            claimed.append(message)
        else:
            _finish(connection, message.id, owner, "dropped", dropped, now_ms)
    return claimed


def release(connection: Connection, messages: Sequence[Claimed], owner: str, now_ms: int) -> None:
    """Give claims back unsent; the try does not count."""
    connection.execute(
        update(deliveries)
        .where(
            deliveries.c.id.in_([m.id for m in messages]),
            deliveries.c.owner == owner,
            deliveries.c.state == "waiting",
        )
        .values(owner=None, wake_ms=now_ms, attempts=deliveries.c.attempts - 1)
    )


def mark(connection: Connection, message: Claimed, owner: str, outcome: Outcome, now_ms: int) -> bool:
    """Write down what came of a message; return False, changing nothing, if the claim is no longer ours."""
    match outcome:
        case Sent():
            if not _finish(connection, message.id, owner, "sent", "sent", now_ms):
                return False
            _note(connection, message, outcome="sent", delivered_ms=now_ms, failures=0, suspect_since_ms=None)
        case Gone():
            if not _finish(connection, message.id, owner, "gone", "gone", now_ms):
                return False
            say("phone no longer listens", phone=message.target.mark)
            connection.execute(delete(subscriptions).where(subscriptions.c.id == message.subscription_id))
        case RetryLater(reason, after_s, vendor):
            wait_ms = 1000 * (after_s if after_s is not None else back_off_s(message.attempts))
            if not _mark_ours(connection, message.id, owner, wake_ms=now_ms + wait_ms, outcome=reason):
                return False
            _note(connection, message, outcome=reason)
            if vendor:
                _pause(connection, message.host, now_ms + 1000 * (after_s or PAUSE_S))
        case Refused() if outcome == TOO_LARGE and not message.short:
            return _mark_ours(
                connection, message.id, owner, wake_ms=now_ms, short=True, outcome=TOO_LARGE.reason
            )
        case Refused(reason, suspect):
            if not _finish(connection, message.id, owner, "refused", reason, now_ms):
                return False
            _note(connection, message, outcome=reason)
            if suspect:
                _suspect(connection, message, reason, now_ms)
    return True


def _may_be_tried(now_ms: int) -> ColumnElement[bool]:
    """A wait or pause that reaches further than any we give was set under a clock that ran ahead."""
    wake_ms, until_ms = deliveries.c.wake_ms, vendor_pauses.c.until_ms
    paused = exists().where(
        vendor_pauses.c.host == subscriptions.c.host, until_ms > now_ms, until_ms <= now_ms + LONGEST_MS
    )
    ripe = or_(wake_ms <= now_ms, wake_ms > now_ms + LONGEST_MS)
    return and_(deliveries.c.state == "waiting", ripe, ~paused)


def _read(connection: Connection, ids: Sequence[str], now_ms: int) -> list[tuple[Claimed, str | None]]:
    """Return these messages, each with the reason to drop it or None."""
    open_items = _open_items(connection, ids)
    found: list[tuple[Claimed, str | None]] = []
    query = (
        select(
            deliveries,
            subscriptions.c.host,
            subscriptions.c.endpoint,
            subscriptions.c.p256dh,
            subscriptions.c.auth,
            nudges.c.urgent,
            nudges.c.person_id,
            nudges.c.local_date,
            nudges.c.slot,
            devices.c.revoked_ms,
        )
        .select_from(deliveries.join(subscriptions))
        .outerjoin(nudges, nudges.c.id == deliveries.c.nudge_id)
        .outerjoin(devices, devices.c.id == subscriptions.c.device_id)
        .where(deliveries.c.id.in_(ids))
        .order_by(deliveries.c.attempts, deliveries.c.made_ms, deliveries.c.id)
    )
    for row in connection.execute(query):
        items = tuple(open_items.get(row.nudge_id, ()))
        message = Claimed(
            id=row.id,
            nudge_id=row.nudge_id,
            subscription_id=row.subscription_id,
            host=row.host,
            target=Target(row.endpoint, row.p256dh, row.auth),
            attempts=row.attempts,
            short=row.short,
            urgent=row.nudge_id is None or bool(row.urgent),
            useless_ms=row.useless_ms,
            topic=f"{row.person_id}/{row.local_date}/{row.slot}" if row.nudge_id else row.id,
            items=items,
            due_ms=row.due_ms,
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
        found.append((message, dropped))
    return found


def _open_items(connection: Connection, ids: Sequence[str]) -> dict[str, list[Item]]:
    """Return, by nudge, the items whose occurrence is still open."""
    found: dict[str, list[Item]] = {}
    for row in connection.execute(
        select(nudge_items.c.nudge_id, nudge_items.c.item)
        .join(occurrences, occurrences.c.id == nudge_items.c.occurrence_id)
        .where(
            nudge_items.c.nudge_id.in_(select(deliveries.c.nudge_id).where(deliveries.c.id.in_(ids))),
            occurrences.c.state != "done",
        )
        .order_by(nudge_items.c.nudge_id, nudge_items.c.position)
    ):
        found.setdefault(row.nudge_id, []).append(Item(**json.loads(row.item)))
    return found


def _mark_ours(connection: Connection, delivery_id: str, owner: str, **values: object) -> bool:
    """Change a message and let go of it, if the claim is still ours: the compare-and-set of all marks."""
    done = connection.execute(
        update(deliveries)
        .where(deliveries.c.id == delivery_id, deliveries.c.owner == owner, deliveries.c.state == "waiting")
        .values(owner=None, **values)
    )
    return done.rowcount == 1


def _finish(
    connection: Connection, delivery_id: str, owner: str, state: str, outcome: str, now_ms: int
) -> bool:
    ended = {"state": state, "outcome": outcome, "done_ms": now_ms, "wake_ms": None}
    return _mark_ours(connection, delivery_id, owner, **ended)


def _note(connection: Connection, message: Claimed, **values: object) -> None:
    connection.execute(
        update(subscriptions).where(subscriptions.c.id == message.subscription_id).values(**values)
    )


def _pause(connection: Connection, host: str, until_ms: int) -> None:
    """Let a host rest until then; whoever asked last is right."""
    put_row(connection, vendor_pauses, {"host": host}, {"until_ms": until_ms})


def _suspect(connection: Connection, message: Claimed, reason: str, now_ms: int) -> None:
    """Count a refusal that may be our fault; delete only what fails for long where others succeed."""
    s = subscriptions.c
    connection.execute(
        update(subscriptions)
        .where(s.id == message.subscription_id)
        .values(failures=s.failures + 1, suspect_since_ms=func.coalesce(s.suspect_since_ms, now_ms))
    )
    say("a push service refuses our messages", phone=message.target.mark, host=message.host, reason=reason)
    row = connection.execute(
        select(s.failures, s.suspect_since_ms).where(s.id == message.subscription_id)
    ).one_or_none()
    if row is None or row.failures < SUSPECT_FAILURES or now_ms - row.suspect_since_ms < SUSPECT_MS:
        return
    others_work = connection.scalar(
        select(
            exists().where(
                s.host == message.host, s.id != message.subscription_id, s.delivered_ms > row.suspect_since_ms
            )
        )
    )
    if others_work:
        connection.execute(delete(subscriptions).where(s.id == message.subscription_id))
