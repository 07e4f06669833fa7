"""What sync costs, as ratios against bare work on the same rows in the same run: ``python -m tests.bench.sync_cost``.

Five runs each, medians, SQLite with full durability. Figures of a run are in docs/sync.md.
"""

from __future__ import annotations

import json
import statistics
import tempfile
import time
from collections.abc import Callable
from pathlib import Path
from typing import Any

from flask import Flask
from sqlalchemy import insert, select
from tests.support.households import HAPPENED, NOON_MS, ModelPhone, make_household, make_tables, no_plans

from broodshelf.records import database
from broodshelf.records.ids import uuid7
from broodshelf.records.tables import operations, records, revisions
from broodshelf.rounds.recompute import touched
from broodshelf.sync.exchange import exchange

RUNS = 5


def median_ms(work: Callable[[], Any], runs: int = RUNS) -> float:
    """Return the median of ``runs`` timings of ``work`` in ms."""
    times = []
    for _ in range(runs):
        start = time.perf_counter()
        work()
        times.append((time.perf_counter() - start) * 1000)
    return statistics.median(times)


def queue(phone: ModelPhone, colony_ids: list[str], count: int) -> None:
    """Fill a phone's outbox with feedings spread over the colonies."""
    for i in range(count):
        values = {
            "colony_id": colony_ids[i % len(colony_ids)],
            "happened_at": HAPPENED,
            "need": "sugar",
            "amount": 1.0,
        }
        phone.write("feeding", values)


def push(phone: ModelPhone) -> None:
    """Send the outbox in requests of 500, with plans."""
    phone.sync(recompute=touched)


def bare_insert(household_id: str, count: int) -> None:
    """Insert the same rows (record, revision, operation) with nothing decided about them."""
    with database.writing() as connection:
        ids = [uuid7(NOON_MS) for _ in range(count)]
        fields = json.dumps({"colony_id": ids[0], "happened_at": HAPPENED, "need": "sugar", "amount": 1.0})
        stamp = (1, NOON_MS, ids[0])
        stamps = json.dumps(dict.fromkeys(("colony_id", "happened_at", "need", "amount"), stamp))
        common = {"household_id": household_id}
        connection.execute(
            insert(records),
            [{**common, "id": i, "kind": "feeding", "rev": n, "gone": False, "colony_id": ids[0],
              "happened_ms": NOON_MS,
              "made_ms": NOON_MS, "person_id": i, "device_id": i, "fields": fields, "stamps": stamps}
             for n, i in enumerate(ids, 1)],
        )  # fmt: skip
        connection.execute(
            insert(revisions),
            [{**common, "rev": n, "part": 0, "record_id": i, "op_id": i, "person_id": i, "device_id": i,
              "at_ms": NOON_MS, "asked": fields, "before": "{}", "lost": "{}"} for n, i in enumerate(ids, 1)],
        )  # fmt: skip
        connection.execute(
            insert(operations),
            [{**common, "op_id": i, "device_id": i, "verdict": "applied", "answer": "{}" * 40, "received_ms": NOON_MS}
             for i in ids],
        )  # fmt: skip


def main() -> None:
    """Measure and print."""
    with tempfile.TemporaryDirectory() as folder:
        app = Flask("bench")
        app.config["SQLALCHEMY_DATABASE_URI"] = f"sqlite:///{Path(folder) / 'bench.sqlite3'}"
        database.prepare(app)
        with app.app_context():
            make_tables(database.db.engine)
            with database.writing() as connection:
                household_id, spare = make_household(connection), make_household(connection)
            phone = ModelPhone(household_id)
            colonies = [phone.write("colony", {"name": f"colony {i}"})["id"] for i in range(10)]
            phone.sync()
            sizes = []
            for run in range(RUNS):
                queue(phone, colonies, 1000)
                sizes.append((run * 1000, median_ms(lambda: push(phone), 1)))
            with database.writing() as connection:
                spares = [spare, *(make_household(connection) for _ in range(RUNS - 1))]
            bare = median_ms(lambda: bare_insert(spares.pop(), 1000))
            middle = statistics.median(ms for _, ms in sizes)
            print(f"1,000 operations: {middle:.0f} ms, bare inserts {bare:.0f} ms: {middle / bare:.1f} times")
            for before, ms in sizes:
                print(f"  with {before:,} events before: {ms:.0f} ms")
            queue(phone, colonies, 5000)
            phone.sync()
            reader = ModelPhone(household_id)

            def pull() -> None:
                reader.epoch = reader.cursor = None
                more, got = True, 0
                while more:
                    with database.writing() as connection:
                        text = exchange(
                            connection, reader.actor, reader.request(1000), NOON_MS, no_plans
                        ).text
                    answer = json.loads(text)
                    reader.epoch, reader.cursor, more = answer["epoch"], answer["cursor"], answer["more"]
                    got += len(answer["rows"])
                assert got >= 10_000, got

            def select_and_dump() -> None:
                with database.reading() as connection:
                    c = records.c
                    rows = connection.execute(select(c.id, c.kind, c.rev, c.made_ms, c.person_id, c.fields))
                    json.loads(json.dumps([list(row) for row in rows]))

            pulled, dumped = median_ms(pull), median_ms(select_and_dump)
            print(
                f"first pull of 10,000 rows, parsed: {pulled:.0f} ms; SELECT + JSON of them: {dumped:.0f} ms"
            )


if __name__ == "__main__":
    main()
