"""The long search for a request that breaks the server: ``python -m tests.bench.long_fuzz --requests 20000``.

Random runs of requests (tests/support/fuzz/) on SQLite and on a private PostgreSQL. What breaks is cut down and
printed with its seed, and the command fails. Figures of a run are in docs/measurements.md.
"""

from __future__ import annotations

import argparse
import logging
import sys
import tempfile
import time
import warnings
from contextlib import ExitStack
from pathlib import Path

from tests.support.fuzz import MOST_GROWTH_MIB, Fuzz, resident_mib
from tests.support.postgresql import shared_cluster
from tests.support.two_houses import TwoHouses

ENGINES = ("sqlite", "postgresql")
MOST_SHOWN = 6_000


def main() -> int:
    """Search, print figures, return 1 if something was found."""
    wanted = argparse.ArgumentParser(description=__doc__)
    wanted.add_argument("--requests", type=int, default=20_000, help="on each database")
    wanted.add_argument("--seed", type=int, default=1)
    wanted.add_argument("--minutes", type=float, default=24 * 60, help="stop after so long on each database")
    wanted.add_argument("--engine", choices=ENGINES, help="one database only")
    chosen = wanted.parse_args()
    logging.disable(logging.CRITICAL)
    warnings.simplefilter("error")
    found = 0
    for engine in [chosen.engine] if chosen.engine else ENGINES:
        found += _search(engine, chosen.requests, chosen.seed, chosen.minutes)
    return 1 if found else 0


def _search(engine: str, requests: int, seed: int, minutes: float) -> int:
    with ExitStack() as stack:
        folder = Path(stack.enter_context(tempfile.TemporaryDirectory()))
        url = None if engine == "sqlite" else stack.enter_context(shared_cluster(folder)).new_database()
        houses = stack.enter_context(TwoHouses(folder / "data", url))
        fuzz = Fuzz(houses)
        started = time.monotonic()
        broke = ""
        grown_mib = 0.0
        try:
            grown_mib = fuzz.search_until(requests, seed, minutes * 60)
            if grown_mib > MOST_GROWTH_MIB:
                broke = f"the process grew by {grown_mib:.0f} MiB, {MOST_GROWTH_MIB} are allowed"
        except AssertionError as error:
            broke = "\n".join([str(error), *getattr(error, "__notes__", ())])
        counted = ", ".join(f"{name} {count:,}" for name, count in sorted(fuzz.seen.items()))
        print(
            f"{engine}: {counted}; {time.monotonic() - started:,.0f} s, slowest {fuzz.slowest_s:.2f} s "
            f"({fuzz.slowest[:60]}), grew by {grown_mib:.1f} MiB to {resident_mib():.0f} MiB",
            flush=True,
        )
        if broke:
            print(f"{engine}, seed {seed}: {broke[:MOST_SHOWN]}", flush=True)
        return 1 if broke else 0


if __name__ == "__main__":
    sys.exit(main())
