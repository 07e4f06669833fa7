"""What a tick costs beside the bare query and claim of the same rows: ``python -m tests.bench.tick_cost [COUNT]``.

1,000 occurrences are due, one in each of 1,000 households, among COUNT (default 100,000) that wait. SQLite
with full durability; the sender only counts, so no push service is measured. Figures of a run are in docs/nudges.md.
"""

from __future__ import annotations

import json
import sys
import tempfile
import time
from pathlib import Path

from flask import Flask
from sqlalchemy import func, insert, select, text, update
from tests.nudges.support import KEY_ID, URL, BrowserKeys, Notebook
from tests.support.households import NOON_MS, make_tables

from broodshelf.nudges.runner import Nudger
from broodshelf.nudges.tables import deliveries, subscriptions
from broodshelf.people.tables import devices
from broodshelf.records import database
from broodshelf.records.ids import plan_id, uuid7
from broodshelf.records.tables import households, records
from broodshelf.rounds.tables import occurrences

DUE = 1000
DAY_MS = 86_400_000


def fill(total: int) -> None:
    """Make the households, one keeper with one phone each, and the occurrences."""
    keys = BrowserKeys().as_json
    rows: dict[str, list[dict]] = {name: [] for name in ("house", "record", "device", "phone", "due")}
    for _ in range(DUE):
        house, person, device, colony = (uuid7(NOON_MS) for _ in range(4))
        rows["house"].append({"id": house, "rev": 9, "epoch": house, "purged_rev": 0, "created_ms": NOON_MS})
        task = {"key": "protein:start", "need": "protein", "due_at_ms": NOON_MS, "reasons": []}
        for record_id, kind, values in (
            (house, "household", {"name": "Shelf", "zone": "Europe/Vienna", "care_hours": ["18:30"]}),
            (person, "person", {"name": "Mira", "role": "keeper"}),
            (colony, "colony", {"name": "Amber"}),
            (plan_id(colony), "plan", {"colony_id": colony, "tasks": [task]}),
        ):
            rows["record"].append(
                {"household_id": house, "id": record_id, "kind": kind, "rev": 1, "gone": False,
                 "made_ms": NOON_MS, "fields": json.dumps(values), "stamps": "{}"}
            )  # fmt: skip
        rows["device"].append(
            {"id": device, "household_id": house, "person_id": person, "role": "keeper", "name": "phone",
             "token_hash": device, "created_ms": NOON_MS, "last_seen_ms": NOON_MS}
        )  # fmt: skip
        rows["phone"].append(
            {"id": device, "household_id": house, "person_id": person, "device_id": device, "key_id": KEY_ID,
             "endpoint": f"http://127.0.0.1:9/{device}", "host": "127.0.0.1:9", "created_ms": NOON_MS,
             "seen_ms": NOON_MS, "failures": 0, **keys}
        )  # fmt: skip
        rows["due"].append(occurrence(house, colony, "2026-05-01", NOON_MS))
    waiting = (
        occurrence(rows["house"][n % DUE]["id"], uuid7(NOON_MS), "2026-06-01", NOON_MS + DAY_MS + n)
        for n in range(total - DUE)
    )
    with database.writing() as connection:
        for table, name in (
            (households, "house"), (records, "record"), (devices, "device"), (subscriptions, "phone"),
            (occurrences, "due"),
        ):  # fmt: skip
            connection.execute(insert(table), rows[name])
        while batch := [row for _, row in zip(range(5000), waiting, strict=False)]:
            connection.execute(insert(occurrences), batch)
    with database.writing() as connection:
        connection.execute(text("ANALYZE"))


def occurrence(house: str, colony: str, date: str, at_ms: int) -> dict:
    """Return a waiting occurrence."""
    return {
        "id": uuid7(NOON_MS), "household_id": house, "subject_kind": "colony", "subject_id": colony, "need": "protein",
        "local_date": date, "slot": "18:30", "task_key": "protein:start", "urgent": False, "follows": False,
        "due_ms": NOON_MS, "at_ms": at_ms, "state": "waiting", "steps": 0, "wake_ms": at_ms,
    }  # fmt: skip


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
    """Measure and print."""
    with tempfile.TemporaryDirectory() as folder:
        app = Flask("bench")
        app.config["SQLALCHEMY_DATABASE_URI"] = f"sqlite:///{Path(folder) / 'bench.sqlite3'}"
        database.prepare(app)
        with app.app_context():
            make_tables(database.db.engine)
            fill(total)
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
            print(f"{total:,} occurrences, {DUE:,} due in as many households")
            print(
                f"  bare select and claim {query_s * 1000:.0f} ms; a tick with nothing due {idle_s * 1000:.1f} ms"
            )
            print(f"  nudges made in {made_s * 1000:.0f} ms: {made_s / query_s:.0f} times")
            print(f"  all sent and marked in {sent_s * 1000:.0f} ms: {sent_s / query_s:.0f} times, "
                  f"{DUE / sent_s:.0f} a second")  # fmt: skip


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 100_000)
