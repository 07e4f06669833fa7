"""An installed package brings the phone's files, the catalogue and the migrations with it."""

from __future__ import annotations

import subprocess
import sys
import zipfile
from pathlib import Path

ROOT = Path(__file__).parents[2]


def test_the_wheel_holds_everything_that_a_server_needs(tmp_path):
    built = subprocess.run(
        [sys.executable, "-m", "hatchling", "build", "-t", "wheel", "-d", str(tmp_path)],
        cwd=ROOT,
        capture_output=True,
        text=True,
    )
    assert built.returncode == 0, built.stderr
    names = set(zipfile.ZipFile(next(tmp_path.glob("*.whl"))).namelist())
    phone = {
        f"broodshelf/pwa/{p.relative_to(ROOT / 'pwa')}" for p in (ROOT / "pwa").rglob("*") if p.is_file()
    }
    server = {
        p.relative_to(ROOT / "server").as_posix()
        for p in (ROOT / "server/broodshelf").rglob("*")
        if p.suffix in {".py", ".toml", ".mako"}
    }

    assert phone <= names
    assert server <= names
