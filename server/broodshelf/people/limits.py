"""Counting tries in the database, per caller and per purpose, so that nobody guesses a code."""

from __future__ import annotations

from sqlalchemy import Connection, and_, delete, insert, select, update

from ..errors import TooMany
from .tables import attempts

WINDOW_MS = 60_000


def count_try(connection: Connection, purpose: str, caller: str, now_ms: int, most: int = 20) -> None:
    """Count one try; raise ``TooMany`` beyond ``most`` a minute. Old windows are forgotten on the way."""
    window = now_ms // WINDOW_MS
    bucket = f"{purpose}:{caller}"[:100]
    here = and_(attempts.c.bucket == bucket, attempts.c.window_ms == window)
    count = connection.execute(select(attempts.c.count).where(here)).scalar_one_or_none()
    if count is None:
        connection.execute(delete(attempts).where(attempts.c.window_ms < window - 60))
        connection.execute(insert(attempts).values(bucket=bucket, window_ms=window, count=1))
        return
    if count >= most:
        raise TooMany(retry_after_s=60)
    connection.execute(update(attempts).where(here).values(count=count + 1))
