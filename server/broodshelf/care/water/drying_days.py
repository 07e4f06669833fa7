"""How fast the air dried a vessel on each day, as it was, beside what its place's settings say. Pure.

Where something was measured or typed, a day counts for more or less than a day of the settings; every other day
counts for one. So without a sensor, and for days that nobody read, all is reckoned by the settings alone.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from ...model.gauges import DAY_MS


@dataclass(frozen=True, slots=True)
class DryingDays:
    """For how much each day from ``first_day`` on counts (from 1970-01-01 in the household's zone), and a day to come.

    ``now_ms``: up to which instant it is known; without ``paces`` every day counts for one.
    """

    first_day: int = 0
    paces: tuple[float, ...] = ()
    to_come: float = 1.0
    now_ms: int = 0
    utc_offset_min: int = 0

    @property
    def as_set(self) -> bool:
        """Say whether nothing differs from the settings."""
        return self.to_come == 1.0 and all(pace == 1.0 for pace in self.paces)

    def until_ms(self, at_ms: int) -> float:
        """Return what a clock shows at an instant that goes as fast as the air dries, in ms.

        Only differences mean anything. It goes with the settings before the first day, and on at the last pace.
        """
        if self.as_set:
            return at_ms
        here_ms = at_ms + self.utc_offset_min * 60_000
        passed_ms = here_ms - self.first_day * DAY_MS
        if passed_ms <= 0:
            return passed_ms
        whole, rest_ms = divmod(passed_ms, DAY_MS)
        full = sum(self.paces[:whole]) + max(0, whole - len(self.paces)) * self.to_come
        pace = self.paces[whole] if whole < len(self.paces) else self.to_come
        return full * DAY_MS + pace * rest_ms


BY_SETTINGS: Final = DryingDays()
