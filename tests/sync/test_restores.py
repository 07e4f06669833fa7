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
from tests.support.world import World

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


FAULTS = {
    "what was acknowledged is not sent again": (
        "past.js",
        r"const again = journal\.filter\(.*?\);\n",
        "const again = [];\n",
    ),
    "nothing is offered": ("past.js", r"me\?\.role === 'keeper' && refill", "false"),
    "offers are stamped as of now": (
        "past.js",
        r"    made_ms,\n    device,\n    stamps,\n",
        "    made_ms: Date.now(),\n    device,\n    stamps: {},\n",
    ),
    "gone rows are forgotten": (
        "store.js",
        r"if \(row\?\.set\?\.gone\) writes\.push\(gone\.put\(row\)\);",
        "",
    ),
}
"""Faults of the app: in which module, what is replaced by what."""


@pytest.mark.parametrize("fault", FAULTS)
def test_the_search_finds_a_fault_of_the_app(sqlite_house, tmp_path, fault):
    name, pattern, instead = FAULTS[fault]
    pwa = Path(shutil.copytree(PWA, tmp_path / "pwa"))
    module = pwa / "database" / name
    text, count = re.subn(pattern, instead, module.read_text("utf-8"), flags=re.DOTALL)
    assert count == 1, f"{name} is written otherwise now"
    module.write_text(text, "utf-8")
    with Phones(pwa) as faulty, pytest.raises(AssertionError):
        for seed in range(40):
            run(sqlite_house, faulty, seed)
