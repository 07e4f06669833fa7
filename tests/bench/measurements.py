"""Write docs/measurements.md: ``python -m tests.bench.measurements [NAME ...] [--list]``.

Runs the named measurements, or all quick ones, and puts what they print on the page in place of what stood there.
Each section keeps the machine, the day and the load of its own run, so that a page of several days is honest.
A measurement that fails leaves its section as it was and ends the command with status 1.

What a run of hours printed is written down without running it again, on the machine where it ran:
``python -m tests.bench.measurements --from FILE NAME --load 2.4 [--day 2026-11-30]``.
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

from tests.bench.what_is_measured import MEASUREMENTS, Measurement

ROOT = Path(__file__).resolve().parents[2]
PAGE = ROOT / "docs" / "measurements.md"

HEAD = """# Measurements

Written by `python -m tests.bench.measurements`; each section is the latest run of its command.
Speed is told as a ratio to bare work in the same run wherever there is one: seconds belong to the machine, ratios to
the code. A load far above zero means that other work ran beside it.

What the models of care were checked against stands with them, on the pages of [the care model](care-model.md).
"""


def machine() -> str:
    """Processor, cores, memory and Python of this machine, without its name."""
    about = Path("/proc/cpuinfo")
    found = re.search(r"model name\s*: (.+)", about.read_text()) if about.exists() else None
    memory_gib = os.sysconf("SC_PAGE_SIZE") * os.sysconf("SC_PHYS_PAGES") / 2**30
    processor = found[1].strip() if found else platform.machine()
    return f"{processor}, {os.cpu_count()} cores, {memory_gib:.0f} GiB; Python {platform.python_version()}"


@dataclass(frozen=True)
class Run:
    """What a measurement printed, on which day, and the load (of one minute) at its start."""

    printed: str
    day: dt.date
    load: float


def section(measurement: Measurement, run: Run) -> str:
    """The Markdown of one section. A printed table stands as a table, all else as it was printed."""
    figure = measurement.figure(run.printed)
    body = figure if figure.startswith("|") else f"```\n{figure}\n```"
    return (
        f"## {measurement.title}\n"
        f"`{measurement.command}`, {run.day:%-d %B %Y}, load {run.load:.1f} at its start; {machine()}. "
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


def write(measurement: Measurement, run: Run) -> None:
    """Put a run on the page in place of the one before."""
    sections = sections_of(PAGE.read_text()) if PAGE.exists() else {}
    sections[measurement.name] = section(measurement, run)
    PAGE.write_text(page_of(sections))


def run_all(chosen: list[Measurement]) -> int:
    """Run them; the page is written after each, so that a long run that is stopped loses nothing. Return the status."""
    failed = []
    for one in chosen:
        load, today = os.getloadavg()[0], dt.datetime.now(dt.UTC).date()
        print(f"== {one.name}: {one.command}", flush=True)
        run = subprocess.run(one.arguments, cwd=ROOT, capture_output=True, text=True, check=False)
        print(run.stdout, flush=True)
        if run.returncode:
            failed.append(one.name)
            print(run.stderr[-4000:], file=sys.stderr)
            continue
        write(one, Run(run.stdout, today, load))
    if failed:
        print(f"Failed, their sections stand as they were: {', '.join(failed)}", file=sys.stderr)
    return 1 if failed else 0


def main() -> int:
    """Run what is asked for, or write down what already ran."""
    wanted = argparse.ArgumentParser(description=__doc__)
    wanted.add_argument("names", nargs="*", choices=[*(one.name for one in MEASUREMENTS), []], metavar="NAME")
    wanted.add_argument("--list", action="store_true", help="only say what there is")
    wanted.add_argument(
        "--from", dest="output", type=Path, metavar="FILE", help="what a run of the one named has printed"
    )
    wanted.add_argument("--load", type=float, help="with --from: the load when that run began")
    wanted.add_argument(
        "--day", type=dt.date.fromisoformat, help="with --from: its day, else when the file was last written"
    )
    asked = wanted.parse_args()
    chosen = [one for one in MEASUREMENTS if one.name in asked.names or (not asked.names and one.quick)]
    if asked.list:
        for one in MEASUREMENTS:
            print(f"{one.name:22} {one.command}{'' if one.quick else '   (only when named)'}")
        return 0
    if not asked.output:
        return run_all(chosen)
    if len(asked.names) != 1 or asked.load is None:
        wanted.error("--from takes one NAME and the --load at which its run began")
    printed = asked.output.read_text()
    if not printed.strip():
        wanted.error(f"{asked.output} is empty: nothing was printed that could be written down")
    written_on = dt.datetime.fromtimestamp(asked.output.stat().st_mtime, dt.UTC).date()
    write(chosen[0], Run(printed, asked.day or written_on, asked.load))
    return 0


if __name__ == "__main__":
    sys.exit(main())
