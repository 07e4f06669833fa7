"""The question of a founding and the line of time are the phone's own; they are run by Node."""

from __future__ import annotations

import os
import shutil
import subprocess
from pathlib import Path


def test_the_phone_asks_when_it_makes_sense_and_draws_what_the_plan_says():
    node = shutil.which("node")
    assert node, "Node is not installed; ./deploy/test installs it (it is a tool for tests only)."
    done = subprocess.run(
        [node, "--test", str(Path(__file__).with_name("run_brood.mjs"))],
        env={**os.environ, "TZ": "Europe/Vienna"},
        capture_output=True,
        text=True,
        timeout=60,
    )

    assert done.returncode == 0, done.stdout[-6000:] + done.stderr[-2000:]
