"""Colonies ant by ant: every egg, larva, pupa and worker lives and dies on its own, by dice with a fixed seed.

Other code than the census, on purpose: days, not steps; single lives, not expectations; hard limits, not smooth ones.
What colonies are like is drawn from the priors of their group, for that is what the census claims to know. The keeper
looks when it suits, leaves counts out, errs, and now and then writes down something quite wrong. All invented.
"""

from __future__ import annotations

import heapq
import math
from dataclasses import dataclass, field
from random import Random

from broodshelf.care.colony.census.facts import Facts, Seen, Warmth
from broodshelf.care.colony.census.groups import LifeGroup

START_DAY = 20_600  # in May 2026
STAGES = ("eggs", "larvae", "pupae")
TO_80 = 1.2816


@dataclass
class Ants:
    """One colony. Heaps hold, by individual, the progress at which it leaves its stage, and how long it takes: of usual

    individuals 1, with a deviation of 0.15 (Fowler et al. 1993). Who is slow is slow in every stage (an assumption).
    """

    group: LifeGroup
    dice: Random
    workers: int
    claustral: bool = False
    speed: float = field(init=False)
    heaps: dict[str, list[tuple[float, float]]] = field(init=False)

    def __post_init__(self):
        dice, group = self.dice, self.group
        self.speed = math.exp(dice.gauss(0, math.log(group.spread) / TO_80))
        self.eggs_per_worker = group.eggs_per_worker * math.exp(0.45 * (push := dice.gauss(0, 1)))
        self.most_eggs = group.most_eggs * math.exp(0.45 * push)
        self.survival = min(0.95, 0.5 * math.exp(dice.gauss(0, 0.25)))
        low, high = group.life_days
        self.life_days = math.sqrt(low * high) * math.exp(dice.gauss(0, math.log(high / low) / 2 / TO_80))
        low, high = group.first_brood
        first = math.sqrt(low * high) * math.exp(dice.gauss(0, math.log(high / low) / 2 / TO_80))
        self.eggs_left = round(first / self.survival) if self.claustral else 0
        self.laying_days = group.eggs.degree_days / (25 - group.eggs.threshold_c)
        self.lays_from = 3 * math.exp(dice.gauss(0, 0.3))
        self.off_c = dice.gauss(0, 1)
        self.heaps = {stage: [] for stage in STAGES}
        self.progress = dict.fromkeys(STAGES, 0.0)
        self.gain = dict.fromkeys(STAGES, 0.0)
        self.age = 0
        self.hatched: list[int] = []
        self.history: list[int] = []
        self.owed = 0.0

    def day(self, temp_c: float, *, slow: bool = False, resting: bool = False) -> None:
        """Live through one day."""
        dice, group = self.dice, self.group
        temp_c += self.off_c * (0 if resting else 1) + dice.gauss(0, 0.5)
        pace = self.speed * (group.first_pace if self.claustral and not self.hatched else 1.0)
        for stage, time in zip(STAGES, (group.eggs, group.larvae, group.pupae), strict=True):
            gain = max(0.0, min(temp_c, group.high_c) - time.threshold_c) / time.degree_days
            self.gain[stage] = gain * pace
            self.progress[stage] += self.gain[stage]
        self._die(temp_c, resting=resting)
        out = sum(1 for _ in self._leaving("pupae") if dice.random() < self.survival ** (1 / 3))
        for takes in self._leaving("larvae"):
            if (slow or resting) and dice.random() < 0.95:
                heapq.heappush(self.heaps["larvae"], (self.progress["larvae"] + 1e-6, takes))
            elif dice.random() < self.survival ** (1 / 3):
                self._enter("pupae", takes)
        for takes in self._leaving("eggs"):
            if dice.random() < self.survival ** (1 / 3):
                self._enter("larvae", takes)
        for _ in range(self._laid(temp_c, slow=slow, resting=resting)):
            self._enter("eggs", max(0.5, dice.gauss(1, 0.15)))
        self.workers += out
        self.hatched += [self.age] * out
        self.age += 1
        self.history.append(self.workers)

    def _leaving(self, stage):
        heap = self.heaps[stage]
        while heap and heap[0][0] <= self.progress[stage]:
            yield heapq.heappop(heap)[1]

    def _enter(self, stage, takes):
        entered = self.progress[stage] - self.gain[stage] / 2  # in the middle of the day
        heapq.heappush(self.heaps[stage], (entered + takes, takes))

    def _die(self, temp_c, *, resting):
        dice = self.dice
        daily = min(2.0, max(0.25, 2 ** ((temp_c - 25) / 10))) / self.life_days
        self.workers -= min(self.workers, poisson(dice, daily * self.workers))
        if resting:
            for stage in STAGES if not self.group.winter_larvae else ("eggs", "pupae"):
                self.heaps[stage] = [x for x in self.heaps[stage] if dice.random() < 0.9]
                heapq.heapify(self.heaps[stage])

    def _laid(self, temp_c, *, slow, resting):
        group = self.group
        window = min(
            1.0, max(0.0, (temp_c - group.eggs.threshold_c) / (group.low_c - group.eggs.threshold_c))
        )
        window *= 0.0 if resting else 0.1 if slow else 1.0
        mean = 0.0
        if self.workers:
            mean = min(self.most_eggs, (self.workers + 1) * self.eggs_per_worker) * window
        if self.eggs_left and self.age >= self.lays_from:
            if not self.owed:
                self.owed = self.eggs_left / self.laying_days
            reserve = min(self.eggs_left, poisson(self.dice, self.owed * window))
            self.eggs_left -= reserve
            return reserve + poisson(self.dice, mean)
        return poisson(self.dice, mean)

    def number(self, what: str) -> int:
        """Return how many there are."""
        return self.workers if what == "workers" else len(self.heaps[what])


