"""How much a pass, a household and an address may send, so that nobody who was let in fills the disk for all.

Far above what caring for a shelf takes: a stand-in with 40 colonies logs some 240 times a day, a phone that was away
for a month some 4,000 times, and after a restore every phone of a household sends all that it has. Beyond it the
request is refused as a whole, so the phone keeps its queue and goes on when the day is over.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Final

from sqlalchemy import Connection, delete
from sqlalchemy.dialects import postgresql, sqlite

from ..errors import TooMany
from ..languages import told
from ..model.gauges import DAY_MS
from ..records.many_rows import is_among
from .actor import Actor
from .limits import WINDOW_MS, add_amount
from .tables import usage

KEPT_DAYS: Final = 7
LONGEST_WAIT_S: Final = 3_600
"""A phone that is told to wait asks again within the hour: its keeper may have made a new pass."""


@dataclass(frozen=True, slots=True)
class Share:
    """What may be sent in a day (UTC): operations, their bytes, and pictures (each of at most 300,000 bytes)."""

    operations: int = 0
    size_bytes: int = 0
    pictures: int = 0


PASS: Final = Share(10_000, 10_000_000, 300)
HOUSEHOLD: Final = Share(1_000_000, 500_000_000, 5_000)
ADDRESS_KIB_AN_HOUR: Final = 1_000_000
"""Operations and pictures of everybody behind one address, in KiB."""


@dataclass(frozen=True, slots=True)
class Arrival:
    """A request with something to store: from which address it came, its bytes, and what is to be stored of it."""

    address: str
    size_bytes: int
    sent: Share


@dataclass(frozen=True, slots=True)
class _Account:
    """Of whom it is counted what was sent, the household itself or a pass in it, and how much that may be in a day."""

    household_id: str
    subject: str
    most: Share


def spend(connection: Connection, actor: Actor, arrival: Arrival, now_ms: int) -> None:
    """Count what is about to be stored; beyond a share raise ``TooMany`` (code ``quota``).

    What is raised rolls the caller's transaction back, so nothing is counted that was not taken.
    """
    size_kib = -(-arrival.size_bytes // 1024)
    if not add_amount(connection, "sent", arrival.address, now_ms, size_kib, ADDRESS_KIB_AN_HOUR):
        raise _refusal("problem-quota-address", WINDOW_MS // 1000)
    wait_s = min(LONGEST_WAIT_S, (DAY_MS - now_ms % DAY_MS) // 1000 + 1)
    household_id, window = actor.household_id, actor.window
    if window is not None:
        of_pass = _Account(household_id, window.pass_id, PASS)
        if not _add(connection, of_pass, arrival.sent, now_ms):
            raise _refusal("problem-quota-pass", wait_s)
    if not _add(connection, _Account(household_id, household_id, HOUSEHOLD), arrival.sent, now_ms):
        raise _refusal("problem-quota-household", wait_s)


def forget_old(connection: Connection, household_ids: Iterable[str], now_ms: int) -> None:
    """Delete what these households' counts were over a week ago."""
    u = usage.c
    among = is_among(connection, u.household_id, household_ids)
    connection.execute(delete(usage).where(among, u.day < now_ms // DAY_MS - KEPT_DAYS))


def _refusal(message_id: str, wait_s: int) -> TooMany:
    return TooMany(told(message_id), code="quota", retry_after_s=wait_s)


def _add(connection: Connection, account: _Account, sent: Share, now_ms: int) -> bool:
    """Add to what was sent today; say whether that is within the account's share."""
    made = postgresql if connection.dialect.name == "postgresql" else sqlite
    u = usage.c
    statement = made.insert(usage).values(
        household_id=account.household_id,
        subject=account.subject,
        day=now_ms // DAY_MS,
        operations=sent.operations,
        bytes=sent.size_bytes,
        pictures=sent.pictures,
    )
    so_far = connection.execute(
        statement.on_conflict_do_update(
            index_elements=[u.household_id, u.subject, u.day],
            set_={
                "operations": u.operations + sent.operations,
                "bytes": u.bytes + sent.size_bytes,
                "pictures": u.pictures + sent.pictures,
            },
        ).returning(u.operations, u.bytes, u.pictures)
    ).one()
    counted, most = Share(*so_far), account.most
    return (
        counted.operations <= most.operations
        and counted.size_bytes <= most.size_bytes
        and counted.pictures <= most.pictures
    )
