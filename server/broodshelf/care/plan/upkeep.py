"""The needs that are not food: the vessel (``housing``), barrier, glance, and the looks that a winter rest asks for."""

from __future__ import annotations

from dataclasses import replace
from typing import Final

from ...model.gauges import DAY_MS, Gauge, not_before
from ...model.needs import Need
from ...model.tasks import Task, TaskKey, check_of, reason
from ..colony.crowding import Growth
from ..colony.history import midnight_ms
from ..colony.winter_rest import rest_tasks
from .housing import gauge_task, housing
from .known import Known
from .own import last_look, own_rhythm

BARRIER_DAYS: Final = 7.0
GLANCE_DAYS: Final = 30.0
"""Common practice, no source, both."""
CROWDED: Final = 100
"""From so many workers a weekly look at the barrier, whatever climbs (common practice, no source)."""


def upkeep(known: Known, growth: Growth | None) -> tuple[list[Gauge], list[Task]]:
    """Return the gauges of what is not food, and the tasks about it."""
    home = housing(known, growth)
    gauges, tasks = list(home.gauges), list(home.tasks)
    if known.switched.resting:
        tasks += _rest(known)
    off = known.switched.off
    needs: list[tuple[Need, float, int]] = []
    escapes = known.species.climbs or known.workers > CROWDED
    if known.state.vessel.has_outworld and escapes and "barrier" not in off:
        # since when there is something to climb over nobody knows: never looked at is due, and not overdue
        week_ago_ms = midnight_ms(known.today, known.state.utc_offset_min) - round(BARRIER_DAYS * DAY_MS)
        needs.append(("barrier", BARRIER_DAYS, max(known.since_ms, week_ago_ms)))
    if "glance" not in off:
        needs.append(("glance", GLANCE_DAYS, known.since_ms))
    for need, days, since_ms in needs:
        regular = _rhythm(need, days, since_ms, known)
        if regular is not None:
            gauges.append(regular[0])
            tasks.append(regular[1])
    return gauges, tasks


def _rest(known: Known) -> list[Task]:
    state, season = known.state, known.switched.season
    wake_ms = midnight_ms(state.condition_until, state.utc_offset_min) if state.condition_until else None
    began_on = None if season is None else season.began_on
    since_ms = known.since_ms if began_on is None else midnight_ms(began_on.isoformat(), state.utc_offset_min)
    in_fridge = state.place.place_type == "fridge"
    return rest_tasks(known.species.rest, known.history, since_ms, wake_ms, in_fridge=in_fridge)


def _rhythm(need: Need, usual_days: float, since_ms: int, known: Known) -> tuple[Gauge, Task] | None:
    """Return a need that comes back every so many days since it was last seen to; none where it is paused.

    ``since_ms``: from when its days are counted where nobody saw to it yet.
    """
    seen = last_look(need, known.state.events)
    own, paused, why_own, resumed_on = own_rhythm(need, known, None if seen is None else seen.happened_ms)
    if paused:
        return None
    days = own or usual_days
    seen_ms = seen.happened_ms if seen is not None else since_ms
    possible_ms = [known.switched.awake_from_ms or seen_ms]
    possible_ms += [] if resumed_on is None else [midnight_ms(resumed_on, known.state.utc_offset_min)]
    start_ms, level = not_before(seen_ms, days, days, max(possible_ms))
    reasons = (*why_own, reason(need, at_ms=seen_ms))
    basis = "keeper" if own else "common_practice"
    gauge = Gauge(need, "days", level, days, 1.0, 1.0, 1.0, start_ms, 0.0, basis, None, reasons)
    task = gauge_task(gauge, (), check_of(need))
    return gauge, replace(task, key=TaskKey(need, seen.id) if seen is not None else TaskKey(need))
