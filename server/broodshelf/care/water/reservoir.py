"""The water gauge: how full a reservoir is and how long it lasts, from readings and common practice."""

from __future__ import annotations

from collections.abc import Sequence

from ..gauges import DAY_MS, READINGS, Gauge
from ..plan.state import Event

USUAL_DAYS = (60.0, 90.0, 120.0)
"""How long a test tube's reservoir lasts: low, best, high (common practice, no source)."""
LOW_SHARE, LOW_DAYS = 0.25, 14.0
"""Low: a quarter full, or 14 days left (common practice, no source)."""
URGENT_SHARE, URGENT_DAYS = 0.10, 4.0
SHORTEST_DAYS, LONGEST_DAYS = 3.0, 400.0
"""A rate learnt from two readings stays between these lifetimes of a full reservoir."""


def water_gauge(events: Sequence[Event], reservoir_mm: float | None, as_of_start_ms: int) -> Gauge:
    """Return the gauge in shares of the full reservoir, as of the latest reading (or the start, full).

    ``reservoir_mm`` is the length of the full reservoir, which turns a reading in mm into a share.
    """
    readings = [(e.happened_ms, share) for e in events if (share := _share(e, reservoir_mm)) is not None]
    at_ms, level = readings[-1] if readings else (as_of_start_ms, 1.0)
    low, best, high = (1 / days for days in reversed(USUAL_DAYS))
    learnt = _learnt_rate(readings)
    reasons = []
    if learnt is not None:
        low, best, high = learnt / 1.5, learnt, learnt * 1.5
        reasons.append({"code": "water_learnt", "args": {}})
    last = round(1 / best)
    if readings:
        reading = f"{round(level * 100)} %"
        reasons.insert(0, {"code": "water_read", "args": {"reading": reading, "at_ms": at_ms, "last": last}})
    else:
        reasons.append({"code": "water_unread", "args": {"last": last}})
    due = min(1.0, max(LOW_SHARE, LOW_DAYS * best))
    basis = "learnt" if learnt is not None else "common_practice"
    return Gauge("water", "share", level, 1.0, best, low, high, at_ms, due, basis, None, tuple(reasons))


def is_urgent(share: float, rate_per_day: float) -> bool:
    """Say whether a reservoir is nearly dry: at most a tenth, or at most four days."""
    return share <= URGENT_SHARE or (rate_per_day > 0 and share / rate_per_day <= URGENT_DAYS)


def _share(event: Event, reservoir_mm: float | None) -> float | None:
    if event.kind == "move":
        return 1.0 if event.values.get("fresh_reservoir") else None
    if event.kind != "water":
        return None
    if event.values.get("action") in ("refill", "new_tube"):
        return 1.0
    level_mm = event.values.get("level_mm")
    if level_mm is not None and reservoir_mm:
        return float(min(1.0, max(0.0, level_mm / reservoir_mm)))
    return READINGS.get(str(event.values.get("reading")))


def _learnt_rate(readings: Sequence[tuple[int, float]]) -> float | None:
    """Return share per day over the latest falling run of readings that spans at least a week; else None."""
    if not readings:
        return None
    end_ms, end = readings[-1]
    start_ms, start = end_ms, end
    for at_ms, share in reversed(readings[:-1]):
        if share < start:
            break  # before this the reservoir was refilled
        start_ms, start = at_ms, share
    days = (end_ms - start_ms) / DAY_MS
    if days < 7 or start <= end:
        return None
    return min(1 / SHORTEST_DAYS, max(1 / LONGEST_DAYS, (start - end) / days))
