"""A mutant of the proof, and what its random runs lean towards."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field
from typing import Any

import pytest
from tests.support.stored_phone import StoredPhone


@dataclass(frozen=True)
class Mutant:
    """A fault: how it is put in, which phones run, how often each step is drawn, or a run that shows it."""

    name: str
    apply: Callable[[pytest.MonkeyPatch], None] = lambda _patch: None
    phone: type[StoredPhone] = StoredPhone
    steps: dict[str, int] = field(default_factory=dict)
    run: tuple[list[Any], ...] = ()


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
