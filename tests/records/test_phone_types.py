"""The phone's types of records follow from the registry; a field that is renamed is missed by both type checkers."""

from __future__ import annotations

import re
import shutil
import subprocess
import sys
from pathlib import Path

from tests.support import phone_types

ROOT = Path(__file__).parents[2]
MYPY = (sys.executable, "-m", "mypy", "--strict", "--follow-imports=silent", "--cache-dir=/dev/null")
TSC = ROOT / "tests/support/node/node_modules/.bin/tsc"


def test_the_phones_types_are_those_of_the_registry():
    stale = "pwa/kinds.d.ts is stale; run: python -m tests.support.phone_types"
    assert phone_types.PATH.read_text("utf-8") == phone_types.phone_types(), stale


def test_a_field_that_is_renamed_is_missed_by_the_phones_modules(tmp_path):
    shutil.copytree(ROOT / "pwa", tmp_path / "pwa")
    assert checked(TSC, "-p", tmp_path / "pwa/jsconfig.json") == ""

    rename(tmp_path / "pwa/kinds.d.ts", "finished_on")

    missed = checked(TSC, "-p", tmp_path / "pwa/jsconfig.json")
    assert "screens/larder.js" in missed, missed
    assert "'finished_on' does not exist" in missed


def test_a_field_that_is_renamed_is_missed_by_the_rooms_of_the_server(tmp_path):
    server = shutil.copytree(
        ROOT / "server", tmp_path / "server", ignore=shutil.ignore_patterns("__pycache__")
    )
    reader = server / "broodshelf/rounds/facts_of.py"
    assert checked(*MYPY, reader, cwd=server).startswith("Success")

    rename(server / "broodshelf/model/kinds/larder.py", "finished_on")

    missed = checked(*MYPY, reader, cwd=server)
    assert "facts_of.py:" in missed
    assert '"Lot" has no attribute "finished_on"' in missed


def rename(path: Path, field: str) -> None:
    text = path.read_text("utf-8")
    assert re.search(rf"\b{field}\b", text), f"{path.name} has no field {field}"
    path.write_text(re.sub(rf"\b{field}\b", "used_up_on", text), "utf-8")


def checked(*command: object, cwd: Path = ROOT) -> str:
    """Run a type checker and return what it found."""
    done = subprocess.run(
        [str(part) for part in command], cwd=cwd, capture_output=True, text=True, timeout=300
    )
    return done.stdout + done.stderr
