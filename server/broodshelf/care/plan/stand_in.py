"""What a stand-in is asked for, and in which words: looks, water, food and what goes wrong, never what is a keeper's.

No nest moves, no counts, no live prey, no questions about the colony's life. Whoever never saw a tube is told step by
step what to do. Common practice, no source.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any, Final

from ...model.needs import FAULTS
from ...model.tasks import FOR_STAND_IN, Task, What, check_of, reason

WATER: Final[frozenset[What]] = frozenset({"water", "water_look", "leak", "rest_water", "dry_air"})
PLACE_STEPS: Final[Mapping[What, str | None]] = {
    "too_hot": "helper_heater",
    "overheating": "helper_heater",
    "rising_fast": "helper_heater",
    "heater_on": "helper_heater",
    "heater_off": None,
    "too_cold": None,
    "freezing": None,
    "fridge_open": "helper_fridge",
}
"""What a stand-in may do at once about the warmth of a place, besides calling."""
NOT_DEAD: Final = frozenset({"live", "stunned"})
TUBE_STEPS: Final = ("tube_step_still", "tube_step_find", "tube_step_good", "tube_step_bad")


def for_stand_in(task: Task, *, in_tube: bool) -> Mapping[str, Any] | None:
    """Return what a stand-in sees instead of the keeper's own fields of a task; None: it is not asked for."""
    what = task.key.what
    if what not in FOR_STAND_IN:
        return None
    if what in WATER:
        return _water(task, in_tube=in_tube)
    if what == "fault":
        step = FAULTS[task.reasons[0]["args"]["fault"]].first_step
        steps = [reason("helper_call"), *([reason(step)] if step is not None else [])]
        return {"suggested": None, "reasons": steps}
    if what in PLACE_STEPS:
        step = PLACE_STEPS[what]
        steps = [reason("helper_call"), *([reason(step)] if step is not None else [])]
        return {"suggested": None, "reasons": [task.reasons[0], *steps]}
    if what == "glance":
        return {"reasons": [reason("helper_glance")]}
    if task.portion is not None and task.portion.get("form") in NOT_DEAD:
        return _killed(task)
    return {}


def _water(task: Task, *, in_tube: bool) -> Mapping[str, Any]:
    looked = check_of("water")
    if in_tube:
        return {"suggested": looked, "reasons": [reason(step) for step in TUBE_STEPS]}
    suggested = task.suggested
    ml = ((suggested or {}).get("set") or {}).get("amount_ml")
    if suggested is None or suggested["kind"] != "water" or suggested["set"].get("action") == "read":
        return {"suggested": looked, "reasons": [reason("nest_step_look"), reason("nest_step_bad")]}
    drip = reason("nest_step_drip") if ml is None else reason("nest_step_drip_ml", ml=ml)
    return {"reasons": [reason("nest_step_place"), drip, reason("nest_step_stop"), reason("nest_step_bad")]}


def _killed(task: Task) -> Mapping[str, Any]:
    portion = {**(task.portion or {}), "form": "whole_dead"}
    suggested = task.suggested
    if suggested is not None:
        suggested = {**suggested, "set": {**suggested["set"], "form": "whole_dead"}}
    kept = [each for each in task.reasons if each["code"] not in ("prey_live", "prey_stunned")]
    return {"portion": portion, "suggested": suggested, "reasons": [reason("helper_dead"), *kept]}
