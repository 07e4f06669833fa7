"""Whether the latest loss is more than drying and drinking can explain.

Two explanations of the latest reading compete. *Sound*: the tube goes on losing as before, at a rate that is itself
uncertain; it is as likely as a loss at least so great is under it, so the worse the loss, the less likely. *Leaking*: a
leak began before one of the last ``LOOK_BACK`` readings and takes at least ``HASTES`` times the usual, or all there is;
a worse loss never speaks against it. So the worse a loss, the surer the suspicion, whatever its factor.
A probability asks for a look, never for alarm.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import Final, NamedTuple

from ...model.gauges import DAY_MS
from ...model.quantities import Estimate
from .loss_rate import EYE_SHARE, Belief, after, weight_of_at_least, weight_of_at_most
from .readings import Reading

LEAKS_PER_DAY: Final = 0.003
SHORTEST_DAYS, LONGEST_DAYS = 1.0, 14.0
"""How often leaks begin, before any reading: about one in a year of a tube (common practice, no source). A shorter
interval counts as a day, because a tube is set up, opened and moved between readings, not in the middle of one; a
longer one as 14 days, so that a long absence alone never suspects a leak."""
TAILS: Final = (0.2, 0.3, 0.3)
"""What 'at least so great' overstates how well the sound tube explains a loss, for a leak that began before the last
reading, the one before it and the third: one odd reading is cheaper than two. Chosen so that about one sound tube in
100 months comes under suspicion at most (tests/bench/water_learning.py)."""
HASTES: Final = (3.0, 8.0)
"""A leaking tube loses at least so many times as much; equally likely beforehand."""
LOOK_BACK: Final = 3
LOOK_TODAY: Final = 0.5
"""From this probability on somebody should look."""
FASTEST_PER_DAY: Final = 24.0
"""A reservoir that empties within the hour: no rate is thought to be faster."""

Run = Sequence[tuple[Belief, Reading]]
"""The readings since the last step, each with the belief before it."""


class Explained(NamedTuple):
    """The weights of both explanations; only their ratio means anything."""

    sound: float
    leaking: float


def explain(run: Run, usual_per_day: float, noise: float) -> Explained:
    """Return how well a sound and a leaking tube explain the readings of a run. Without any: sound."""
    if not run:
        return Explained(1.0, 0.0)
    before, latest = run[-1]
    sound = weight_of_at_most(before, latest, usual_per_day, noise)
    leaking = 0.0
    for begins in range(1, min(LOOK_BACK, len(run)) + 1):
        start, first = run[-begins]
        days = min(LONGEST_DAYS, max(SHORTEST_DAYS, (first.at_ms - start.at_ms) / DAY_MS))
        for haste in HASTES:
            belief = start
            for _, reading in run[-begins:-1]:
                belief = after(belief, reading, usual_per_day, noise, haste)
            weight = weight_of_at_least(belief, latest, usual_per_day, noise, haste)
            leaking += weight * TAILS[begins - 1] * days / len(HASTES)
    return Explained(sound, leaking * LEAKS_PER_DAY)


def lost_per_day(before: Reading, latest: Reading, noise: float) -> Estimate:
    """Return what was lost between two readings in shares of the full reservoir a day, 80 %; nothing gained counts."""
    days = max(1.0 / FASTEST_PER_DAY, (latest.at_ms - before.at_ms) / DAY_MS)
    blur = 1.28 * math.sqrt(2) * (noise if latest.measured else EYE_SHARE)
    lost = before.share - latest.share
    return Estimate(
        *(min(FASTEST_PER_DAY, max(0.0, share) / days) for share in (lost - blur, lost, lost + blur))
    )
