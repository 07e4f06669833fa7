"""How likely each thing that was seen is, for any number that there may be, and what it teaches the ensemble.

An observation speaks of one number of the nest. What it says of that number is worked out on a fixed row of nodes,
whatever the shape of its likelihood; the rest of the colony follows by regression over the ensemble (a two-step
ensemble filter: Anderson 2003 Mon. Weather Rev. 131:634-642, from memory). Nothing that is seen widens what is known.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from operator import add
from statistics import NormalDist
from typing import Final

from .colonies import Colonies
from .ensemble import LEARNT, Ensemble
from .facts import Seen

OFFSET: Final = 0.5
"""Numbers are weighed as ln(n + 0.5): nothing is a number, too."""
ROW_OFFSET: Final = 0.05
STAGES_OF: Final[Mapping[str, tuple[int, ...]]] = {"eggs": (0,), "larvae": (1, 2), "pupae": (3,)}
FOUND_EACH: Final[Mapping[str, float]] = {"workers": 1.2, "eggs": 0.4, "larvae": 0.6, "pupae": 0.8}
"""One alone is overlooked with odds exp(-this) (common practice, no source)."""
LEAST_ODDS: Final = 1e-9
UNLIKELY: Final = 0.03
WIDER: Final = (1.0, 1.5, 2.25, 3.4)
"""What has lower odds is believed all the same: then what was thought before is held less sure, step by step."""
WORKER_WORDS: Final[Mapping[str, tuple[float, float]]] = {
    "few": (2, 20),
    "some": (15, 100),
    "many": (80, math.inf),
}
BROOD_WORDS: Final[Mapping[str, tuple[float, float]]] = {
    "few": (0, 0.2),
    "some": (0.15, 0.6),
    "many": (0.4, math.inf),
}
LEAST_BROOD: Final[Mapping[str, tuple[float, float]]] = {
    "few": (1, 6),
    "some": (4, 15),
    "many": (10, math.inf),
}
"""From what to what a word goes: workers, brood for each worker, and brood beside a handful (common practice)."""
WORD_EDGE_SD: Final = 0.35
"""How blurred the edges of a word are."""
SURPRISE: Final = 2.5
"""A count that lies more deviations off is believed all the same, and what was thought before is held less sure."""
AGAIN_WIDER: Final = 2.0
"""Two counts one after the other that lie more than a deviation off to the same side are no chance: the second is
believed as if so many times less had been known before (common practice, no source)."""
NODES: Final = tuple(i / 4 for i in range(-14, 15))
_NODE_WEIGHTS: Final = tuple(NormalDist().pdf(node) for node in NODES)
MOST_SHRUNK: Final = 0.02
ADDED_UNKNOWN, ADDED_SD = 10.0, 0.5
FEED_SHARE: Final = 0.1
"""Larvae for each worker from which on insects are taken for sure (common practice, no source)."""

Shape = Callable[[float], float]
"""A likelihood over a logarithm ln(n + 0.5)."""


@dataclass(frozen=True, slots=True)
class Bell:
    """A likelihood with a middle and a deviation, both of the logarithm."""

    middle: float
    deviation: float


Likelihood = Bell | Shape


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


def count_sd(number: float) -> float:
    """Return how far a count errs (deviation of its logarithm): 5 % below 30, 10 % to 200, 20 % above."""
    return 0.05 if number < 30 else 0.1 if number <= 200 else 0.2


def numbers_of(colonies: Colonies, what: str) -> list[float]:
    """Return how many workers, eggs, larvae or pupae each colony has."""
    if what == "workers":
        return colonies.workers
    stages = [colonies.total(stage) for stage in STAGES_OF[what]]
    return stages[0] if len(stages) == 1 else list(map(add, *stages))


def learn(ensemble: Ensemble, seen: Seen) -> Moved | None:
    """Take in one observation; None where it says nothing about a number."""
    what = seen.what
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
    return _update(ensemble, seen, of, likelihood)


def likelihood_of(seen: Seen, workers: float) -> Likelihood | None:
    """Return the likelihood of what was seen as a function of ln(n + 0.5) of its number."""
    if seen.what == "protein":
        enough = FEED_SHARE * max(1.0, workers)
        refused = seen.word == "refused"
        return lambda h: _eats(math.exp(h) / enough, refused=refused)
    if seen.number is not None and seen.number > 0:
        return _around(seen.number, math.hypot(count_sd(seen.number), 0.3 / seen.number))
    if seen.low is not None and seen.high is not None and seen.high > 0:
        low, high = sorted((seen.low, seen.high))
        width = math.log((high + OFFSET) / (low + OFFSET)) / 2.56
        return _around(math.sqrt((low + OFFSET) * (high + OFFSET)) - OFFSET, math.hypot(0.05, width))
    if seen.word == "none" or seen.number == 0:
        each = FOUND_EACH[seen.what]
        return lambda h: LEAST_ODDS + math.exp(-each * max(0.0, math.exp(h) - OFFSET))
    if seen.word is None:
        return None
    if seen.word == "seen":
        each = FOUND_EACH[seen.what]
        return lambda h: LEAST_ODDS - math.expm1(-each * max(0.0, math.exp(h) - OFFSET))
    if seen.what == "workers":
        return _from_to(*WORKER_WORDS[seen.word])
    pairs = zip(BROOD_WORDS[seen.word], LEAST_BROOD[seen.word], strict=True)
    low, high = (max(least, share * workers) for share, least in pairs)
    return _from_to(low, high)


def _around(number: float, deviation: float) -> Bell:
    return Bell(math.log(number + OFFSET), deviation)


def _from_to(low: float, high: float) -> Shape:
    """Return a likelihood that is level between two numbers and falls off outside them like a bell."""
    first, last = math.log(low + OFFSET), math.log(high + OFFSET)

    def likelihood(h: float) -> float:
        outside = max(first - h, h - last, 0.0) / WORD_EDGE_SD
        return LEAST_ODDS + math.exp(-0.5 * outside * outside)

    return likelihood


def _eats(share: float, *, refused: bool) -> float:
    takes = 0.4 + 0.55 * min(1.0, share)
    return 1 - takes if refused else takes


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
    after, left, odds = _posterior(middle, deviation, likelihood)
    shrink = max(MOST_SHRUNK, min(1.0, left / math.sqrt(spread)))
    left = shrink * math.sqrt(spread)
    before = [_mean([place[i] for place in ensemble.places]) for i in range(2)]
    most = SURPRISE * deviation
    _regress(ensemble, apart, spread, max(-most, min(most, after - middle)), 1 - shrink)
    ensemble.settle()
    if of != "workers":
        # what was seen is one throw around what each colony expects; the throw itself teaches it nothing
        share = own / spread
        after = middle + share * (after - middle)
        left = math.sqrt(own * chance / spread + (share * left) ** 2)
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


def _posterior(middle: float, deviation: float, likelihood: Likelihood) -> tuple[float, float, float]:
    """Return middle and deviation after the look, and how likely a look that found nothing was."""
    if isinstance(likelihood, Bell):
        off, error = likelihood.middle - middle, likelihood.deviation
        surprise = abs(off) / math.hypot(deviation, error) / SURPRISE
        wide = deviation * max(1.0, surprise)
        gain = wide**2 / (wide**2 + error**2)
        return middle + gain * off, wide * math.sqrt(1 - gain), 1.0
    for wider in WIDER:
        points = [middle + wider * deviation * node for node in NODES]
        weights = [weight * likelihood(point) for weight, point in zip(_NODE_WEIGHTS, points, strict=True)]
        whole = sum(weights)
        odds = whole / sum(_NODE_WEIGHTS)
        if odds >= UNLIKELY:
            break
    after = sum(w * p for w, p in zip(weights, points, strict=True)) / whole
    left = math.sqrt(sum(w * (p - after) ** 2 for w, p in zip(weights, points, strict=True)) / whole)
    return after, left, odds


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
    together = sum((value - middle) * a for value, a in zip(values, apart, strict=True))
    if together == 0:
        return 0.0
    both = sum((value - middle) ** 2 for value in values) * sum(a * a for a in apart)
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
