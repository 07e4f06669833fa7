"""The sheet of days of a pass is reckoned on the phone; what it takes from the plan's rules is held to them here."""

from __future__ import annotations

import json
import os
import shutil
import subprocess
from pathlib import Path

from broodshelf.care import catalogue


def test_the_phone_reckons_the_days_of_a_pass(tmp_path):
    node = shutil.which("node")
    assert node, "Node is not installed; ./deploy/test installs it (it is a tool for tests only)."
    given = tmp_path / "given.json"
    given.write_text(json.dumps(catalogue.as_json()))
    script = str(Path(__file__).with_name("run_sheet.mjs"))
    done = subprocess.run(
        [node, "--test", script],
        env={**os.environ, "GIVEN": str(given), "TZ": "Europe/Vienna"},
        capture_output=True,
        text=True,
        timeout=60,
    )

    assert done.returncode == 0, done.stdout[-6000:] + done.stderr[-2000:]
