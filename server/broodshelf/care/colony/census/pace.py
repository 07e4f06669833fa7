"""What warmth and season make of a step: how fast each stage goes, what is laid, what fades, how long workers live."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache
from typing import Final, NamedTuple

from ....model.quantities import Estimate
from .groups import REFERENCE_C, LifeGroup, StageTime

FLAT_C, LAST_C = 2.0, 8.0
"""Above the best range development stays level for 2 °C and has ended 8 °C above it (common practice, no source)."""
HARM: Final = 0.02
"""The share of brood that a day at 8 °C outside the best range kills, awake (careful default, no source)."""
FADE_BELOW_C: Final = 10.0
FADE_DAYS: Final = 10.0
"""Eggs and pupae kept cold die within one to three weeks: *Lasius niger* at 5 °C (Lopatina 2018, abstract)."""
SLOWED_LAYING, SLOWED_PUPATION = 0.1, 0.05
"""What its yearly clock leaves of laying, and of old larvae that pupate: common practice, no source."""
UNSETTLED_LAYING: Final = 0.3
"""What a move leaves of laying (common practice, no source)."""


@dataclass(frozen=True, slots=True)
class Pace:
    """Of one step of the reckoning, for a colony of usual speed.

    ``moves``: the share of each of the four stages' compartments that goes on; ``laying``: of what is laid at its
    best, 0..1; ``left``: the share of each stage that heat and cold leave; ``ageing``: days that workers age, 1 a day
    at 25 °C; ``cold``: it rests, or is as cold as in a rest.
    """

    moves: tuple[float, float, float, float]
    laying: float
    left: tuple[float, float, float, float]
    ageing: float
    fades: bool
    cold: bool


class Lived(NamedTuple):
    """What a colony lives through in a step: its yearly clock slows it, it rests, it has just moved."""

    slow: bool = False
    resting: bool = False
    unsettled: bool = False


USUAL: Final = Lived()


@lru_cache(maxsize=4096)  # tests.bench.plan_cost, a new look at everything: half
def pace(
    group: LifeGroup,
    day_c: float,
    night_c: float,
    days: float,
    lived: Lived = USUAL,
) -> Pace:
    """Return the pace at a day and a night temperature, each for half of the time."""
    halves = (day_c, night_c)
    moves = [
        sum(_rate(stage, group.high_c, temp) for temp in halves) / 2 * steps * days
        for stage, steps in zip(group.times, group.chain, strict=True)
    ]
    mean_c = (day_c + night_c) / 2
    laying = sum(_window(group, temp) for temp in halves) / 2
    if lived.slow or lived.resting:
        laying *= 0.0 if lived.resting else SLOWED_LAYING
        moves[2] *= SLOWED_PUPATION
    if lived.unsettled:
        laying *= UNSETTLED_LAYING
    cold = mean_c < FADE_BELOW_C or lived.resting
    fading = max(0.0, 1 - days / FADE_DAYS) if cold else 1.0
    all_brood = 1 - HARM * days * (1 - _well(group, mean_c)) if not cold else 1.0
    larvae = 1.0 if group.winter_larvae else fading
    left = (all_brood * fading, all_brood * larvae, all_brood * larvae, all_brood * fading)
    ageing = days * max(0.25, min(2.0, 2 ** ((mean_c - REFERENCE_C) / 10)))
    return Pace(
        (moves[0], moves[1], moves[2], moves[3]), laying, left, ageing, fades=min(left) < 1, cold=cold
    )


def larval_days(group: LifeGroup, temp_c: float) -> Estimate | None:
    """Return how many days a larva grows at a temperature; None where it does not grow."""
    rate = _rate(group.larvae, group.high_c, temp_c)
    return Estimate(1 / group.spread, 1.0, group.spread).times(1 / rate) if rate > 0 else None


def _rate(stage: StageTime, high_c: float, temp_c: float) -> float:
    """Return the share of a stage that a day takes: a line, level near the optimum, falling above it."""
    rate = max(0.0, min(temp_c, high_c) - stage.threshold_c) / stage.degree_days
    above = temp_c - high_c - FLAT_C
    return rate if above <= 0 else rate * max(0.0, 1 - above / (LAST_C - FLAT_C))


def _window(group: LifeGroup, temp_c: float) -> float:
    """Return what of the laying a temperature allows: nothing at the eggs' threshold, all in the best range."""
    first_c = group.eggs.threshold_c
    rising = (temp_c - first_c) / max(1.0, group.low_c - first_c)
    falling = (group.high_c + LAST_C - temp_c) / LAST_C
    return max(0.0, min(1.0, rising, falling))


def _well(group: LifeGroup, temp_c: float) -> float:
    """Return how well brood does: 1 in the best range, 0 from 8 °C outside it."""
    outside = max(group.low_c - temp_c, temp_c - group.high_c, 0.0)
    return max(0.0, 1 - outside / LAST_C)
