"""Water and room: what the reservoir asks for, when a nest is offered, and what follows an offer.

Whether a move is due and by what means is decided once, by ``move_advice``: a tube that runs dry and one that is full
ask for the same fresh tube, so one of both tasks asks, never two.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Final

from ...model.facts import Event
from ...model.gauges import DAY_MS, Gauge, due_at_ms, level_at
from ...model.kinds.plan import Reason, Suggested
from ...model.quantities import Estimate
from ...model.tasks import AGAIN_DAYS, Task, TaskKey, check_of, reason
from ..colony.crowding import Dwelling, Growth, MoveAdvice, move_advice, room_gauge
from ..colony.offered_nest import offer_stands, offered_tasks
from ..water.hydration import hydration_ml, hydration_reasons
from ..water.look_today import look_today_task
from ..water.reservoir import URGENT_SHARE, Reservoir, gauge_of, is_urgent, reservoir
from .faults import mould_of
from .growing import room_of
from .known import Known
from .own import last_look

FIRST_LOOK_DAYS: Final = 7.0
"""Water whose level nobody logged is looked at within a week, then every two (common practice, no source)."""
FORGOTTEN_DAYS: Final = 28
"""So long after it ran dry by the reckoning, or was seen dry, and no word since: somebody filled it and did not say so,
or nobody looked. Either way its level is unknown again (common practice, no source)."""
OFFERED: Final[Suggested] = {"kind": "move", "set": {"how": "offered"}}
FORCED: Final[Suggested] = {"kind": "move", "set": {"how": "forced", "fresh_reservoir": True}}
WATER_REASONS: Final = frozenset({"move_water_low", "move_dry"})


@dataclass(frozen=True, slots=True)
class Housing:
    """The gauges of water and room, and the tasks about them."""

    gauges: tuple[Gauge, ...]
    tasks: tuple[Task, ...]


def housing(known: Known, growth: Growth | None) -> Housing:
    """Return what the colony's vessel asks for."""
    state = known.state
    water = reservoir(state.events, state.vessel, state.place, known.since_ms, known.dried)
    gauge = gauge_of(water)
    room = room_of(known) if known.workers > 0 and "room" not in known.switched.off else None
    unknown = water.latest_id is None or known.now_ms > _forgotten_ms(gauge)
    low = not unknown and level_at(gauge, known.now_ms) <= gauge.due_level
    faults = known.faults
    nest = Dwelling(
        workers=known.census.workers, room=room or Estimate.exactly(1e9), in_tube=known.in_tube,
        guild=known.species.guild, water_low=low, seen_dry=water.seen_dry and not unknown, mould=mould_of(faults),
        open_faults=frozenset(fault.said.fault for fault in faults),
    )  # fmt: skip
    advice = move_advice(nest)
    waits = offer_stands(known.history, known.now_ms) and not advice.force
    if unknown:
        tasks = [] if known.switched.resting else [_look(water, gauge, known)]
    else:
        tasks = _water_tasks(water, gauge, known, advice, low=low, waits=waits)
    gauges = [gauge]
    if room is not None and advice.due:
        filled = room_gauge(known.census.workers, room, known.now_ms, growth)
        gauges.append(filled)
        if not waits and not (low and water.tube) and _beyond_water(advice):
            tasks.append(_room_task(filled, advice, known))
    # of a nest that may be emptied by hand nobody is told to wait
    if waits and not known.switched.resting and "settling" not in known.switched.not_now:
        tasks += offered_tasks(known.history, known.now_ms)
    return Housing(tuple(gauges), tuple(tasks))


