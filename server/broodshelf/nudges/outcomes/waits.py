"""How long we wait of our own accord after a failure."""

from __future__ import annotations

from typing import Final

PAUSE_S: Final = 30
"""How long a service that did not answer at all is left alone, so that its silence is waited out only once."""
BACK_OFF_S: Final = (30, 120, 480, 1800)
"""Waits after the first, second, … failure of a service or the network; the last one repeats."""


def back_off_s(attempts: int) -> int:
    """Return the wait after so many failed attempts (at least one)."""
    return BACK_OFF_S[min(attempts, len(BACK_OFF_S)) - 1]
