"""Committed mutants: named faults of the server and of the phone, each of which the proof must find.

A mutant is applied with ``monkeypatch``; ``steps`` leans the random run towards what it breaks.
"""

from __future__ import annotations

from tests.sync.mutants import of_phone, of_server

MUTANTS = (*of_server.MUTANTS, *of_phone.MUTANTS)
