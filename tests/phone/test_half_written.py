"""What keeps a tab from going over to a new version: a field that says something else than what is kept."""

from __future__ import annotations

from pathlib import Path

from tests.support.node_tests import run_node_tests


def test_a_tab_goes_over_when_what_was_written_is_saved_or_left():
    run_node_tests(Path(__file__).with_name("run_half_written.mjs"))
