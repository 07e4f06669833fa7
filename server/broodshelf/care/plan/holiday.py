"""Holidays and journeys: what to top up before, which colonies need nobody, and how to carry a colony.

How long a colony can do without is common practice, no source; the water is the gauge's own, at its faster rate. A
colony that grows meanwhile counts as large as its census expects it to be at the end.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import Final, TypedDict

from ...model.gauges import DAY_MS, Gauge, level_at
from ...model.kinds.plan import Portion, Reason
from ...model.needs import FOOD_NEEDS, Need
from ...model.quantities import OutOfRange
from ...model.tasks import about_fault, fault_of, reason
from .ahead import Planned, use_ratio, workers_at

ALONE_DAYS: Final = (7.0, 10.0)
"""Most small colonies need nobody for so long."""
SMALL_UP_TO_WORKERS: Final = 100
STRETCH: Final = 2.0
"""Larger colonies wait at most twice their usual interval: the plan's own outer limit."""
URGENT_WATER_SHARE: Final = 0.10
TRAVEL_C: Final = (15, 25)
QUIET_DAYS: Final = (3, 7)
LONGEST_DAYS: Final = 365


class TopUp(TypedDict):
    """A need to see to on the last day; with a portion where the plan has one."""

    need: Need
    portion: Portion | None


@dataclass(frozen=True, slots=True)
class ColonyHoliday:
    """What one colony needs for the time away.

    ``verdict``: ``nobody``, ``nobody_after_top_up`` or ``visit``; ``top_up``: the needs to see to on the last
    day, with portions where the plan has one; ``visit_every_days``: for a stand-in, None where nobody is needed.
    """

    colony_id: str
    verdict: str
    top_up: tuple[TopUp, ...]
    visit_every_days: int | None
    reasons: tuple[Reason, ...]


def plan_holiday(
    plans: Sequence[Planned],
    workers: Mapping[str, float | None],
    leave_ms: int,
    return_ms: int,
) -> tuple[ColonyHoliday, ...]:
    """Return what to do for each colony.

    ``workers``: by colony id, None or absent where unknown (then the colony counts as large). Instants in ms
    since 1970 UTC. Raises ``OutOfRange`` for a journey that ends before it begins or takes over a year.
    """
    away_days = (return_ms - leave_ms) / DAY_MS
    if not 0 < away_days <= LONGEST_DAYS:
        raise OutOfRange("days away", away_days, "days", 0, LONGEST_DAYS)
    return tuple(_colony(plan, workers.get(plan.colony_id), leave_ms, return_ms) for plan in plans)


def travel_rules(*, honeypot: bool = False, stings: bool = False) -> tuple[Reason, ...]:
    """Return the rules for carrying a colony, in order, as codes of the messages ``travel-…``."""
    rules = [
        reason("no_loose_liquid"),
        reason("plugs_tight"),
        reason("dark_and_calm"),
        reason("travel_warmth", low_c=TRAVEL_C[0], high_c=TRAVEL_C[1]),
        reason("quiet_after", low=QUIET_DAYS[0], high=QUIET_DAYS[1]),
    ]
    if honeypot:
        rules.append(reason("never_tilt"))
    if stings:
        rules.append(reason("double_lid"))
    return tuple(rules)


def _colony(plan: Planned, workers: float | None, leave_ms: int, return_ms: int) -> ColonyHoliday:
    colony_id = plan.colony_id
    away_days = (return_ms - leave_ms) / DAY_MS
    grown = workers_at(plan, return_ms)
    workers = workers if grown is None else max(workers or 0.0, grown.best)
    portions = {task["need"]: task["portion"] for task in plan.tasks}
    small = workers is not None and workers <= SMALL_UP_TO_WORKERS
    reasons = [
        why
        for task in plan.tasks
        if task["urgent"] and not task["from_gauge"]
        for why in _put_right(task["reasons"])
    ]
    top_up: list[TopUp] = []
    every_days = away_days
    for gauge in map(Gauge.of, plan.gauges):
        if gauge.need not in FOOD_NEEDS and gauge.need != "water":
            continue
        more = _most_use(plan, gauge.need, leave_ms, return_ms)
        if _untouched_days(gauge, level_at(gauge, leave_ms)) >= away_days * more:
            continue
        top_up.append({"need": gauge.need, "portion": portions.get(gauge.need)})
        lasts_days = _untouched_days(gauge, gauge.capacity) / more
        if gauge.need in FOOD_NEEDS:
            lasts_days = max(lasts_days * STRETCH, ALONE_DAYS[1] if small else 0.0)
        if lasts_days < away_days:
            every_days = min(every_days, lasts_days)
            reasons.append(reason("lasts_too_short", need=gauge.need, lasts=int(lasts_days)))
    if every_days < away_days:
        return ColonyHoliday(colony_id, "visit", tuple(top_up), max(1, int(every_days)), tuple(reasons))
    sure = not top_up or away_days <= ALONE_DAYS[0]
    reasons.append(reason("needs_nobody" if sure else "mostly_nobody", days=round(away_days)))
    verdict = "nobody_after_top_up" if top_up else "nobody"
    return ColonyHoliday(colony_id, verdict, tuple(top_up), None, tuple(reasons))


def _put_right(reasons: Sequence[Reason]) -> Iterator[Reason]:
    """Yield what has to be put right before leaving: a fault by its name, anything else by its own reason."""
    for why in reasons[:1]:
        fault = fault_of(why)
        yield why if fault is None else about_fault("mend_before", fault)


def _most_use(plan: Planned, need: str, leave_ms: int, return_ms: int) -> float:
    """Return how many times today's use a colony takes at most while nobody is there; less than today counts as today.

    Water goes by its own gauge.
    """
    if need == "water":
        return 1.0
    return max(1.0, *(use_ratio(plan, need, at_ms).best for at_ms in (leave_ms, return_ms)))


def _untouched_days(gauge: Gauge, level: float) -> float:
    """Return how many days a gauge takes from ``level`` until somebody must come.

    Water by its faster rate, down to the urgent tenth; food by its usual rate, down to its due level.
    """
    water = gauge.need == "water"
    rate = gauge.rate_high if water else gauge.rate_per_day
    spare = level - (URGENT_WATER_SHARE * gauge.capacity if water else gauge.due_level)
    return max(0.0, spare) / rate if rate > 0 else float(LONGEST_DAYS)
