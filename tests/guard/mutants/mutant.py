"""A mutant of the guard, and the parts of the matrix that can be looked at for it."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass

import pytest
from tests.guard.field_matrix import wrong_reads, wrong_writes
from tests.guard.matrix import cells, wrong_answers
from tests.support.two_houses import TwoHouses

Look = Callable[[TwoHouses], Iterable[str]]


@dataclass(frozen=True)
class Mutant:
    """A fault, how it is put in, and where the matrix has to see it."""

    name: str
    apply: Callable[[pytest.MonkeyPatch], None]
    look: Look


def at(address: str) -> Look:
    return lambda houses: wrong_answers(houses, cells(address))


def writes(role: str, only: str = "") -> Look:
    return lambda houses: wrong_writes(houses, role, only)


def reads(role: str) -> Look:
    return lambda houses: wrong_reads(houses, role)
