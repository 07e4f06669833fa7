"""From due to accepted when many rounds come at once: ``python -m tests.bench.burst [COUNT] [DELAY_MS]``.

COUNT (default 10,000) households have a round at the same instant; the nudger ticks as in ``serve`` and sends to a
push service on this machine that answers at once, or after DELAY_MS. On SQLite with full durability and on
PostgreSQL. Figures of a run are in docs/measurements.md.
"""

from __future__ import annotations

import sys
import tempfile
import time
from pathlib import Path

from flask import Flask
from sqlalchemy import select
from tests.bench.crowd import databases, fill
from tests.bench.local_push import push_service
from tests.nudges.support import URL, real_channels
from tests.support.households import NOON_MS

from broodshelf.nudges.nudger import Nudger
from broodshelf.nudges.tables import deliveries
from broodshelf.records import database
from broodshelf.records.home.folder import in_folder


def run(name: str, app: Flask, count: int, endpoint: str, folder: Path) -> None:
    """Fill a database, tell everybody, print the times."""
    with app.app_context():
        fill(count, count, endpoint)
    nudger = Nudger(app, real_channels(folder), public_url=URL, clock=lambda: NOON_MS, home=in_folder(folder))
    nudger.tick(NOON_MS - 1)  # the first of the day tidies up
    begun, cpu_before_s = time.perf_counter(), time.process_time()
    nudger.tick(NOON_MS)
    made_s = time.perf_counter() - begun
    nudger.finish()
    while left_over(app):  # what came in while the last lanes closed: the next ticks
        nudger.tick(NOON_MS + round((time.perf_counter() - begun) * 1000))
        nudger.finish()
    took_s = time.perf_counter() - begun
    cpu_s = time.process_time() - cpu_before_s
    nudger.close()
    with app.app_context(), database.reading() as connection:
        waits_ms = sorted(
            row.done_ms - row.due_ms
            for row in connection.execute(select(deliveries).where(deliveries.c.state == "sent"))
        )
    assert len(waits_ms) == count, len(waits_ms)
    middle, late = (waits_ms[min(count - 1, count * pct // 100)] / 1000 for pct in (50, 99))
    print(f"{name}: {count:,} due at once, all taken after {took_s:.1f} s ({count / took_s:,.0f} a second); "
          f"due to accepted p50 {middle:.1f} s, p99 {late:.1f} s; nudges made in {made_s:.1f} s; "
          f"our own work {cpu_s / count * 1000:.2f} ms each")  # fmt: skip


def left_over(app: Flask) -> bool:
    """Whether a message still waits."""
    with app.app_context(), database.reading() as connection:
        return connection.scalar(select(deliveries.c.id).where(deliveries.c.state == "waiting")) is not None


def main(count: int, delay_ms: int) -> None:
    """Run on both databases."""
    with push_service() as url:
        for name, app in databases():
            with tempfile.TemporaryDirectory() as folder:
                run(name, app, count, f"{url}/slow/{delay_ms}" if delay_ms else f"{url}/ok", Path(folder))


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 10_000, int(sys.argv[2]) if len(sys.argv) > 2 else 0)
