"""Faults: alarms with first steps, a distant spot of mould that is none, and how each comes to its end.

All days here are common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import Final

from ...model.facts import Event, Logged, tells
from ...model.gauges import DAY_MS
from ...model.kinds.log import Check, Fault
from ...model.needs import FAULTS
from ...model.tasks import Task, TaskKey, about_fault, check_of, reason
from ..colony.crowding import MouldGrade, mould_grade

ALARM_DAYS: Final = 14
"""So long a fault of which nothing more was said is an alarm; then one question whether it is over."""
ENDS_DAYS: Final = 28
"""After so many days without a word nothing asks any more."""
MOULD_LOOK_DAYS: Final = 7
EARLY_DAYS: Final = 1
"""A look so much before its day counts as that look."""


def standing_faults(
    faults: Iterable[Logged[Fault]], events: Sequence[Event], now_ms: int
) -> tuple[Logged[Fault], ...]:
    """Return the faults that are neither resolved nor over by a look or by their days. ``faults``: not resolved."""
    return tuple(fault for fault in faults if not _over(fault, events, now_ms))


def mould_of(standing: Iterable[Logged[Fault]]) -> MouldGrade:
    """Return how bad the mould is that was reported; one of which nothing more is known is watched."""
    grades = [_grade(fault) for fault in standing if fault.said.fault == "mould"]
    return "offer" if "offer" in grades else "watch" if grades else "nothing"


def fault_tasks(
    standing: Iterable[Logged[Fault]],
    events: Sequence[Event],
    now_ms: int,
    *,
    offered_ms: int | None = None,
) -> list[Task]:
    """Return one task for each fault: an alarm with its first steps, a spot to watch, or whether it is over.

    ``offered_ms``: since when a nest lies offered. That is all that can be done about mould near the brood, so what is
    asked for then are the looks of the offer.
    """
    return [
        _task(fault, events, now_ms)
        for fault in standing
        if offered_ms is None or fault.said.fault != "mould" or fault.happened_ms > offered_ms
    ]


def _task(fault: Logged[Fault], events: Sequence[Event], now_ms: int) -> Task:
    name = fault.said.fault
    key, need, at_ms = TaskKey("fault", fault.id), FAULTS[name].touches, fault.happened_ms
    if _is_spot(fault):
        return _spot(fault, events)
    if now_ms > at_ms + ALARM_DAYS * DAY_MS:
        due_ms = at_ms + ALARM_DAYS * DAY_MS
        why = (about_fault("fault_over", name, at_ms=at_ms),)
        return Task(key, need, due_ms, suggested=check_of(need), reasons=why)
    code = "mould_near" if name == "mould" else name
    return Task(key, need, at_ms, urgent=True, reasons=(about_fault(code, name),))


def _spot(fault: Logged[Fault], events: Sequence[Event]) -> Task:
    """Return what a distant spot of mould asks for: a photo now, and a look after a week."""
    kept = _last_look(fault, events, ("photo", "check")) is not None
    if not kept:
        why = (about_fault("mould_far", "mould"),)
        return Task(TaskKey("fault", fault.id), "glance", fault.happened_ms, reasons=why)
    key = TaskKey("mould_look", fault.id)
    due_ms = fault.happened_ms + MOULD_LOOK_DAYS * DAY_MS
    why = (reason("mould_look", at_ms=fault.happened_ms),)
    return Task(key, "glance", due_ms, suggested=check_of("glance"), reasons=why)


def _over(fault: Logged[Fault], events: Sequence[Event], now_ms: int) -> bool:
    if now_ms > fault.happened_ms + ENDS_DAYS * DAY_MS:
        return True
    days = MOULD_LOOK_DAYS if _is_spot(fault) else ALARM_DAYS
    looked_ms = _last_look(fault, events, ("check",))
    return looked_ms is not None and looked_ms >= fault.happened_ms + (days - EARLY_DAYS) * DAY_MS


def _last_look(fault: Logged[Fault], events: Sequence[Event], kinds: Sequence[str]) -> int | None:
    """Return when the fault was last looked at: a photo of the colony, or a check of the fault's need or a glance."""
    needs = (FAULTS[fault.said.fault].touches, "glance")
    for event in reversed(events):
        if event.happened_ms < fault.happened_ms:
            break
        if event.kind in kinds and (not tells(event, Check) or event.said.need in needs):
            return event.happened_ms
    return None


def _is_spot(fault: Logged[Fault]) -> bool:
    return fault.said.fault == "mould" and _grade(fault) == "watch"


def _grade(fault: Logged[Fault]) -> MouldGrade:
    said = fault.said
    return mould_grade(
        yellow_only=False, near_brood=bool(said.mould_near_brood), plug_share=said.mould_share or 0.1
    )
