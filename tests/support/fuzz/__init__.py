"""Random requests against the whole app, as everybody, in sequences; what must hold after each of them.

A run is a list of steps that hypothesis draws from the OpenAPI document and cuts down when one breaks something.
Each run begins with the same two households. Nothing here knows what a right answer is, only what no answer may be:
an error of the server, a request without end, an exception that was swallowed, JSON that is none.
"""

from __future__ import annotations

from tests.support.fuzz.playing import MOST_GROWTH_MIB, Fuzz, resident_mib
from tests.support.fuzz.steps import Ask

__all__ = ["MOST_GROWTH_MIB", "Ask", "Fuzz", "resident_mib"]
