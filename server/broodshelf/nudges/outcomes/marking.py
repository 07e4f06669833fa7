"""What came of a message that was claimed: marked by compare-and-set, so that only its owner can."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from sqlalchemy import ColumnElement, Connection, delete, exists, func, select, update

from ...logs import say
from ...model.gauges import DAY_MS
from ...people.mail import unconfirm
from ...records.quick.many_rows import are_among, update_rows
from ..channels.addresses import MAIL
from ..channels.outcome import TOO_LARGE, Gone, Outcome, Refused, RetryLater, Sent
from ..claimed import Claimed
from ..tables import deliveries, put_row, subscriptions, vendor_pauses
from .waits import PAUSE_S, back_off_s

SUSPECT_FAILURES: Final = 10
SUSPECT_MS: Final = 7 * DAY_MS
"""A subscription that a vendor keeps refusing is deleted after so many failures over so long, if others there work.

The address of a mailbox counts as unconfirmed then, so that House does not say that nudges come there.
"""


def mark(connection: Connection, message: Claimed, owner: str, outcome: Outcome, now_ms: int) -> bool:
    """Write down what came of a message; return False, changing nothing, if the claim is no longer ours."""
    match outcome:
        case Sent():
            return mark_sent(connection, [(message, now_ms)], owner) == 1
        case Gone():
            if not finish(connection, message.key, owner, "gone", "gone", now_ms):
                return False
            say("phone no longer listens", phone=message.to.mark)
            connection.execute(delete(subscriptions).where(*_listener(message)))
        case RetryLater(reason, after_s, vendor):
            wait_ms = 1000 * (after_s if after_s is not None else back_off_s(message.attempts))
            if not _mark_ours(connection, message.key, owner, wake_ms=now_ms + wait_ms, outcome=reason):
                return False
            _note(connection, message, outcome=reason)
            if vendor:
                _pause(connection, message.host, now_ms + 1000 * (after_s or PAUSE_S))
        case Refused() if outcome == TOO_LARGE and not message.short:
            return _mark_ours(
                connection, message.key, owner, wake_ms=now_ms, short=True, outcome=TOO_LARGE.reason
            )
        case Refused(reason, suspect):
            if not finish(connection, message.key, owner, "refused", reason, now_ms):
                return False
            _note(connection, message, outcome=reason)
            if suspect:
                _suspect(connection, message, reason, now_ms)
    return True


def mark_sent(connection: Connection, sent: Sequence[tuple[Claimed, int]], owner: str) -> int:
    """Mark many messages as taken, each with its instant; return how many claims were still ours."""
    if not sent:
        return 0
    d = deliveries.c
    query = select(d.household_id, d.id).where(
        are_among(connection, (d.household_id, d.id), [message.key for message, _ in sent]),
        d.owner == owner,
        d.state == "waiting",
    )
    held = {(row.household_id, row.id) for row in connection.execute(query.with_for_update())}
    ours = [(message, at_ms) for message, at_ms in sent if message.key in held]
    update_rows(
        connection,
        deliveries,
        [
            {"household_id": message.household_id, "id": message.id, "done_ms": at_ms}
            for message, at_ms in ours
        ],
        state="sent",
        outcome="sent",
        wake_ms=None,
        owner=None,
    )
    latest = {(message.household_id, message.subscription_id): at_ms for message, at_ms in ours}
    update_rows(
        connection,
        subscriptions,
        [
            {"household_id": household_id, "id": id_, "delivered_ms": at_ms}
            for (household_id, id_), at_ms in latest.items()
        ],
        outcome="sent",
        failures=0,
        suspect_since_ms=None,
    )
    return len(ours)


def _mark_ours(connection: Connection, key: tuple[str, str], owner: str, **values: object) -> bool:
    """Change a message and let go of it, if the claim is still ours: the compare-and-set of all marks."""
    d, (household_id, delivery_id) = deliveries.c, key
    done = connection.execute(
        update(deliveries)
        .where(d.household_id == household_id, d.id == delivery_id, d.owner == owner, d.state == "waiting")
        .values(owner=None, **values)
    )
    return done.rowcount == 1


def finish(
    connection: Connection, key: tuple[str, str], owner: str, state: str, outcome: str, now_ms: int
) -> bool:
    """End a message's way, if the claim is still ours."""
    ended = {"state": state, "outcome": outcome, "done_ms": now_ms, "wake_ms": None}
    return _mark_ours(connection, key, owner, **ended)


def _listener(message: Claimed) -> tuple[ColumnElement[bool], ColumnElement[bool]]:
    """Return the condition that finds the subscription that a message goes to."""
    s = subscriptions.c
    return s.household_id == message.household_id, s.id == message.subscription_id


def _note(connection: Connection, message: Claimed, **values: object) -> None:
    connection.execute(update(subscriptions).where(*_listener(message)).values(**values))


def _pause(connection: Connection, host: str, until_ms: int) -> None:
    """Let a host rest until then; whoever asked last is right."""
    put_row(connection, vendor_pauses, {"host": host}, {"until_ms": until_ms})


def _suspect(connection: Connection, message: Claimed, reason: str, now_ms: int) -> None:
    """Count a refusal that may be our fault; delete only what fails for long where others succeed."""
    s = subscriptions.c
    connection.execute(
        update(subscriptions)
        .where(*_listener(message))
        .values(failures=s.failures + 1, suspect_since_ms=func.coalesce(s.suspect_since_ms, now_ms))
    )
    say("a push service refuses our messages", phone=message.to.mark, host=message.host, reason=reason)
    row = connection.execute(select(subscriptions).where(*_listener(message))).one_or_none()
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
        connection.execute(delete(subscriptions).where(*_listener(message)))
        if row.host == MAIL:
            unconfirm(connection, row.household_id, row.person_id)
