"""Nothing lost, doubled, silently overwritten or back from the dead: any order of logs, faults and restores.

Hypothesis looks for a run that breaks it, on both databases; runs that once did are in ``fixtures/sync_cases``.
The long search is a command: ``python -m tests.bench.long_sync``.
"""

from __future__ import annotations

import json
from pathlib import Path

import pytest
from hypothesis import HealthCheck, Phase, settings
from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, initialize, rule, run_state_machine_as_test
from tests.support.house import House
from tests.support.world import LONG_AWAY_DAYS, World, play

pytestmark = pytest.mark.long

CASES = sorted((Path(__file__).parents[2] / "fixtures/sync_cases").glob("*.json"))

who = st.integers(0, 3)
which = st.integers(0, 5)


class Shelf(RuleBasedStateMachine):
    """Every rule is a step of the world (tests/support/world); ``house`` is set by the test."""

    house: House

    @initialize(phones=st.integers(3, 5), stand_in=st.booleans())
    def begin(self, phones: int, stand_in: bool) -> None:
        self.world = World(self.house, phones, stand_in=stand_in)
        self.phones = phones

    @rule(
        name=st.sampled_from(["log", "feed", "rename", "rename", "amend", "void", "unvoid"]),
        who=who,
        which=which,
    )
    def person(self, name: str, who: int, which: int) -> None:
        self.world.step(name, who % self.phones, which)

    @rule(name=st.sampled_from(["sync", "sync", "sync", "lose", "lose", "double", "upgrade"]), who=who)
    def phone(self, name: str, who: int) -> None:
        self.world.step(name, who % self.phones)

    @rule(name=st.sampled_from(["found", "bad", "mend", "revoke"]), who=who)
    def rarely(self, name: str, who: int) -> None:
        self.world.step(name, who % self.phones)

    @rule(who=who, stops=st.integers(1, 6))
    def killed(self, who: int, stops: int) -> None:
        self.world.step("crash", who % self.phones, stops)

    @rule(who=who, tab=st.integers(0, 1))
    def open_tab(self, who: int, tab: int) -> None:
        self.world.step("begin", who % self.phones, tab)

    @rule(who=who, tab=st.integers(0, 1), stops=st.integers(1, 5))
    def go_on(self, who: int, tab: int, stops: int) -> None:
        self.world.step("advance", who % self.phones, tab, stops)

    @rule(which=st.integers(0, 7))
    def late_request(self, which: int) -> None:
        self.world.step("late", which)

    @rule(who=who, hours=st.sampled_from([-26, -1, 0, 26]))
    def wrong_clock(self, who: int, hours: int) -> None:
        self.world.step("skew", who % self.phones, hours)

    @rule(who=who, rows=st.sampled_from([1, 3, 1000]))
    def small_pages(self, who: int, rows: int) -> None:
        self.world.step("page", who % self.phones, rows)

    @rule()
    def back_up(self) -> None:
        self.world.step("backup")

    @rule(which=which, by_hand=st.integers(0, 1))
    def restore(self, which: int, by_hand: int) -> None:
        self.world.step("restore", which, by_hand)

    @rule(days=st.sampled_from([1, 3, 40, LONG_AWAY_DAYS]))
    def time_passes(self, days: int) -> None:
        self.world.step("days", days)

    def teardown(self) -> None:
        if hasattr(self, "world"):
            try:
                self.world.check()
            except AssertionError as error:
                error.add_note(f"as a saved case: {json.dumps(self.world.steps)}")
                raise
            finally:
                self.world.close()


def search(house: House, examples: int, steps: int) -> None:
    Shelf.house = house
    run_state_machine_as_test(
        Shelf,
        settings=settings(
            max_examples=examples,
            stateful_step_count=steps,
            deadline=None,
            phases=(Phase.generate, Phase.shrink),
            suppress_health_check=list(HealthCheck),
        ),
    )


def test_nothing_is_lost_doubled_or_silently_overwritten_on_sqlite(sqlite_house):
    search(sqlite_house, examples=14, steps=40)


def test_nothing_is_lost_doubled_or_silently_overwritten_on_postgresql(postgresql_house):
    search(postgresql_house, examples=4, steps=30)


@pytest.mark.parametrize("case", CASES, ids=lambda path: path.stem)
def test_a_run_that_once_went_wrong(sqlite_house, case):
    saved = json.loads(case.read_text("utf-8"))
    world = World(sqlite_house, saved["phones"], stand_in=saved.get("stand_in", False))
    try:
        play(world, saved["steps"])
    finally:
        world.close()
