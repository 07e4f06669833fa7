"""Whether nudges go out in time: for /healthz, /metrics and ``broodshelf doctor``."""

from __future__ import annotations

from typing import Any, Final

from sqlalchemy import Connection, func, select

from ...rounds.tables import occurrences
from ..sending.queue import oldest_waiting_ms
from ..tables import nudger_state

HEALTHY_TICK_MS: Final = 30_000
HEALTHY_WAIT_MS: Final = 60_000


def nudger_health(connection: Connection, now_ms: int) -> dict[str, Any]:
    """Return ``{ok, last_tick_ms, waiting_ms}`` for /healthz: when any nudger last ticked, how long the oldest waits.

    Well is: a tick in the last 30 s and nothing due that nobody took for 60 s. A tick that lies in the future was
    noted before the clock was set back, so that there has been none since.
    """
    last_tick_ms = connection.scalar(select(nudger_state.c.at_ms).where(nudger_state.c.name == "tick"))
    oldest = [
        connection.scalar(select(func.min(occurrences.c.wake_ms))),
        oldest_waiting_ms(connection, now_ms),
    ]
    waiting_ms = max(0, *(now_ms - at for at in oldest if at is not None), 0)
    ticking = last_tick_ms is not None and abs(now_ms - last_tick_ms) <= HEALTHY_TICK_MS
    return {
        "ok": ticking and waiting_ms <= HEALTHY_WAIT_MS,
        "last_tick_ms": last_tick_ms,
        "waiting_ms": waiting_ms,
    }
