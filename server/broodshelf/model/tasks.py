"""A task: what is due, when, with a portion and reasons. Gauges give some; faults and leftovers give others."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any, Final, Literal, NewType

from .needs import NEEDS, FaultCode, Need

if TYPE_CHECKING:
    from .kinds.plan import ForStandIn, PlannedTask, Portion, Reason, Suggested

Look = Literal[
    "ask", "dry_air", "fault", "freezing", "fridge_open", "heater_off", "heater_on", "leak", "mould_look", "move_end",
    "move_look", "overheating", "rest_air", "rest_fits", "rest_water", "rising_fast", "risk_look", "too_cold",
    "too_hot", "wake_up", "water_look",
]  # fmt: skip
"""What is asked for besides the needs themselves."""
What = Literal[Need, Look]


@dataclass(frozen=True, slots=True, kw_only=True)
class TaskRow:
    """One kind of task.

    ``stand_in``: a stand-in may do it.
    ``met_by``: the kind of event that does it, besides a check of its need; None: nothing does but what it suggests.
    ``sensed``: sensors begin and end it, without anybody logging something.
    ``wakes``: waiting for the end of the quiet hours could kill, so it is told in them, too.
    ``steps``: what a stand-in is told one after the other, as reason codes, where the kind alone decides it; a phone
    says them of tasks that it makes itself. Common practice, no source.
    """

    stand_in: bool = True
    met_by: Literal["water", "move"] | None = None
    sensed: bool = False
    wakes: bool = False
    steps: tuple[str, ...] = ()


_STEPS: Final[Mapping[What, tuple[str, ...]]] = {
    "leftovers": ("left_step_find", "left_step_take", "left_step_held", "left_step_bin", "food_step_bad"),
    "barrier": ("barrier_step_look", "barrier_step_bridge", "barrier_step_still", "barrier_step_bad"),
    "glance": ("helper_glance", "glance_step_calm", "glance_step_bad"),
    "rest_air": ("air_step_open", "air_step_still", "air_step_close"),
    "risk_look": ("helper_glance", "risk_step_signs", "glance_step_bad"),
}

_KEEPERS: Final = TaskRow(stand_in=False)
_SENSED: Final = TaskRow(sensed=True)
_DEADLY: Final = TaskRow(sensed=True, wakes=True)

TASKS: Final[Mapping[What, TaskRow]] = {
    **{need: TaskRow(stand_in=row.stand_in, steps=_STEPS.get(need, ())) for need, row in NEEDS.items()},
    "ask": _KEEPERS,
    "dry_air": TaskRow(met_by="water", sensed=True),
    "fault": TaskRow(),
    "freezing": _DEADLY,
    "fridge_open": _SENSED,
    "heater_off": _SENSED,
    "heater_on": _SENSED,
    "leak": TaskRow(met_by="water"),
    "mould_look": _KEEPERS,
    "move_end": TaskRow(stand_in=False, met_by="move"),
    "move_look": TaskRow(stand_in=False, met_by="move"),
    "overheating": _DEADLY,
    "rest_air": TaskRow(steps=_STEPS["rest_air"]),
    "rest_fits": _KEEPERS,
    "rest_water": TaskRow(met_by="water"),
    "rising_fast": _SENSED,
    "risk_look": TaskRow(steps=_STEPS["risk_look"]),
    "too_cold": _SENSED,
    "too_hot": TaskRow(),
    "wake_up": _KEEPERS,
    "water_look": TaskRow(met_by="water"),
}
AGAIN_DAYS: Final[Mapping[What, int]] = {"rest_air": 7, "rest_water": 14, "risk_look": 1, "water_look": 14}
"""How long after a look it comes again, where no gauge says when (common practice, no source)."""
FOUNDING_LOOK_DAYS: Final = 7
"""A founding queen is looked at once in so many days (common practice, no source)."""
STALLED_LOOK_DAYS: Final = 14
"""The same of one whose founding stalled: she is left alone for longer (common practice, no source)."""
ASK_AHEAD_DAYS: Final = 7
"""So long before the day on which brood should be there nobody is asked for it (common practice, no source)."""
SENSED: Final = frozenset(what for what, row in TASKS.items() if row.sensed)
FOR_STAND_IN: Final = frozenset(what for what, row in TASKS.items() if row.stand_in)


@dataclass(frozen=True, slots=True)
class TaskKey:
    """What a task asks for and about what: the id of the event, place or instant that began it.

    As a text, which a log carries that answers it, ``what:about``. No room takes that text apart again.
    """

    what: What
    about: str = "start"

    def __str__(self) -> str:
        return f"{self.what}:{self.about}"


_WALL_TIME: Final = re.compile("[0-9]{2}:[0-9]{2}")

Slot = NewType("Slot", str)
"""Which turn of a day an occurrence takes: a wall-clock time of the household, an alarm, or a wish to put it off."""


def urgent_slot(key: TaskKey) -> Slot:
    """Return the turn of an alarm: its own, whatever time it is."""
    return Slot(f"urgent:{key}")


def later_slot(event_id: str) -> Slot:
    """Return the turn that was put off by this event."""
    return Slot(f"later:{event_id}")


def is_care_hour(slot: str) -> bool:
    """Say whether a turn is a time of the household's day, which moves with its care hours; others stay."""
    return _WALL_TIME.fullmatch(slot) is not None


@dataclass(frozen=True, slots=True)
class Task:
    """One thing to do. ``suggested`` is the log that 'as suggested' makes, without colony and time.

    ``stand_in``: the fields that a stand-in sees instead of these; None: it is the keeper's alone.
    """

    key: TaskKey
    need: Need
    due_at_ms: int
    urgent: bool = False
    from_gauge: bool = False
    portion: Portion | None = None
    suggested: Suggested | None = None
    reasons: tuple[Reason, ...] = ()
    cautions: tuple[Reason, ...] = ()
    stand_in: ForStandIn | None = None

    @property
    def order(self) -> tuple[bool, int, str]:
        """Alarms first, then by what is due first; the key decides where nothing else does."""
        return not self.urgent, self.due_at_ms, str(self.key)

    def as_json(self) -> PlannedTask:
        """Return the shape of docs/http-api.md, "A plan"."""
        return {
            "key": str(self.key),
            "what": self.key.what,
            "about": self.key.about,
            "need": self.need,
            "due_at_ms": self.due_at_ms,
            "urgent": self.urgent,
            "from_gauge": self.from_gauge,
            "portion": self.portion,
            "suggested": self.suggested,
            "reasons": list(self.reasons),
            "cautions": list(self.cautions),
            "stand_in": self.stand_in,
        }


def reason(code: str, **args: Any) -> Reason:
    """Return a reason, notice or caution: a code of the messages and its arguments."""
    return {"code": code, "args": args}


def about_fault(code: str, fault: FaultCode, **args: Any) -> Reason:
    """Return a reason that is about a fault; ``fault_of`` says about which."""
    return reason(code, fault=fault, **args)


def fault_of(why: Reason) -> FaultCode | None:
    """Return the fault that a reason is about; None where it is about none."""
    fault: FaultCode | None = why["args"].get("fault")
    return fault


def check_of(need: Need) -> Suggested:
    """Return the log of a look after a need, for ``Task.suggested``."""
    return {"kind": "check", "set": {"need": need}}
