"""When the next workers appear: degree-days from egg to worker, read against what was seen in the nest.

Development goes at (T - threshold) / degree-days a day. Day and night count as two halves, each at its own
temperature; that the size of a swing matters little beyond that is a suggestion of Elmes & Wardlaw 1983.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

from ...model.gauges import DAY_MS
from ...model.quantities import Estimate, OutOfRange, within
from ...model.tasks import reason
from .brood_groups import STAGES, BroodGroup, Stage
from .climate import Climate
from .history import Count


@dataclass(frozen=True, slots=True)
class BroodSeen:
    """The oldest stage in the nest, in ms since 1970 UTC: first seen, and last known absent before (or None)."""

    stage: str
    since_ms: int
    absent_ms: int | None


def days_to_worker(
    group: BroodGroup, day_c: float, night_c: float, *, stages: Sequence[str] = STAGES
) -> Estimate:
    """Return the days that the given stages take together at a day and a night temperature in °C.

    Raises ``OutOfRange`` when the mean lies outside the group's published range, or when one half of the day
    is so cold or hot that the line no longer holds. Example: the Argentine ant at 28 °C: 69.4 days (measured:
    68.0).
    """
    _check_range(group, day_c, night_c)
    best = sum(stage.degree_days / _gain(stage, day_c, night_c) for stage in map(group.stage, stages))
    return Estimate(best * group.low_share, best, best * group.high_share)


def brood_seen(counts: Sequence[Count]) -> BroodSeen | None:
    """Return the oldest stage in the last count that looked, and since when it has been there without a gap."""
    for stage in reversed(STAGES):
        since = absent = None
        for count in reversed(counts):
            amount = getattr(count, stage)
            if amount is None:
                continue
            if amount == "none":
                absent = count.at_ms
                break
            since = count.at_ms
            if count.added:  # it may be of any age
                break
        if since is not None:
            return BroodSeen(stage, since, absent)
    return None


def next_workers(group: BroodGroup, climate: Climate, seen: BroodSeen, now_ms: int) -> Estimate:
    """Return in how many days from now the next workers come, from the oldest brood seen.

    A stage began between the last count without it and the first with it. Where it has been there for longer
    than it takes, broods overlap, and its oldest member may be of any age. Raises ``OutOfRange`` like
    ``days_to_worker``; uncertainty of the temperature is carried only inside the published range.
    """
    _check_range(group, climate.day_c.best, climate.night_c.best)
    coldest = min(_highest_threshold(group), group.low_c)
    warm = min(climate.day_c.high, group.high_c), min(climate.night_c.high, group.high_c)
    cool = max(climate.day_c.low, group.low_c), max(climate.night_c.low, coldest)

    def whole(name: str) -> Estimate:
        stage = group.stage(name)
        return Estimate(
            group.low_share * stage.degree_days / _gain(stage, *warm),
            stage.degree_days / _gain(stage, climate.day_c.best, climate.night_c.best),
            group.high_share * stage.degree_days / _gain(stage, *cool),
        )

    oldest, *later = STAGES[STAGES.index(seen.stage) :]
    days = _left(whole(oldest), seen, now_ms)
    for name in later:
        days = days.plus(whole(name))
    return days


def brood_notice(
    group: BroodGroup, climate: Climate, counts: Sequence[Count], now_ms: int, *, founding: bool | None = None
) -> dict[str, Any] | None:
    """Return the countdown to the next workers as a notice, why there is none, or None where no brood was seen.

    ``founding``: whether they are the first; None: they are where counts found none yet.
    """
    seen = brood_seen(counts)
    if seen is None:
        return None
    try:
        days = next_workers(group, climate, seen, now_ms)
    except OutOfRange as error:
        return reason("brood_no_forecast", value=round(error.value, 1), low_c=error.low, high_c=error.high)
    if founding is None:
        founding = {count.any_workers for count in counts} - {None} == {False}
    code = "first_workers_in" if founding else "next_workers_in"
    return reason(
        code,
        low=round(days.low),
        high=round(days.high),
        stage=seen.stage,
        mean_c=round(climate.mean_c.best, 1),
    )


def _highest_threshold(group: BroodGroup) -> float:
    return max(stage.threshold_c for stage in (group.eggs, group.larvae, group.pupae))


def _check_range(group: BroodGroup, day_c: float, night_c: float) -> None:
    """Mean and day must lie in the published range; a night may be cooler, down to the highest threshold."""
    within("mean temperature", (day_c + night_c) / 2, "°C", group.low_c, group.high_c)
    within("day temperature", day_c, "°C", group.low_c, group.high_c)
    coldest = min(_highest_threshold(group), group.low_c)
    within("night temperature", night_c, "°C", coldest, group.high_c)


def _gain(stage: Stage, day_c: float, night_c: float) -> float:
    """Degree-days a day over twelve warm and twelve cool hours; what lies under the threshold adds nothing."""
    return (max(0.0, day_c - stage.threshold_c) + max(0.0, night_c - stage.threshold_c)) / 2


def _left(whole: Estimate, seen: BroodSeen, now_ms: int) -> Estimate:
    """Return the days that a stage still takes, from how long it has been there."""
    youngest = max(0.0, (now_ms - seen.since_ms) / DAY_MS)
    if youngest >= whole.best:  # broods overlap: the oldest of them may be of any age
        return Estimate(0.0, whole.best / 2, whole.high)
    high = whole.high - youngest
    if seen.absent_ms is None:
        return Estimate(0.0, (whole.best - youngest) / 2, high)
    oldest = (now_ms - seen.absent_ms) / DAY_MS
    best = max(0.0, whole.best - (oldest + youngest) / 2)
    return Estimate(min(best, max(0.0, whole.low - oldest)), best, high)
