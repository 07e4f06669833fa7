"""Whom a stand-in can call: each number that the keeper wrote, by itself."""

from __future__ import annotations

from pathlib import Path

from tests.support.node_tests import run_node_tests

from broodshelf.languages.phones_file import phones_file


def test_whom_to_call(tmp_path):
    words = tmp_path / "words.ftl"
    words.write_bytes(phones_file("en", "first") + phones_file("en", "screens"))

    run_node_tests(Path(__file__).with_name("run_whom_to_call.mjs"), WORDS=str(words))
