"""What a tick costs beside the bare query and claim of the same rows: ``python -m tests.bench.tick_cost [COUNT]``.

1,000 occurrences are due, one in each of 1,000 households, among COUNT (default 100,000) that wait; on SQLite with
full durability and on PostgreSQL. The sender only counts, so no push service is measured. Figures of a run are in
docs/nudges.md.
"""

from __future__ import annotations

import sys
import tempfile
import time
from pathlib import Path

from sqlalchemy import func, select, update
from tests.bench.crowd import databases, fill
from tests.nudges.support import KEY_ID, URL, Notebook
from tests.support.households import NOON_MS

from broodshelf.nudges.runner import Nudger
from broodshelf.nudges.tables import deliveries
from broodshelf.records import database
from broodshelf.rounds.tables import occurrences

DUE = 1000
DAY_MS = 86_400_000


def bare() -> float:
    """Select the due rows and claim them, nothing more: seconds. The claim is taken back afterwards."""
    begun = time.perf_counter()
    with database.reading() as connection:
        found = connection.execute(select(occurrences).where(occurrences.c.wake_ms <= NOON_MS)).all()
    with database.writing() as connection:
        connection.execute(
            update(occurrences).where(occurrences.c.id.in_([row.id for row in found])).values(steps=1)
        )
    took = time.perf_counter() - begun
    assert len(found) == DUE
    with database.writing() as connection:
        connection.execute(update(occurrences).where(occurrences.c.steps == 1).values(steps=0))
    return took


def main(total: int) -> None:
    """Measure and print, on both databases."""
    for name, app in databases():
        with app.app_context(), tempfile.TemporaryDirectory() as folder:
            fill(total, DUE)
            query_s = min(bare() for _ in range(3))
            notebook = Notebook()
            nudger = Nudger(
                app, notebook, key_id=KEY_ID, public_url=URL, clock=lambda: NOON_MS, data=Path(folder)
            )
            nudger.tick(NOON_MS - 2)  # the first of the day tidies up
            begun = time.perf_counter()
            nudger.tick(NOON_MS - 1)
            idle_s = time.perf_counter() - begun
            begun = time.perf_counter()
            nudger.tick(NOON_MS)
            made_s = time.perf_counter() - begun
            nudger.finish()
            sent_s = time.perf_counter() - begun
            with database.reading() as connection:
                done = connection.scalar(select(func.count()).where(deliveries.c.state == "sent"))
            assert done == len(notebook.sent) == DUE
            print(f"{name}: {total:,} occurrences, {DUE:,} due in as many households")
            print(
                f"  bare select and claim {query_s * 1000:.0f} ms; a tick with nothing due {idle_s * 1000:.1f} ms"
            )
            print(f"  nudges made in {made_s * 1000:.0f} ms: {made_s / query_s:.0f} times")
            print(f"  all sent and marked in {sent_s * 1000:.0f} ms: {sent_s / query_s:.0f} times, "
                  f"{DUE / sent_s:.0f} a second")  # fmt: skip


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 100_000)
