"""The census itself: what is in the nest today and on every day to come, when workers come, and what it rests on."""

from __future__ import annotations

import math
from bisect import bisect_right
from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property
from statistics import NormalDist
from typing import Final

from ....model.quantities import Estimate
from .course import Course
from .ensemble import TO_80
from .facts import Facts, lately
from .likelihood import OFFSET
from .observing import Moved
from .reckoning import reckon
from .remembered import Lru
from .spread import Column, first_days

HORIZON_DAYS: Final = 183
ROUND_UP_DAYS: Final = 16
"""The way ahead is reckoned to a multiple of these, so that a day later nothing is reckoned anew."""
SOONER_STEPS, LATER_STEPS = 1.0, 0.7
"""By so many steps of the reckoning the next workers may come before and after what it says, where they are more than a
step away: then 80 of 100 held what colonies simulated ant by ant did (tests.bench.census_calibration)."""
DRAWN_BACK_DAYS, DRAWN_EVERY_DAYS, FOUNDING_EVERY_DAYS = 56, 14, 7
"""How far back the drawing of the stages reaches, and how far its columns are apart: in a founding, where one brood
goes from stage to stage, half as far."""
REMEMBERED: Final = 128
TELLS: Final = 0.25
"""An observation that moved its number, speed or laying by less than this is not named among the reasons."""
ENOUGH_ODDS: Final = 0.9
"""Later than this nobody asks."""
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


