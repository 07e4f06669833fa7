"""What sync costs, as ratios against bare work on the same rows in the same run: ``python -m tests.bench.sync_cost``.

The whole app answers whole requests (session, JSON, merge, history, plans, commit), in this process and without a
network. Medians of five, SQLite with full durability. Figures of a run are in docs/measurements.md.
"""

from __future__ import annotations

import gc
import gzip
import json
import logging
import statistics
import tempfile
import time
from collections.abc import Callable
from pathlib import Path
from typing import Any, NamedTuple

from sqlalchemy import insert, select
from tests.support.house import House
from tests.support.households import HAPPENED, NOON_MS, Requester

from broodshelf.model.gauges import DAY_MS
from broodshelf.records import database
from broodshelf.records.ids import uuid7
from broodshelf.records.recent import topic_of
from broodshelf.records.store import Ledger, Record
from broodshelf.records.tables import operations, records, revisions
from broodshelf.sync.scope import KEEPER_SCOPE

RUNS = 5
AWAY_MS = 30 * DAY_MS
LIMITS = {"push_ms": 150.0, "push_ratio": 4.0, "pull_requests": 12, "pull_mb": 0.6}


def median_ms(work: Callable[[], Any], runs: int = RUNS) -> float:
    """Return the median of ``runs`` timings of ``work`` in ms."""
    times = []
    for _ in range(runs):
        start = time.perf_counter()
        work()
        times.append((time.perf_counter() - start) * 1000)
    return statistics.median(times)


def queue(phone: Requester, colony_ids: list[str], count: int) -> None:
    """Fill a phone's outbox with feedings spread over the colonies, made evenly over 30 days without a connection.

    So their ids, which carry the time, come in order as a phone's do; ids of one instant would lie all over the tables.
    """
    for i in range(count):
        phone.now_ms = NOON_MS - (count - i) * AWAY_MS // count
        values = {"happened_at": HAPPENED, "need": "sugar", "amount": 1.0}
        phone.write("feeding", {"colony_id": colony_ids[i % len(colony_ids)], **values})
    phone.now_ms = NOON_MS


class Took(NamedTuple):
    """What the server needed: time that passed and time of the processor, which says more on a busy machine."""

    passed_ms: float
    worked_ms: float


def push(house: House, phone: Requester) -> Took:
    """Send the outbox in requests of 500; return what the server needed, without the phone's own work."""
    passed = worked = 0.0
    while phone.waiting:
        body = json.dumps(phone.request()).encode()
        start, start_worked = time.perf_counter(), time.process_time()
        answer = house.post(phone, body)
        passed += (time.perf_counter() - start) * 1000
        worked += (time.process_time() - start_worked) * 1000
        phone.take(json.loads(answer))
    return Took(passed, worked)


def medians(times: list[Took]) -> Took:
    """Return the median of each."""
    passed, worked = zip(*times, strict=True)
    return Took(statistics.median(passed), statistics.median(worked))


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
              "happened_ms": NOON_MS, "topic": "sugar", "task_key": None,
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


