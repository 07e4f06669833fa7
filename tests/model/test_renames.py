"""A name of the ground floor that is changed in its own module alone is found by both type checkers.

Tried on a copy, with all names at once: the types of the phone are written anew there, then mypy reads the model, care,
what reads records for it and the reference for the phone's gauges, tsc the phone. Each has to name the old name where
it is still used.
"""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

TOP = Path(__file__).parents[2]
TSC = TOP / "tests/support/node/node_modules/.bin/tsc"
pytestmark = pytest.mark.long
MYPY = [sys.executable, "-m", "mypy", "--strict", "--explicit-package-bases", "--namespace-packages"]
RENAMED = {
    "a column of the faults": ("needs.py", "touches", "concerns", ("care/plan/faults.py", "care/round.js")),
    "a need": ("needs.py", '"glance"', '"look"', ("care/plan/upkeep.py", "care/awaited.js")),
    "a field of a planned task": (
        "kinds/plan.py",
        "due_at_ms",
        "wanted_ms",
        ("model/tasks.py", "care/round.js"),
    ),
    "a field of a record": (
        "kinds/larder.py",
        "finished_on",
        "used_up_on",
        ("rounds/facts_of.py", "screens/larder.js"),
    ),
    "a field of a planned gauge": (
        "kinds/plan.py",
        "due_level",
        "least_level",
        ("model/gauges.py", "care/gauges.js"),
    ),
    "a field of a plan": (
        "kinds/plan.py",
        "tasting_waits",
        "tasting_held_up",
        ("care/plan/make.py", "screens/tasting.js"),
    ),
    "what an event says": (
        "kinds/log.py",
        "resolved_at",
        "over_at",
        ("care/colony/history.py", "care/round.js"),
    ),
    "what an event answers": (
        "kinds/log.py",
        "possible_repeat",
        "perhaps_repeated",
        ("model/facts.py", "care/lists.js"),
    ),
    "what fills a gauge": (
        "kinds/log.py",
        "fresh_reservoir",
        "new_reservoir",
        ("care/gauges_by_event.py", "care/gauges.js"),
    ),
}
"""The module, the old and the new name, and where each checker has to find what is left of the old one."""


@pytest.fixture(scope="module")
def complaints(tmp_path_factory) -> tuple[list[str], list[str]]:
    """The lines of mypy and of tsc after all these names were changed."""
    made = tmp_path_factory.mktemp("renames")
    for room in ("model", "care"):
        shutil.copytree(TOP / f"server/broodshelf/{room}", made / f"server/broodshelf/{room}")
    for module in ("records/__init__", "records/types", "rounds/__init__", "rounds/facts_of"):
        there = made / f"server/broodshelf/{module}.py"
        there.parent.mkdir(exist_ok=True)
        shutil.copy(TOP / f"server/broodshelf/{module}.py", there)
    shutil.copy(TOP / "server/broodshelf/__init__.py", made / "server/broodshelf")
    shutil.copytree(TOP / "pwa", made / "pwa")
    for module in ("support/phone_types", "care/gauges_by_event"):
        there = made / f"tests/{module}.py"
        there.parent.mkdir(parents=True)
        shutil.copy(TOP / f"tests/{module}.py", there)
    assert checked(made) == ("", "")
    for module, old, new, _ in RENAMED.values():
        path = made / "server/broodshelf/model" / module
        path.write_text(path.read_text("utf-8").replace(old, new), "utf-8")
    by_mypy, by_tsc = checked(made)
    return by_mypy.splitlines(), by_tsc.splitlines()


@pytest.mark.parametrize("renamed", RENAMED)
def test_both_type_checkers_find_a_name_that_was_changed_in_its_own_module_alone(complaints, renamed):
    _, old, _, (server, phone) = RENAMED[renamed]
    by_mypy, by_tsc = complaints
    name = old.strip('"')

    assert [line for line in by_mypy if f"{server}:" in line and name in line]
    assert [line for line in by_tsc if f"{phone}(" in line and name in line]


def checked(top: Path) -> tuple[str, str]:
    """Return what mypy and tsc complain of, after the phone's types were written anew."""
    env = {**os.environ, "PYTHONPATH": str(top / "server"), "MYPYPATH": "server"}
    read = [f"server/broodshelf/{name}" for name in ("model", "care", "rounds/facts_of.py")]
    read.append("tests/care/gauges_by_event.py")
    subprocess.run([sys.executable, "tests/support/phone_types.py"], cwd=top, env=env, check=True)
    types = subprocess.run([*MYPY, *read], cwd=top, env=env, capture_output=True, text=True, check=False)
    phone = subprocess.run(
        [TSC, "-p", "pwa/jsconfig.json"], cwd=top, capture_output=True, text=True, check=False
    )
    return ("" if types.returncode == 0 else types.stdout), phone.stdout
