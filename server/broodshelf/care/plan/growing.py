"""What the living census says of the time to come: the curve, the next workers, the full nest, a founding that stalls.

Nothing else in a plan foretells: whoever speaks of the future asks here, and here asks the census.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from typing import Any, Final

from ...model.gauges import DAY_MS
from ...model.kinds.plan import GrowthAhead, Hatching, LivingCensus, Reason
from ...model.quantities import Estimate
from ...model.tasks import reason
from ..catalogue import vessels
from ..colony.census.founding_course import awaited, stalled
from ..colony.census.outlook import Census, Days
from ..colony.crowding import FULL_SHARE, Growth, room_for
from ..colony.history import day_of_number
from ..colony.life_stage import FOUNDING
from ..colony.winter_rest import RAMP_DAYS
from .known import Known
from .today import LOOKED_DAYS

AHEAD_DAYS: Final = 30
FIRST_SOON_DAYS: Final = 42
"""First workers that come within so many days go before a late rest (common practice, no source)."""
STEPS: Final = 6
"""The curve is drawn through so many points after the last count."""
WIDE_DAYS: Final = 28
"""A countdown whose ends lie further apart than this, and than its first end lies ahead, says why (common practice)."""
WARN_DAYS: Final = 60
"""A vessel that fills within two months is announced: a move takes 1 to 4 weeks (common practice, no source)."""


def growth_of(known: Known) -> Growth | None:
    """Return how fast the colony grows in the coming month; None where nothing is forecast, or nobody counted."""
    living = known.living
    counts = sum(1 for count in known.history.counts if count.any_workers)
    if living is None or not counts:
        return None
    now, later = living.today.workers, living.workers_on(living.day + AHEAD_DAYS)
    if now.best < 1:
        return None
    return Growth.between(now, later, AHEAD_DAYS, counts)


def room_of(known: Known) -> Estimate | None:
    """Return for how many of these workers the vessel has room; None where the vessel is not known."""
    vessel = vessels().get(known.state.vessel.code or "")
    return room_for(vessel.room_workers, known.worker_mm) if vessel else None


def growth_ahead(known: Known) -> GrowthAhead | None:
    """Return the curve from the last count to a month from now, as [ms, low, best, high]; None without a count."""
    living, counts = known.living, [count for count in known.history.counts if count.any_workers]
    if living is None or not counts:
        return None
    begin_ms, end_ms = min(counts[-1].at_ms, known.now_ms), known.now_ms + AHEAD_DAYS * DAY_MS
    curve: list[tuple[int, float, float, float]] = []
    for step in range(STEPS + 1):
        at_ms = begin_ms + (end_ms - begin_ms) * step // STEPS
        workers = living.workers_on(_day_of(at_ms, known))
        curve.append((at_ms, round(workers.low, 1), round(workers.best, 1), round(workers.high, 1)))
    return {"counts": len(counts), "model": "census", "curve": curve}


def coming_notice(known: Known) -> Reason | None:
    """Return when the first or the next workers hatch, or why nobody can say; None where there is no brood."""
    living = known.living
    if living is None:
        return None
    first = known.switched.stage in FOUNDING
    days = _coming_days(known)
    mean_c = round(known.climate.mean_c.best, 1)
    group = living.course.begin.ensemble.group
    if days is None:
        outside = not group.low_c <= mean_c <= group.high_c
        if outside and any(count.eggs or count.larvae or count.pupae for count in known.history.brood_seen):
            return reason("brood_no_forecast", value=mean_c, low_c=group.low_c, high_c=group.high_c)
        return None
    code = "first_workers_in" if first else "next_workers_in"
    low, high = days
    return reason(code, low=low, high=high, mean_c=mean_c, measured=living.measured)


def wide_notice(known: Known) -> Reason | None:
    """Return why the days of a countdown lie so far apart, and what brings them closer; None where they do not."""
    living, days = known.living, _coming_days(known)
    if living is None or days is None or days[1] - days[0] <= max(WIDE_DAYS, days[0]):
        return None
    looks = [count.at_ms for count in known.history.brood_seen if count.larvae or count.pupae]
    if known.switched.stage in FOUNDING and known.state.founded_on is None:
        return reason("coming_wide_flight")
    if not looks or known.now_ms - max(looks) > LOOKED_DAYS * DAY_MS:
        return reason("coming_wide_look")
    return None if living.measured else reason("coming_wide_kind")


def _coming_days(known: Known) -> tuple[int, int] | None:
    """Return in how many days the first or the next workers hatch, from and to; None where nobody can say."""
    living = known.living
    if living is None:
        return None
    days = living.first_workers if known.switched.stage in FOUNDING else living.new_workers
    if days is None or days.high is None:
        return None
    low, high = (round(at - living.day) for at in (days.low, days.high))
    return low, max(low, high)


def full_notice(known: Known) -> Reason | None:
    """Return in how many days the vessel will be full, where that is soon and not yet; None otherwise."""
    room, living = room_of(known), known.living
    if living is None or room is None or "room" in known.switched.off or not known.history.counts:
        return None
    limit = room.best * (1 - FULL_SHARE)
    counted = known.counted.workers.best
    if counted >= limit:
        return None
    gone = round((known.now_ms - (known.counted.counted_ms or known.now_ms)) / DAY_MS)
    if known.workers >= limit:
        return reason("room_full_by_now", days=gone, room=round(room.best))
    days = living.nest_full(max(1.0, limit), WARN_DAYS)
    if days is None or days.best is None or days.best - living.day > WARN_DAYS:
        return None
    high = living.day + living.horizon_days if days.high is None else days.high
    shown = {"low": days.low, "best": days.best, "high": high}
    code = (
        "room_fills" if days.high is not None and high - living.day <= 2 * WARN_DAYS else "room_fills_perhaps"
    )
    told = {name: max(0, round(value - living.day)) for name, value in shown.items()}
    return reason(code, **told, room=round(room.best))


def stalled_notice(known: Known) -> Reason | None:
    """Return that a founding has stalled, with since when its workers are late; None while it may still go well."""
    if known.living is None or known.facts is None or known.switched.stage not in FOUNDING:
        return None
    late_days = stalled(known.facts, known.living.day)
    return None if late_days is None else reason("founding_stalled", days=late_days)


def rest_or_first(known: Known, notices: Iterable[Reason]) -> Iterator[Reason]:
    """Yield notices; where a rest is due and a founding's first workers come soon, that they go before the rest."""
    days = (
        None if known.living is None or known.switched.stage not in FOUNDING else known.living.first_workers
    )
    high = None if days is None or stalled_notice(known) is not None else days.high
    if high is not None and known.living is not None and high - known.living.day > FIRST_SOON_DAYS:
        high = None
    rest = known.species.rest
    for notice in notices:
        if notice["code"] != "rest_missed" or rest is None or high is None or days is None:
            yield notice
        else:
            yield reason(
                "rest_after_first", low_on=_iso(days.low), high_on=_iso(high),
                low_c=rest.low_c, high_c=rest.high_c, ramp_days=RAMP_DAYS,
            )  # fmt: skip


