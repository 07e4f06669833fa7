"""Colonies that might be this one, side by side: how the brood and the workers of each go on.

All of them take a step together, on flat lists: a colony's row is its chain of brood, eggs first, and one place more
into which the workers of a step hatch. The interpreter's own ``map`` does the work, four times as fast as colony by
colony; a numeric library would gain nothing at this size.
"""

from __future__ import annotations

import math
from array import array
from collections.abc import MutableSequence, Sequence
from itertools import chain
from operator import add, mul
from typing import Final, NamedTuple

from .groups import LifeGroup
from .pace import Pace

NURSING_QUEEN: Final = 1.0
"""A queen who has workers nurses like one of them (common practice, no source)."""
WANDERS: Final = 0.01**2
"""What no model knows, as a variance of the logarithm of the workers a day: poor weeks, spills (careful default)."""
RESTING_WANDERS: Final = 0.016**2
"""The same for a day of cold: nobody looks into a rest, and what it costs differs (careful default)."""
FOUNDED: Final = 0.7
"""From so many expected workers on a founding is over: by then the first has hatched with even odds (ln 2)."""


_EACH: Final = (
    "speed", "survival", "eggs_per_worker", "life_days", "most_eggs", "reserve", "reserve_rate", "starts_in",
    "hatched", "shaken", "fresh", "_lives",
)  # fmt: skip
"""What has one entry a colony, besides workers."""


class _Flow(NamedTuple):
    """What one turn of a step does to the first ``many`` colonies, and what it takes in of the eggs laid in the step.

    ``stays``, ``goes``: the share of each place that stays, and that goes on alive; ``laid``: each colony's share of
    its eggs; ``early``: of these, what is a place further at the end, as eggs of a turn are half of it old.
    """

    many: int
    stays: list[float]
    goes: list[float]
    laid: list[float]
    early: list[float]