@dataclass(frozen=True)
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

    @cached_property
    def today(self) -> Inside:
        """What is in the nest today."""
        return self.on(self.day)

    @property
    def founding(self) -> bool:
        """Say whether its first workers are still to come."""
        return self.course.founding

    def on(self, day: int) -> Inside:
        """Return what is in the nest on a day from the last observation on, or of the past as it was believed then."""
        return Inside(day, *self.course.on(day))

    def workers_on(self, day: int) -> Estimate:
        """Return the workers on a day."""
        return self.course.workers_on(day)

    @cached_property
    def by_day(self) -> tuple[Inside, ...]:
        """What is in the nest on every day from today to the horizon."""
        return tuple(self.on(day) for day in range(self.day, self.day + self.horizon_days + 1))

    @cached_property
    def first_workers(self) -> Days | None:
        """When the first workers of a founding hatch."""
        return self._hatching() if self.founding else None

    @cached_property
    def new_workers(self) -> Days | None:
        """When the next workers hatch in a colony that has some."""
        days = None if self.founding else self._hatching()
        if days is None or days.best is None:
            return days
        step_days = self.course.begin.ensemble.group.step_days
        grain = max(0.0, min(step_days, days.best - self.day - 0.5))
        low = max(float(self.day), days.low - SOONER_STEPS * grain)
        return Days(low, days.best, None if days.high is None else days.high + LATER_STEPS * grain)

    def nest_full(self, room: float, soon_days: float = HORIZON_DAYS) -> Days | None:
        """Return when so many workers are reached; None where that is less likely than not within the horizon.

        Nor is more reckoned where that is less likely than not in ``soon_days``.
        """
        limit = math.log(max(1.0, room) + OFFSET)
        odds = []
        for number, day in enumerate(self.course.days):
            if day >= self.day:
                workers = self.course.workers(number)
                middle = math.log(workers.best + OFFSET)
                deviation = max(1e-6, (math.log(workers.high + OFFSET) - middle) / TO_80)
                odds.append((float(day), _NORMAL.cdf((middle - limit) / deviation)))
                later = day >= self.day + soon_days and all(share < 0.5 for _, share in odds)
                if later or odds[-1][1] >= ENOUGH_ODDS:
                    break
        return self._days(odds)

    def _hatching(self) -> Days | None:
        course = self.course
        # whether first workers have come since the last look nobody knows; of others the next are asked for
        here = course.hatched[0] if self.founding else course.hatched_by(self.day)
        after = bisect_right(course.days, self.day)
        odds = [(float(self.day), self._odds(course.hatched_by(self.day), here))]
        # day by day at first: with even odds of a worker today they rise by no straight line
        soon = range(self.day + 1, self.day + 2 * course.begin.ensemble.group.step_days)
        for day in (*soon, *(day for day in course.days[after:] if day > soon[-1])):
            odds.append((float(day), self._odds(course.hatched_by(day), here)))
            if odds[-1][1] >= ENOUGH_ODDS:
                break
        return self._days(odds)

    @staticmethod
    def _odds(hatched: Sequence[float], before: Sequence[float]) -> float:
        """Return the odds that at least one worker has hatched."""
        return 1 - sum(math.exp(was - is_) for is_, was in zip(hatched, before, strict=True)) / len(hatched)

    def _days(self, odds: list[tuple[float, float]]) -> Days | None:
        low, best, high = first_days(odds)
        if low is None:
            return None
        best, high = (None if at is None else max(float(self.day), at) for at in (best, high))
        return Days(max(float(self.day), low), best, high)

    @cached_property
    def reasons(self) -> tuple[Moved, ...]:
        """The observations that moved what is believed, the strongest first, at most five."""
        told = [moved for moved in self.course.begin.moved if moved.strength >= TELLS]
        told.sort(key=lambda moved: -moved.strength)
        return tuple(told[:5])

    def states(self, every_days: int) -> tuple[Column, ...]:
        """Return the stages on one line of time, past, today and to come, about every so many days.

        Each is a day, and numbers in the order of ``spread.SERIES``.
        """
        course, told = self.course, list[Column]()
        for column in course.begin.past:
            late = column[0] >= min(self.day, course.days[0])
            if not late and (not told or column[0] - told[-1][0] >= every_days):
                told.append(column)
        for number, day in enumerate(course.days):
            if day >= self.day and (not told or told[-1][0] < self.day):
                told.append((self.day, course.on(self.day)))
            if not told or day - told[-1][0] >= every_days:
                told.append(course.column(number))
        return tuple(told)

    @cached_property
    def drawing(self) -> tuple[tuple[int, tuple[tuple[int, int, int], ...]], ...]:
        """The stages from eight weeks back on: a day, and least, likely and most of each in whole ants.

        In the order of ``spread.SERIES``; today is among them.
        """
        every_days = FOUNDING_EVERY_DAYS if self.founding else DRAWN_EVERY_DAYS
        return tuple(
            (day, tuple((round(each.low), round(each.best), round(each.high)) for each in numbers))
            for day, numbers in self.states(every_days)
            if day >= self.day - DRAWN_BACK_DAYS
        )


_courses: Lru[tuple[Course, dict[tuple[int, int], Census]]] = Lru(REMEMBERED)
"""The way ahead by all that it goes by, and what was said of some days and horizons."""


def of(facts: Facts, day: int, horizon_days: int = HORIZON_DAYS) -> Census:
    """Return the census of a colony on a day (from 1970, in the household's zone), and for so many days to come.

    The same facts give the same census, whatever was asked before. What lies longer back than a year is left out where
    workers were counted since. Raises ``ValueError`` without any warmth.
    """
    if not facts.warmth:
        raise ValueError(
            "the census needs one entry of warmth at least: give the usual temperature of the place"
        )
    facts = lately(facts, day)
    until = -(-(day + horizon_days) // ROUND_UP_DAYS) * ROUND_UP_DAYS
    kept = _courses.get((facts, until))
    if kept is None:
        nearer = _courses.get((facts, until - ROUND_UP_DAYS))
        kept = nearer[0].farther(facts, until) if nearer else Course(reckon(facts), facts, until), {}
        _courses.put((facts, until), kept)
    course, said = kept
    if (day, horizon_days) not in said:
        group = facts.group
        said[day, horizon_days] = Census(day, horizon_days, course, group.code, group.measured, group.source)
    return said[day, horizon_days]
