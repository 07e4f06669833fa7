"""The sheet of days of a pass is reckoned on the phone; what it takes from the plan's rules is held to them here."""

from __future__ import annotations

import json
from pathlib import Path

from tests.support.node_tests import run_node_tests

from broodshelf.care import catalogue


def test_the_phone_reckons_the_days_of_a_pass(tmp_path):
    given = tmp_path / "given.json"
    given.write_text(json.dumps(catalogue.as_json()))
    run_node_tests(Path(__file__).with_name("run_sheet.mjs"), GIVEN=str(given))
