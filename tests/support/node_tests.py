"""Tests that Node runs: the phone's pure modules by their own test files."""

from __future__ import annotations

import json
import os
import shutil
import subprocess
from pathlib import Path

from broodshelf.web.shell import LIBRARIES


def run_node_tests(script: Path, **environment: str) -> None:
    """Run a file of ``node:test`` in the zone of Vienna, unless told otherwise; what fails is told as Node tells it."""
    node = shutil.which("node")
    assert node, "Node is not installed; ./deploy/test installs it (it is a tool for tests only)."
    done = subprocess.run(
        [node, "--test", str(script)],
        env={**os.environ, "TZ": "Europe/Vienna", "LIBRARIES": json.dumps(dict(LIBRARIES)), **environment},
        capture_output=True,
        text=True,
        timeout=60,
    )
    assert done.returncode == 0, done.stdout[-6000:] + done.stderr[-2000:]
