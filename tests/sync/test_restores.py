"""A restore loses nothing: random runs with backups of any age. Longer ones: ``tests.bench.long_sync --restores``."""

from __future__ import annotations

import json

import pytest
from tests.support.house import House
from tests.support.random_run import RESTORING, draw
from tests.support.world import World, play

STEPS = 50


def run(house: House, seed: int, steps: int = STEPS) -> None:
    count = 3 + seed % 3
    world = World(house, count, stand_in=seed % 2 == 0)
    try:
        play(world, [*draw(seed, steps, count, RESTORING)])
    except AssertionError as error:
        error.add_note(f"as a saved case: {json.dumps(world.steps)}")
        raise
    finally:
        world.close()


@pytest.mark.parametrize("seed", range(1, 8))
def test_nothing_is_lost_to_restores_on_sqlite(sqlite_house, seed):
    run(sqlite_house, seed)


@pytest.mark.long
def test_nothing_is_lost_to_restores_on_postgresql(postgresql_house):
    for seed in (21, 22, 23):
        run(postgresql_house, seed, 40)


def test_an_older_entry_of_the_journal_does_not_overwrite_a_newer_waiting_edit(sqlite_house):
    world = World(sqlite_house, 3)
    try:
        play(world, [["backup"], ["rename", 0, 0], ["sync", 0], ["rename", 0, 0], ["restore", 0, 0]])
    finally:
        world.close()
