"""Invented tubes with a true loss rate, read by an invented keeper; seeds are given, so every run is the same.

The truth is not the model: the loss of each interval wanders by 15 %, readings are rounded to whole mm, the keeper
comes when it suits (70 to 130 % of the spacing), and a leak begins at any hour, also between two readings.
"""

from __future__ import annotations

import math
import random
from collections.abc import Iterator
from dataclasses import dataclass
from itertools import count, islice

from broodshelf.care.water.reservoir import Reservoir, reservoir
from broodshelf.care.water.vessel_sizes import water_sizes
from broodshelf.model.facts import Event, Place, Vessel
from broodshelf.model.gauges import DAY_MS

TUBE, ROOM = Vessel("tube_16x150"), Place()
SIZES = water_sizes(TUBE, ROOM)
FULL_MM = SIZES.reservoir_mm
USUAL_MM_DAY = SIZES.usual_per_day * FULL_MM
BY_EYE = ("empty", "quarter", "half", "three_quarters", "full")


@dataclass(frozen=True)
class Keeper:
    """Reads every ``every_days`` or so: in mm with 1 mm of noise, or by eye to the nearest quarter, 5 % off."""

    every_days: float = 7.0
    by_eye: bool = False
    noise_mm: float = 1.0


@dataclass(frozen=True)
class Leak:
    """Makes a tube lose ``haste`` times as much, for good; it runs for ``first_part`` of interval number ``after``."""

    haste: float
    after: int
    first_part: float


def any_tube(rng: random.Random) -> float:
    """Return a true loss in mm a day: log-normal, 80 % within a factor 1.8 of the usual."""
    return USUAL_MM_DAY * math.exp(rng.gauss(0, 0.46))


def lived_in(
    rng: random.Random, keeper: Keeper, loss_mm_day: float, leak: Leak | None = None
) -> Iterator[tuple[float, list[Event]]]:
    """Yield the day and the log after each reading, without end. Filled on day 0 and, if sound, below a quarter."""
    log, level_mm, day = [fill(0.0)], FULL_MM, 0.0
    for number in count():
        passed = keeper.every_days * rng.uniform(0.7, 1.3)
        loss_mm = loss_mm_day * math.exp(rng.gauss(0, 0.15)) * passed
        if leak and number >= leak.after:
            loss_mm *= 1 + (leak.haste - 1) * (leak.first_part if number == leak.after else 1)
        day += passed
        level_mm = max(0.0, level_mm - loss_mm)
        log.append(Event(f"r{day}", "water", round(day * DAY_MS), _seen(rng, keeper, level_mm)))
        yield day, log
        if level_mm < FULL_MM / 4 and not leak:
            log.append(fill(day + 0.01))
            level_mm = FULL_MM


def fill(day: float) -> Event:
    """Return a refill."""
    return Event(f"f{day}", "water", round(day * DAY_MS), {"action": "refill"})


def known(log: list[Event]) -> Reservoir:
    """Return what the care core makes of the log."""
    return reservoir(log, TUBE, ROOM, 0)


def _seen(rng: random.Random, keeper: Keeper, level_mm: float) -> dict:
    if keeper.by_eye:
        quarters = round(4 * (level_mm / FULL_MM + rng.gauss(0, 0.05)))
        return {"action": "read", "reading": BY_EYE[min(4, max(0, quarters))]}
    return {"action": "read", "level_mm": max(0, round(level_mm + rng.gauss(0, keeper.noise_mm)))}


def rates_found(tubes: int, keeper: Keeper, readings: int, seed: int) -> tuple[float, float]:
    """Return the share of tubes whose rate is within 15 % after so many readings, and in its 80 % interval."""
    rng = random.Random(seed)
    close = covered = 0
    for _ in range(tubes):
        truth = any_tube(rng)
        _, log = next(islice(lived_in(rng, keeper, truth), readings - 1, None))
        found = known(log).rate_per_day.times(FULL_MM)
        close += abs(found.best / truth - 1) <= 0.15
        covered += found.low <= truth <= found.high
    return close / tubes, covered / tubes


def false_alarms(tubes: int, keeper: Keeper, days: float, seed: int) -> tuple[int, float]:
    """Return how often a sound tube came under suspicion, and the tube-months watched."""
    rng = random.Random(seed)
    alarms = 0
    for _ in range(tubes):
        before = False
        for day, log in lived_in(rng, keeper, any_tube(rng)):
            if day > days:
                break
            look = known(log).look_today
            alarms += look and not before
            before = look
    return alarms, tubes * days / 30.4


def leaks_found(
    tubes: int, keeper: Keeper, haste: float, seed: int, *, at_a_reading: bool
) -> tuple[float, float, float]:
    """Return the share of leaks flagged by the first, second and third reading after their start.

    Four sound weeks come before. ``at_a_reading``: the leak begins right after a reading; otherwise at any hour between
    two, so that the first reading sees only a part of it.
    """
    rng = random.Random(seed)
    by_reading = [0, 0, 0]
    for _ in range(tubes):
        truth = USUAL_MM_DAY * rng.uniform(0.6, 1.2)
        leak = Leak(haste, round(28 / keeper.every_days), 1.0 if at_a_reading else rng.random())
        readings = islice(lived_in(rng, keeper, truth, leak), leak.after, leak.after + 3)
        looks = [known(log).look_today for _, log in readings]
        for number in range(3):
            by_reading[number] += any(looks[: number + 1])
    return by_reading[0] / tubes, by_reading[1] / tubes, by_reading[2] / tubes
