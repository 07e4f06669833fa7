"""How likely each thing that was seen is, for any number that there may be."""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Final

from .facts import Seen

OFFSET: Final = 0.5
"""Numbers are weighed as ln(n + 0.5): nothing is a number, too."""
FOUND_EACH: Final[Mapping[str, float]] = {"workers": 1.2, "eggs": 0.4, "larvae": 0.6, "pupae": 0.8}
"""One alone is overlooked with odds exp(-this) (common practice, no source)."""
LEAST_ODDS: Final = 1e-9
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


def count_sd(number: float) -> float:
    """Return how far a count errs (deviation of its logarithm): 5 % below 30, 10 % to 200, 20 % above."""
    return 0.05 if number < 30 else 0.1 if number <= 200 else 0.2


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
    if seen.low is not None:
        return _at_least(seen.low)
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


def _at_least(number: float) -> Shape:
    """Return a likelihood that is level from a number on and falls off below it, as sharply as a count errs."""
    first, error = math.log(number + OFFSET), count_sd(number)

    def likelihood(h: float) -> float:
        short = max(0.0, first - h) / error
        return LEAST_ODDS + math.exp(-0.5 * short * short)

    return likelihood


def _eats(share: float, *, refused: bool) -> float:
    takes = 0.4 + 0.55 * min(1.0, share)
    return 1 - takes if refused else takes
