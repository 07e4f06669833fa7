"""Committed mutants: named faults of the server and of the phone, each of which the proof must find.

One of the server is applied with ``monkeypatch``, one of the phone is a change of the app's own modules, in a copy.
``steps`` leans the random run towards what it breaks.
"""

from __future__ import annotations

from tests.sync.mutants import of_phone, of_server

MUTANTS = (*of_server.MUTANTS, *of_phone.MUTANTS)
