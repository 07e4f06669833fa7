"""The sheet of days of a pass is reckoned on the phone; what it takes from the plan's rules is held to them here."""

from __future__ import annotations

import json
import os
import shutil
import subprocess
from pathlib import Path

from broodshelf.care import catalogue
from broodshelf.care.colony.winter_rest import AIRING_DAYS, WATER_CHECK_DAYS
from broodshelf.care.plan.housing import NEXT_LOOK_DAYS


def test_the_phone_reckons_the_days_of_a_pass(tmp_path):
    node = shutil.which("node")
    assert node, "Node is not installed; ./deploy/test installs it (it is a tool for tests only)."
    looks = {
        "water_look": NEXT_LOOK_DAYS,
        "rest_water": WATER_CHECK_DAYS[0],
        "rest_air": AIRING_DAYS,
        "risk_look": 1,  # once a day: care/plan/risk.py
    }
    given = tmp_path / "given.json"
    given.write_text(json.dumps({"foods": catalogue.as_json()["foods"], "looks": looks}))
    script = str(Path(__file__).with_name("run_sheet.mjs"))
    done = subprocess.run(
        [node, "--test", script],
        env={**os.environ, "GIVEN": str(given), "TZ": "Europe/Vienna"},
        capture_output=True,
        text=True,
        timeout=60,
    )

    assert done.returncode == 0, done.stdout[-6000:] + done.stderr[-2000:]
