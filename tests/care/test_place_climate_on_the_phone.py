"""What the phone draws of a place's warmth behind a colony's growth, run in Node."""

from __future__ import annotations

from pathlib import Path

from tests.support.node_tests import run_node_tests


def test_the_warmth_behind_a_chart_by_the_phones_own_module():
    run_node_tests(Path(__file__).with_name("run_place_climate.mjs"))
