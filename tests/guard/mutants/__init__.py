"""Committed mutants of the guard: named faults, each of which the matrix must find.

A mutant is put in with ``monkeypatch``; ``look`` is the part of the matrix that has to turn red, so that a run of
all of them stays short. Without a mutant the same parts are green: the tests of the matrix itself.
"""

from __future__ import annotations

from tests.guard.mutants import asking, ended, seeing, whose, writing

MUTANTS = (*asking.MUTANTS, *ended.MUTANTS, *whose.MUTANTS, *writing.MUTANTS, *seeing.MUTANTS)
