"""The proof can fail: each committed mutant turns it red, and without one the same runs are green."""

from __future__ import annotations

import pytest
from tests.support.random_run import draw
from tests.support.world import World, play
from tests.sync.mutants import MUTANTS
from tests.sync.mutants.mutant import RESTORING, Change, Mutant

pytestmark = pytest.mark.long

RUNS, STEPS, PHONES = 25, 60, 3


def first_red_run(house, mutant, app) -> str | None:
    """Return what the first run that turns red says; None if all runs stay green."""
    for seed in range(1 if mutant.run else RUNS):
        world = World(house, PHONES, app=app)  # outside: an app that does not load shows no fault
        try:
            play(world, [*(mutant.run or draw(seed, STEPS, PHONES, mutant.steps))])
        except AssertionError as error:
            return f"run {seed}: {error}"
        finally:
            world.close()
    return None


@pytest.mark.parametrize("mutant", MUTANTS, ids=lambda mutant: mutant.name)
def test_the_proof_finds(mutant, sqlite_house, monkeypatch, tmp_path):
    if mutant.run:
        play_without(sqlite_house, mutant.run)
    mutant.apply(monkeypatch)

    red = first_red_run(sqlite_house, mutant, mutant.app(tmp_path))
    assert red, f"{RUNS} runs stayed green with the mutant {mutant.name!r}"


def test_a_copy_of_the_app_without_a_fault_is_green(sqlite_house, tmp_path):
    """Else every fault of the phone would seem to be found."""
    run = tuple(draw(1, STEPS, PHONES, RESTORING))
    mutant = Mutant("none", changes=(Change("database/store.js", r"\A", ""),), run=run)

    assert first_red_run(sqlite_house, mutant, mutant.app(tmp_path)) is None


def play_without(house, steps) -> None:
    """A run that shows a mutant is green on the code that ships."""
    world = World(house, PHONES)
    try:
        play(world, [*steps])
    finally:
        world.close()