def fill_history(house: House, phone: Requester, colony_ids: list[str], count: int) -> None:
    """Write ``count`` events of the last 390 days straight into the tables: feedings, checks, water, counts."""
    shapes: tuple[tuple[str, dict[str, Any]], ...] = (
        ("feeding", {"need": "sugar", "amount": 1.0}),
        ("feeding", {"need": "protein", "food_code": "cricket"}),
        ("check", {"need": "leftovers", "leftovers_removed": True}),
        ("water", {"action": "read", "reading": "half"}),
        ("count", {"workers": 40, "larvae": "some"}),
    )
    step_ms = 390 * DAY_MS // max(1, count)
    with database.writing() as connection:
        ledger = Ledger(connection, house.household_id)
        for i in reversed(range(count)):
            kind, values = shapes[i // len(colony_ids) % len(shapes)]
            at_ms = NOON_MS - i * step_ms
            happened = time.strftime("%Y-%m-%dT%H:%M:%SZ", time.gmtime(at_ms / 1000))
            record = Record(
                uuid7(at_ms), kind, 0, False, None, None, at_ms, phone.person_id, phone.device_id, {}
            )
            record.values = {"colony_id": colony_ids[i % len(colony_ids)], "happened_at": happened, **values}
            assert kind == "feeding" or topic_of(kind, values) in ("", "leftovers")
            ledger._known[record.id] = None  # new by construction: spare a look-up each
            ledger.write(record)
        ledger.flush()
    with database.db.engine.connect() as connection:
        connection.exec_driver_sql("PRAGMA wal_checkpoint(TRUNCATE)")  # the filling is not what is measured


def main() -> None:
    """Measure and print, with the limits beside."""
    logging.disable(logging.CRITICAL)
    gc.collect()
    gc.freeze()  # as the served app does
    with tempfile.TemporaryDirectory() as folder, House(Path(folder)) as house:
        phone = house.phone()
        colonies = [phone.write("colony", {"name": f"colony {i}"})["id"] for i in range(10)]
        push(house, phone)
        times, bare_times = [], []
        for _ in range(RUNS):
            queue(phone, colonies, 1000)
            times.append(push(house, phone))
            spare = house.spare_household()
            bare_times.append(median_ms(lambda: bare_insert(spare, 1000), 1))
        took, bare = medians(times), statistics.median(bare_times)
        print(
            f"1,000 operations in two requests: {took.passed_ms:.0f} ms (limit {LIMITS['push_ms']:.0f}), "
            f"{took.worked_ms:.0f} ms of the processor; "
            f"bare inserts {bare:.0f} ms: {took.passed_ms / bare:.1f} times (limit {LIMITS['push_ratio']:.0f})"
        )
        pull(house, phone, colonies)
    for events in (1_000, 10_000, 100_000):
        with tempfile.TemporaryDirectory() as folder, House(Path(folder)) as house:
            phone = house.phone()
            colonies = [phone.write("colony", {"name": f"colony {i}"})["id"] for i in range(10)]
            push(house, phone)
            fill_history(house, phone, colonies, events)
            phone.cursor = f"{house.rev()}.{KEEPER_SCOPE}"  # it has what stands, so no page of it is sent
            one, many = [], []
            for _ in range(RUNS):
                queue(phone, colonies, 1)
                one.append(push(house, phone))
                queue(phone, colonies, 1000)
                many.append(push(house, phone))
            print(
                f"with {events:,} events before: one log {medians(one).passed_ms:.1f} ms, "
                f"1,000 logs {medians(many).passed_ms:.0f} ms, {medians(many).worked_ms:.0f} ms of the processor"
            )


def pull(house: House, phone: Requester, colonies: list[str]) -> None:
    """Pull 10,000 rows into a phone that has nothing, compressed as browsers ask for."""
    queue(phone, colonies, 10_000 - house.count_rows())
    push(house, phone)
    requests, packed_bytes = 0, 0

    def first_pull() -> None:
        nonlocal requests, packed_bytes
        phone.epoch = phone.cursor = None
        requests, packed_bytes, got, more = 0, 0, 0, True
        while more:
            packed = house.post(phone, json.dumps(phone.request(1000)).encode(), accept="gzip")
            answer = json.loads(gzip.decompress(packed))
            phone.epoch, phone.cursor, more = answer["epoch"], answer["cursor"], answer["more"]
            requests, packed_bytes, got = requests + 1, packed_bytes + len(packed), got + len(answer["rows"])
        assert got >= 10_000, got

    def select_and_dump() -> None:
        with database.reading() as connection:
            c = records.c
            rows = connection.execute(
                select(c.id, c.kind, c.rev, c.made_ms, c.person_id, c.fields).where(
                    c.household_id == house.household_id
                )
            )
            json.loads(json.dumps([list(row) for row in rows]))

    pulled, dumped = median_ms(first_pull), median_ms(select_and_dump)
    print(
        f"first pull of 10,000 rows, unpacked and parsed: {pulled:.0f} ms; SELECT + JSON of them both ways: "
        f"{dumped:.0f} ms: {pulled / dumped:.1f} times; {requests} requests (limit {LIMITS['pull_requests']}), "
        f"{packed_bytes / 1e6:.2f} MB compressed (limit {LIMITS['pull_mb']})"
    )


if __name__ == "__main__":
    main()
