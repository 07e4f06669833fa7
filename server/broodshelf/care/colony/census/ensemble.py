"""The ensemble: sixteen colonies on a fixed grid that stand for what is not known about the one at hand.

Before its first workers it is drawn from many more queens (``founders``).
Each has its place on seven standard scales, and what it is like follows from them. The grid is a Halton sequence taken
through the normal quantile, mirrored and whitened: mean 0, deviation 1 and no correlation, without any dice.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from statistics import NormalDist
from typing import Final

from .colonies import Colonies
from .facts import Facts
from .founders import QUEENS, Founders
from .groups import REFERENCE_C, SURVIVAL, LifeGroup
from .pace import Pace

MEMBERS: Final = 16
SCALES: Final = ("speed", "laying", "survival", "life", "brood", "start", "count")
SPEED, LAYING, SURVIVING, LIFE, BROOD, START, COUNT = range(len(SCALES))
LEARNT: Final = 4
"""The first four go on telling; the others only place the beginning."""
TO_80: Final = NormalDist().inv_cdf(0.9)
"""Deviations to either side that hold 80 of 100."""
LAYING_SD, SURVIVAL_SD, BROOD_SD = 0.45, 0.25, 0.1
"""Of logarithms between colonies (careful defaults; same-age colonies differed sevenfold, Waters et al. 2010)."""
FIRST_EGGS_DAYS: Final = 3.0
"""From the flight to the first eggs: *Lasius niger*, Matte & Billen 2021."""
UNKNOWN_FOUNDED_DAYS: Final = 45.0
"""A founding queen came with brood of any age up to this where nobody knows the day (common practice, no source)."""
MOST_SURVIVAL: Final = 0.95
_BASES: Final = (2, 3, 5, 7, 11, 13, 17)


def _halton(index: int, base: int) -> float:
    """Return the index's digits mirrored at the point; eight are more than any index here has."""
    found, share = 0.0, 1.0
    for _ in range(8):
        share /= base
        index, digit = divmod(index, base)
        found += share * digit
    return found


