"""Many households on one PostgreSQL that commits to the disk: ``python -m tests.bench.many_homes [N …] [--seconds S]``.

Each has five colonies and a year of logs. Phones of random households sync with one new log each, 50 a second, whether
or not the server keeps up (a late answer counts from when it was asked for); the whole app answers in this process, as
many at a time as a serving process has threads. Then what a household takes on the disk. N: 50 and 500; 5000 needs
about 20 GB and an hour.
"""

from __future__ import annotations

import argparse
import json
import logging
import os
import random
import sys
import tempfile
import threading
import time
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from copy import deepcopy
from pathlib import Path

from sqlalchemy import text
from tests.support.house import House
from tests.support.households import HAPPENED, ModelPhone
from tests.support.many_homes import bytes_of_the_database, copy_household, live_a_year, token_of
from tests.support.postgresql import durable_cluster

from broodshelf.app import create_nudger
from broodshelf.records.database import reading
from broodshelf.web.listening import THREADS

RATE = 50.0
SEED = 7


def shares(times_ms: list[float]) -> str:
    """Say the middle and the slowest hundredth."""
    ordered = sorted(times_ms)
    p50, p99 = (ordered[min(len(ordered) - 1, len(ordered) * pct // 100)] for pct in (50, 99))
    return f"p50 {p50:,.0f} ms, p99 {p99:,.0f} ms"


class Crowd:
    """Phones of the copied households, all of which know what the first one knew."""

    def __init__(self, house: House, phone: ModelPhone, ids: list[str]) -> None:
        self._house, self._phone, self._ids = house, phone, ids
        self._chance = random.Random(SEED)
        self._colony = next(row["id"] for row in phone.rows.values() if row["kind"] == "colony")
        self._lock = threading.Lock()

    def log_one(self) -> None:
        """Send one log from some household and take what is new there."""
        with self._lock:
            household_id = self._chance.choice(self._ids)
        phone = ModelPhone(household_id, self._phone.now_ms, device_id=self._phone.device_id)
        phone.epoch, phone.cursor = self._phone.epoch, self._phone.cursor
        phone.write("feeding", {"colony_id": self._colony, "need": "sugar", "happened_at": HAPPENED})
        answer = self._post(household_id, phone.request())
        assert answer["answers"][0]["verdict"] == "applied", answer

    def pull_all(self) -> None:
        """Take everything, as a phone that was let in just now."""
        with self._lock:
            household_id = self._chance.choice(self._ids)
        phone = deepcopy(self._phone)
        phone.epoch, phone.cursor, phone.outbox = None, None, []
        while True:
            answer = self._post(household_id, phone.request())
            phone.epoch, phone.cursor = answer["epoch"], answer["cursor"]
            if not answer["more"]:
                return

    def _post(self, household_id: str, body: object) -> dict[str, object] | dict[str, list[dict[str, str]]]:
        token = token_of(household_id, self._phone.device_id)
        with self._house.app.app_context():
            answer = self._house.app.test_client(use_cookies=False).post(
                "/api/sync",
                data=json.dumps(body),
                headers={
                    "Content-Type": "application/json",
                    "Sec-Fetch-Site": "same-origin",
                    "Cookie": f"broodshelf_session={token}",
                },
                # an address of its own: what comes from one address is counted together
                environ_base={
                    "REMOTE_ADDR": f"10.{hash(household_id) % 250}.{hash(household_id) // 250 % 250}.9"
                },
            )
        assert answer.status_code == 200, answer.data[:300]
        return json.loads(answer.data)


def at_a_rate(work: Callable[[], None], rate: float, seconds: float) -> list[float]:
    """Ask so often for so long, come what may; return how long each waited for its answer, in ms."""
    begun, waits = time.perf_counter(), []

    def one(due_s: float) -> None:
        work()
        waits.append((time.perf_counter() - due_s) * 1000)

    with ThreadPoolExecutor(THREADS) as pool:
        for number in range(round(rate * seconds)):
            due_s = begun + number / rate
            time.sleep(max(0.0, due_s - time.perf_counter()))
            pool.submit(one, due_s).add_done_callback(lambda done: done.result())
    return waits


def run(count: int, seconds: float) -> None:
    """Measure with so many households and print."""
    with (
        durable_cluster() as cluster,
        tempfile.TemporaryDirectory() as folder,
        House(Path(folder) / "data", cluster.new_database()) as house,
    ):
        phone = house.phone()
        live_a_year(house, phone)
        empty = bytes_of_the_database()
        begun = time.perf_counter()
        ids = copy_household(house, count)
        made_s = time.perf_counter() - begun
        each_kib = (bytes_of_the_database() - empty) / count / 1024
        with reading() as connection:
            rows = connection.scalar(text("SELECT count(*) FROM records"))
        crowd = Crowd(house, phone, ids)
        for _ in range(20):  # connections, caches
            crowd.log_one()
        worked = time.process_time()
        waits = at_a_rate(crowd.log_one, RATE, seconds)
        each_ms = (time.process_time() - worked) * 1000 / len(waits)
        pulls = [_timed(crowd.pull_all) for _ in range(5)]
        nudger = create_nudger(house.app)
        ticks = [_timed(lambda: nudger.tick(house.now_ms)) for _ in range(3)]
        nudger.close()
    print(
        f"{count:,} households, {rows:,} records (made in {made_s:.0f} s):"
        f" a log at {RATE:.0f} a second {shares(waits)}, {each_ms:.1f} ms of a processor each;"
        f" a first pull {sorted(pulls)[2]:,.0f} ms;"
        f" ticks {', '.join(f'{ms:,.0f}' for ms in ticks)} ms; {each_kib:,.0f} KiB a household on the disk;"
        f" load {os.getloadavg()[0]:.0f}",
        flush=True,
    )


def _timed(work: Callable[[], object]) -> float:
    begun = time.perf_counter()
    work()
    return (time.perf_counter() - begun) * 1000


def main() -> int:
    """Measure for each number of households."""
    asked = argparse.ArgumentParser(description=__doc__)
    asked.add_argument("counts", nargs="*", type=int, default=[50, 500])
    asked.add_argument("--seconds", type=float, default=20.0)
    chosen = asked.parse_args()
    logging.disable(logging.INFO)
    for count in chosen.counts:
        run(count, chosen.seconds)
    return 0


if __name__ == "__main__":
    sys.exit(main())
