"""What a colony likes: how often it accepts each food, which food is the best, and what to offer next.

Each offer of a food to a colony is taken or not; how often it is taken follows a beta distribution (beta-binomial;
Gelman et al., Bayesian Data Analysis, 3rd ed., sections 2.4 and 5.3). Colonies of one species and guild are alike
but not the same, so a colony's own offers are weighed against those of its likes (partial pooling).
"""

from __future__ import annotations

import math
import random
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from functools import lru_cache
from itertools import accumulate
from typing import Final

from ...model.facts import Tally
from ...model.quantities import Estimate, within

TAKEN_BY_OUTCOME: Final[Mapping[str, float]] = {"all": 1.0, "some": 0.5, "ignored": 0.0}
"""How far an outcome counts as accepted (common practice, no source)."""
GUILD_WEIGHT: Final = 0.25
"""What an offer to another species of the same guild tells, beside one to the same species (no source)."""
GRID_POINTS: Final = 1024
_MEANS: Final = tuple((i + 0.5) / 20 for i in range(20))
_LIKENESS: Final = (2, 4, 8, 16, 32)
"""Grid of the group: mean acceptance x how many offers' worth of knowledge a colony's likes give it; not below 2,
where a beta distribution says that a food is taken always or never."""


def tally_of(outcomes: Iterable[str]) -> Tally:
    """Return the tally of check outcomes: all, some, ignored."""
    counted = [TAKEN_BY_OUTCOME[outcome] for outcome in outcomes]
    return Tally(sum(counted), len(counted))


@dataclass(frozen=True, slots=True)
class Acceptance:
    """How often a food is accepted, as a beta distribution with both parameters above 0."""

    a: float
    b: float

    def __post_init__(self) -> None:
        within("a", self.a, "offers", 0.05, 10_000_000)
        within("b", self.b, "offers", 0.05, 10_000_000)

    @property
    def mean(self) -> float:
        """Mean acceptance, 0..1."""
        return self.a / (self.a + self.b)

    @property
    def sd(self) -> float:
        """Standard deviation of the acceptance."""
        return math.sqrt(self.mean * (1 - self.mean) / (self.a + self.b + 1))

    def after(self, tally: Tally) -> Acceptance:
        """Return the posterior after more offers."""
        return Acceptance(self.a + tally.taken, self.b + tally.offered - tally.taken)

    def interval(self, share: float = 0.8, points: int = GRID_POINTS) -> Estimate:
        """Return the central interval that holds ``share`` of the probability, with the mean as its best value."""
        within("share", share, "", 0.01, 0.999)
        tail = (1 - share) / 2
        low, high = self._quantile(tail, points), self._quantile(1 - tail, points)
        return Estimate(min(low, self.mean), self.mean, max(high, self.mean))

    def _quantile(self, share: float, points: int) -> float:
        edges = [0.0, *accumulate(_weights(self, points))]
        upper = next(i for i, edge in enumerate(edges) if edge >= share or i == points)
        inside = (share - edges[upper - 1]) / max(edges[upper] - edges[upper - 1], 1e-300)
        return math.sin((upper - 1 + inside) * math.pi / 2 / points) ** 2


@dataclass(frozen=True, slots=True)
class Tasted:
    """What another colony did with a food: its species (None: unknown), guild and tally."""

    species_code: str | None
    guild: str
    food_code: str
    tally: Tally


def likes_of(species_code: str | None, guild: str, others: Iterable[Tasted]) -> dict[str, list[Tally]]:
    """Return by food what colonies of the same species took, in full, and of the same guild, at a quarter."""
    likes: dict[str, list[Tally]] = {}
    for other in others:
        if species_code is not None and other.species_code == species_code:
            weight = 1.0
        elif other.guild == guild:
            weight = GUILD_WEIGHT
        else:
            continue
        told = Tally(other.tally.taken * weight, other.tally.offered * weight)
        likes.setdefault(other.food_code, []).append(told)
    return likes


