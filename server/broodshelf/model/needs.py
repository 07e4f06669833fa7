"""What a colony can ask for, and what can go wrong: one row each. The phone gets both tables with the catalogue."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Final, Literal, get_args

FoodNeed = Literal["sugar", "protein", "seeds", "leaves"]
Need = Literal[FoodNeed, "water", "leftovers", "room", "barrier", "rest", "glance"]
FaultCode = Literal["leak", "flood", "mould", "escape", "mites", "many_dead", "heater"]
Answer = Literal["feeding", "water", "check", "move"]
"""The kinds of events that answer a need."""


@dataclass(frozen=True, slots=True, kw_only=True)
class NeedRow:
    """One need.

    ``food``: it is met by something to eat. ``answered_by``: the kind of event that meets it. ``may_wait``: a rule or a
    pause of the keeper may put it off; what may not waits for hours at most. ``keeper_sets``: the keeper may give it a
    rhythm of their own; what is seen and measured follows that alone. ``stand_in``: a stand-in may see to it.
    """

    food: bool = False
    answered_by: Answer = "check"
    may_wait: bool = True
    keeper_sets: bool = False
    stand_in: bool = True


FOOD_NEEDS: Final[tuple[FoodNeed, ...]] = get_args(FoodNeed)

NEEDS: Final[Mapping[Need, NeedRow]] = {
    **dict.fromkeys(FOOD_NEEDS, NeedRow(food=True, answered_by="feeding", keeper_sets=True)),
    "water": NeedRow(answered_by="water", may_wait=False),  # a leak may be behind it
    "leftovers": NeedRow(may_wait=False),  # mould may be behind them
    "room": NeedRow(answered_by="move", may_wait=False, stand_in=False),
    "barrier": NeedRow(keeper_sets=True),
    "rest": NeedRow(stand_in=False),
    "glance": NeedRow(keeper_sets=True),
}
ALL_FOOD: Final[frozenset[Need]] = frozenset(FOOD_NEEDS)
CANNOT_WAIT: Final = frozenset(need for need, row in NEEDS.items() if not row.may_wait)


@dataclass(frozen=True, slots=True, kw_only=True)
class FaultRow:
    """One fault.

    ``touches``: the need under which it is seen to. ``of_nest``: it stays behind with the nest that they left.
    ``drives_out``: a nest with it may be emptied by force. ``loses_water``: it explains water that went too fast.
    ``first_step``: what a stand-in can do about it, as a reason code; None: only call the keeper.
    """

    touches: Need = "glance"
    of_nest: bool = False
    drives_out: bool = False
    loses_water: bool = False
    first_step: str | None = None


FAULTS: Final[Mapping[FaultCode, FaultRow]] = {
    "leak": FaultRow(touches="water", of_nest=True, loses_water=True, first_step="helper_wet"),
    "flood": FaultRow(
        touches="water", of_nest=True, drives_out=True, loses_water=True, first_step="helper_wet"
    ),
    "mould": FaultRow(touches="room", of_nest=True),
    "escape": FaultRow(touches="barrier", first_step="helper_escape"),
    "mites": FaultRow(),
    "many_dead": FaultRow(),
    "heater": FaultRow(first_step="helper_heater"),
}
