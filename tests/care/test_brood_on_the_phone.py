"""The question of a founding and the line of time are the phone's own; they are run by Node."""

from __future__ import annotations

from pathlib import Path

from tests.support.node_tests import run_node_tests


def test_the_phone_asks_when_it_makes_sense_and_draws_what_the_plan_says():
    run_node_tests(Path(__file__).with_name("run_brood.mjs"))
