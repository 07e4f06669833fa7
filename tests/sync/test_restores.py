"""A restore loses nothing: random runs with backups of any age through the app's own storage and sync, in Node.

Other seeds and longer runs are a command: ``python -m tests.bench.long_sync --shipped --restores``.
"""

from __future__ import annotations

import json
import re
import shutil
from collections.abc import Iterator
from pathlib import Path

import pytest
from tests.support.house import House
from tests.support.random_run import RESTORING, draw
from tests.support.shipped_phone import PWA, Phones
from tests.support.world import World, play

STEPS = 50


@pytest.fixture(scope="module")
def phones() -> Iterator[Phones]:
    with Phones() as made:
        yield made


def run(house: House, phones: Phones, seed: int, steps: int = STEPS) -> None:
    count = 3 + seed % 3
    world = World(house, count, phones, stand_in=seed % 2 == 0)
    try:
        for step in draw(seed, steps, count, RESTORING):
            world.step(*step)
        world.check()
    except AssertionError as error:
        error.add_note(f"as a saved case: {json.dumps(world.steps)}")
        raise
    finally:
        world.close()


@pytest.mark.parametrize("seed", range(1, 8))
def test_the_app_itself_loses_nothing_to_restores_on_sqlite(sqlite_house, phones, seed):
    run(sqlite_house, phones, seed)


def test_the_app_itself_loses_nothing_to_restores_on_postgresql(postgresql_house, phones):
    for seed in (21, 22, 23):
        run(postgresql_house, phones, seed, 40)


FAULTS: dict[str, tuple[str, str, str, list[list[object]]]] = {
    "what was acknowledged is not sent again": (
        "past.js",
        r"const again = operationsOf\(.*?\);\n",
        "const again = [];\n",
        [["backup"], ["rename", 0, 0], ["sync", 0], ["restore", 0, 1]],
    ),
    "nothing is offered": (
        "past.js",
        r"me\?\.role === 'keeper' && refill",
        "false",
        [["sync", 1], ["backup"], ["log", 1, 0], ["sync", 1], ["days", 40], ["sync", 1], ["restore", 0, 0]],
    ),
    "offers are stamped as of now": (
        "past.js",
        r"made_ms,\s+device,\s+stamps,\n",
        "made_ms: Date.now(), device, stamps: {},\n",
        [
            *(["sync", 1], ["backup"], ["rename", 1, 0], ["sync", 1], ["sync", 0], ["rename", 0, 0]),
            *(["sync", 0], ["restore", 0, 0], ["sync", 1]),
        ],
    ),
    "gone rows are forgotten": (
        "store.js",
        r"if \(row\?\.set\?\.gone\) gone\.put\(row\);",
        "",
        [
            *(["log", 0, 0], ["sync", 0], ["sync", 1], ["backup"], ["void", 0, 1], ["sync", 0], ["sync", 1]),
            *(["days", 40], ["sync", 0], ["sync", 1], ["restore", 0, 0]),
        ],
    ),
}
"""Faults of the app: in which module, what is replaced by what, and a run that shows it."""


def play_with(phones: Phones, house: House, steps: list[list[object]]) -> None:
    world = World(house, 3, phones)
    try:
        play(world, steps)
    finally:
        world.close()


@pytest.mark.parametrize("fault", FAULTS)
def test_the_checks_find_a_fault_of_the_app(sqlite_house, phones, tmp_path, fault):
    name, pattern, instead, steps = FAULTS[fault]
    pwa = Path(shutil.copytree(PWA, tmp_path / "pwa"))
    module = pwa / "database" / name
    text, count = re.subn(pattern, instead, module.read_text("utf-8"), flags=re.DOTALL)
    assert count == 1, f"{name} is written otherwise now"
    module.write_text(text, "utf-8")
    play_with(phones, sqlite_house, steps)
    with Phones(pwa) as faulty, pytest.raises(AssertionError):
        play_with(faulty, sqlite_house, steps)


def test_an_older_entry_of_the_journal_does_not_overwrite_a_newer_waiting_edit(sqlite_house, phones):
    play_with(
        phones,
        sqlite_house,
        [["backup"], ["rename", 0, 0], ["sync", 0], ["rename", 0, 0], ["restore", 0, 0]],
    )