class Colonies:
    """Some colonies of a group. Every list has one entry a colony, but ``rows``, which has ``width`` of them each.

    ``workers``: expected number; ``reserve``: eggs that the founding queen can still lay from what she has,
    ``reserve_rate`` of them a day, from ``starts_in`` days on. ``hatched``: workers hatched in the last step;
    ``shaken``: hatched and died since workers were last counted, which is as much as chance may move them; ``fresh``:
    eggs of the last half step, which its chain has ahead of time.
    """

    __slots__ = (
        "_dies", "_fades", "_flows", "_lives", "_pace", "_young", "eggs_per_worker", "fresh", "group", "hatched",
        "life_days", "most_eggs", "reserve", "reserve_rate", "rows", "shaken", "size", "speed", "starts_in",
        "survival", "width", "workers",
    )  # fmt: skip

    def __init__(self, group: LifeGroup, workers: Sequence[float]) -> None:
        self.group, self.workers, self.size = group, list(workers), len(workers)
        self.width = sum(group.chain) + 1
        nothing = [0.0] * self.size
        self.rows: MutableSequence[float] = [0.0] * (self.size * self.width)
        self.speed = self.survival = self.eggs_per_worker = self.life_days = self.most_eggs = [
            1.0
        ] * self.size
        self.reserve = self.reserve_rate = self.starts_in = self.hatched = self.shaken = self.fresh = nothing
        self._pace: Pace | None = None
        self._flows: list[_Flow] = []
        self._fades: list[float] = []
        self._dies: list[float] = []
        self._young = [i for i, number in enumerate(self.workers) if number < FOUNDED]
        self._lives = [1.0] * self.size

    def copy(self) -> Colonies:
        """Return the same colonies to go on with; a step makes new lists and leaves the old ones alone."""
        made = Colonies.__new__(Colonies)
        for name in Colonies.__slots__:
            setattr(made, name, getattr(self, name))
        return made

    def take(self, chosen: Sequence[int]) -> Colonies:
        """Return the colonies with these numbers, some of them perhaps more than once."""
        made = Colonies(self.group, [self.workers[number] for number in chosen])
        width = self.width
        made.rows = [there for number in chosen for there in self.rows[number * width : (number + 1) * width]]
        for name in _EACH:
            values = getattr(self, name)
            setattr(made, name, [values[number] for number in chosen])
        return made

    def pack(self) -> None:
        """Hold the brood in a quarter of the space, to be kept."""
        self.rows = array("d", self.rows)

    def set_rates(
        self,
        speed: Sequence[float],
        survival: Sequence[float],
        eggs_per_worker: Sequence[float],
        life_days: Sequence[float],
        most_eggs: Sequence[float],
    ) -> None:
        """Set what they do not share with each other. ``survival``: of eggs that become workers."""
        self.speed, self.survival, self.eggs_per_worker = list(speed), list(survival), list(eggs_per_worker)
        self.life_days, self.most_eggs = list(life_days), list(most_eggs)
        self._lives = [share ** (1 / (self.width - 1)) for share in survival]
        self._pace = None

    def step(self, pace: Pace, days: float) -> None:
        """Go on by some days at a pace."""
        workers = self.workers
        if self._young and any(workers[i] >= FOUNDED for i in self._young):
            self._young = [i for i in self._young if workers[i] < FOUNDED]
            self._pace = None
        if pace is not self._pace:
            self._settle(pace)
        eggs, rows, width = self._lay(pace, days), list(self.rows), self.width
        for flow in self._flows:
            end = flow.many * width
            moved = list(map(add, map(mul, flow.stays, rows), chain((0.0,), map(mul, flow.goes, rows))))
            laid = list(map(mul, flow.laid, eggs))
            early = list(map(mul, flow.early, laid))
            moved[::width] = [
                there + new - gone for there, new, gone in zip(moved[::width], laid, early, strict=True)
            ]
            moved[1::width] = map(add, moved[1::width], map(mul, self._lives, early))
            rows = moved if flow.many == self.size else moved + rows[end:]
        self.fresh = [new / 2 for new in map(mul, self._flows[0].laid, eggs)]
        hatched = rows[width - 1 :: width]
        rows[width - 1 :: width] = [0.0] * self.size
        self.rows = list(map(mul, self._fades, rows)) if pace.fades else rows
        died = list(map(mul, self._dies, workers))
        self.hatched, wanders = hatched, (RESTING_WANDERS if pace.cold else WANDERS) * days
        self.shaken = [
            was + born + dead + wanders * number * number
            for was, born, dead, number in zip(self.shaken, hatched, died, workers, strict=True)
        ]
        self.workers = [
            number - dead + born for number, dead, born in zip(workers, died, hatched, strict=True)
        ]

    def _lay(self, pace: Pace, days: float) -> list[float]:
        """Return the eggs of a step: by what the workers can nurse and the queen can lay, and from her reserve."""
        usual = pace.laying * days
        eggs = [
            usual * min(most, (nursed + NURSING_QUEEN * min(1.0, nursed)) * each)
            for nursed, most, each in zip(self.workers, self.most_eggs, self.eggs_per_worker, strict=True)
        ]
        if pace.laying > 0 and any(self.reserve):
            begun = [min(days, max(0.0, days - wait)) for wait in self.starts_in]
            self.starts_in = [max(0.0, wait - days) for wait in self.starts_in]
            spent = [
                min(left, rate * since * pace.laying)
                for left, rate, since in zip(self.reserve, self.reserve_rate, begun, strict=True)
            ]
            self.reserve = [left - gone for left, gone in zip(self.reserve, spent, strict=True)]
            eggs = list(map(add, eggs, spent))
        return eggs

    def _settle(self, pace: Pace) -> None:
        """Work out what a step at this pace does; more than one turn where brood is faster than a place in a step."""
        group, speeds = self.group, list(self.speed)
        for i in self._young:
            speeds[i] *= group.first_pace * group.step_pace
        fastest = max(pace.moves)
        turns = [max(1, math.ceil(fastest * speed - 1e-9)) for speed in speeds]
        shares = [share for share, steps in zip(pace.moves, group.chain, strict=True) for _ in range(steps)]
        left = [each for each, steps in zip(pace.left, group.chain, strict=True) for _ in range(steps)]
        self._flows = [self._flow(turn, turns, speeds, shares) for turn in range(max(turns))]
        self._fades = [*left, 1.0] * self.size
        self._dies = [min(1.0, pace.ageing / life) for life in self.life_days]
        self._pace = pace

    def _flow(self, turn: int, turns: list[int], speeds: list[float], shares: list[float]) -> _Flow:
        stays: list[float] = []
        goes: list[float] = []
        laid: list[float] = []
        many = max(number for number, of in enumerate(turns, 1) if turn < of)
        for of, speed, lives in list(zip(turns, speeds, self._lives, strict=True))[:many]:
            moves = [share * speed / of for share in shares] if turn < of else [0.0] * len(shares)
            stays += [1 - move for move in moves]
            goes += [move * lives for move in moves]
            stays.append(1.0)
            goes.append(0.0)
            laid.append(1 / of if turn < of else 0.0)
        return _Flow(many, stays, goes, laid, [(1 - stay) / 2 for stay in stays[:: self.width]])

    def total(self, stage: int) -> list[float]:
        """Return the brood of a stage of ``STAGES``, colony by colony."""
        there = self.between(*self.group.spans[stage])
        return list(map(add, there, self.fresh)) if stage == 0 else there

    def between(self, first: int, last: int) -> list[float]:
        """Return the brood in a part of the chain, colony by colony."""
        return [sum(self.rows[at + first : at + last]) for at in range(0, len(self.rows), self.width)]
