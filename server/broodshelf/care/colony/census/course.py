"""The way ahead from the last observation: the ensemble step by step, and what it says of a day."""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Callable, Sequence
from operator import add

from ....model.quantities import Estimate
from .colonies import FOUNDED
from .facts import Facts
from .reckoning import Reckoned, paces, start_of
from .spread import Column, column_of, workers_of


class Course:
    """The way ahead from the last observation, step by step; what nobody asks for is not worked out.

    ``days``: the last day of each step; ``hatched``: what each colony of the ensemble has hatched by each of them;
    ``founding``: whether its first workers are still to be seen.
    """

    __slots__ = ("_columns", "_steps", "_workers", "begin", "days", "founding", "hatched")

    def __init__(self, begin: Reckoned, facts: Facts, until: int) -> None:
        self.begin = begin
        colonies = begin.ensemble.colonies.copy()
        waits = sum(number < FOUNDED for number in colonies.workers) * 2 > colonies.size
        unseen = not any(seen.what == "workers" and seen.any for seen in facts.seen)
        self.founding = unseen and (
            waits or (facts.stage == "founding" and start_of(facts).kind != "workers")
        )
        self._steps, self.days, self.hatched = [colonies], [begin.day], [[0.0] * colonies.size]
        self._columns: dict[int, Column] = {}
        self._workers: dict[int, Estimate] = {}
        self._go_on(facts, until)

    def farther(self, facts: Facts, until: int) -> Course:
        """Return the same way, reckoned on to a later day."""
        made = Course.__new__(Course)
        made.begin, made.founding = self.begin, self.founding
        made._steps, made.days, made.hatched = [*self._steps], [*self.days], [*self.hatched]
        made._columns, made._workers = {**self._columns}, {**self._workers}
        made._go_on(facts, until)
        return made

    def _go_on(self, facts: Facts, until: int) -> None:
        colonies, step_days = self._steps[-1].copy(), facts.group.step_days
        for day, here in paces(facts, self.days[-1], max(until, self.begin.day + step_days)):
            colonies.step(here, step_days)
            self.days.append(day)
            kept = colonies.copy()
            kept.pack()
            self._steps.append(kept)
            self.hatched.append(list(map(add, self.hatched[-1], colonies.hatched)))

    def column(self, number: int) -> Column:
        """Return all stages at the end of a step."""
        if number not in self._columns:
            self._columns[number] = column_of(
                self.days[number], self._steps[number], self._ahead_days(number)
            )
        return self._columns[number]

    def workers(self, number: int) -> Estimate:
        """Return the workers at the end of a step."""
        if number not in self._workers:
            self._workers[number] = workers_of(self._steps[number], self._ahead_days(number))
        return self._workers[number]

    def _ahead_days(self, number: int) -> float:
        return self.days[number] - self.days[0]

    def hatched_by(self, day: int) -> list[float]:
        """Return what each colony has hatched by a day, since the first step."""
        after = bisect_right(self.days, day)
        if after in (0, len(self.days)):
            return self.hatched[max(0, after - 1)]
        share = (day - self.days[after - 1]) / (self.days[after] - self.days[after - 1])
        return [
            was + share * (is_ - was)
            for was, is_ in zip(self.hatched[after - 1], self.hatched[after], strict=True)
        ]

    def _is_past(self, day: int) -> bool:
        """Say whether a day lies before the last look, whose step of the row may end a day or two after it."""
        return bool(self.begin.past) and day < min(self.days[0], self.begin.seen_day)

    def on(self, day: int) -> tuple[Estimate, ...]:
        """Return all stages on a day, between the ends of two steps as a straight line."""
        if self._is_past(day):
            past = self.begin.past
            return _along([at for at, _ in past], lambda number: past[number][1], day)
        return _along(self.days, lambda number: self.column(number)[1], day)

    def workers_on(self, day: int) -> Estimate:
        """Return the workers on a day."""
        if self._is_past(day):
            return self.on(day)[-1]
        return _along(self.days, lambda number: (self.workers(number),), day)[0]


def _along(
    days: Sequence[int], numbers_at: Callable[[int], tuple[Estimate, ...]], day: int
) -> tuple[Estimate, ...]:
    """Return the numbers on a day, between two known ones as a straight line."""
    after = bisect_right(days, day)
    if after == 0:
        return numbers_at(0)
    if after == len(days) or days[after - 1] == day:
        return numbers_at(after - 1)
    share = (day - days[after - 1]) / (days[after] - days[after - 1])
    return tuple(
        Estimate(
            one.low + share * (other.low - one.low),
            one.best + share * (other.best - one.best),
            one.high + share * (other.high - one.high),
        )
        for one, other in zip(numbers_at(after - 1), numbers_at(after), strict=True)
    )
