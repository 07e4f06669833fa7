"""From what is known about a colony to its plan: gauges, tasks, notices, cautions. Deterministic and pure."""

from __future__ import annotations

import datetime as dt
from collections.abc import Mapping
from dataclasses import dataclass, replace
from typing import Any, Final

from ..catalogue import Species, species, vessels
from ..colony.stages import Switches, switches
from ..gauges import DAY_MS, Gauge, due_at_ms
from ..water.reservoir import is_urgent, water_gauge
from .bands import interval
from .portions import portion, suggested
from .state import ColonyState, Event
from .tasks import Task, fault_tasks, leftovers_tasks, reason, rest_notice

MODEL_VERSION: Final = "1"
FOOD_NEEDS: Final = ("sugar", "protein", "seeds", "leaves")
COARSE_WORKERS: Final[Mapping[str, float]] = {"none": 0, "few": 8, "some": 35, "many": 200}
"""What 'few', 'some' and 'many' workers stand for (common practice, no source)."""
BARRIER_DAYS: Final = 7.0
GLANCE_DAYS: Final = 30.0
COLD_C: Final = 12.0


@dataclass(frozen=True, slots=True)
class Plan:
    """What a colony needs, with reasons. Instants in ms since 1970 UTC."""

    colony_id: str
    computed_at_ms: int
    valid_until_ms: int
    gauges: tuple[Gauge, ...] = ()
    tasks: tuple[Task, ...] = ()
    notices: tuple[Mapping[str, Any], ...] = ()
    cautions: tuple[Mapping[str, Any], ...] = ()

    def as_json(self) -> dict[str, Any]:
        """Return the shape of docs/http-api.md, "A plan"."""
        return {
            "colony_id": self.colony_id,
            "computed_at_ms": self.computed_at_ms,
            "valid_until_ms": self.valid_until_ms,
            "model_version": MODEL_VERSION,
            "gauges": [gauge.as_json() for gauge in self.gauges],
            "tasks": [task.as_json() for task in self.tasks],
            "notices": list(self.notices),
            "cautions": list(self.cautions),
        }


def make_plan(state: ColonyState, now_ms: int) -> Plan:
    """Return the plan of a colony at an instant. Later events than ``now_ms`` are taken as they stand."""
    today = _day(now_ms, state.utc_offset_min)
    kind = _species_of(state)
    workers = _workers(state)
    switched = switches(state, kind, workers, today)
    valid_until = now_ms + DAY_MS
    if switched.nothing_at_all:
        return Plan(state.id, now_ms, valid_until)
    cautions = ({"code": "stings", "args": {}},) if kind.stings else ()
    gauges: list[Gauge] = []
    tasks: list[Task] = []
    for need in FOOD_NEEDS:
        if need not in switched.off:
            gauge, task = _food(need, state, kind, workers or 0, switched, now_ms, today)
            if gauge is not None and task is not None:
                gauges.append(gauge)
                tasks.append(replace(task, cautions=cautions + task.cautions))
    for gauge, task in _upkeep(state, kind, workers or 0, switched, now_ms):
        gauges.append(gauge)
        tasks.append(replace(task, cautions=cautions))
    tasks += [replace(task, cautions=cautions) for task in fault_tasks(state.events)]
    tasks += leftovers_tasks(state.events)
    notices = list(switched.notices)
    if state.species_code not in species():
        notices.append(reason("species_unknown"))
    notices += rest_notice(kind, today, state.latitude_sign)
    tasks.sort(key=lambda task: (not task.urgent, task.due_at_ms, task.key))
    return Plan(state.id, now_ms, valid_until, tuple(gauges), tuple(tasks), tuple(notices), cautions)


def _food(
    need: str, state: ColonyState, kind: Species, workers: float, switched: Switches, now_ms: int, today: str
) -> tuple[Gauge | None, Task | None]:
    rule = next((r for r in state.rules if r.need == need), None)
    if rule is not None and rule.paused_until and today < rule.paused_until:
        return None, None
    if need == "protein" and state.place.day_temp_c is not None and state.place.day_temp_c < COLD_C:
        return None, None
    founding = (state.founding_mode or kind.founding) == "semi_claustral" and workers == 0
    usual = interval(need, kind, workers, has_larvae=_larvae(state), semi_claustral_founding=founding)
    own = (rule.every_days if rule else None) or state.interval_days.get(need)
    days = own or usual.days * switched.slower
    low, high = (own, own) if own else (usual.low_days * switched.slower, usual.high_days * switched.slower)
    if own:
        reasons = [reason("interval_keeper", days=own)]
    else:
        reasons = [reason(code, low=low, high=high) for code in usual.reason_codes]
    last, ignored = _last_counted_feeding(need, state.events)
    if last is not None:
        reasons.append(reason("last_fed", at_ms=last.happened_ms))
    else:
        reasons.append(reason("never_fed"))
    if ignored:
        reasons.append(reason("ignored_did_not_count"))
    start_ms = last.happened_ms if last is not None else _known_since_ms(state, now_ms)
    level = days if last is not None else 0.0
    gauge = Gauge(
        need, "days", level, days, 1.0, days / high, days / low, start_ms, 0.0,
        "keeper" if own else "common_practice", None, tuple(reasons),
    )  # fmt: skip
    in_tube = _in_tube(state)
    served = portion(need, state, kind, workers, in_tube=in_tube, today=today)
    cautions = []
    if need == "protein":
        cautions = [reason("dead_only")] if in_tube else []
        cautions += [reason("blade")] if served.get("form") == "cut" else []
    key = f"{need}:{last.id if last else 'start'}"
    due = due_at_ms(gauge) or start_ms
    return gauge, Task(
        key, need, due, from_gauge=True, portion=served, suggested=suggested(need, served),
        reasons=tuple(reasons), cautions=tuple(cautions),
    )  # fmt: skip


