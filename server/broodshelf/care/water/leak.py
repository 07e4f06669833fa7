"""Whether the latest losses are more than evaporation and drinking can explain.

Two explanations of the last readings compete: the tube goes on losing as before (at a rate that is itself uncertain),
or a leak began before one of the last ``LOOK_BACK`` readings and multiplies the loss. Their odds are the prior odds
times the ratio of how well each foretold the readings. A probability asks for a look, never for alarm.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from ..gauges import DAY_MS
from .loss_rate import Belief, after, evidence
from .readings import Reading

LEAKS_PER_DAY: Final = 0.003
LONGEST_DAYS: Final = 14.0
"""How often leaks begin, before any reading: about one in a year of a tube (common practice, no source). A longer
interval counts as 14 days, so that a long absence alone never suspects a leak."""
HASTES: Final = (3.0, 8.0)
"""How many times faster a leaking tube may lose, give or take ``LEAK_WANDER``; equally likely beforehand."""
LOOK_BACK: Final = 3
LOOK_TODAY: Final = 0.5
"""From this probability on somebody should look."""


def leak_evidence(run: Sequence[tuple[Belief, Reading]], usual_per_day: float, noise: float) -> float:
    """Return the weight of 'a leak began lately', to be held against ``evidence`` of the belief without one.

    ``run``: the readings since the last step, each with the belief before it.
    """
    leaking = 0.0
    for begins in range(1, min(LOOK_BACK, len(run)) + 1):
        before, first = run[-begins]
        days = min(LONGEST_DAYS, (first.at_ms - before.at_ms) / DAY_MS)
        for haste in HASTES:
            belief = before
            for _, reading in run[-begins:]:
                belief = after(belief, reading, usual_per_day, noise, haste)
            leaking += evidence(belief) * days / len(HASTES)
    return leaking * LEAKS_PER_DAY
