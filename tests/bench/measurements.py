"""Write docs/measurements.md: ``python -m tests.bench.measurements [NAME ...] [--list]``.

Runs the named measurements, or all quick ones, and puts what they print on the page in place of what stood there.
Each section keeps the machine, the day and the load of its own run, so that a page of several days is honest.
A measurement that fails leaves its section as it was and ends the command with status 1.
"""

from __future__ import annotations

import argparse
import datetime as dt
import os
import platform
import re
import subprocess
import sys
from dataclasses import dataclass
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
PAGE = ROOT / "docs" / "measurements.md"

HEAD = """# Measurements

Written by `python -m tests.bench.measurements`; each section is the latest run of its command.
Speed is told as a ratio to bare work in the same run wherever there is one: seconds belong to the machine, ratios to
the code. A load far above zero means that other work ran beside it.

What the models of care were checked against stands with them, on the pages of [the care model](care-model.md).
"""


@dataclass(frozen=True)
class Measurement:
    """One section of the page: what it asks, the command that answers, and what we want of the answer."""

    name: str
    title: str
    command: str
    goals: str
    quick: bool = True

    @property
    def arguments(self) -> list[str]:
        """The command as a list, run by the Python that runs this."""
        return [sys.executable, *self.command.split()[1:]]


MANY_HOMES = (
    "a log at 50 a second p99 at most 150 ms, also in a care hour and while 20 phones take everything; a nudge p99 at "
    "most 15 s after it was due; no large table read from end to end; cost and memory do not grow with the households"
)
MEASUREMENTS = (
    Measurement(
        "many-homes",
        "Many households on one PostgreSQL that commits to the disk",
        "python -m tests.bench.many_homes 50 500",
        MANY_HOMES,
        quick=False,
    ),
    Measurement(
        "most-homes",
        "5,000 households on one PostgreSQL that commits to the disk",
        "python -m tests.bench.many_homes 5000",
        MANY_HOMES,
        quick=False,
    ),
    Measurement(
        "bytes",
        "What a phone downloads",
        "python -m tests.bench.phone_cost --bytes",
        "the app without charts and labels at most 90 kB with brotli, with one language 100 kB",
    ),
    Measurement(
        "sync",
        "A round trip on the server",
        "python -m tests.bench.sync_cost",
        "1,000 logs at most 4 times their bare inserts and 150 ms; one log does not grow with the log; "
        "a first pull of 10,000 rows in at most 12 requests and 0.6 MB",
    ),
    Measurement(
        "phone-sync",
        "A round trip in a phone's store",
        "python -m tests.bench.phone_sync",
        "first pull at most 1.5 times the bare work; one log on the disk p95 at most 3 ms",
    ),
    Measurement(
        "phone",
        "The phone on a long shelf",
        "python -m tests.bench.phone_cost --events 100000",
        "offline start at most 1.0 s; tap to saved and painted p95 at most 50 ms; cold load at most 3 s",
    ),
    Measurement(
        "full-shelf",
        "A full shelf: 8 colonies, a tap, a full outbox, the diary",
        "python -m tests.bench.full_shelf --events 20000 --years 1",
        "tap to saved and painted p95 at most 50 ms; offline start at most 1.0 s; no task over 50 ms in the diary",
    ),
    Measurement(
        "many-colonies",
        "A fuller shelf: 40 colonies, two years",
        "python -m tests.bench.full_shelf --colonies 40 --events 58400 --years 2",
        "as on the shelf of 8 colonies",
    ),
    Measurement(
        "history",
        "A long diary",
        "python -m tests.bench.history_cost",
        "no task over 50 ms while it is scrolled",
    ),
    Measurement("plan", "A plan", "python -m tests.bench.plan_cost", "grows less than the log does"),
    Measurement(
        "start", "Start and memory of the server", "python -m tests.bench.start_cost", "ready within 2 s"
    ),
    Measurement(
        "tick",
        "A tick of the nudger",
        "python -m tests.bench.tick_cost 1000000",
        "select and claim at most 2 times the bare statements",
    ),
    Measurement(
        "burst",
        "10,000 rounds due at once",
        "python -m tests.bench.burst",
        "p99 from due to accepted at most 15 s",
    ),
    Measurement(
        "slow-push",
        "A push service that takes 100 ms",
        "python -m tests.bench.burst 3000 100",
        "at least 300 nudges a second",
    ),
    Measurement(
        "sender",
        "Sends in one process",
        "python -m tests.bench.sender_rate",
        "at least 0.9 of bare encryption and POST",
    ),
    Measurement(
        "killed-nudgers",
        "Nudgers killed at random",
        "python -m tests.bench.killed_nudgers",
        "none lost; a killed lane repeats at most one",
        quick=False,
    ),
    Measurement(
        "zones",
        "Every care hour in every zone",
        "python -m tests.bench.every_day",
        "none differs",
        quick=False,
    ),
    Measurement(
        "long-sync",
        "The search for a lost log, SQLite",
        "python -m tests.bench.long_sync --restores --minutes 20",
        "nothing breaks",
        quick=False,
    ),
    Measurement(
        "long-sync-postgresql",
        "The search for a lost log, PostgreSQL",
        "python -m tests.bench.long_sync --restores --engine postgresql --minutes 20",
        "nothing breaks",
        quick=False,
    ),
    Measurement(
        "long-kills",
        "Servers killed under a real browser",
        "python -m tests.bench.long_kills --kills 200",
        "each log once",
        quick=False,
    ),
    Measurement(
        "long-fuzz",
        "Random requests",
        "python -m tests.bench.long_fuzz --requests 20000",
        "nothing breaks",
        quick=False,
    ),
)


