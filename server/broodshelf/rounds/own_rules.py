"""The keeper's own rhythm for a need: weekdays, a wall-clock time, every so many days, a pause. Pure.

A rule rules over every model. It says on which days and at what time a need is told, and, for food and the regular
looks, when the next one is due: on the first such day after the day of the last one. One at any hour of a day
counts for that day.
"""

from __future__ import annotations

import datetime as dt
from collections import defaultdict
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from functools import partial
from typing import Final

from ..model import kinds
from ..model.facts import Rule
from ..model.gauges import DAY_MS
from ..model.needs import Need
from ..records.store import Record
from ..records.types import readable_day, readable_time
from .wall_clock import DAY, CareClock, CareHour

WEEKDAYS: Final = range(7)


@dataclass(frozen=True, slots=True)
class OwnRule:
    """One rule. ``weekdays``: 0 is Monday, empty means all; ``at`` None: the household's care hours."""

    need: Need
    every_days: float | None = None
    weekdays: frozenset[int] = frozenset()
    at: str | None = None
    paused_until: str | None = None

    @classmethod
    def of(cls, rule: kinds.Rule) -> OwnRule:
        """Return the rule that a record holds; what an older server stored and no clock can keep says nothing."""
        return cls(
            rule.need,
            rule.every_days,
            frozenset(day for day in rule.weekdays or () if day in WEEKDAYS),
            readable_time(rule.at),
            readable_day(rule.paused_until),
        )

    @property
    def by_the_clock(self) -> bool:
        """Whether the rule names days or a time, not only a number of days."""
        return bool(self.weekdays or self.at)

    def hours_from(self, clock: CareClock, from_ms: int, after: dt.date | None = None) -> Iterator[CareHour]:
        """Yield the hours of this rule at or after an instant, in order; with ``after`` only of later dates.

        Ends with the search of ``CareClock.care_hours_from``.
        """
        clock = replace(clock, care_hours=(self.at,)) if self.at else clock
        if self.paused_until:
            day_before = dt.date.fromisoformat(self.paused_until) - DAY
            after = max(after, day_before) if after is not None else day_before
        for hour in clock.care_hours_from(from_ms, after):
            if not self.weekdays or hour.local_date.weekday() in self.weekdays:
                yield hour

    def pause_ends_ms(self, clock: CareClock) -> int:
        """Return when the pause ends; 0 without one."""
        return clock.instant_ms(dt.date.fromisoformat(self.paused_until), "00:00") if self.paused_until else 0

    def days_after(self, last_ms: int, clock: CareClock) -> float | None:
        """Return the days from the last time to the next one that the rule wants; None: it does not say."""
        if not self.by_the_clock:
            return self.every_days
        skipped = max(1, int(self.every_days or 1)) - 1
        after = clock.local_date(last_ms) + skipped * DAY
        hour = next(self.hours_from(clock, last_ms, after), None)
        return self.every_days if hour is None else (hour.at_ms - last_ms) / DAY_MS

    def for_plan(self, clock: CareClock) -> Rule:
        """Return the rule as a plan takes it: the care core knows when a need was last met, and of clocks only this."""
        days_after = partial(self.days_after, clock=clock) if self.by_the_clock else None
        return Rule(self.need, self.every_days, self.paused_until, days_after)


def rules_by_colony(records: Iterable[Record]) -> dict[str, dict[Need, OwnRule]]:
    """Return the rules of each colony by need; of several for one need the first made counts."""
    found: dict[str, dict[Need, OwnRule]] = defaultdict(dict)
    for record in records:
        kept = kinds.read(kinds.Rule, record.values)
        found[kept.colony_id].setdefault(kept.need, OwnRule.of(kept))
    return found
