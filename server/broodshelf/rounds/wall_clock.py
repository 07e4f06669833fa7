"""Wall-clock times of a household as instants: care hours, quiet hours, in any IANA zone. Pure.

A wall time that the zone leaves out (clocks go forward) is the first instant after the gap; one that comes
twice (clocks go back) is the first of the two. So every local date has each care hour exactly once. A date
that a zone leaves out altogether has none.
"""

from __future__ import annotations

import datetime as dt
import zoneinfo
from collections.abc import Iterator
from dataclasses import dataclass
from typing import Final

from ..model import kinds
from ..model.tasks import Slot
from ..records.types import readable_time
from ..records.zones import zone_of

DAY: Final = dt.timedelta(days=1)
DEFAULT_CARE_HOURS: Final = ("18:30",)
"""For a household that has cleared both of its care hours: nudges are never lost for want of one."""
SEARCHED_DAYS: Final = 400
"""How far a search for an hour looks: far past every weekday and every date that a zone leaves out."""


@dataclass(frozen=True, slots=True)
class CareHour:
    """One round: its local date, its wall time as ``HH:MM`` and its instant in ms since 1970 UTC."""

    local_date: dt.date
    slot: Slot
    at_ms: int


@dataclass(frozen=True, slots=True)
class CareClock:
    """When a household looks after its ants and when it wants silence. Wall times are ``HH:MM``."""

    zone: zoneinfo.ZoneInfo
    care_hours: tuple[str, ...] = DEFAULT_CARE_HOURS
    quiet_from: str | None = None
    quiet_to: str | None = None

    @classmethod
    def of(cls, household: kinds.Household | None) -> CareClock:
        """Return a household's clock; the usual one in UTC without a household."""
        zone = zone_of(household)
        if household is None:
            return cls(zone)
        return cls(
            zone,
            tuple(sorted({at for at in household.care_hours or () if readable_time(at)}))
            or DEFAULT_CARE_HOURS,
            readable_time(household.quiet_from),
            readable_time(household.quiet_to),
        )

    def local(self, now_ms: int) -> dt.datetime:
        """Return the household's wall clock at an instant."""
        return dt.datetime.fromtimestamp(now_ms // 1000, self.zone)

    def local_date(self, now_ms: int) -> dt.date:
        """Return the household's calendar day at an instant."""
        return self.local(now_ms).date()

    def instant_ms(self, day: dt.date, at: str) -> int:
        """Return the first instant at which the wall clock shows or has passed ``at`` on ``day``."""
        return _first_instant_s(dt.datetime.combine(day, dt.time.fromisoformat(at)), self.zone) * 1000

    def care_hours_from(
        self, now_ms: int, after: dt.date | None = None, days: int = SEARCHED_DAYS
    ) -> Iterator[CareHour]:
        """Yield the care hours at or after ``now_ms``, in order; with ``after`` only of later dates.

        ``days``: how many dates are looked at; whoever looks for something else in them comes to an end.
        """
        day = self.local_date(now_ms) - DAY  # a gap at midnight can carry yesterday's hour into today
        if after is not None:
            day = max(day, after + DAY)
        for date in (day + n * DAY for n in range(days)):
            if self._exists(date):
                hours = [CareHour(date, Slot(at), self.instant_ms(date, at)) for at in self.care_hours]
                yield from (hour for hour in hours if hour.at_ms >= now_ms)

    def next_care_hour(self, now_ms: int, after: dt.date | None = None) -> CareHour:
        """Return the first care hour at or after ``now_ms``; with ``after`` the first one of a later date."""
        return next(self.care_hours_from(now_ms, after))

    def is_quiet(self, now_ms: int) -> bool:
        """Say whether an instant lies in the quiet hours, which may span midnight."""
        start, end = self.quiet_from, self.quiet_to
        if not start or not end:
            return False
        at = self.local(now_ms).strftime("%H:%M")
        return start <= at < end if start <= end else at >= start or at < end

    def after_quiet(self, now_ms: int) -> int:
        """Return the instant itself, or the end of the quiet hours that it lies in."""
        if not self.is_quiet(now_ms):
            return now_ms
        ends = self._instants_of(self.quiet_to or "", now_ms)
        return next((e for e in ends if e > now_ms and not self.is_quiet(e)), now_ms)

    def quiet_begins(self, now_ms: int) -> int | None:
        """Return the instant after this one at which quiet hours begin; None without any."""
        begins = self._instants_of(self.quiet_from, now_ms) if self.quiet_from else ()
        return next((b for b in begins if b > now_ms and self.is_quiet(b)), None)

    def _instants_of(self, at: str, now_ms: int) -> Iterator[int]:
        """Yield the instants at which the wall clock shows ``at`` today and on the two days after, in order."""
        today = self.local_date(now_ms)
        for n in (0, 1, 2):
            wall = dt.datetime.combine(today + n * DAY, dt.time.fromisoformat(at))
            doubled_s = round(wall.replace(tzinfo=self.zone, fold=1).timestamp())
            yield from sorted((1000 * _first_instant_s(wall, self.zone), 1000 * doubled_s))

    def _exists(self, day: dt.date) -> bool:
        return self.local_date(self.instant_ms(day, "00:00")) == day


def _first_instant_s(wall: dt.datetime, zone: zoneinfo.ZoneInfo) -> int:
    """Return the first instant of a wall time, or the end of the gap that swallows it, in s since 1970 UTC."""
    late = round(wall.replace(tzinfo=zone).timestamp())
    if dt.datetime.fromtimestamp(late, zone).replace(tzinfo=None) == wall:
        return late
    # In a gap fold=0 reads the wall time with the old offset and lands behind the jump, fold=1 before it.
    early = round(wall.replace(tzinfo=zone, fold=1).timestamp())
    old = _offset(early, zone)
    while late - early > 1:
        middle = (early + late) // 2
        if _offset(middle, zone) == old:
            early = middle
        else:
            late = middle
    return late


def _offset(at_s: int, zone: zoneinfo.ZoneInfo) -> dt.timedelta | None:
    return dt.datetime.fromtimestamp(at_s, zone).utcoffset()