def machine() -> str:
    """Processor, cores, memory and Python of this machine, without its name."""
    about = Path("/proc/cpuinfo")
    found = re.search(r"model name\s*: (.+)", about.read_text()) if about.exists() else None
    memory_gib = os.sysconf("SC_PAGE_SIZE") * os.sysconf("SC_PHYS_PAGES") / 2**30
    processor = found[1].strip() if found else platform.machine()
    return f"{processor}, {os.cpu_count()} cores, {memory_gib:.0f} GiB; Python {platform.python_version()}"


def section(measurement: Measurement, printed: str, load: float) -> str:
    """The Markdown of one section. A printed table stands as a table, all else as it was printed."""
    is_table = printed.lstrip().startswith("|")
    body = printed.strip() if is_table else f"```\n{printed.strip()}\n```"
    today = dt.datetime.now(dt.UTC).date()
    return (
        f"## {measurement.title}\n"
        f"`{measurement.command}`, {today:%-d %B %Y}, load {load:.1f} at its start; {machine()}. "
        f"Wanted: {measurement.goals}.\n\n{body}\n"
    )


def sections_of(page: str) -> dict[str, str]:
    """The sections that a page holds, by the name in the comment before each."""
    parts = re.split(r"^<!-- (\S+) -->\n", page, flags=re.MULTILINE)
    return dict(zip(parts[1::2], (text.strip() + "\n" for text in parts[2::2]), strict=True))


def page_of(sections: dict[str, str]) -> str:
    """The whole page, its sections in the order of ``MEASUREMENTS``; what is measured no more goes."""
    kept = [f"<!-- {one.name} -->\n{sections[one.name]}" for one in MEASUREMENTS if one.name in sections]
    return "\n".join([HEAD, *kept])


def main() -> int:
    """Run what is asked for; the page is written after each, so that a long run that is stopped loses nothing."""
    wanted = argparse.ArgumentParser(description=__doc__)
    wanted.add_argument("names", nargs="*", choices=[*(one.name for one in MEASUREMENTS), []], metavar="NAME")
    wanted.add_argument("--list", action="store_true", help="only say what there is")
    asked = wanted.parse_args()
    chosen = [one for one in MEASUREMENTS if one.name in asked.names or (not asked.names and one.quick)]
    if asked.list:
        for one in MEASUREMENTS:
            print(f"{one.name:22} {one.command}{'' if one.quick else '   (only when named)'}")
        return 0
    failed = []
    for one in chosen:
        load = os.getloadavg()[0]
        print(f"== {one.name}: {one.command}", flush=True)
        run = subprocess.run(one.arguments, cwd=ROOT, capture_output=True, text=True, check=False)
        print(run.stdout, flush=True)
        if run.returncode:
            failed.append(one.name)
            print(run.stderr[-4000:], file=sys.stderr)
            continue
        sections = sections_of(PAGE.read_text()) if PAGE.exists() else {}
        sections[one.name] = section(one, run.stdout, load)
        PAGE.write_text(page_of(sections))
    if failed:
        print(f"Failed, their sections stand as they were: {', '.join(failed)}", file=sys.stderr)
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
