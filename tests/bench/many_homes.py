"""Many households on one PostgreSQL that commits to the disk, served as users serve them.

    python -m tests.bench.many_homes [N …] [--seconds S] [--workers N] [--against REVISION]

Each household has five colonies and a year of logs. ``broodshelf serve --workers 2`` runs as its own processes, phones
are another one that costs little, nudges go to a push service on this machine. In turn, and printed: logs at 50 a
second; the same while a care hour comes in which every household has something due; the same while 20 phones at once
take a household of 10,000 rows; then more and more a second until p99 is above a second; last the same rows inserted by
bare SQL. ``--against`` serves an earlier revision's code on the same database first, if it can: the schema is today's,
which a version before goes on beside. A wait counts from when the request was due. N: 50 and 500; 5000 takes 12 GB.
"""

from __future__ import annotations

import argparse
import contextlib
import json
import logging
import os
import subprocess
import sys
import tempfile
import threading
import time
from collections.abc import Iterator, Mapping
from pathlib import Path
from typing import Any, Final

import psycopg
from tests.bench.homes_bare import bare_logs
from tests.bench.homes_served import Meter, Served, code_of, pss_mib
from tests.bench.homes_town import Database, Town, now_ms, operators_ms, settings_of
from tests.bench.local_push import push_service
from tests.support.postgresql import durable_cluster
from tests.support.server import ROOT

RATE: Final = 50.0
STEPS: Final = (75.0, 100.0, 150.0, 200.0, 300.0, 400.0)
TOO_LATE_MS: Final = 1_000.0
AS_DELIVERED: Final = "-c autovacuum=on -c jit=on"
SMALL: Final = ("server_notes", "server_home", "alembic_version", "attempts", "endings", "builds", "passes")
"""Tables of some rows, whatever the number of households: reading them as they lie is the fastest way."""
MANY_ROWS: Final = 1_000
"""Of what is smaller, PostgreSQL reads all rather than an index."""
PATIENCE_S: Final = 120.0
BUSY: Final = 0.9


def shares(times_ms: list[float]) -> str:
    """Say the middle and the slowest hundredth."""
    return f"p50 {part(times_ms, 50):,.0f} ms, p99 {part(times_ms, 99):,.0f} ms"


