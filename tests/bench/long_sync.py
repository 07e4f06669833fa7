"""The long search for a log that is lost: ``python -m tests.bench.long_sync --operations 1000000``.

Random runs of phones, faults and restores (tests/support/world) against the whole app, until so many operations
were made. A run that breaks what must hold is cut down and saved under ``fixtures/sync_cases``; then the command
fails. Figures of a run are in docs/measurements.md.
"""

from __future__ import annotations

import argparse
import json
import logging
import sys
import tempfile
import time
from collections import Counter
from collections.abc import Iterator, Mapping
from contextlib import ExitStack, contextmanager
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from tests.support.house import House
from tests.support.postgresql import shared_cluster
from tests.support.random_run import RESTORING, WEIGHTS, draw
from tests.support.world import World, play
from tests.support.world.phones import shared_phones

from broodshelf.sync import envelope

CASES = Path(__file__).parents[2] / "fixtures/sync_cases"
RUNS_A_HOUSE = 8
"""A backup packs all that the house holds, so it is left before it is full of earlier runs. Its clock goes on from one
run to the next, and after many it would stand beyond what a phone's clock may say (2100)."""


def main() -> int:
    """Search, print figures, return 1 if something was found."""
    wanted = argparse.ArgumentParser(description=__doc__)
    wanted.add_argument("--operations", type=int, default=100_000)
    wanted.add_argument("--seed", type=int, default=1)
    wanted.add_argument("--steps", type=int, default=400, help="steps a run")
    wanted.add_argument("--minutes", type=float, default=24 * 60, help="stop after so long")
    wanted.add_argument("--engine", choices=("sqlite", "postgresql"), default="sqlite")
    wanted.add_argument(
        "--restores", action="store_true", help="many restores, and changes of what was there before"
    )
    wanted.add_argument("--tries", type=int, default=40, help="runs to cut one down that broke")
    chosen = wanted.parse_args()
    logging.disable(logging.CRITICAL)
    envelope.SCHEMA += 1  # type: ignore[misc] # a server that speaks the next schema and still the present one
    weights = RESTORING if chosen.restores else WEIGHTS
    begun, spent_s = time.monotonic(), _processor_s()
    seen: Counter[str] = Counter()
    seed = chosen.seed

    def over() -> bool:
        return seen["operations"] >= chosen.operations or time.monotonic() - begun >= chosen.minutes * 60

    while not over():
        with new_house(chosen.engine) as house:
            search = Search(chosen.engine, weights, chosen.tries)
            for _ in range(RUNS_A_HOUSE):
                seen["found"] += _run(search, house, seed, chosen.steps, seen)
                seed += 1
                if over():
                    break
        _say(seen, range(chosen.seed, seed), time.monotonic() - begun, _processor_s() - spent_s)
    return 1 if seen["found"] else 0


def _processor_s() -> float:
    """Return the processor seconds of this process and of the phones; of PostgreSQL's only those of its clients."""
    return time.process_time() + shared_phones().processor_s()


@contextmanager
def new_house(engine: str) -> Iterator[House]:
    """Serve an empty house, on a database of its own."""
    with ExitStack() as stack:
        folder = Path(stack.enter_context(tempfile.TemporaryDirectory()))
        url = None
        if engine == "postgresql":
            url = stack.enter_context(shared_cluster(folder)).new_database()
        yield stack.enter_context(House(folder / "data", url))


@dataclass(frozen=True)
class Search:
    """On which database runs are made, how often each step is drawn, and how long one that broke is cut down."""

    engine: str
    weights: Mapping[str, int]
    most_tries: int


def world_of(house: House, seed: int) -> World:
    """Return the world of a seed."""
    return World(house, 3 + seed % 3, stand_in=seed % 2 == 0)


def _run(search: Search, house: House, seed: int, steps: int, seen: Counter[str]) -> int:
    world = world_of(house, seed)
    try:
        for step in draw(seed, steps, len(world.phones), search.weights):
            seen[step[0]] += 1
            world.step(*step)
        world.check()
    except AssertionError as error:
        print(f"run {seed}: {error}", flush=True)
        _save(seed, world, *shorter(search, seed, world.steps, str(error)))
        return 1
    finally:
        seen["operations"] += sum(phone.meta.get("n", 0) for phone in world.phones)
        seen["acknowledged"] += len(world.acknowledged)
        seen["conflicts"] += sum(map(len, (phone.conflicts for phone in world.phones)))
        seen["restores"] += len(world.restores)
        world.close()
    return 0


def shorter(search: Search, seed: int, steps: list[list[Any]], why: str) -> tuple[list[list[Any]], str]:
    """Leave out steps as long as the run still breaks; return the rest and what is said of it."""
    size, tries = len(steps) // 2, 0
    while size and tries < search.most_tries:
        start = 0
        while start < len(steps) and tries < search.most_tries:
            tries += 1
            fewer = steps[:start] + steps[start + size :]
            said = breaks(search, seed, fewer)
            if said is None:
                start += size
            else:
                steps, why = fewer, said
        size //= 2
    return steps, why


def breaks(search: Search, seed: int, steps: list[list[Any]]) -> str | None:
    """Play a run in a house of its own; return what is said if it breaks what must hold."""
    with new_house(search.engine) as house:
        world = world_of(house, seed)
        try:
            play(world, steps)
        except AssertionError as error:
            return str(error)
        finally:
            world.close()
    return None


def _save(seed: int, world: World, steps: list[list[Any]], why: str) -> None:
    CASES.mkdir(parents=True, exist_ok=True)
    lines = ",\n  ".join(json.dumps(step) for step in steps)
    head = json.dumps(
        {"why": why[:300], "phones": len(world.phones), "stand_in": world.stand_in is not None},
        ensure_ascii=False,
    )[:-1]
    (CASES / f"run-{seed}.json").write_text(f'{head}, "steps": [\n  {lines}\n]}}\n', "utf-8")


def _say(seen: Counter[str], seeds: range, seconds: float, processor_s: float) -> None:
    print(
        f"{seen['operations']:,} operations in {len(seeds):,} runs (seeds {seeds[0]} to {seeds[-1]}) "
        f"and {seconds:,.0f} s: "
        f"{seen['acknowledged']:,} acknowledged, "
        f"{seen['conflicts']:,} that met another phone's, {seen['lose']:,} answers lost, "
        f"{seen['crash']:,} kills between storage steps, {seen['restores']:,} restores; "
        f"{1000 * processor_s / seen['operations']:.2f} ms of processor an operation; "
        f"{seen['found']} broke what must hold",
        flush=True,
    )


if __name__ == "__main__":
    sys.exit(main())