def _grid(many: int) -> tuple[tuple[float, ...], ...]:
    """Return the places of so many: columns made orthogonal one after the other, each of deviation 1."""
    normal = NormalDist()
    half = [[normal.inv_cdf(_halton(i, base)) for i in range(1, many // 2 + 1)] for base in _BASES]
    columns: list[list[float]] = []
    for raw in half:
        column = list(raw)
        for other in columns:
            along = sum(a * b for a, b in zip(column, other, strict=True)) / sum(b * b for b in other)
            column = [a - along * b for a, b in zip(column, other, strict=True)]
        columns.append(column)
    scaled = []
    for column in columns:
        deviation = math.sqrt(sum(x * x for x in column) / len(column))
        scaled.append([x / deviation for x in column])
    places = zip(*([*column, *(-x for x in column)] for column in scaled), strict=True)
    return tuple(sorted(places, reverse=True))  # the fastest first: they alone may need a second turn a step


GRID: Final = _grid(MEMBERS)
_QUEENS: Final = _grid(QUEENS)


@dataclass(slots=True)
class Ensemble:
    """The colonies, and their places on the scales.

    ``last_off``: how many deviations the last count was off; ``founders``: the queens that looks weigh until workers
    are seen, None from then on.
    """

    group: LifeGroup
    speed_sd: float
    queens: int
    places: list[list[float]]
    colonies: Colonies
    last_off: float = 0.0
    founders: Founders | None = None

    def copy(self) -> Ensemble:
        """Return the same ensemble to go on with."""
        return Ensemble(
            self.group, self.speed_sd, self.queens, [list(place) for place in self.places],
            self.colonies.copy(), self.last_off, self.founders and self.founders.copy(),
        )  # fmt: skip

    def step(self, here: Pace) -> None:
        """Go on by one step of the row."""
        self.colonies.step(here, self.group.step_days)
        if self.founders is not None:
            self.founders.step(here, self.group.step_days)

    def draw(self) -> None:
        """Become those of the founders who share their weight evenly."""
        if self.founders is not None:
            chosen = self.founders.alike(len(self.places))
            self.places = [list(self.founders.places[number]) for number in chosen]
            self.colonies = self.founders.colonies.take(chosen)

    def settle(self) -> None:
        """Give each member the rates of its place."""
        group = self.group
        low, high = group.life_days
        life_days, life_sd = math.sqrt(low * high), math.log(high / low) / 2 / TO_80
        most_eggs = (
            group.most_eggs * self.queens**0.7
        )  # each lays less beside others (Abril et al. 2008, abstract)
        places = self.places
        laying = [math.exp(LAYING_SD * place[LAYING]) for place in places]
        survival = [
            min(MOST_SURVIVAL, SURVIVAL * math.exp(SURVIVAL_SD * place[SURVIVING])) for place in places
        ]
        self.colonies.set_rates(
            speed=[math.exp(self.speed_sd * place[SPEED]) for place in places],
            survival=survival,
            eggs_per_worker=[group.eggs_per_worker * each for each in laying],
            life_days=[life_days * math.exp(life_sd * place[LIFE]) for place in places],
            most_eggs=[most_eggs * each for each in laying],
        )


def speed_sd(facts: Facts) -> float:
    """Return how far colonies differ in speed, with how well the warmth is known."""
    group = facts.group
    first = facts.warmth[0]
    mean_c = max(group.eggs.threshold_c + 3, min(group.high_c, (first.day_c + first.night_c) / 2))
    by_warmth = facts.warmth_sd_c / (mean_c - group.eggs.threshold_c)
    return math.hypot(math.log(group.spread) / TO_80, by_warmth)


def founding(facts: Facts, in_days: float, *, known: bool) -> Ensemble:
    """Return queens without workers who fly in some days from now on; ``known`` False: it may be long ago.

    The first brood is capped by one reserve: so many eggs as give the first workers of the group, laid until the first
    of them hatch.
    """
    made, more = _queens(facts, in_days, GRID, known=known), _queens(facts, in_days, _QUEENS, known=known)
    made.founders = Founders(more.colonies, more.places, [1 / QUEENS] * QUEENS)
    return made


def _queens(facts: Facts, in_days: float, grid: Sequence[Sequence[float]], *, known: bool) -> Ensemble:
    made = _made(facts, [0.0] * len(grid), grid)
    group, colonies, places = facts.group, made.colonies, made.places
    low, high = group.first_brood
    middle, deviation = math.sqrt(low * high), math.log(high / low) / 2 / TO_80
    laying_days = group.eggs.degree_days / (REFERENCE_C - group.eggs.threshold_c)
    first = [middle * math.exp(deviation * place[BROOD]) for place in places]
    colonies.reserve = [workers / lives for workers, lives in zip(first, colonies.survival, strict=True)]
    colonies.reserve_rate = [reserve / laying_days for reserve in colonies.reserve]
    ago = 0.0 if known else UNKNOWN_FOUNDED_DAYS
    colonies.starts_in = [
        in_days + FIRST_EGGS_DAYS * math.exp(0.3 * place[START]) + ago * NormalDist().cdf(place[START])
        for place in places
    ]
    return made


def growing(facts: Facts, pace: Pace, days: float, workers: float, deviation: float) -> Ensemble:
    """Return colonies with workers (their middle, and the deviation of its logarithm) and the brood that goes with it.

    Brood stands as in steady laying; ``pace`` says whether there can be any at such warmth and season.
    """
    made = _made(facts, [workers * math.exp(deviation * place[COUNT]) for place in GRID])
    made.colonies.rows = [
        there
        for number, place in enumerate(made.places)
        for there in (*_standing_brood(made.colonies, number, place, pace, days), 0.0)
    ]
    return made


def _made(facts: Facts, workers: list[float], grid: Sequence[Sequence[float]] = GRID) -> Ensemble:
    colonies = Colonies(facts.group, workers)
    made = Ensemble(facts.group, speed_sd(facts), facts.queens, [list(place) for place in grid], colonies)
    made.settle()
    return made


def _standing_brood(
    colonies: Colonies, number: int, place: list[float], pace: Pace, days: float
) -> list[float]:
    """Return the chain of one colony that has been laying for long."""
    group, survival, most = colonies.group, colonies.survival[number], colonies.most_eggs[number]
    wanted = colonies.workers[number] * colonies.eggs_per_worker[number]
    laid = pace.laying * days * min(most, wanted) * math.exp(BROOD_SD * place[BROOD])
    moves = [min(1.0, share * colonies.speed[number]) for share in pace.moves]
    rate = 0.0 if wanted > most else _growth(colonies, number, pace, days, moves)
    rows: list[float] = []
    age, lives = 0.0, survival ** (1 / sum(group.chain))
    for steps, share, left in zip(group.chain, moves, pace.left, strict=True):
        stays = days / max(0.05, share)
        for _ in range(steps):
            there = laid / max(0.05, share) * lives ** len(rows) * math.exp(-rate * (age + stays / 2))
            rows.append(there if left == 1 else 0.0)
            age += stays
    return rows


def _growth(colonies: Colonies, number: int, pace: Pace, days: float, moves: list[float]) -> float:
    """Return r [1/day] of steady growth, from r + 1/life = laid x survival x exp(-r x way): the older, the fewer."""
    way = sum(
        steps * days / max(0.05, share) for steps, share in zip(colonies.group.chain, moves, strict=True)
    )
    born = pace.laying * colonies.eggs_per_worker[number] * colonies.survival[number]
    dies = pace.ageing / days / colonies.life_days[number]
    low, high = 0.0, born
    for _ in range(20):
        rate = (low + high) / 2
        if rate + dies < born * math.exp(-rate * way):
            low = rate
        else:
            high = rate
    return low
