"""Counting tries in the database, per caller and per purpose, so that nobody guesses a code.

Who is signed in has a bucket of the phone's own: what strangers try never counts against it.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal, get_args

from sqlalchemy import Connection, and_, delete, func, or_, select
from sqlalchemy.dialects import postgresql, sqlite
from sqlalchemy.sql.elements import ColumnElement

from ..errors import TooMany
from .tables import attempts

Purpose = Literal[
    "approve", "claim", "feed", "look", "mail", "mail-code", "newcomer", "pair", "pass", "readings", "sensor",
]  # fmt: skip
"""What is counted."""
WINDOW_MS = 60_000
MOST_A_MINUTE = 20
HOUR_WINDOWS = 60
DAY_WINDOWS = 24 * HOUR_WINDOWS
"""How many windows an amount is counted over; none is kept longer than a day."""


def phone_caller(device_id: str) -> str:
    """Return as whom a signed-in phone is counted."""
    return f"device:{device_id}"


def buckets_of_phone(device_id: str) -> list[str]:
    """Return where the tries of a phone may stand."""
    return [_bucket(purpose, phone_caller(device_id)) for purpose in get_args(Purpose)]


def refuse_beyond(
    connection: Connection, purpose: Purpose, caller: str, now_ms: int, most: int = MOST_A_MINUTE
) -> None:
    """Raise ``TooMany`` if ``most`` tries were counted in this minute. Reads only, so that a flood holds no lock."""
    if _counted(connection, _here(purpose, caller, now_ms)) >= most:
        raise TooMany(retry_after_s=WINDOW_MS // 1000)


def count_try(
    connection: Connection, purpose: Purpose, caller: str, now_ms: int, most: int = MOST_A_MINUTE
) -> None:
    """Count one try; raise ``TooMany`` beyond ``most`` a minute. Other days' windows are forgotten on the way."""
    here = _here(purpose, caller, now_ms)
    count = _counted(connection, here)
    if count >= most:
        raise TooMany(retry_after_s=WINDOW_MS // 1000)
    if not count:
        window, at = now_ms // WINDOW_MS, attempts.c.window_ms
        connection.execute(delete(attempts).where(or_(at < window - DAY_WINDOWS, at > window + DAY_WINDOWS)))
    _add(connection, purpose, caller, now_ms)


@dataclass(frozen=True, slots=True)
class Allowance:
    """So many at ``most`` in the last so many minutes, each a window."""

    most: int
    windows: int = HOUR_WINDOWS


def count_within(
    connection: Connection, purpose: Purpose, caller: str, now_ms: int, allowed: Allowance
) -> bool:
    """Count one in this minute; say whether that is still within what is allowed."""
    at, window = attempts.c.window_ms, now_ms // WINDOW_MS
    _add(connection, purpose, caller, now_ms)
    total = connection.scalar(
        select(func.sum(attempts.c.count)).where(
            attempts.c.bucket == _bucket(purpose, caller), at.between(window - allowed.windows + 1, window)
        )
    )
    return int(total or 0) <= allowed.most


def _add(connection: Connection, purpose: Purpose, caller: str, now_ms: int) -> None:
    """Add one to this minute's count; of two servers that begin it at once the second adds to the first one's."""
    made = postgresql if connection.dialect.name == "postgresql" else sqlite
    row = {"bucket": _bucket(purpose, caller), "window_ms": now_ms // WINDOW_MS, "count": 1}
    connection.execute(
        made.insert(attempts)
        .values(**row)
        .on_conflict_do_update(index_elements=["bucket", "window_ms"], set_={"count": attempts.c.count + 1})
    )


def _bucket(purpose: Purpose, caller: str) -> str:
    return f"{purpose}:{caller}"[:100]


def _here(purpose: Purpose, caller: str, now_ms: int) -> ColumnElement[bool]:
    return and_(attempts.c.bucket == _bucket(purpose, caller), attempts.c.window_ms == now_ms // WINDOW_MS)


def _counted(connection: Connection, here: ColumnElement[bool]) -> int:
    return connection.execute(select(attempts.c.count).where(here)).scalar_one_or_none() or 0
