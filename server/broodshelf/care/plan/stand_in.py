"""What a stand-in is asked for, and in which words: looks, water, food and what goes wrong, never what is a keeper's.

No nest moves, no counts, no live prey, no questions about the colony's life. Whoever never saw a tube is told step by
step what to do (``steps``). Common practice, no source.
"""

from __future__ import annotations

from typing import Final

from ...model.facts import proposed
from ...model.kinds.log import Water
from ...model.kinds.plan import ForStandIn, Portion, Suggested
from ...model.tasks import FOR_STAND_IN, Task, What, check_of, fault_of, reason
from . import steps

WATER: Final[frozenset[What]] = frozenset({"water", "water_look", "leak", "rest_water", "dry_air"})
NOT_DEAD: Final = frozenset({"live", "stunned"})


def for_stand_in(task: Task, *, in_tube: bool) -> ForStandIn | None:
    """Return what a stand-in sees instead of the keeper's own fields of a task; None: it is not asked for."""
    what = task.key.what
    if what not in FOR_STAND_IN:
        return None
    if what in WATER:
        return _water(task, in_tube=in_tube)
    if what == "fault" and (fault := fault_of(task.reasons[0])) is not None:
        return {"suggested": None, "reasons": steps.of_fault(fault)}
    if what in steps.PLACES:
        return {"suggested": None, "reasons": [task.reasons[0], *steps.of_place(what)]}
    if task.portion is not None and task.portion["form"] in NOT_DEAD:
        return _killed(task.portion, task.suggested)
    told = steps.of_food(task) if task.portion is not None else steps.of_look(what)
    return {"reasons": told} if told else {}


def _water(task: Task, *, in_tube: bool) -> ForStandIn:
    looked = check_of("water")
    if in_tube:
        return {"suggested": looked, "reasons": steps.of_tube()}
    water = proposed(task.suggested, Water)
    if water is None or water.action == "read":
        return {"suggested": looked, "reasons": steps.of_nest(None, fills=False)}
    return {"reasons": steps.of_nest(water.amount_ml, fills=True)}


def _killed(portion: Portion, log: Suggested | None) -> ForStandIn:
    return {
        "portion": {**portion, "form": "whole_dead"},
        "suggested": None if log is None else {**log, "set": {**log["set"], "form": "whole_dead"}},
        "reasons": [reason("helper_dead"), *map(reason, steps.PREY[1:])],
    }
