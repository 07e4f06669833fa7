"""Whether what the census says comes true: 80 of 100 intervals should hold what the simulated colonies then do."""

from __future__ import annotations

import math
from collections import defaultdict
from collections.abc import Iterator
from random import Random
from typing import NamedTuple

from tests.care.census.one_by_one import START_DAY, Ants, counted, facts_of, warmth_of

from broodshelf.care.colony import census
from broodshelf.care.colony.census.facts import Warmth
from broodshelf.care.colony.census.groups import LIFE_GROUPS

GROUPS = ("lasius", "tetramorium", "solenopsis", "camponotus", "myrmica", "messor")
KINDS = ("founding", "growing", "resting")
TUNED_ON, JUDGED_ON = 1_000, 20_000
"""From which seeds on the constants of the census were tuned, and from which its ranges are judged: never the same."""
FAR = 1e9
"""A day that never comes: where nothing is said of an end, and where what was asked for does not happen."""


class Told(NamedTuple):
    """One interval and what came of it; ``line``: how wide a line through the counts would have made it, and

    ``line_reach``: how far off the truth was of that, in its half-widths.
    """

    question: str
    low: float
    best: float
    high: float
    truth: float
    line: float | None = None
    line_reach: float | None = None

    @property
    def held(self) -> bool:
        return self.low <= self.truth <= self.high

    @property
    def width(self) -> float:
        """How wide it is: of numbers, as a logarithm; of days, in days."""
        if self.question.startswith("workers"):
            return math.log((self.high + 0.5) / (self.low + 0.5))
        return self.high - self.low

    @property
    def reach(self) -> float:
        """How far off the truth is, in half-widths of the interval: up to 1 it was held."""
        if self.question.startswith("workers"):
            ends = [math.log(number + 0.5) for number in (self.low, self.best, self.high, self.truth)]
            low, best, high, truth = ends
            return abs(truth - best) / max(0.05, best - low if truth < best else high - best)
        half = self.best - self.low if self.truth < self.best else self.high - self.best
        return abs(self.truth - self.best) / max(0.5, half)


def told(kind: str, code: str, seed: int) -> list[Told]:
    """Return what was said about one colony, and what came true."""
    return {"founding": _founding, "growing": _growing, "resting": _resting}[kind](
        code, Random(f"{kind}{code}{seed}")
    )


def many(kind: str, code: str, colonies: int, first: int = 0) -> dict[str, list[Told]]:
    """Return all that was said about so many colonies from a seed on, by question."""
    found: dict[str, list[Told]] = defaultdict(list)
    for seed in range(first, first + colonies):
        for said in told(kind, code, seed):
            found[said.question].append(said)
    return found


def _span(question: str, said, truth: float | None) -> Iterator[Told]:
    truth = FAR if truth is None else truth
    if said is None:
        yield Told(question, FAR, FAR, FAR, truth)
        return
    best = FAR if said.best is None else said.best
    high = FAR if said.high is None else said.high
    yield Told(question, said.low, best, high, truth)


def _number(question: str, said, truth: float) -> Told:
    return Told(question, round(said.low), said.best, round(said.high), truth)


def _founding(code: str, dice: Random) -> list[Told]:
    group = LIFE_GROUPS[code]
    ants = Ants(group, dice, 0, claustral=True)
    temp_c, seen = warmth_of(group), []
    # who is asked after how many looks is settled beforehand: to ask after the last look before the workers came would
    # be to know that they are near
    looks, asked_at = dice.randrange(0, 6), 0
    next_look = dice.randrange(3, 12)
    while not ants.hatched and ants.age < 260:
        if ants.age == next_look and looks:
            seen += counted(ants, START_DAY + ants.age, dice)
            asked_at, looks = ants.age, looks - 1
            next_look += dice.randrange(5, 14)
        ants.day(temp_c)
    if not ants.hatched or looks:
        return []
    facts = facts_of(group, seen, founding="claustral", founded_day=START_DAY, stage="founding")
    said = census.of(facts, START_DAY + asked_at)
    return list(_span("first workers", said.first_workers, START_DAY + ants.hatched[0] + dice.random()))


def _grown(code: str, dice: Random) -> Ants | None:
    """Return a colony that had time for brood of its own; None where it died out or filled a house."""
    group = LIFE_GROUPS[code]
    temp_c = warmth_of(group)
    way = sum(
        time.degree_days / (temp_c - time.threshold_c) for time in (group.eggs, group.larvae, group.pupae)
    )
    ants = Ants(group, dice, dice.randrange(8, 60))
    for _ in range(round(1.5 * way)):
        ants.day(temp_c)
    return ants if 5 <= ants.workers <= 600 else None


