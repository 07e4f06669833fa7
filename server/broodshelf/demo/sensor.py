"""An invented sensor of the invented shelf: a fortnight with a night without heating, a hot day and a silent one."""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping
from typing import Any, Final

from sqlalchemy import Connection

from ..model.gauges import DAY_MS, HOUR_MS
from ..rounds.days_over import write_days_over
from ..sensing.intake import take
from ..sensing.sensors import make_sensor, sensors_of

HOURS: Final = 24 * 14 - 2
"""What is older than two weeks is no longer taken."""
AFTERNOON_H: Final = 15


def sense(
    connection: Connection, household_id: str, place_id: str, sensor: Mapping[str, Any], now_ms: int
) -> None:
    """Make a sensor for a place and what it measured until now, an hour each, and write the days that are over."""
    make_sensor(connection, household_id, {"place_id": place_id, "name": sensor["name"]}, now_ms)
    take(connection, sensors_of(connection, household_id)[0], list(_readings(sensor, now_ms)), now_ms)
    write_days_over(connection, household_id, now_ms)


def _readings(sensor: Mapping[str, Any], now_ms: int) -> Iterator[dict[str, float]]:
    for ago_h in range(HOURS, -1, -1):
        at_ms = now_ms - ago_h * HOUR_MS
        days_ago, clock = ago_h // 24, at_ms % DAY_MS / HOUR_MS
        if days_ago == sensor["silent_days_ago"]:
            continue
        warmth = math.cos(2 * math.pi * (clock - AFTERNOON_H) / 24)
        temperature_c = sensor["mean_c"] + sensor["swing_c"] * warmth
        if days_ago == sensor["hot_days_ago"]:
            temperature_c += (sensor["hottest_c"] - sensor["mean_c"] - sensor["swing_c"]) * max(0.0, warmth)
        if days_ago == sensor["cold_days_ago"] and warmth < 0:
            temperature_c += sensor["coldest_c"] - sensor["mean_c"] + sensor["swing_c"]
        humidity = sensor["humidity_pct"] - 4 * warmth
        yield {"temperature": round(temperature_c, 2), "humidity": round(humidity, 1), "at_ms": at_ms}
