"""The ensemble: sixteen colonies on a fixed grid that stand for what is not known about the one at hand.

Each has its place on seven standard scales, and what it is like follows from them. The grid is a Halton sequence taken
through the normal quantile, mirrored and whitened: mean 0, deviation 1 and no correlation, without any dice.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from statistics import NormalDist
from typing import Final

from .facts import Facts
from .groups import REFERENCE_C, SURVIVAL, LifeGroup
from .member import Member
from .pace import Pace

MEMBERS: Final = 16
SCALES: Final = ("speed", "laying", "survival", "life", "brood", "start", "count")
SPEED, LAYING, SURVIVING, LIFE, BROOD, START, COUNT = range(len(SCALES))
LEARNT: Final = 4
"""The first four go on telling; the others only place the beginning."""
TO_80: Final = NormalDist().inv_cdf(0.9)
"""Deviations to either side that hold 80 of 100."""
LAYING_SD, SURVIVAL_SD, BROOD_SD = 0.45, 0.25, 0.5
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


def _grid() -> tuple[tuple[float, ...], ...]:
    """Return the members' places: columns made orthogonal one after the other, each of deviation 1."""
    normal = NormalDist()
    half = [[normal.inv_cdf(_halton(i, base)) for i in range(1, MEMBERS // 2 + 1)] for base in _BASES]
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
    return tuple(zip(*([*column, *(-x for x in column)] for column in scaled), strict=True))


GRID: Final = _grid()


@dataclass(slots=True)
class Ensemble:
    """The colonies, and their places on the scales."""

    group: LifeGroup
    speed_sd: float
    queens: int
    places: list[list[float]]
    members: list[Member]

    def copy(self) -> Ensemble:
        """Return the same ensemble to go on with."""
        return Ensemble(
            self.group, self.speed_sd, self.queens, [list(place) for place in self.places],
            [member.copy() for member in self.members],
        )  # fmt: skip

    def step(self, here: Pace) -> None:
        """Go on by one step of the row."""
        days = self.group.step_days
        for member in self.members:
            member.step(here, days)

    def settle(self) -> None:
        """Give each member the rates of its place."""
        group = self.group
        low, high = group.life_days
        life_days, life_sd = math.sqrt(low * high), math.log(high / low) / 2 / TO_80
        most_eggs = (
            group.most_eggs * self.queens**0.7
        )  # each lays less beside others (Abril et al. 2008, abstract)
        for place, member in zip(self.places, self.members, strict=True):
            member.set_rates(
                speed=math.exp(self.speed_sd * place[SPEED]),
                survival=min(MOST_SURVIVAL, SURVIVAL * math.exp(SURVIVAL_SD * place[SURVIVING])),
                eggs_per_worker=group.eggs_per_worker * math.exp(LAYING_SD * place[LAYING]),
                life_days=life_days * math.exp(life_sd * place[LIFE]),
                most_eggs=most_eggs * math.exp(LAYING_SD * place[LAYING]),
            )


def speed_sd(facts: Facts) -> float:
    """Return how far colonies differ in speed, with how well the warmth is known."""
    group = facts.group
    first = facts.warmth[0]
    mean_c = max(group.eggs.threshold_c + 3, min(group.high_c, (first.day_c + first.night_c) / 2))
    by_warmth = facts.warmth_sd_c / (mean_c - group.eggs.threshold_c)
    return math.hypot(math.log(group.spread) / TO_80, by_warmth)


def founding(facts: Facts, *, known: bool) -> Ensemble:
    """Return queens without workers on the day of the flight; ``known`` False: it may be long ago.

    The first brood is capped by one reserve: so many eggs as give the first workers of the group, laid until the first
    of them hatch.
    """
    made = _bare(facts, [Member(facts.group) for _ in range(MEMBERS)])
    group = facts.group
    low, high = group.first_brood
    middle, deviation = math.sqrt(low * high), math.log(high / low) / 2 / TO_80
    laying_days = group.eggs.degree_days / (REFERENCE_C - group.eggs.threshold_c)
    for place, member in zip(made.places, made.members, strict=True):
        first = middle * math.exp(deviation * place[BROOD])
        member.reserve = first / member.survival
        member.reserve_rate = member.reserve / laying_days
        member.starts_in = FIRST_EGGS_DAYS * math.exp(0.3 * place[START])
        if not known:
            member.starts_in += UNKNOWN_FOUNDED_DAYS * NormalDist().cdf(place[START])
    return made


def growing(facts: Facts, pace: Pace, days: float, workers: float, deviation: float) -> Ensemble:
    """Return colonies with workers (their middle, and the deviation of its logarithm) and the brood that goes with it.

    Brood stands as in steady laying; ``pace`` says whether there can be any at such warmth and season.
    """
    made = _bare(facts, [])
    made.members = [
        Member(facts.group, workers * math.exp(deviation * place[COUNT])) for place in made.places
    ]
    made.settle()
    for place, member in zip(made.places, made.members, strict=True):
        wanted = member.workers * member.eggs_per_worker
        laid = pace.laying * days * min(member.most_eggs, wanted) * math.exp(BROOD_SD * place[BROOD])
        moves = [min(1.0, share * member.speed) for share in pace.moves]
        rate = 0.0 if wanted > member.most_eggs else _growth(member, pace, days, moves)
        age, lives = 0.0, member.survival ** (1 / len(member.rows))
        for (first, last), share, left in zip(facts.group.spans, moves, pace.left, strict=True):
            for row in range(first, last):
                stays = days / max(0.05, share)
                there = laid / max(0.05, share) * lives**row * math.exp(-rate * (age + stays / 2))
                member.rows[row] = there if left == 1 else 0.0
                age += stays
    return made


def _bare(facts: Facts, members: list[Member]) -> Ensemble:
    made = Ensemble(facts.group, speed_sd(facts), facts.queens, [list(place) for place in GRID], members)
    if members:
        made.settle()
    return made


def _growth(member: Member, pace: Pace, days: float, moves: list[float]) -> float:
    """Return r [1/day] of steady growth, from r + 1/life = laid x survival x exp(-r x way): the older, the fewer."""
    way = sum(steps * days / max(0.05, share) for steps, share in zip(member.group.chain, moves, strict=True))
    born, dies = pace.laying * member.eggs_per_worker * member.survival, pace.ageing / days / member.life_days
    low, high = 0.0, born
    for _ in range(20):
        rate = (low + high) / 2
        if rate + dies < born * math.exp(-rate * way):
            low = rate
        else:
            high = rate
    return low