def _upkeep(
    state: ColonyState, kind: Species, workers: float, switched: Switches, now_ms: int
) -> list[tuple[Gauge, Task]]:
    """Return the needs that are not food: water, room, barrier, glance."""
    start_ms = _known_since_ms(state, now_ms)
    water = water_gauge(state.events, state.vessel, state.place, start_ms)
    latest = max((e.happened_ms for e in state.events if e.kind == "water"), default=None)
    urgent = latest is not None and is_urgent(water, now_ms)
    made = [
        (
            water,
            _gauge_task(water, state.events, {"kind": "water", "set": {"action": "refill"}}, urgent=urgent),
        )
    ]
    vessel = vessels().get(state.vessel.code or "")
    if vessel is not None and workers and "room" not in switched.off:
        free = max(0.0, 1 - workers / vessel.room_workers)
        reasons = (reason("room_full", workers=round(workers), room=vessel.room_workers),)
        room = Gauge(
            "room", "share", free, 1.0, 0.0, 0.0, 0.0, start_ms, 0.1, "common_practice", None, reasons
        )
        if free <= 0.1:
            made.append((room, _gauge_task(room, state.events, None)))
    outworld = state.vessel.has_outworld
    if outworld and "barrier" not in switched.off and (kind.climbs or workers > 100):
        made.append(
            _rhythm("barrier", BARRIER_DAYS, state, now_ms, {"kind": "check", "set": {"need": "barrier"}})
        )
    if "glance" not in switched.off:
        made.append(
            _rhythm("glance", GLANCE_DAYS, state, now_ms, {"kind": "check", "set": {"need": "glance"}})
        )
    return made


def _rhythm(
    need: str, days: float, state: ColonyState, now_ms: int, log: Mapping[str, Any]
) -> tuple[Gauge, Task]:
    """Return a need that comes back every so many days since it was last seen to."""
    counted = [
        e for e in state.events if need == "glance" or (e.kind == "check" and e.values.get("need") == need)
    ]
    start_ms = counted[-1].happened_ms if counted else now_ms
    reasons = (reason(need, days=days, at_ms=start_ms),)
    gauge = Gauge(need, "days", days, days, 1.0, 1.0, 1.0, start_ms, 0.0, "common_practice", None, reasons)
    return gauge, _gauge_task(gauge, tuple(counted), log)


def _gauge_task(
    gauge: Gauge, events: tuple[Event, ...], log: Mapping[str, Any] | None, *, urgent: bool = False
) -> Task:
    begun = next((e.id for e in reversed(events) if e.happened_ms == gauge.as_of_ms), "start")
    due = due_at_ms(gauge)
    return Task(
        f"{gauge.need}:{begun}", gauge.need, gauge.as_of_ms if due is None else due, urgent=urgent, from_gauge=True,
        suggested=log, reasons=gauge.reasons,
    )  # fmt: skip


def _last_counted_feeding(need: str, events: tuple[Event, ...]) -> tuple[Event | None, bool]:
    """Return the last feeding that was taken, and whether a later one was ignored."""
    ignored_ids = {
        e.values.get("feeding_id")
        for e in events
        if e.kind == "check" and e.values.get("outcome") == "ignored"
    }
    ignored = False
    for event in reversed(events):
        if event.kind == "feeding" and event.values.get("need") == need:
            if event.id not in ignored_ids or need != "protein":
                return event, ignored
            ignored = True
    return None, ignored


def _known_since_ms(state: ColonyState, now_ms: int) -> int:
    """Return since when we know the colony: a log of today, whatever its minute, must count after it."""
    return min(state.events[0].happened_ms, now_ms) if state.events else now_ms - DAY_MS


def _species_of(state: ColonyState) -> Species:
    known = species().get(state.species_code or "")
    length = state.worker_length_mm
    if known is None:
        known = Species(
            None, "", (length or 4.0, length or 4.0), "omnivore", state.founding_mode or "claustral"
        )
    return replace(known, worker_mm=(length, length)) if length else known


def _workers(state: ColonyState) -> float | None:
    for event in reversed(state.events):
        if event.kind == "count":
            exact = event.values.get("workers")
            if exact is not None:
                return float(exact)
            low, high = event.values.get("workers_low"), event.values.get("workers_high")
            if low is not None and high is not None:
                return (float(low) + float(high)) / 2
            if event.values.get("workers_coarse") in COARSE_WORKERS:
                return COARSE_WORKERS[event.values["workers_coarse"]]
    return {"nanitics": 8.0, "growing": 60.0, "mature": 500.0}.get(state.stage or "")


def _larvae(state: ColonyState) -> bool | None:
    for event in reversed(state.events):
        if event.kind == "count" and event.values.get("larvae") is not None:
            return bool(event.values["larvae"] != "none")
    return None


def _in_tube(state: ColonyState) -> bool:
    vessel = vessels().get(state.vessel.code or "")
    return vessel.tube if vessel is not None else True


def _day(now_ms: int, offset_min: int) -> str:
    return dt.datetime.fromtimestamp(now_ms / 1000 + offset_min * 60, dt.UTC).date().isoformat()
