"""What the phone draws of a place's warmth behind a colony's growth, run in Node."""

from __future__ import annotations

import os
import shutil
import subprocess
from pathlib import Path


def test_the_warmth_behind_a_chart_by_the_phones_own_module():
    node = shutil.which("node")
    assert node, "Node is not installed; ./deploy/test installs it (it is a tool for tests only)."
    done = subprocess.run(
        [node, "--test", str(Path(__file__).with_name("run_place_climate.mjs"))],
        env={**os.environ, "TZ": "Europe/Vienna"},
        capture_output=True,
        text=True,
        timeout=60,
    )

    assert done.returncode == 0, done.stdout[-6000:] + done.stderr[-2000:]
