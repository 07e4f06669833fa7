"""Parts of screens without a browser, in Node: the app's own modules on a disk in memory."""

from __future__ import annotations

from pathlib import Path

from tests.support.node_tests import run_node_tests


def test_work_that_is_asked_for_twice_or_left_meanwhile():
    run_node_tests(Path(__file__).with_name("run_parts.mjs"))


def test_pictures_that_wait():
    run_node_tests(Path(__file__).with_name("run_pictures.mjs"))
