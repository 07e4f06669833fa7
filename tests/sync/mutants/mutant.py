"""A mutant of the proof, and what its random runs lean towards."""

from __future__ import annotations

import re
import shutil
from collections.abc import Callable
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

import pytest
from tests.support.world.phones import PWA

ROOMS = ("database", "sync", "care", "words", "vendor")
"""Of the app: what its phones are made of in a world."""


@dataclass(frozen=True)
class Change:
    """In a module of the app, what is replaced by what; ``pattern`` is found there exactly once."""

    module: str
    pattern: str
    instead: str


@dataclass(frozen=True)
class Mutant:
    """A fault: how it is put into the server or the app, how often each step is drawn, or a run that shows it.

    ``modules`` are new ones of the app that its ``changes`` need, by path.
    """

    name: str
    apply: Callable[[pytest.MonkeyPatch], None] = lambda _patch: None
    changes: tuple[Change, ...] = ()
    modules: dict[str, str] = field(default_factory=dict)
    steps: dict[str, int] = field(default_factory=dict)
    run: tuple[list[Any], ...] = ()

    def app(self, folder: Path) -> Path:
        """Return the app that phones run: the one that ships, or a copy in this folder with the fault in it."""
        if not self.changes:
            return PWA
        for room in ROOMS:
            shutil.copytree(PWA / room, folder / room)
        for path, text in self.modules.items():
            (folder / path).write_text(text, "utf-8")
        for change in self.changes:
            module = folder / change.module
            text, count = re.subn(change.pattern, change.instead, module.read_text("utf-8"), flags=re.DOTALL)
            assert count == 1, (
                f"{change.module} is written otherwise now: {change.pattern!r} is there {count} times"
            )
            module.write_text(text, "utf-8")
        return folder


BUSY = {
    "log": 10,
    "rename": 10,
    "amend": 6,
    "void": 4,
    "sync": 14,
    "lose": 6,
    "begin": 6,
    "advance": 10,
    "crash": 6,
}
RESTORING = {**BUSY, "backup": 8, "restore": 8}
AWAY = {"log": 6, "void": 8, "sync": 12, "days": 5, "rename": 6}
EARLIER_THAN_KNOWN = Change(
    "database/verdicts.js", r"if \(next\) \{", "if (last_made_ms > answer.server_time) {"
)
"""What a phone makes is later than what it made, but not than what the server told."""
