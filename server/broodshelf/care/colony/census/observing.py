"""What each thing that was seen teaches the ensemble.

An observation speaks of one number of the nest. What it says of that number is worked out on a fixed row of nodes,
whatever the shape of its likelihood; the rest of the colony follows by regression over the ensemble (a two-step
ensemble filter: Anderson 2003 Mon. Weather Rev. 131:634-642, from memory). Nothing that is seen widens what is known.
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from operator import add, mul
from statistics import NormalDist
from typing import Final

from .colonies import Colonies
from .ensemble import LEARNT, Ensemble
from .facts import Seen
from .founders import look_likelihood
from .likelihood import OFFSET, Bell, Likelihood, likelihood_of

ROW_OFFSET: Final = 0.05
STAGES_OF: Final[Mapping[str, tuple[int, ...]]] = {"eggs": (0,), "larvae": (1, 2), "pupae": (3,)}
UNLIKELY: Final = 0.03
WIDER: Final = (1.0, 1.5, 2.25, 3.4)
"""What has lower odds is believed all the same: then what was thought before is held less sure, step by step."""
SURPRISE: Final = 2.5
"""A count that lies more deviations off is believed all the same, and what was thought before is held less sure."""
AGAIN_WIDER: Final = 2.0
"""Two counts one after the other that lie more than a deviation off to the same side are no chance: the second is
believed as if so many times less had been known before (common practice, no source)."""
NODES: Final = tuple(i / 4 for i in range(-14, 15))
_NODE_WEIGHTS: Final = tuple(NormalDist().pdf(node) for node in NODES)
MOST_SHRUNK: Final = 0.02
ADDED_UNKNOWN, ADDED_SD = 10.0, 0.5


@dataclass(frozen=True, slots=True)
class Moved:
    """What an observation changed: in the logarithm of its own number, and in those of speed and laying.

    ``expected``: what was thought to be there; ``odds``: of seeing this, for a look that found nothing.
    """

    seen: Seen
    expected: float
    number: float
    speed: float
    laying: float
    odds: float

    @property
    def strength(self) -> float:
        """How much it moved what is believed."""
        return max(abs(self.number), abs(self.speed), abs(self.laying))

    @property
    def direction(self) -> str:
        """``more`` or ``fewer`` of what was seen, or ``sooner`` or ``later``, whichever it moved most."""
        if abs(self.speed) > max(abs(self.number), abs(self.laying)):
            return "sooner" if self.speed > 0 else "later"
        return "more" if self.number > 0 else "fewer"


def numbers_of(colonies: Colonies, what: str) -> list[float]:
    """Return how many workers, eggs, larvae or pupae each colony has."""
    if what == "workers":
        return colonies.workers
    stages = [colonies.total(stage) for stage in STAGES_OF[what]]
    return stages[0] if len(stages) == 1 else list(map(add, *stages))


def learn(ensemble: Ensemble, seen: Seen) -> Moved | None:
    """Take in one observation; None where it says nothing about a number."""
    what = seen.what
    if ensemble.founders is not None and (seen.what in ("added", "died") or (what == "workers" and seen.any)):
        ensemble.founders = None  # from here on it is a colony like any other
    if what == "added":
        _add(ensemble, seen)
        return None
    if what == "died":
        colonies = ensemble.colonies
        colonies.workers = [max(0.0, number - (seen.number or 0.0)) for number in colonies.workers]
        return None
    if what == "moved":
        return None
    of = "larvae" if what == "protein" else what
    workers = _mean(ensemble.colonies.workers)
    likelihood = likelihood_of(seen, workers)
    if likelihood is None:
        return None
    return _weigh(ensemble, seen, of, likelihood) or _update(ensemble, seen, of, likelihood)


def _weigh(ensemble: Ensemble, seen: Seen, of: str, likelihood: Likelihood) -> Moved | None:
    """Take in a look at a founding by weighing its queens; None where that is over, or the look surprises too much."""
    founders = ensemble.founders
    if founders is None:
        return None
    numbers = numbers_of(founders.colonies, of)
    word = "none" if seen.number == 0 else seen.word
    weighed = founders.weighed(numbers, look_likelihood(seen.what, word, numbers, likelihood))
    if weighed is None:
        ensemble.founders = None
        return None
    ensemble.draw()
    return Moved(seen, weighed.expected, weighed.number, weighed.speed, weighed.laying, weighed.odds)


def _update(ensemble: Ensemble, seen: Seen, of: str, likelihood: Likelihood) -> Moved | None:
    colonies = ensemble.colonies
    logs = [math.log(number + OFFSET) for number in numbers_of(colonies, of)]
    middle = _mean(logs)
    apart = [h - middle for h in logs]
    own = _mean([a * a for a in apart])
    expected = math.exp(middle)
    chance = _chance(colonies, of, expected)
    spread = own + chance
    if spread < 1e-8:
        return None
    deviation = math.sqrt(spread)
    if of == "workers" and isinstance(likelihood, Bell):
        off = (likelihood.middle - middle) / math.hypot(deviation, likelihood.deviation)
        if min(off * ensemble.last_off, abs(off), abs(ensemble.last_off)) > 1:
            deviation *= AGAIN_WIDER
        ensemble.last_off = off
    after, left, odds, wider = _posterior(middle, deviation, likelihood)
    shrink = max(MOST_SHRUNK, min(1.0, left / math.sqrt(spread)))
    left = shrink * math.sqrt(spread)
    before = [_mean([place[i] for place in ensemble.places]) for i in range(2)]
    most = SURPRISE * deviation
    _regress(ensemble, apart, spread, max(-most, min(most, after - middle)), 1 - shrink)
    ensemble.settle()
    if of != "workers":
        # what was seen is one throw around what each colony expects; the throw itself teaches it nothing. Where it
        # surprised, the colonies are held to differ more
        apart_by = wider**2 * spread - chance
        share = apart_by / (apart_by + chance)
        after = middle + share * (after - middle)
        left = math.sqrt(share * chance + (share * left) ** 2)
    if own > 1e-10:
        widen = min(3.0, left / math.sqrt(own))
        wanted = [max(0.0, math.exp(after + widen * a) - OFFSET) for a in apart]
    else:
        wanted = [max(0.0, math.exp(after) - OFFSET)] * colonies.size
    _set_numbers(colonies, of, wanted)
    gained = [_mean([place[i] for place in ensemble.places]) - was for i, was in enumerate(before)]
    return Moved(seen, expected - OFFSET, after - middle, gained[0], gained[1], odds)


def _chance(colonies: Colonies, of: str, expected: float) -> float:
    """Return what chance alone may do to the logarithm: single lives and deaths that no expectation knows of."""
    if of == "workers":
        return _mean(colonies.shaken) / expected**2
    return 0.5 / expected


def _posterior(middle: float, deviation: float, likelihood: Likelihood) -> tuple[float, float, float, float]:
    """Return middle and deviation after the look, how likely it was, and how many times less sure it made before."""
    if isinstance(likelihood, Bell):
        off, error = likelihood.middle - middle, likelihood.deviation
        surprise = abs(off) / math.hypot(deviation, error) / SURPRISE
        wide = deviation * max(1.0, surprise)
        gain = wide**2 / (wide**2 + error**2)
        return middle + gain * off, wide * math.sqrt(1 - gain), 1.0, max(1.0, surprise)
    for wider in WIDER:
        points = [middle + wider * deviation * node for node in NODES]
        weights = [weight * likelihood(point) for weight, point in zip(_NODE_WEIGHTS, points, strict=True)]
        whole = sum(weights)
        odds = whole / sum(_NODE_WEIGHTS)
        if odds >= UNLIKELY:
            break
    after = sum(w * p for w, p in zip(weights, points, strict=True)) / whole
    left = math.sqrt(sum(w * (p - after) ** 2 for w, p in zip(weights, points, strict=True)) / whole)
    return after, left, odds, wider


def _regress(ensemble: Ensemble, apart: Sequence[float], spread: float, shift: float, shrink: float) -> None:
    """Move places and brood along with the number that was seen."""
    per = [shift - shrink * a for a in apart]
    for scale in range(LEARNT):
        column = [place[scale] for place in ensemble.places]
        slope = _slope(column, apart, spread)
        for place, by in zip(ensemble.places, per, strict=True):
            place[scale] += slope * by
    colonies = ensemble.colonies
    rows, width = list(colonies.rows), colonies.width
    for step in range(width - 1):
        rows[step::width] = _moved(rows[step::width], apart, per, spread, ROW_OFFSET)
    colonies.rows = rows
    colonies.workers = _moved(colonies.workers, apart, per, spread, OFFSET)


def _moved(
    numbers: Sequence[float], apart: Sequence[float], per: Sequence[float], spread: float, offset: float
) -> list[float]:
    """Return numbers that have moved along, as logarithms, with the number that was seen."""
    logs = [math.log(number + offset) for number in numbers]
    slope = _slope(logs, apart, spread)
    if slope == 0:
        return list(numbers)
    return [
        max(0.0, math.exp(min(log + slope * by, 20.0)) - offset) for log, by in zip(logs, per, strict=True)
    ]


def _slope(values: Sequence[float], apart: Sequence[float], spread: float) -> float:
    """Return by how much values move with the number that was seen.

    Few colonies agree a little by chance alone; what the adjusted coefficient of determination (R²) leaves of the plain
    one is believed.
    """
    many = len(values)
    middle = sum(values) / many
    off = [value - middle for value in values]
    together: float = sum(map(mul, off, apart))
    if together == 0:
        return 0.0
    both: float = sum(map(mul, off, off)) * sum(map(mul, apart, apart))
    plain = together * together / both
    believed = max(0.0, 1 - (1 - plain) / (plain * (many - 2)))
    return believed * together / many / spread


def _set_numbers(colonies: Colonies, of: str, wanted: Sequence[float]) -> None:
    if of == "workers":
        colonies.workers, colonies.shaken = list(wanted), [0.0] * colonies.size
        return
    first, last = _span(colonies, of)
    rows = list(colonies.rows)
    there = colonies.between(first, last)
    for number, (have, want) in enumerate(zip(there, wanted, strict=True)):
        part = slice(number * colonies.width + first, number * colonies.width + last)
        scale, alike = (want / have, 0.0) if have > 1e-6 else (0.0, want / (last - first))
        rows[part] = [row * scale + alike for row in rows[part]]
    colonies.rows = rows


def _span(colonies: Colonies, of: str) -> tuple[int, int]:
    """Return where eggs, larvae or pupae begin and end among the steps of the chain."""
    stages = STAGES_OF[of]
    return colonies.group.spans[stages[0]][0], colonies.group.spans[stages[-1]][1]


def _add(ensemble: Ensemble, seen: Seen) -> None:
    """Add brood of any age; a number that nobody wrote down is a usual one, give or take."""
    colonies = ensemble.colonies
    first, last = _span(colonies, str(seen.word))
    rows = list(colonies.rows)
    for number, place in enumerate(ensemble.places):
        given = ADDED_UNKNOWN * math.exp(ADDED_SD * place[-1]) if seen.number is None else seen.number
        part = slice(number * colonies.width + first, number * colonies.width + last)
        rows[part] = [row + given / (last - first) for row in rows[part]]
    colonies.rows = rows


def _mean(values: Sequence[float]) -> float:
    return sum(values) / len(values)
