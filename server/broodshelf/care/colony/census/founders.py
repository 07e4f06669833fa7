"""Queens that might be the one at hand before her workers come: more than the ensemble holds, weighed by each look.

A look at a founding often finds none of what is to come. What that means for the days is no straight line: fast
queens are ruled out, slow ones stay as they were. So until workers are seen a look does not shift the ensemble; it
weighs these queens by its likelihood, and the ensemble becomes those who share their weight evenly.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from operator import mul
from typing import Final

from .colonies import Colonies
from .likelihood import FOUND_EACH, OFFSET, Likelihood, Shape
from .pace import Pace

QUEENS: Final = 64
LEAST_ALIKE: Final = 10.0
"""A look that leaves so few of them (1 / sum of squared weights) surprises: the ensemble takes it in its own way."""
LEAST_LIKELY: Final = 0.03
"""So does one that all of them together make less likely: none of them may be like what was seen."""
_NODES: Final = tuple((at, math.exp(-0.5 * at * at)) for at in (-2.0, -1.0, 0.0, 1.0, 2.0))


@dataclass(slots=True)
class Founders:
    """Founding queens, their places on the scales of the ensemble, and how well each goes with what was seen.

    ``weights`` sum to 1.
    """

    colonies: Colonies
    places: list[list[float]]
    weights: list[float]

    def copy(self) -> Founders:
        """Return the same queens to go on with."""
        return Founders(self.colonies.copy(), self.places, self.weights)

    def step(self, here: Pace, days: float) -> None:
        """Go on by one step of the row."""
        self.colonies.step(here, days)

    def weighed(self, numbers: Sequence[float], likelihood: Sequence[float]) -> Weighed | None:
        """Take in a look, given what each expects of what was looked for, and how likely each makes what was found.

        None, and nothing is changed, where it goes with too few of them.
        """
        new = list(map(mul, self.weights, likelihood))
        whole = sum(new)
        if whole < LEAST_LIKELY:
            return None
        new = [weight / whole for weight in new]
        if 1 / sum(weight * weight for weight in new) < LEAST_ALIKE:
            return None
        before, after = (self._means(weights, numbers) for weights in (self.weights, new))
        self.weights = new
        return Weighed(
            math.exp(before[0]) - OFFSET,
            after[0] - before[0],
            after[1] - before[1],
            after[2] - before[2],
            whole,
        )

    def _means(self, weights: Sequence[float], numbers: Sequence[float]) -> tuple[float, float, float]:
        logs = (math.log(number + OFFSET) for number in numbers)
        return (
            sum(map(mul, weights, logs)),
            sum(weight * place[0] for weight, place in zip(weights, self.places, strict=True)),
            sum(weight * place[1] for weight, place in zip(weights, self.places, strict=True)),
        )

    def alike(self, many: int) -> list[int]:
        """Return so many of them that stand for equal shares of the weight, in the order of their first workers."""
        colonies = self.colonies
        width, first = colonies.width, math.log(2)
        waits = []
        for number, speed in enumerate(colonies.speed):
            there, left = colonies.workers[number], 0
            for row in reversed(colonies.rows[number * width : (number + 1) * width - 1]):
                if there >= first:
                    break
                there += row
                left += 1
            waits.append((left / speed, number))
        chosen: list[int] = []
        share = 0.0
        for _, number in sorted(waits):
            share += self.weights[number]
            reached = math.ceil(share * many - 0.5 + 1e-9)
            chosen += [number] * (min(many, reached) - len(chosen))
        return sorted(chosen)  # the fastest first, as they stand here


@dataclass(frozen=True, slots=True)
class Weighed:
    """What a look changed among the founders: see ``observing.Moved``."""

    expected: float
    number: float
    speed: float
    laying: float
    odds: float


def look_likelihood(what: str, word: str | None, numbers: Sequence[float], shape: Likelihood) -> list[float]:
    """Return how likely each queen makes a look, who has as many of what was looked for as chance gives her."""
    each = 1 - math.exp(-FOUND_EACH.get(what, 0.6))
    if word == "none":
        return [math.exp(-each * number) for number in numbers]
    if word == "seen":
        return [-math.expm1(-each * number) for number in numbers]
    if not callable(shape):
        return _of_bell(numbers, shape.middle, shape.deviation)
    return [_around(shape, number) for number in numbers]


def _of_bell(numbers: Sequence[float], middle: float, deviation: float) -> list[float]:
    found = []
    for number in numbers:
        spread = math.hypot(deviation, math.sqrt(0.5 / (number + OFFSET)))
        found.append(math.exp(-0.5 * ((math.log(number + OFFSET) - middle) / spread) ** 2) / spread)
    return found


def _around(shape: Shape, number: float) -> float:
    """Return the mean of a likelihood over what chance makes of an expected number."""
    log, spread = math.log(number + OFFSET), math.sqrt(0.5 / (number + OFFSET))
    return sum(weight * shape(log + at * spread) for at, weight in _NODES) / sum(
        weight for _, weight in _NODES
    )
