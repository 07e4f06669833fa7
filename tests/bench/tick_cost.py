"""What a tick costs beside the bare query and claim of the same rows: ``python -m tests.bench.tick_cost [COUNT]``.

1,000 occurrences are due, one in each of 1,000 households, among COUNT (default 100,000) that wait; on SQLite with
full durability and on PostgreSQL. The sender only counts, so no push service is measured. Figures of a run are in
docs/measurements.md.
"""

from __future__ import annotations

import sys
import tempfile
import time
from dataclasses import replace
from pathlib import Path
from statistics import median
from typing import Any, Final
from unittest.mock import patch

from sqlalchemy import func, select, update
from tests.bench.crowd import databases, fill
from tests.nudges.support import KEY_ID, URL, Notebook
from tests.support.households import NOON_MS

from broodshelf.nudges.channels.channel import Channels
from broodshelf.nudges.nudger import AT_ONCE, Nudger
from broodshelf.nudges.tables import deliveries, nudger_state
from broodshelf.nudges.telling import due as due_module
from broodshelf.records import database
from broodshelf.records.home.folder import in_folder
from broodshelf.records.quick.many_rows import is_among
from broodshelf.records.store import lock_idle
from broodshelf.rounds.occurrence_rows import COLUMNS, tell_occurrences
from broodshelf.rounds.tables import occurrences

DUE = 1000
TURNS = 9
"""Bare and ours take turns, so that both meet the same machine; medians are told."""
CLAIMED: Final[dict[str, Any]] = {"state": "sent", "steps": 1, "told_ms": NOON_MS, "wake_ms": None}


def bare() -> float:
    """Read the due rows and claim them, nothing more: seconds.

    The fair measure of ``claimed``: the same engine and durability, the same columns of the same rows read and
    written, so the same indexes moved; one statement each, one commit. It takes no locks, so two of them would tell
    a round twice.
    """
    begun = time.perf_counter()
    with database.reading() as connection:
        query = select(occurrences.c.household_id, *COLUMNS).where(occurrences.c.wake_ms <= NOON_MS)
        found = connection.execute(query).all()
    with database.writing() as connection:
        connection.execute(
            update(occurrences)
            .where(is_among(connection, occurrences.c.id, [row.id for row in found]))
            .values(CLAIMED)
        )
    took = time.perf_counter() - begun
    assert len(found) == DUE
    take_back()
    return took


def take_back() -> None:
    """Let what was claimed be due again."""
    with database.writing() as connection:
        connection.execute(
            update(occurrences)
            .where(occurrences.c.told_ms == NOON_MS)
            .values(state="waiting", steps=0, told_ms=None, wake_ms=NOON_MS)
        )


def claimed() -> float:
    """Do only that part of a tick: find, lock and read what is due and claim it, in its portions: seconds."""
    begun = time.perf_counter()
    seen: set[str] = set()
    while True:
        with database.reading() as connection:
            found = [h for h in due_module.due_households(connection, NOON_MS, AT_ONCE) if h not in seen]
        if not found:
            break
        seen.update(found)
        with database.writing() as connection:
            due = due_module.read_due(connection, lock_idle(connection, found), NOON_MS)
            tell_occurrences(
                connection, {h: [replace(row, **CLAIMED) for row in rows] for h, rows in due.items()}
            )
    took = time.perf_counter() - begun
    assert len(seen) == DUE
    take_back()
    return took


def tidied_ms() -> int | None:
    """When the day's tidying was done, if it is."""
    with database.reading() as connection:
        return connection.scalar(select(nudger_state.c.at_ms).where(nudger_state.c.name == "tidy"))


def main(total: int) -> None:
    """Measure and print, on both databases."""
    for name, app in databases():
        with app.app_context(), tempfile.TemporaryDirectory() as folder:
            fill(total, DUE)
            turns = [(bare(), claimed()) for _ in range(TURNS)]
            query_s, claim_s = (median(each) for each in zip(*turns, strict=True))
            notebook = Notebook()
            nudger = Nudger(
                app,
                Channels(notebook, KEY_ID),
                public_url=URL,
                clock=lambda: NOON_MS,
                home=in_folder(Path(folder)),
            )
            tidying_s = []
            while tidied_ms() is None:  # the first ticks of a day tidy up, too
                begun = time.perf_counter()
                nudger.tick(NOON_MS - 2)
                tidying_s.append(time.perf_counter() - begun)
            begun = time.perf_counter()
            nudger.tick(NOON_MS - 1)
            idle_s = time.perf_counter() - begun
            begun, cpu_before_s = time.perf_counter(), time.process_time()
            with patch.object(nudger._lanes, "open"):
                nudger.tick(NOON_MS)
            made_s, cpu_s = time.perf_counter() - begun, time.process_time() - cpu_before_s
            nudger.tick(NOON_MS)
            nudger.finish()
            sent_s = time.perf_counter() - begun
            with database.reading() as connection:
                done = connection.scalar(select(func.count()).where(deliveries.c.state == "sent"))
            assert done == len(notebook.sent) == DUE
            print(f"{name}: {total:,} occurrences, {DUE:,} due in as many households")
            print(
                f"  bare select and claim {query_s * 1000:.0f} ms; a tick with nothing due {idle_s * 1000:.1f} ms"
            )
            print(f"  the first tick of a day {tidying_s[0] * 1000:.0f} ms; {len(tidying_s)} ticks tidy up, "
                  f"the longest {max(tidying_s) * 1000:.0f} ms, all {sum(tidying_s) * 1000:.0f} ms")  # fmt: skip
            print(f"  the tick's own select and claim {claim_s * 1000:.0f} ms: {claim_s / query_s:.1f} times")
            print(f"  that and the nudges made {made_s * 1000:.0f} ms: {made_s / query_s:.0f} times; "
                  f"{cpu_s / DUE * 1000:.2f} ms of our processor each")  # fmt: skip
            print(f"  all sent and marked in {sent_s * 1000:.0f} ms: {sent_s / query_s:.0f} times, "
                  f"{DUE / sent_s:.0f} a second")  # fmt: skip


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 100_000)