def poisson(dice: Random, mean: float) -> int:
    """Return a Poisson number (by steps of a product; by the bell above 30)."""
    if mean > 30:
        return max(0, round(dice.gauss(mean, math.sqrt(mean))))
    limit, product, found = math.exp(-mean), dice.random(), 0
    while product > limit:
        product *= dice.random()
        found += 1
    return found


def warmth_of(group: LifeGroup) -> float:
    """Return the temperature at which its keeper keeps it."""
    return group.low_c + 0.6 * (group.high_c - group.low_c)


def counted(ants: Ants, day: int, dice: Random) -> list[Seen]:
    """Return what the keeper writes down of a look: a number or a word, brood or none, or nothing at all."""
    found = []
    number = ants.workers
    kind = dice.random()
    if kind < 0.75 or number == 0:
        error = 0.05 if number < 30 else 0.1 if number <= 200 else 0.2
        said = max(0, round(number * math.exp(dice.gauss(0, error))))
        if dice.random() < 0.02:
            said = round(said * 1.5)
        found.append(Seen(day, "workers", number=float(said)))
    elif kind < 0.85:
        word = "few" if number < 18 else "some" if number < 85 else "many"
        found.append(Seen(day, "workers", word=word))
    if dice.random() < 0.6:
        found += [Seen(day, stage, word=_word(ants, stage, dice)) for stage in STAGES]
    return found


def _word(ants: Ants, stage: str, dice: Random) -> str:
    each = {"eggs": 0.4, "larvae": 0.6, "pupae": 0.8}[stage]
    number = ants.number(stage)
    if dice.random() < math.exp(-each * number):
        return "none"
    share = number * math.exp(dice.gauss(0, 0.4)) / max(ants.workers, 26)
    return "few" if share < 0.17 else "some" if share < 0.46 else "many"


def facts_of(group: LifeGroup, seen: list[Seen], **more) -> Facts:
    """Return what the census is told."""
    temp_c = warmth_of(group)
    given = {"known_day": START_DAY, "warmth": (Warmth(START_DAY - 400, temp_c, temp_c),), **more}
    return Facts(group, seen=tuple(seen), **given)
