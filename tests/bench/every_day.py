"""Every care hour of every day 2020 to 2035 in every IANA zone against an oracle: ``python -m tests.bench.every_day``.

Takes some minutes. The test command looks at the days around clock changes only (tests/rounds/test_wall_clock.py).
"""

from __future__ import annotations

import datetime as dt
import sys
import time
import zoneinfo

from tests.rounds.zone_oracle import Stretches, all_zones, wall_s

from broodshelf.rounds.wall_clock import CareClock

HOURS = ("00:00", "02:30", "18:30")
FIRST, LAST = dt.date(2020, 1, 1), dt.date(2035, 12, 31)


def check(name: str) -> int:
    """Compare one zone; return how many care hours were looked at. Raises on the first that differs."""
    zone = zoneinfo.ZoneInfo(name)
    oracle = Stretches(zone, FIRST.year, LAST.year, step_days=1)
    made = CareClock(zone, HOURS).care_hours_from(
        oracle.first_instant_s(wall_s(FIRST, HOURS[0])) * 1000,
        FIRST - dt.timedelta(1),
        days=(LAST - FIRST).days + 2,
    )
    count, day, before_ms = 0, FIRST, 0
    while day <= LAST:
        if oracle.date_exists(day):
            for slot in HOURS:
                hour = next(made)
                wanted = (day, slot, oracle.first_instant_s(wall_s(day, slot)) * 1000)
                got = (hour.local_date, hour.slot, hour.at_ms)
                if got != wanted or hour.at_ms < before_ms:
                    raise SystemExit(f"{name}: {got} instead of {wanted}")
                count, before_ms = count + 1, hour.at_ms
        day += dt.timedelta(1)
    return count


def main() -> None:
    """Check all zones, or those named."""
    begun = time.perf_counter()
    names = sys.argv[1:] or all_zones()
    total = sum(check(name) for name in names)
    took_s = time.perf_counter() - begun
    print(
        f"{len(names)} zones, {total:,} care hours from {FIRST} to {LAST}: all as the oracle says ({took_s:.0f} s)"
    )


if __name__ == "__main__":
    main()