NOTHING_KNOWN: Final = Acceptance(1, 1)
"""The uniform prior: before any offer every acceptance from 0 to 1 is as likely."""


def pooled_prior(likes: Sequence[Tally]) -> Acceptance:
    """Return what the other colonies of a species and guild say about a food, as a prior for one more.

    A grid over the group's mean and likeness, weighed by the beta-binomial probability of every colony's tally;
    the prior is the beta with the mean and variance of the mixture. No other colonies: ``NOTHING_KNOWN``.
    """
    told = tuple(tally for tally in likes if tally.offered)
    return _pooled(told) if told else NOTHING_KNOWN


@lru_cache(maxsize=256)  # tests.bench.plan_cost, while a tasting runs: a plan takes a third
def _pooled(told: tuple[Tally, ...]) -> Acceptance:
    cells = [(m * k, (1 - m) * k) for m in _MEANS for k in _LIKENESS]
    logs = [sum(_log_beta_binomial(a, b, tally) for tally in told) for a, b in cells]
    weights = [math.exp(log - max(logs)) for log in logs]
    total = sum(weights)
    mean = sum(w * a / (a + b) for w, (a, b) in zip(weights, cells, strict=True)) / total
    square = sum(
        w * a * (a + 1) / ((a + b) * (a + b + 1)) for w, (a, b) in zip(weights, cells, strict=True)
    ) / total  # fmt: skip
    strength = mean * (1 - mean) / (square - mean * mean) - 1
    return Acceptance(mean * strength, (1 - mean) * strength)


def chance_of_being_best(foods: Mapping[str, Acceptance], points: int = GRID_POINTS) -> dict[str, float]:
    """Return for each food the probability that it is accepted the most; they add up to 1.

    Quadrature over acceptance x = sin² of a grid of angles, which keeps the densities finite at both ends.
    """
    weights = {food: _weights(acceptance, points) for food, acceptance in foods.items()}
    below = {
        food: [edge - weight / 2 for edge, weight in zip(accumulate(row), row, strict=True)]
        for food, row in weights.items()
    }
    chances = {}
    for food, row in weights.items():
        others = [below[other] for other in foods if other != food]
        chances[food] = sum(math.prod((weight, *rest)) for weight, *rest in zip(row, *others, strict=True))
    total = sum(chances.values())
    return {food: chance / total for food, chance in chances.items()}


def drawn(foods: Mapping[str, Acceptance], rng: random.Random) -> str:
    """Return the food to offer next: the highest of one draw from each acceptance (Thompson 1933).

    Foods that are taken come often, unsure ones sometimes, refused ones hardly ever. Deterministic for a given
    generator; foods are drawn in the order of their codes.
    """
    if not foods:
        raise ValueError("there is no food to choose from")
    draws = {food: rng.betavariate(foods[food].a, foods[food].b) for food in sorted(foods)}
    return max(draws, key=lambda food: draws[food])


@lru_cache(maxsize=256)  # tests.bench.plan_cost, while a tasting runs: a plan takes a third
def _weights(acceptance: Acceptance, points: int) -> tuple[float, ...]:
    """Return the probability in each of ``points`` equal steps of the angle 0..pi/2, with x = sin²."""
    step = math.pi / 2 / points
    a, b = acceptance.a, acceptance.b
    logs = [
        (2 * a - 1) * math.log(math.sin((i + 0.5) * step))
        + (2 * b - 1) * math.log(math.cos((i + 0.5) * step))
        for i in range(points)
    ]
    highest = max(logs)
    heights = [math.exp(log - highest) for log in logs]
    total = math.fsum(heights)
    return tuple(height / total for height in heights)


def _log_beta_binomial(a: float, b: float, tally: Tally) -> float:
    taken, left = tally.taken, tally.offered - tally.taken
    return (
        math.lgamma(a + taken) + math.lgamma(b + left) - math.lgamma(a + b + tally.offered)
        + math.lgamma(a + b) - math.lgamma(a) - math.lgamma(b)
    )  # fmt: skip
