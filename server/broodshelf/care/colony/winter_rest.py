"""The yearly rest: when it may begin and end, what to look at in it, and when to wake the colony.

Whether a colony rests is for ``season`` to say.
A range, not a rule, and a state of the colony: the household's hemisphere only says where the dark season lies.
"""

from __future__ import annotations

import datetime as dt
from dataclasses import dataclass
from functools import lru_cache
from typing import Final

from ...model.gauges import DAY_MS
from ...model.tasks import AGAIN_DAYS, Task, TaskKey, check_of, reason
from ..catalogue import Rest, Species
from .day_length import SOLSTICES, day_length_hours, shortest_day_near
from .history import History

MONTH_DAYS: Final = 30.44
RAMP_DAYS: Final = 15
"""Days to cool down and to warm up: the ramps of the laboratory rest in preprint 10.22541/au.157963861.14279623."""
LATEST_WATER_DAYS: Final = 28
"""Water every 2 to 4 weeks, fresh air once a week in a fridge (common practice, no source)."""
UNKNOWN_MONTHS: Final = (3.0, 5.0)
"""As Lasius and its neighbours rest (common practice, no source)."""
USUAL_LATITUDE_DEG: Final = 45.0
"""Where the latitude is not known; it changes the hours named in the reasons, not the window."""


@dataclass(frozen=True, slots=True)
class RestWindow:
    """Between which days (ISO) a rest may begin and end, its temperature and length, and hours of daylight.

    ``begin_hours`` and ``shortest_hours``: day length on the first day of the window and on the shortest day.
    """

    begin_from: str
    begin_until: str
    end_from: str
    end_until: str
    rest: Rest
    begin_hours: float
    shortest_hours: float

    def holds(self, today: str) -> bool:
        """Say whether a day lies in the longest rest that the window allows."""
        return self.begin_from <= today <= self.end_until


def rest_window(
    species: Species, today: str, latitude_sign: int, latitude_deg: float | None = None
) -> RestWindow | None:
    """Return the window nearest to a day, or None for a species without a rest.

    The rest is laid around the shortest day, so that it takes the darkest months: a rest of 3 to 5 months
    begins 2.5 to 1.5 months before it and ends as long after it. Months and temperatures are the species'
    (common practice, no source). A summer rester is laid around the longest day.
    """
    if species.rest is None:
        return None
    sign = 1 if (latitude_deg if latitude_deg is not None else latitude_sign) >= 0 else -1
    flip = -1 if species.rest.summer else 1
    middle = shortest_day_near(dt.date.fromisoformat(today), sign * flip)
    return _around(
        middle, species.rest, latitude_deg if latitude_deg is not None else USUAL_LATITUDE_DEG * sign
    )


@lru_cache(maxsize=1024)  # tests.bench.plan_cost: a fiftieth of a plan, which asks for the years around
def _around(middle: dt.date, rest: Rest, latitude_deg: float) -> RestWindow:
    long = dt.timedelta(days=round(rest.high_months * MONTH_DAYS / 2))
    short = dt.timedelta(days=round(rest.low_months * MONTH_DAYS / 2))
    return RestWindow(
        (middle - long).isoformat(),
        (middle - short).isoformat(),
        (middle + short).isoformat(),
        (middle + long).isoformat(),
        rest,
        day_length_hours(latitude_deg, middle - long),
        day_length_hours(latitude_deg, middle),
    )


def rest_tasks(
    rest: Rest | None, history: History, resting_since_ms: int, wake_on_ms: int | None, *, in_fridge: bool
) -> list[Task]:
    """Return the tasks of a resting colony: the water, the air of a fridge, and the wake-up.

    Times in ms since 1970 UTC. An airing is logged as a check of the need ``rest``; any water event counts
    as a look at the water, as does a check of it. A wake-up is due when the longest usual rest is over if no day
    was set.
    """
    looked = max(resting_since_ms, history.water_seen_ms or 0)
    low, high = AGAIN_DAYS["rest_water"], LATEST_WATER_DAYS
    tasks = [
        Task(
            TaskKey("rest_water", str(looked)),
            "water",
            looked + low * DAY_MS,
            suggested={"kind": "water", "set": {"action": "read"}},
            reasons=(reason("rest_water", at_ms=looked, low=low, high=high),),
        )
    ]
    if in_fridge:
        aired = max(resting_since_ms, history.aired_ms or 0)
        why = reason("rest_airing", at_ms=aired)
        key, due_ms = TaskKey("rest_air", str(aired)), aired + AGAIN_DAYS["rest_air"] * DAY_MS
        tasks.append(Task(key, "rest", due_ms, suggested=check_of("rest"), reasons=(why,)))
    if wake_on_ms is None:
        wake_on_ms = resting_since_ms + round(usual_months(rest)[1] * MONTH_DAYS * DAY_MS)
    summer = rest is not None and rest.summer
    why = reason("wake_up_summer") if summer else reason("wake_up", ramp_days=RAMP_DAYS)
    tasks.append(Task(TaskKey("wake_up", str(resting_since_ms)), "rest", wake_on_ms, reasons=(why,)))
    return tasks


def usual_months(rest: Rest | None) -> tuple[float, float]:
    """Return how long a rest usually is; of a species that nobody knows, as of the commonest temperate kinds."""
    return UNKNOWN_MONTHS if rest is None else (rest.low_months, rest.high_months)


def rest_spells(species: Species, day: dt.date, latitude_sign: int) -> tuple[tuple[dt.date, dt.date], ...]:
    """Return the longest usual rests of the years around a day: the first day and the day after the last."""
    spells = []
    middle = SOLSTICES[-latitude_sign if species.rest is not None and species.rest.summer else latitude_sign]
    for year in range(day.year - 2, day.year + 2):
        window = rest_window(species, dt.date(year, *middle).isoformat(), latitude_sign)
        if window is not None:
            end = dt.date.fromisoformat(window.end_until) + dt.timedelta(days=1)
            spells.append((dt.date.fromisoformat(window.begin_from), end))
    return tuple(spells)
