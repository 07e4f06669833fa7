"""What the sensors of a place measured just now, on a phone whose clock is off."""

from __future__ import annotations

from pathlib import Path

from tests.support.node_tests import run_node_tests

from broodshelf.languages.phones_file import phones_file


def test_the_last_hour_goes_by_the_servers_clock(tmp_path):
    words = tmp_path / "words.ftl"
    words.write_bytes(phones_file("en", "first") + phones_file("en", "screens"))

    run_node_tests(Path(__file__).with_name("run_last_hour.mjs"), WORDS=str(words))
