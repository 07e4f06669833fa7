"""How the colony grows by its counts: what a plan expects of the coming month, and when the vessel will be full."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any, Final

from ...model.gauges import DAY_MS
from ...model.quantities import Estimate
from ...model.tasks import reason
from ..catalogue import vessels
from ..colony.crowding import FULL_SHARE, room_for
from ..colony.growth import Growth, fit_growth, season_points
from ..colony.history import midnight_ms
from .known import Known

AHEAD_DAYS: Final = 30
STEPS: Final = 6
"""The curve is drawn through so many points after the last count."""
OLD_DAYS: Final = 90
"""A last count that is older says nothing of the coming month (common practice, no source)."""
WARN_DAYS: Final = 60
"""A vessel that fills within two months is announced: a move takes 1 to 4 weeks (common practice, no source)."""


def growth_of(known: Known) -> Growth | None:
    """Return the fit to this season's counts; None with too few or a last one too old, or where nothing is forecast."""
    if known.switched.forecasts_off or known.switched.resting:
        return None
    rested = known.switched.season.rested if known.switched.season is not None else None
    points = season_points(
        known.history.counts, known.now_ms, rests=known.species.rest is not None,
        latitude_sign=known.state.latitude_sign, 
        woke_ms=None if rested is None else midnight_ms(rested[1].isoformat(), known.state.utc_offset_min),
    )  # fmt: skip
    growth = fit_growth(points)
    return growth if growth is None or known.now_ms - growth.as_of_ms <= OLD_DAYS * DAY_MS else None


def room_of(known: Known) -> Estimate | None:
    """Return for how many of these workers the vessel has room; None where the vessel is not known."""
    vessel = vessels().get(known.state.vessel.code or "")
    return room_for(vessel.room_workers, known.worker_mm) if vessel else None


def growth_ahead(known: Known, growth: Growth | None) -> Mapping[str, Any] | None:
    """Return the curve from the last count to a month from now, as [ms, low, best, high]; None without one."""
    if growth is None:
        return None
    end_ms = known.now_ms + AHEAD_DAYS * DAY_MS
    curve = []
    for step in range(STEPS + 1):
        at_ms = growth.as_of_ms + (end_ms - growth.as_of_ms) * step // STEPS
        workers = growth.workers_at(at_ms)
        curve.append([at_ms, round(workers.low, 1), round(workers.best, 1), round(workers.high, 1)])
    return {"counts": growth.counts, "model": growth.model, "curve": curve}


def full_notice(known: Known, growth: Growth | None) -> Mapping[str, Any] | None:
    """Return in how many days the vessel will be full, where that is soon and not yet; None otherwise."""
    room = room_of(known)
    if growth is None or room is None or "room" in known.switched.off:
        return None
    limit = room.best * (1 - FULL_SHARE)
    full = growth.full_in_days(max(1.0, limit))
    if full is None or growth.workers_now.best >= limit or known.workers >= limit:
        return None
    gone = (known.now_ms - growth.as_of_ms) / DAY_MS
    days = {"low": full.low - gone, "best": full.best - gone, "high": full.high - gone}
    if days["best"] > WARN_DAYS:
        return None
    if days["best"] <= 0:
        return reason("room_full_by_now", days=round(gone), room=round(room.best))
    shown = {name: max(0, round(value)) for name, value in days.items()}
    code = "room_fills" if days["high"] <= 2 * WARN_DAYS else "room_fills_perhaps"
    return reason(code, **shown, room=round(room.best))
