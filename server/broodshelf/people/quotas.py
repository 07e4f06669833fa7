"""How much a pass, a household and an address may send, so that nobody who was let in fills the disk for all.

Far above what caring for a shelf takes: a stand-in with 40 colonies logs some 240 times a day, a phone that was away
for a month some 4,000 times, and after a restore every phone of a household sends all that it has. Beyond it the
request is refused as a whole, so the phone keeps its queue and goes on when the day is over.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from contextlib import contextmanager
from dataclasses import dataclass
from functools import cache
from typing import Any, Final

from sqlalchemy import Connection, delete
from sqlalchemy.dialects import postgresql, sqlite
from sqlalchemy.sql.dml import ReturningInsert

from ..errors import TooMany
from ..languages import told
from ..model.gauges import DAY_MS
from ..records.database import writing_lightly
from ..records.quick.many_rows import is_among
from .actor import Actor
from .limits import WINDOW_MS
from .senders import Amounts, Senders, tell_amounts
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
class _Account:
    """Of whom it is counted what was sent, the household itself or a pass in it, and how much that may be in a day."""

    household_id: str
    subject: str
    most: Share


@contextmanager
def sent_from(senders: Senders, address: str, size_bytes: int, now_ms: int) -> Iterator[None]:
    """Count what an address sends unless the block raises; beyond its share raise ``TooMany`` (code ``quota``).

    Begins outside of any transaction: what was counted is told in one of its own.
    """
    if not size_bytes:
        yield
        return
    size_kib = -(-size_bytes // 1024)
    if not senders.add(address, size_kib, now_ms, ADDRESS_KIB_AN_HOUR):
        senders.tell(now_ms, lambda amounts: _told(amounts, now_ms))
        raise _refusal("problem-quota-address", WINDOW_MS // 1000)
    try:
        yield
    except BaseException:
        senders.take_back(address, size_kib, now_ms)
        raise
    senders.tell(now_ms, lambda amounts: _told(amounts, now_ms))


def _told(amounts: Amounts, now_ms: int) -> Mapping[str, int]:
    with writing_lightly() as connection:
        return tell_amounts(connection, amounts, now_ms)


def spend(connection: Connection, actor: Actor, sent: Share, now_ms: int) -> None:
    """Count what is about to be stored; beyond a share raise ``TooMany`` (code ``quota``).

    What is raised rolls the caller's transaction back, so nothing is counted that was not taken.
    """
    wait_s = min(LONGEST_WAIT_S, (DAY_MS - now_ms % DAY_MS) // 1000 + 1)
    household_id, window = actor.household_id, actor.window
    if window is not None:
        of_pass = _Account(household_id, window.pass_id, PASS)
        if not _add(connection, of_pass, sent, now_ms):
            raise _refusal("problem-quota-pass", wait_s)
    if not _add(connection, _Account(household_id, household_id, HOUSEHOLD), sent, now_ms):
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
    row = {
        "household_id": account.household_id,
        "subject": account.subject,
        "day": now_ms // DAY_MS,
        "operations": sent.operations,
        "bytes": sent.size_bytes,
        "pictures": sent.pictures,
    }
    so_far = connection.execute(_added(connection.dialect.name), row).one()
    counted, most = Share(*so_far), account.most
    return (
        counted.operations <= most.operations
        and counted.size_bytes <= most.size_bytes
        and counted.pictures <= most.pictures
    )


@cache  # made once: tests.bench.sync_cost, a twentieth of one log
def _added(dialect: str) -> ReturningInsert[Any]:
    made: Any = (postgresql if dialect == "postgresql" else sqlite).insert(usage)
    u = usage.c
    more = {name: u[name] + made.excluded[name] for name in ("operations", "bytes", "pictures")}
    keys = [u.household_id, u.subject, u.day]
    added: ReturningInsert[Any] = made.on_conflict_do_update(index_elements=keys, set_=more).returning(
        u.operations, u.bytes, u.pictures
    )
    return added
