"""How long brood takes at a temperature: degree-days from egg to worker, as the census takes them.

Development goes at (T - threshold) / degree-days a day. Day and night count as two halves, each at its own
temperature; that the size of a swing matters little beyond that is a suggestion of Elmes & Wardlaw 1983.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from ...model.quantities import Estimate, within
from .census.groups import LifeGroup, StageTime

STAGES: Final = ("eggs", "larvae", "pupae")


def days_to_worker(
    group: LifeGroup, day_c: float, night_c: float, *, stages: Sequence[str] = STAGES
) -> Estimate:
    """Return the days that the given stages take together at a day and a night temperature in °C.

    Raises ``OutOfRange`` when the mean lies outside the group's range, or when one half of the day is so cold or hot
    that the line no longer holds. Example: the Argentine ant at 28 °C: 69.4 days (measured: 68.0).
    """
    _check_range(group, day_c, night_c)
    times: dict[str, StageTime] = {"eggs": group.eggs, "larvae": group.larvae, "pupae": group.pupae}
    best = sum(times[name].degree_days / _gain(times[name], day_c, night_c) for name in stages)
    return Estimate(best / group.spread, best, best * group.spread)


def _check_range(group: LifeGroup, day_c: float, night_c: float) -> None:
    """Mean and day must lie in the group's range; a night may be cooler, down to the highest threshold."""
    within("mean temperature", (day_c + night_c) / 2, "°C", group.low_c, group.high_c)
    within("day temperature", day_c, "°C", group.low_c, group.high_c)
    coldest = min(max(stage.threshold_c for stage in group.times), group.low_c)
    within("night temperature", night_c, "°C", coldest, group.high_c)


def _gain(stage: StageTime, day_c: float, night_c: float) -> float:
    """Degree-days a day over twelve warm and twelve cool hours; what lies under the threshold adds nothing."""
    return (max(0.0, day_c - stage.threshold_c) + max(0.0, night_c - stage.threshold_c)) / 2
