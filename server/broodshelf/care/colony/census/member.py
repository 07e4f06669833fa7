"""One colony that might be this one: its own speed, laying, survival and life, and how its brood and workers go on."""

from __future__ import annotations

import math
from typing import Final

from .groups import LifeGroup
from .pace import Pace

NURSING_QUEEN: Final = 1.0
"""A queen who has workers nurses like one of them (common practice, no source)."""
WANDERS: Final = 0.015**2
"""What no model knows, as a variance of the logarithm of the workers a day: poor weeks, spills (careful default)."""
FOUNDED: Final = 0.7
"""From so many expected workers on a founding is over: by then the first has hatched with even odds (ln 2)."""


class Member:
    """A colony of the ensemble. ``rows``: brood by step of its chain, eggs first; ``workers``: expected number.

    ``reserve``: eggs that the founding queen can still lay from what she has, ``reserve_rate`` of them a day, from
    ``starts_in`` days on. ``hatched``: workers hatched in the last step; ``shaken``: hatched and died since workers
    were last counted, which is as much as chance may move them; ``fresh``: eggs of the last half step, which its chain
    has ahead of time.
    """

    __slots__ = (
        "_founding", "_lives", "_moves", "_pace", "_turns", "eggs_per_worker", "fresh", "group", "hatched",
        "life_days", "most_eggs", "reserve", "reserve_rate", "rows", "shaken", "speed",
        "starts_in", "survival", "workers",
    )  # fmt: skip

    def __init__(self, group: LifeGroup, workers: float = 0.0) -> None:
        self.group, self.workers = group, workers
        self.rows = [0.0] * sum(group.chain)
        self.speed = self.survival = self.eggs_per_worker = self.life_days = self.most_eggs = 1.0
        self.reserve = self.reserve_rate = self.starts_in = self.hatched = self.shaken = 0.0
        self.fresh = 0.0
        self._pace: Pace | None = None
        self._moves: list[float] = []
        self._lives, self._founding, self._turns = 1.0, False, 1

    def copy(self) -> Member:
        """Return the same colony to go on with."""
        made = Member(self.group, self.workers)
        made.rows = self.rows  # a step makes new rows and leaves the old ones alone
        made.set_rates(self.speed, self.survival, self.eggs_per_worker, self.life_days, self.most_eggs)
        made.reserve, made.reserve_rate, made.starts_in = self.reserve, self.reserve_rate, self.starts_in
        made.shaken = self.shaken
        return made

    def set_rates(
        self, speed: float, survival: float, eggs_per_worker: float, life_days: float, most_eggs: float
    ) -> None:
        """Set what it does not share with the others. ``survival``: of eggs that become workers."""
        self.speed, self.survival, self.eggs_per_worker = speed, survival, eggs_per_worker
        self.life_days, self.most_eggs = life_days, most_eggs
        self._lives = survival ** (1 / len(self.rows))
        self._pace = None

    def step(self, pace: Pace, days: float) -> None:
        """Go on by some days at a pace."""
        workers = self.workers
        if pace is not self._pace or (self._founding and workers >= FOUNDED):
            self._settle(pace)
        lives, rows, laid, hatched = self._lives, self.rows, self._lay(pace, days) / self._turns, 0.0
        for _ in range(
            self._turns
        ):  # more than one where brood is faster than a step of its chain in a step of days
            gone = [share * row for share, row in zip(self._moves, rows, strict=True)]
            early = laid * self._moves[0] / 2  # eggs of a step are half a step old at its end
            come = [laid - early, *[lives * moved for moved in gone]]
            come[1] += lives * early
            self.fresh = laid / 2
            rows = [row - left + new for row, left, new in zip(rows, gone, come, strict=False)]
            hatched += come[-1]
        self.rows = rows
        if pace.fades:
            self._fade(pace)
        died = workers * min(1.0, pace.ageing / self.life_days)
        self.hatched, self.workers = hatched, workers - died + hatched
        self.shaken += hatched + died + WANDERS * days * workers * workers

    def _lay(self, pace: Pace, days: float) -> float:
        """Return the eggs of a step: by what the workers can nurse and the queen can lay, and from her reserve."""
        nursed = self.workers
        wanted = (nursed + NURSING_QUEEN * min(1.0, nursed)) * self.eggs_per_worker
        laid = pace.laying * days * min(self.most_eggs, wanted)
        if self.reserve > 0 and pace.laying > 0:
            begun = min(days, days - self.starts_in)
            self.starts_in = max(0.0, self.starts_in - days)
            if begun > 0:
                spent = min(self.reserve, self.reserve_rate * begun * pace.laying)
                self.reserve -= spent
                laid += spent
        return laid

    def _settle(self, pace: Pace) -> None:
        self._founding = self.workers < FOUNDED
        speed = self.speed * (self.group.first_pace if self._founding else 1.0)
        fastest = max(pace.moves) * speed
        self._turns = max(1, math.ceil(fastest - 1e-9))
        self._moves = [
            share * speed / self._turns
            for share, steps in zip(pace.moves, self.group.chain, strict=True)
            for _ in range(steps)
        ]
        self._pace = pace

    def total(self, stage: int) -> float:
        """Return the brood of a stage of ``STAGES``."""
        first, last = self.group.spans[stage]
        there = sum(self.rows[first:last])
        return there + self.fresh if stage == 0 else there

    def _fade(self, pace: Pace) -> None:
        """Take what cold and heat take: eggs and pupae first, larvae of kinds that do not keep them over winter."""
        for (first, last), left in zip(self.group.spans, pace.left, strict=True):
            self.rows[first:last] = [left * row for row in self.rows[first:last]]
