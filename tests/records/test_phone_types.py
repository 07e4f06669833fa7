"""The phone's types of records follow from the registry, and a field that is renamed is missed by its modules."""

from __future__ import annotations

import re
import shutil
import subprocess
from pathlib import Path

from tests.support import phone_types

ROOT = Path(__file__).parents[2]
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
