"""What the worker says by itself: the buttons of a nudge."""

from __future__ import annotations

from pathlib import Path

from tests.support.node_tests import run_node_tests


def test_the_buttons_of_a_nudge_speak_the_language_of_the_phone():
    run_node_tests(Path(__file__).with_name("run_nudge_buttons.mjs"))