def _growing(code: str, dice: Random) -> list[Told]:
    group = LIFE_GROUPS[code]
    temp_c, seen = warmth_of(group), []
    ants = _grown(code, dice)
    if ants is None:
        return []
    begin, next_look = ants.age, ants.age
    asked_at = begin + dice.randrange(5, 100)
    while ants.age < asked_at:
        if ants.age == next_look:
            seen += counted(ants, START_DAY + ants.age, dice)
            next_look += dice.randrange(10, 30)
        ants.day(temp_c)
    return _ahead(ants, facts_of(group, seen, known_day=START_DAY + begin, stage="growing"), temp_c, dice)


def _resting(code: str, dice: Random) -> list[Told]:
    group = LIFE_GROUPS[code]
    temp_c, seen = warmth_of(group), []
    ants = _grown(code, dice)
    if ants is None:
        return []
    begin, next_look = ants.age, ants.age
    sleeps = begin + dice.randrange(20, 90)
    wakes = sleeps + dice.randrange(70, 120)
    asked_at = wakes + dice.randrange(2, 40)
    while ants.age < asked_at:
        rests = sleeps <= ants.age < wakes
        if ants.age == next_look and not rests:
            seen += counted(ants, START_DAY + ants.age, dice)
            next_look += dice.randrange(10, 30)
        elif ants.age == next_look:
            next_look += 20
        ants.day(6.0 if rests else temp_c, resting=rests)
    warmth = (
        Warmth(START_DAY, temp_c, temp_c), Warmth(START_DAY + sleeps, 6, 6), Warmth(START_DAY + wakes, temp_c, temp_c),
    )  # fmt: skip
    facts = facts_of(
        group, seen, known_day=START_DAY + begin, stage="growing", warmth=warmth,
        rests=((START_DAY + sleeps, START_DAY + wakes),),
    )  # fmt: skip
    return _ahead(ants, facts, temp_c, dice)


def _ahead(ants: Ants, facts, temp_c: float, dice: Random) -> list[Told]:
    if not any(seen.what == "workers" for seen in facts.seen):
        return []
    asked_at, now = ants.age, ants.workers
    room = max(10, round(now * dice.uniform(1.2, 2.5)))
    hatched_before = len(ants.hatched)
    full = None
    for days in range(1, 201):  # as far as a census looks ahead
        ants.day(temp_c)
        full = full or (ants.age - 1 if ants.workers >= room else None)
        if days >= 91 and full is not None and len(ants.hatched) > hatched_before:
            break
    said = census.of(facts, START_DAY + asked_at)
    new = next(iter(ants.hatched[hatched_before:]), None)
    found = [
        *_span("new workers", said.new_workers, None if new is None else START_DAY + new + dice.random()),
        *_span("nest full", said.nest_full(room), None if full is None else START_DAY + full + dice.random()),
    ]
    for days in (30, 90):
        truth = ants.history[asked_at + days - 1]
        one = _number(f"workers in {days} days", said.workers_on(START_DAY + asked_at + days), truth)
        middle, half = line_through(facts.seen, START_DAY + asked_at + days) or (0.0, None)
        if half is not None:
            one = one._replace(line=2 * half, line_reach=abs(math.log(max(0.5, truth)) - middle) / half)
        found.append(one)
    return found


def line_through(seen, day: int) -> tuple[float, float] | None:
    """Return middle and half width of a day's workers by a line through the logarithms of three counts or more.

    80 % of Student's t.

    As plans reckoned before there was a census: both ends of rate and size together.
    """
    points = [(one.day, math.log(one.number)) for one in seen if one.what == "workers" and one.number]
    if len(points) < 3 or points[-1][0] - points[0][0] < 7:
        return None
    last, n = points[-1][0], len(points)
    days, logs = [at - last for at, _ in points], [log for _, log in points]
    mean = sum(days) / n
    squares = sum((at - mean) ** 2 for at in days)
    rate = sum((at - mean) * log for at, log in zip(days, logs, strict=True)) / squares
    now = sum(logs) / n - rate * mean
    left = sum((log - now - rate * at) ** 2 for at, log in zip(days, logs, strict=True))
    spread = max(0.05, math.sqrt(left / (n - 2)))
    t = (3.078, 1.886, 1.638, 1.533, 1.476, 1.440)[min(n - 3, 5)]
    half = t * spread * (math.sqrt(1 / n + mean**2 / squares) + (day - last) / math.sqrt(squares))
    return now + rate * (day - last), half


def share_held(said: list[Told]) -> float:
    """Return the share of the intervals that held the truth."""
    return sum(one.held for one in said) / len(said)
