"""The needs that are not food: water, room, barrier, glance, and the looks that a winter rest asks for."""

from __future__ import annotations

import datetime as dt
from collections.abc import Mapping
from dataclasses import replace
from typing import Any, Final

from ..colony.crowding import MouldGrade, mould_grade, move_advice, move_steps, room_gauge
from ..colony.growth import Growth
from ..colony.winter_rest import rest_tasks
from ..gauges import Gauge, due_at_ms, level_at, not_before
from ..water.hydration import hydration_ml, hydration_reasons
from ..water.look_today import look_today_task
from ..water.reservoir import Reservoir, gauge_of, is_urgent, reservoir
from .growing import room_of
from .known import Known
from .own import last_look, own_rhythm
from .state import Event
from .tasks import Task, reason

BARRIER_DAYS: Final = 7.0
GLANCE_DAYS: Final = 30.0
"""Common practice, no source, both."""
CROWDED: Final = 100
"""From so many workers a weekly look at the barrier, whatever climbs (common practice, no source)."""

GaugeTask = tuple[Gauge, Task]


def upkeep(known: Known, growth: Growth | None) -> tuple[list[GaugeTask], list[Task]]:
    """Return the gauges with their tasks, and the tasks that no gauge gives."""
    water = reservoir(known.state.events, known.state.vessel, known.state.place, known.since_ms)
    gauge = gauge_of(water)
    pairs = [_water(water, gauge, known)]
    tasks = [] if (look := look_today_task(water, known.state.events)) is None else [look]
    if known.switched.resting:
        tasks += _rest(known)
    off = known.switched.off
    if "room" not in off:
        level = None if water.latest_id is None else level_at(gauge, known.now_ms)
        pairs += _room(level, known, growth)
    escapes = known.species.climbs or known.workers > CROWDED
    if known.state.vessel.has_outworld and escapes and "barrier" not in off:
        pairs += _rhythm("barrier", BARRIER_DAYS, known, known.now_ms)
    if "glance" not in off:
        pairs += _rhythm("glance", GLANCE_DAYS, known, known.now_ms)
    return pairs, tasks


def _water(water: Reservoir, gauge: Gauge, known: Known) -> GaugeTask:
    urgent = water.latest_id is not None and is_urgent(gauge, known.now_ms)
    level = level_at(gauge, known.now_ms)
    log: dict[str, Any] = {"kind": "water", "set": {"action": "new_tube" if water.tube else "refill"}}
    more: list[Mapping[str, Any]] = []
    if not water.tube:
        if water.full_ml is not None:
            log["set"]["amount_ml"] = hydration_ml(water.full_ml, level)
            more.append(reason("water_fill", ml=log["set"]["amount_ml"]))
        more += hydration_reasons(known.workers)
    elif level <= gauge.due_level:
        more += move_steps(known.species.guild, force=level == 0)
    task = _gauge_task(gauge, known.state.events, log, urgent=urgent)
    cautions = known.switched.cautions if water.tube else ()
    return gauge, replace(task, reasons=(*task.reasons, *more), cautions=cautions)


def _rest(known: Known) -> list[Task]:
    state = known.state
    wake_ms = _midnight_ms(state.condition_until, known) if state.condition_until else None
    since_ms = known.history.looked_ms or known.since_ms
    if state.resting_since:
        since_ms = _midnight_ms(state.resting_since, known)
    in_fridge = known.state.place.place_type == "fridge"
    return rest_tasks(known.species.rest, known.history, since_ms, wake_ms, in_fridge=in_fridge)


def _midnight_ms(day: str, known: Known) -> int:
    """Return when a day (ISO) begins in the household's zone, by its present offset."""
    midnight = dt.datetime.fromisoformat(day).replace(tzinfo=dt.UTC)
    return round(midnight.timestamp() * 1000) - known.state.utc_offset_min * 60_000


def _mould(known: Known) -> MouldGrade:
    """Return how bad the mould is that was reported; one of which nothing more is known is watched."""
    grades = [
        mould_grade(
            yellow_only=False,
            near_brood=bool(fault.values.get("mould_near_brood")),
            plug_share=fault.values.get("mould_share") or 0.1,
        )
        for fault in known.history.open_faults
        if fault.values.get("fault") == "mould"
    ]
    return "offer" if "offer" in grades else "watch" if grades else "nothing"


def _room(water_share: float | None, known: Known, growth: Growth | None) -> list[GaugeTask]:
    room = room_of(known)
    if room is None or known.workers <= 0:
        return []
    gauge = room_gauge(known.census.workers, room, known.now_ms, growth)
    faults = frozenset(str(f.values.get("fault")) for f in known.history.open_faults)
    advice = move_advice(
        workers=known.census.workers, room=room, in_tube=known.in_tube, guild=known.species.guild,
        water_share=water_share, open_faults=faults, mould=_mould(known),
    )  # fmt: skip
    if not advice.due:
        return []
    task = _gauge_task(gauge, known.state.events, None)
    return [
        (gauge, replace(task, reasons=(*advice.reasons, *advice.checklist), cautions=known.switched.cautions))
    ]


def _rhythm(need: str, usual_days: float, known: Known, now_ms: int) -> list[GaugeTask]:
    """Return a need that comes back every so many days since it was last seen to; none where it is paused."""
    own, paused, why_own, resumed_on = own_rhythm(need, known)
    if paused:
        return []
    days = own or usual_days
    seen = last_look(need, known.state.events)
    seen_ms = seen.happened_ms if seen is not None else now_ms
    possible_ms = [known.switched.awake_from_ms or seen_ms]
    possible_ms += [] if resumed_on is None else [_midnight_ms(resumed_on, known)]
    start_ms, level = not_before(seen_ms, days, days, max(possible_ms))
    reasons = (*why_own, reason(need, at_ms=seen_ms))
    basis = "keeper" if own else "common_practice"
    gauge = Gauge(need, "days", level, days, 1.0, 1.0, 1.0, start_ms, 0.0, basis, None, reasons)
    log = {"kind": "check", "set": {"need": need}}
    task = _gauge_task(gauge, (), log)
    return [(gauge, replace(task, key=f"{need}:{seen.id if seen is not None else 'start'}"))]


def _gauge_task(
    gauge: Gauge, events: tuple[Event, ...], log: Mapping[str, Any] | None, *, urgent: bool = False
) -> Task:
    begun = next((e.id for e in reversed(events) if e.happened_ms == gauge.as_of_ms), "start")
    due = due_at_ms(gauge)
    return Task(
        f"{gauge.need}:{begun}", gauge.need, gauge.as_of_ms if due is None else due, urgent=urgent, from_gauge=True,
        suggested=log, reasons=gauge.reasons,
    )  # fmt: skip
