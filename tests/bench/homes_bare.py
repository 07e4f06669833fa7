"""The bare work of a log: its rows inserted and committed by SQL at the same rate, with nothing of ours around it."""

from __future__ import annotations

import itertools
import random
import threading
import time
from collections.abc import Sequence
from typing import Any

import psycopg

from broodshelf.records.ids import uuid7

CONNECTIONS = 16
FIELDS = '{"colony_id":"%s","need":"sugar","happened_at":"2026-05-01T12:00:00.000+00:00"}'


def bare_logs(conninfo: dict[str, Any], about: dict[str, Any], rate: float, seconds: float) -> list[float]:
    """Insert the rows of a log so often for so long; return the waits in ms, each from when it was due."""
    number, waits = itertools.count(), list[float]()
    begun = time.perf_counter() + 0.2

    def one() -> None:
        with psycopg.connect(**conninfo) as connection:
            connection.execute("SET broodshelf.household = '*'")
            connection.commit()
            while (turn := next(number)) < rate * seconds:
                due_s = begun + turn / rate
                time.sleep(max(0.0, due_s - time.perf_counter()))
                _insert(connection, random.choice(about["households"]), about["device"], about["colonies"])
                waits.append((time.perf_counter() - due_s) * 1000)

    threads = [threading.Thread(target=one) for _ in range(CONNECTIONS)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    return waits


def _insert(connection: psycopg.Connection[Any], house: str, device: str, colonies: Sequence[str]) -> None:
    now_ms = time.time_ns() // 1_000_000
    row, op, colony = uuid7(now_ms), uuid7(now_ms), random.choice(colonies)
    fields = FIELDS % colony
    lock = connection.execute("SELECT rev FROM households WHERE id = %s FOR UPDATE", (house,)).fetchone()
    assert lock is not None
    rev = lock[0] + 1
    connection.execute(
        "INSERT INTO records (household_id, id, kind, rev, gone, colony_id, happened_ms, topic, made_ms, device_id,"
        " fields, stamps) VALUES (%s, %s, 'feeding', %s, false, %s, %s, 'sugar', %s, %s, %s, '{}')",
        (house, row, rev, colony, now_ms, now_ms, device, fields),
    )
    connection.execute(
        "INSERT INTO revisions (household_id, rev, part, record_id, op_id, device_id, at_ms, asked, before, lost)"
        " VALUES (%s, %s, 0, %s, %s, %s, %s, %s, '{}', '{}')",
        (house, rev, row, op, device, now_ms, fields),
    )
    connection.execute(
        "INSERT INTO operations (household_id, op_id, device_id, verdict, answer, received_ms)"
        " VALUES (%s, %s, %s, 'applied', '{}', %s)",
        (house, op, device, now_ms),
    )
    connection.execute("UPDATE households SET rev = %s WHERE id = %s", (rev, house))
    connection.commit()