def resting_notice(known: Known) -> Reason | None:
    """Return what is in the nest of a colony that rests; None where nothing is forecast."""
    if known.living is None or known.switched.stage not in (*FOUNDING, "workers"):
        return None
    larvae = known.living.today.larvae
    if larvae.best < 1:
        return reason("rest_no_brood")
    return reason("rest_larvae_wait", low=max(1, round(larvae.low)), high=round(larvae.high))


def census_shown(known: Known) -> LivingCensus | None:
    """Return the census as screens draw it, in the shape of docs/http-api.md; None where nothing is forecast."""
    living, facts = known.living, known.facts
    if living is None or facts is None:
        return None
    first = known.switched.stage in FOUNDING
    days = living.first_workers if first else living.new_workers
    asked = awaited(living, known.history.counts) if first and not known.switched.resting else None
    return {
        "founding": first,
        "group": living.group,
        "measured": living.measured,
        "source": living.source,
        "hatching": None if days is None else _span(days),
        "asks": None if asked is None else {"brood": asked.brood, "by_on": _iso(asked.by_day)},
        "stages": _timeline(living, known),
        "why": [
            reason(
                f"census_{moved.direction}", event_id=facts.told_by(moved.seen), seen=moved.seen.what,
                on=_iso(moved.seen.day), word=moved.seen.word, number=moved.seen.number,
            )
            for moved in living.reasons
        ],
    }  # fmt: skip


def _timeline(living: Census, known: Known) -> list[list[Any]]:
    offset_ms = known.state.utc_offset_min * 60_000
    return [[day * DAY_MS - offset_ms, *map(list, numbers)] for day, numbers in living.drawing]


def _span(days: Days) -> Hatching:
    return {
        "low_on": _iso(days.low),
        "best_on": None if days.best is None else _iso(days.best),
        "high_on": None if days.high is None else _iso(days.high),
    }


def _iso(day: float) -> str:
    return day_of_number(round(day)).isoformat()


def _day_of(at_ms: int, known: Known) -> int:
    return (at_ms + known.state.utc_offset_min * 60_000) // DAY_MS