def part(times_ms: list[float], percent: int) -> float:
    """Return the time that so many of a hundred stay within."""
    ordered = sorted(times_ms)
    return ordered[min(len(ordered) - 1, len(ordered) * percent // 100)] if ordered else float("nan")


class Phones:
    """The process that logs, or the one that pulls."""

    def __init__(self, about: Mapping[str, Any], port: int, seed: int) -> None:
        self._process = subprocess.Popen(
            [sys.executable, "-m", "tests.bench.homes_phones"],
            cwd=ROOT, stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True,
        )  # fmt: skip
        self.pid = self._process.pid
        self.do(**about, port=port, seed=seed)

    def do(self, **what: Any) -> dict[str, Any]:
        """Have something done and wait for it."""
        assert self._process.stdin is not None
        assert self._process.stdout is not None
        print(json.dumps(what), file=self._process.stdin, flush=True)
        done = self._process.stdout.readline()
        if not done:
            raise RuntimeError("the phones ended")
        return dict(json.loads(done))

    def close(self) -> None:
        """Let them end."""
        assert self._process.stdin is not None
        self._process.stdin.close()
        self._process.wait(20)
        if self._process.stdout is not None:
            self._process.stdout.close()


class Measured:
    """A town that is served: every question of the measurement is a method that prints its answer."""

    def __init__(self, town: Town, served: Served, database: Database) -> None:
        self._town, self._served, self._database = town, served, database
        self._phones, self._pullers = (Phones(town.about, served.port, seed) for seed in (1, 2))

    def close(self) -> None:
        """Let the phones end."""
        for phones in (self._phones, self._pullers):
            phones.close()

    def meter(self) -> Meter:
        """Begin to measure processors."""
        return Meter(self._served, self._database.postmaster(), [self._phones.pid, self._pullers.pid])

    def logs(self, rate: float, seconds: float) -> list[float]:
        """Log; say what failed."""
        done = self._phones.do(rate=rate, seconds=seconds)
        if done["failures"]:
            say(f"failed: {done['failures']}")
        return list(done["waits_ms"])

    def steady(self, seconds: float) -> None:
        """Logs at 50 a second, what they cost, and which tables are read from end to end."""
        before, meter = self._database.whole_reads(), self.meter()
        waits = self.logs(RATE, seconds)
        used = meter.used_s()
        ours, theirs = (ms_each(used, names, len(waits)) for names in (workers_of(used), ["PostgreSQL"]))
        say(
            f"logs at {RATE:.0f} a second: {shares(waits)}; of a processor each {ours:.1f} ms in the servers,"
            f" {theirs:.1f} ms in PostgreSQL"
        )
        after = self._database.whole_reads()
        whole = {
            name: (after[name][0] - scans, after[name][1] - rows) for name, (scans, rows) in before.items()
        }
        read = {name: (scans, rows) for name, (scans, rows) in whole.items() if scans and name not in SMALL}
        large = [f"{n} {s} times, {r:,} rows" for n, (s, r) in sorted(read.items()) if r > MANY_ROWS * s]
        small = sorted(name for name, (scans, rows) in read.items() if rows <= MANY_ROWS * scans)
        say(
            f"large tables read from end to end meanwhile: {'; '.join(large) or 'none'}"
            f" (of at most {MANY_ROWS:,} rows, faster so: {', '.join(small) or 'none'})"
        )
        memory = {name: pss_mib(pid) for name, pid in self._served.pids().items()}
        say("memory: " + ", ".join(f"{name} {mib:.0f} MiB" for name, mib in memory.items()))

    def care_hour(self, seconds: float) -> None:
        """The same while a care hour comes for all."""
        due_ms = now_ms() + 5_000
        self._database.let_all_be_due(due_ms)
        meter, waits = self.meter(), list[float]()
        logging_on = threading.Thread(target=lambda: waits.extend(self.logs(RATE, seconds)))
        logging_on.start()
        until_s = time.monotonic() + seconds + PATIENCE_S
        while now_ms() < due_ms + 3_000 or (self._database.waiting(due_ms) and time.monotonic() < until_s):
            time.sleep(0.5)
        nudger = meter.used_s().get("nudger", 0.0)
        logging_on.join()
        took = [float(ms) for ms in self._database.taken(due_ms)]
        say(
            f"a care hour of all households: {len(took):,} nudges, due to accepted {shares(took)};"
            f" the nudger worked {nudger:.1f} s; logs meanwhile {shares(waits)}"
        )

    def first_pulls(self, seconds: float) -> None:
        """The same while 20 phones take everything."""
        waits = list[float]()
        logging_on = threading.Thread(target=lambda: waits.extend(self.logs(RATE, seconds)))
        logging_on.start()
        time.sleep(1)
        done = self._pullers.do(pulls=self._town.pulling)
        took = sorted(done["waits_ms"])
        logging_on.join()
        say(
            f"{len(took)} phones at once take 10,000 rows in {max(done['pages'])} requests each:"
            f" median {part(took, 50):,.0f} ms, longest {took[-1]:,.0f} ms; logs meanwhile {shares(waits)}"
        )

    def until_it_breaks(self, seconds: float) -> None:
        """More and more logs a second until one of a hundred waits longer than a second."""
        for rate in STEPS:
            meter = self.meter()
            waits = self.logs(rate, seconds)
            busy = meter.shares()
            machine = busy.pop("machine")
            told = ", ".join(f"{name} {100 * share:.0f} %" for name, share in busy.items() if share > 0.02)
            say(
                f"at {rate:.0f} a second: {shares(waits)}; of a processor: {told};"
                f" the machine {100 * machine / (os.cpu_count() or 1):.0f} % of {os.cpu_count()}"
            )
            if part(waits, 99) > TOO_LATE_MS:
                say(f"what breaks first: {limit_of(busy, machine / (os.cpu_count() or 1))}")
                return


def limit_of(busy: Mapping[str, float], machine: float) -> str:
    """Say what is at its limit, by how much of a processor each process works and how much of the machine all do."""
    full = [name for name in workers_of(busy) if busy[name] > BUSY]
    if machine > BUSY:
        first = max(busy, key=lambda name: busy[name])
        return f"the processors; of what was measured {first} takes most"
    if full:
        return f"{' and '.join(full)}, as a process works on one processor at a time; more workers help"
    return "waits that need no processor: the disk of PostgreSQL, or locks"


def workers_of(used: Mapping[str, float]) -> list[str]:
    """The processes that answer phones."""
    return [name for name in used if name.startswith("worker")]


def ms_each(used: Mapping[str, float], names: list[str], count: int) -> float:
    """Processor time of some processes for each of so many logs, in ms."""
    return sum(used[name] for name in names) * 1000 / max(count, 1)


def say(text: str) -> None:
    """Print a line under the present heading."""
    print(f"  {text}", flush=True)


@contextlib.contextmanager
def served(folder: Path, code: Path, url: str, workers: int) -> Iterator[Served]:
    """The town, served by some code."""
    running = Served(folder, code, workers, settings_of(folder, url))
    try:
        running.wait()
        yield running
    finally:
        running.stop()
        if running.failures():
            say(f"in the log: {running.failures()}")


def run(count: int, asked: argparse.Namespace, push_url: str) -> None:
    """Measure with so many households and print."""
    with durable_cluster(AS_DELIVERED) as cluster, tempfile.TemporaryDirectory() as temporary:
        folder, url = Path(temporary), cluster.new_database()
        town = Town(folder, url, count, push_url)
        print(
            f"{count:,} households, {town.rows:,} records, {town.kib_each:,.0f} KiB a household on the disk"
            f" (made in {town.made_s:.0f} s):",
            flush=True,
        )
        about_db = {"host": str(cluster.folder), "dbname": url.partition("@/")[2].partition("?")[0]}
        with psycopg.connect(**about_db, user="tests", autocommit=True) as connection:
            database = Database(connection)
            if asked.against:
                with served(folder, code_of(asked.against, folder / "before"), url, asked.workers) as before:
                    print(f"  with the code of {asked.against}:", flush=True)
                    measured = Measured(town, before, database)
                    measured.logs(RATE / 2, 4)  # connections, caches
                    measured.steady(asked.seconds)
                    measured.close()
                print("  with the present code:", flush=True)
            with served(folder, ROOT / "server", url, asked.workers) as running:
                measured = Measured(town, running, database)
                measured.logs(RATE / 2, 4)
                measured.steady(asked.seconds)
                measured.care_hour(asked.seconds)
                measured.first_pulls(asked.seconds)
                measured.until_it_breaks(asked.seconds / 2)
                measured.close()
            told = operators_ms(url)
            say(
                "of the operator's commands: "
                + ", ".join(f"{name} {ms:,.0f} ms" for name, ms in told.items())
            )
            bare = bare_logs({**about_db, "user": "tests"}, town.about, RATE, asked.seconds)
            say(f"the bare rows of a log by SQL at {RATE:.0f} a second: {shares(bare)}")
        print(f"  load {os.getloadavg()[0]:.0f}", flush=True)


def main() -> int:
    """Measure for each number of households."""
    asked = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    asked.add_argument("counts", nargs="*", type=int, default=[50, 500])
    asked.add_argument("--seconds", type=float, default=20.0)
    asked.add_argument("--workers", type=int, default=2)
    asked.add_argument("--against", help="an earlier revision, served on the same database first")
    chosen = asked.parse_args()
    logging.disable(logging.INFO)
    with push_service() as push_url:
        for count in chosen.counts:
            run(count, chosen, push_url)
    return 0


if __name__ == "__main__":
    sys.exit(main())