def _water_tasks(
    water: Reservoir, gauge: Gauge, known: Known, advice: MoveAdvice, *, low: bool, waits: bool
) -> list[Task]:
    """Return the tasks about the water. ``waits``: a nest lies offered, and nobody saw the old one dry or flooded."""
    look = look_today_task(water, known.state.events)
    suspected = [look] if look is not None else []
    urgent = is_urgent(gauge, known.now_ms)
    if water.look_today:
        urgent = water.level_share <= URGENT_SHARE  # what was read is an alarm, a suspicion is not
    task = gauge_task(gauge, known.state.events, None, urgent=urgent, begun_ms=water.as_of_ms)
    if not water.tube:
        return [*suspected, _nest_water(task, water, level_at(gauge, known.now_ms), known)]
    cautions = known.switched.cautions
    if waits:
        if not urgent:
            return suspected
        look_now = (reason("offer_water"), reason("move_no_shaking"))
        reasons = (*task.reasons, *look_now)
        return [*suspected, replace(task, suggested=None, reasons=reasons, cautions=cautions)]
    more: tuple[Reason, ...] = (*advice.reasons, *advice.checklist) if low else ()
    log = FORCED if low and advice.force else OFFERED
    return [*suspected, replace(task, suggested=log, reasons=(*task.reasons, *more), cautions=cautions)]


def _nest_water(task: Task, water: Reservoir, level: float, known: Known) -> Task:
    log: Suggested = {"kind": "water", "set": {"action": "refill"}}
    more: list[Reason] = []
    if water.full_ml is not None:
        ml = hydration_ml(water.full_ml, level)
        log = {"kind": "water", "set": {"action": "refill", "amount_ml": ml}}
        more.append(reason("water_fill", ml=ml))
    return replace(task, suggested=log, reasons=(*task.reasons, *more, *hydration_reasons(known.workers)))


def _forgotten_ms(gauge: Gauge) -> int:
    """Return from when on what was last known of the water says nothing any more."""
    dry_ms = gauge.as_of_ms + round(gauge.level / gauge.rate_per_day * DAY_MS)
    return dry_ms + FORGOTTEN_DAYS * DAY_MS


def _look(water: Reservoir, gauge: Gauge, known: Known) -> Task:
    """Return the look at water whose level nobody has logged, or not for long: it is unknown, not dry."""
    seen = last_look("water", known.state.events)
    soonest = max(1.0, (gauge.level - gauge.due_level) / gauge.rate_high)
    first_ms, why = known.since_ms + round(min(FIRST_LOOK_DAYS, soonest) * DAY_MS), reason("water_look")
    if water.latest_id is not None:
        first_ms, why = _forgotten_ms(gauge), reason("water_look_again", at_ms=water.as_of_ms)
    again_ms = (
        0 if seen is None else seen.happened_ms + round(min(AGAIN_DAYS["water_look"], soonest) * DAY_MS)
    )
    key = TaskKey("water_look", seen.id if seen else water.latest_id or "start")
    return Task(
        key, "water", max(first_ms, again_ms), suggested=check_of("water"), reasons=(why, *gauge.reasons),
    )  # fmt: skip


def _beyond_water(advice: MoveAdvice) -> bool:
    return any(each["code"] not in WATER_REASONS for each in advice.reasons)


def _room_task(gauge: Gauge, advice: MoveAdvice, known: Known) -> Task:
    task = gauge_task(gauge, known.state.events, FORCED if advice.force else OFFERED)
    full = any(each["code"] == "room_full" for each in advice.reasons)
    reasons = (*advice.reasons, *advice.checklist)
    # mould and floods make a nest due, however much room is left
    return replace(task, from_gauge=full, reasons=reasons, cautions=known.switched.cautions)


def gauge_task(
    gauge: Gauge,
    events: tuple[Event, ...],
    log: Suggested | None,
    *,
    urgent: bool = False,
    begun_ms: int | None = None,
) -> Task:
    """Return the task of a gauge; its key names the event with which the gauge began (``begun_ms``, else as of)."""
    began_ms = gauge.as_of_ms if begun_ms is None else begun_ms
    begun = next((e.id for e in reversed(events) if e.happened_ms == began_ms), "start")
    due = due_at_ms(gauge)
    return Task(
        TaskKey(gauge.need, begun), gauge.need, gauge.as_of_ms if due is None else due, urgent=urgent, from_gauge=True,
        suggested=log, reasons=gauge.reasons,
    )  # fmt: skip
