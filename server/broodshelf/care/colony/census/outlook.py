"""The census itself: what is in the nest today and on every day to come, when workers come, and what it rests on."""

from __future__ import annotations

import math
from bisect import bisect_right
from dataclasses import dataclass
from statistics import NormalDist
from typing import Final

from ....model.quantities import Estimate
from .ensemble import TO_80
from .facts import Facts
from .groups import STAGES
from .member import FOUNDED
from .observing import OFFSET, Moved
from .reckoning import Reckoned, paces, reckon
from .spread import Column, column_of, first_days, workers_of

HORIZON_DAYS: Final = 183
ROUND_UP_DAYS: Final = 16
"""The way ahead is reckoned to a multiple of these, so that a day later nothing is reckoned anew."""
STAGE_COLUMNS: Final = 3
"""Every so many steps the brood is written down, too; between them it goes in a straight line."""
REMEMBERED: Final = 256
TELLS: Final = 0.25
"""An observation that moved its number, speed or laying by less than this is not named among the reasons."""
_NORMAL: Final = NormalDist()


@dataclass(frozen=True, slots=True)
class Days:
    """A span of calendar days (from 1970) that holds 80 of 100: None at an end that lies beyond the horizon."""

    low: float
    best: float | None
    high: float | None


@dataclass(frozen=True, slots=True)
class Inside:
    """What is in the nest on a day."""

    day: int
    eggs: Estimate
    small_larvae: Estimate
    large_larvae: Estimate
    pupae: Estimate
    workers: Estimate

    @property
    def larvae(self) -> Estimate:
        """All larvae."""
        return self.small_larvae.plus(self.large_larvae)


@dataclass(frozen=True, slots=True)
class Course:
    """The way ahead from the last observation: columns of all stages, workers by step, and the odds of new ones."""

    begin: Reckoned
    columns: tuple[Column, ...]
    days: tuple[int, ...]
    workers: tuple[Estimate, ...]
    hatched: tuple[tuple[float, ...], ...]
    """What each member has hatched by each of ``days``, since the first."""
    founding: bool


@dataclass(frozen=True, slots=True)
class Census:
    """The living census of a colony on a day. Days are counted from 1970 in the household's zone.

    ``first_workers`` of a founding, ``new_workers`` of a colony: when the next hatch, None where none do within the
    horizon. ``measured``: whether the stage times of its kind were measured. ``source``: what its priors rest on.
    """

    day: int
    horizon_days: int
    course: Course
    group: str
    measured: bool
    source: str

    @property
    def today(self) -> Inside:
        """What is in the nest today."""
        return self.on(self.day)

    @property
    def founding(self) -> bool:
        """Say whether its first workers are still to come."""
        return self.course.founding

    def on(self, day: int) -> Inside:
        """Return what is in the nest on a day from the last observation on, or of the past as it was believed then."""
        columns = (*self.course.begin.past, *self.course.columns)
        eggs, small, large, pupae = (_between(columns, day, i) for i in range(len(STAGES)))
        return Inside(day, eggs, small, large, pupae, self.workers_on(day))

    def workers_on(self, day: int) -> Estimate:
        """Return the workers on a day."""
        course = self.course
        if day < course.days[0] and course.begin.past:
            return _between(course.begin.past, day, len(STAGES))
        return _along(course.days, course.workers, day)

    @property
    def by_day(self) -> tuple[Inside, ...]:
        """What is in the nest on every day from today to the horizon."""
        return tuple(self.on(day) for day in range(self.day, self.day + self.horizon_days + 1))

    @property
    def first_workers(self) -> Days | None:
        """When the first workers of a founding hatch."""
        return self._hatching() if self.founding else None

    @property
    def new_workers(self) -> Days | None:
        """When the next workers hatch in a colony that has some."""
        return None if self.founding else self._hatching()

    def nest_full(self, room: float) -> Days | None:
        """Return when so many workers are reached; None where that is less likely than not within the horizon."""
        limit = math.log(max(1.0, room) + OFFSET)
        odds = []
        for day, workers in zip(self.course.days, self.course.workers, strict=True):
            if day >= self.day:
                middle = math.log(workers.best + OFFSET)
                deviation = max(1e-6, (math.log(workers.high + OFFSET) - middle) / TO_80)
                odds.append((float(day), _NORMAL.cdf((middle - limit) / deviation)))
        return self._days(odds)

    def _hatching(self) -> Days | None:
        course = self.course
        now = max(0, bisect_right(course.days, self.day) - 1)
        base = course.hatched[now]
        odds = []
        for day, hatched in zip(course.days[now:], course.hatched[now:], strict=True):
            none = [math.exp(was - is_) for is_, was in zip(hatched, base, strict=True)]
            odds.append((float(day), 1 - sum(none) / len(none)))
        return self._days(odds)

    def _days(self, odds: list[tuple[float, float]]) -> Days | None:
        low, best, high = first_days(odds)
        if low is None:
            return None
        best, high = (None if at is None else max(float(self.day), at) for at in (best, high))
        return Days(max(float(self.day), low), best, high)

    @property
    def reasons(self) -> tuple[Moved, ...]:
        """The observations that moved what is believed, the strongest first, at most five."""
        told = [moved for moved in self.course.begin.moved if moved.strength >= TELLS]
        told.sort(key=lambda moved: -moved.strength)
        return tuple(told[:5])

    @property
    def states(self) -> tuple[Column, ...]:
        """The stages on one line of time, past and to come: a day, and numbers in the order of ``spread.SERIES``."""
        return (*self.course.begin.past, *self.course.columns)


