"""An independent account of wall-clock times: a zone as stretches of one UTC offset, searched for a wall time.

It knows nothing of folds and gaps: the first instant whose stretch shows the wall time wins, else the beginning
of the stretch that jumps over it.
"""

from __future__ import annotations

import datetime as dt
import zoneinfo
from bisect import bisect_right

EPOCH = dt.datetime(1970, 1, 1)  # noqa: DTZ001 - a wall time
DAY_S = 86_400


def offset_s(zone: zoneinfo.ZoneInfo, at_s: int) -> int:
    offset = dt.datetime.fromtimestamp(at_s, zone).utcoffset()
    assert offset is not None
    return round(offset.total_seconds())


class Stretches:
    """The stretches of a zone between two years: ``starts[i]`` (s UTC) begins ``offsets[i]`` (s east)."""

    def __init__(self, zone: zoneinfo.ZoneInfo, first_year: int, last_year: int, step_days: int = 5) -> None:
        start = round(dt.datetime(first_year, 1, 1, tzinfo=dt.UTC).timestamp()) - 3 * DAY_S
        end = round(dt.datetime(last_year + 1, 1, 1, tzinfo=dt.UTC).timestamp()) + 3 * DAY_S
        self.starts, self.offsets = [start], [offset_s(zone, start)]
        for at in range(start, end, step_days * DAY_S):
            low, high = at, at + step_days * DAY_S
            if self.offsets[-1] == offset_s(zone, high):
                continue
            while high - low > 1:
                middle = (low + high) // 2
                low, high = (middle, high) if offset_s(zone, middle) == self.offsets[-1] else (low, middle)
            self.starts.append(high)
            self.offsets.append(offset_s(zone, high))

    @property
    def changes(self) -> list[int]:
        """The instants at which the offset changes."""
        return self.starts[1:]

    def date_exists(self, day: dt.date) -> bool:
        """Whether the zone has the date at all."""
        midnight = round((dt.datetime.combine(day, dt.time()) - EPOCH).total_seconds())
        at = self.first_instant_s(midnight)
        return (EPOCH + dt.timedelta(seconds=at + self._offset_at(at))).date() == day

    def first_instant_s(self, wall_s: int) -> int:
        """The first instant at which the wall clock shows ``wall_s`` (s since 1970 local) or jumps over it."""
        near = bisect_right(self.starts, wall_s) - 1
        for i in range(max(0, near - 1), len(self.starts)):
            begins = self.starts[i]
            ends = self.starts[i + 1] if i + 1 < len(self.starts) else None
            at = wall_s - self.offsets[i]
            if i and begins + self.offsets[i - 1] <= wall_s < begins + self.offsets[i]:
                return begins
            if at >= begins and (ends is None or at < ends):
                return at
        raise AssertionError("outside of the years that were read")

    def _offset_at(self, at_s: int) -> int:
        return self.offsets[bisect_right(self.starts, at_s) - 1]


def wall_s(day: dt.date, slot: str) -> int:
    """A wall time in s since 1970 local."""
    return round((dt.datetime.combine(day, dt.time.fromisoformat(slot)) - EPOCH).total_seconds())


def all_zones() -> list[str]:
    return sorted(zoneinfo.available_timezones() - {"localtime", "Factory"})