_courses: dict[tuple[object, ...], Course] = {}


def of(facts: Facts, day: int, horizon_days: int = HORIZON_DAYS) -> Census:
    """Return the census of a colony on a day (from 1970, in the household's zone), and for so many days to come.

    The same facts give the same census, whatever was asked before. Raises ``ValueError`` without any warmth.
    """
    if not facts.warmth:
        raise ValueError(
            "the census needs one entry of warmth at least: give the usual temperature of the place"
        )
    until = -(-(day + horizon_days) // ROUND_UP_DAYS) * ROUND_UP_DAYS
    key = (facts.group, facts.known_day, facts.founding, facts.founded_day, facts.stage, facts.queens, facts.warmth,
           facts.warmth_sd_c, facts.rests, facts.slow, facts.seen, until)  # fmt: skip
    course = _courses.get(key)
    if course is None:
        if len(_courses) >= REMEMBERED:
            _courses.pop(next(iter(_courses)), None)
        course = _courses[key] = _course(facts, until)
    return Census(day, horizon_days, course, facts.group.code, facts.group.measured, facts.group.source)


def _course(facts: Facts, until: int) -> Course:
    begin = reckon(facts)
    ensemble = begin.ensemble.copy()
    founding = sum(member.workers < FOUNDED for member in ensemble.members) * 2 > len(ensemble.members)
    columns = [column_of(begin.day, ensemble)]
    days, workers = [begin.day], [workers_of(ensemble)]
    sums = [0.0] * len(ensemble.members)
    hatched = [tuple(sums)]
    for number, (day, here) in enumerate(
        paces(facts, begin.day, max(until, begin.day + facts.group.step_days)), 1
    ):
        ensemble.step(here)
        sums = [have + member.hatched for have, member in zip(sums, ensemble.members, strict=True)]
        days.append(day)
        hatched.append(tuple(sums))
        workers.append(workers_of(ensemble))
        if number % STAGE_COLUMNS == 0 or day >= until:
            columns.append(column_of(day, ensemble))
    return Course(begin, tuple(columns), tuple(days), tuple(workers), tuple(hatched), founding)


def _between(columns: tuple[Column, ...], day: int, series: int) -> Estimate:
    return _along([at for at, _ in columns], [numbers[series] for _, numbers in columns], day)


def _along(
    days: list[int] | tuple[int, ...], numbers: list[Estimate] | tuple[Estimate, ...], day: int
) -> Estimate:
    """Return the number on a day, between two known ones as a straight line."""
    after = bisect_right(days, day)
    if after == 0:
        return numbers[0]
    if after == len(days):
        return numbers[-1]
    share = (day - days[after - 1]) / (days[after] - days[after - 1])
    one, other = numbers[after - 1], numbers[after]
    low, best, high = (
        a + share * (b - a) for a, b in ((one.low, other.low), (one.best, other.best), (one.high, other.high))
    )
    return Estimate(low, best, high)
