"""What to do step by step, for a stand-in who never saw a tube of ants: take, how much, where, what not, when to call.

Three to five steps a task. Common practice, no source.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from ...model.kinds.plan import Reason
from ...model.needs import FAULTS, FaultCode
from ...model.tasks import TASKS, Task, What, reason

Steps = list[Reason]

TUBE: Final = ("tube_step_still", "tube_step_find", "tube_step_good", "tube_step_bad")
NEST_LOOK: Final = ("nest_step_look", "nest_step_still", "nest_step_bad")
DROPS: Final = ("drop_step_take", "drop_step_place", "drop_step_small", "food_step_close", "food_step_bad")
FEEDER: Final = (
    "feeder_step_out",
    "feeder_step_fill",
    "feeder_step_back",
    "food_step_close",
    "food_step_bad",
)
PREY: Final = ("prey_step_take", "prey_step_place", "food_step_only", "food_step_close", "food_step_bad")
CUT_PREY: Final = ("prey_step_take", "prey_step_cut", "prey_step_place", "food_step_only", "food_step_bad")
SEEDS: Final = ("seed_step_take", "seed_step_place", "food_step_close", "food_step_bad")
LEAVES: Final = ("leaf_step_take", "leaf_step_rinse", "leaf_step_place", "food_step_close", "food_step_bad")
PIECES: Final = ("piece_step_take", "piece_step_place", "food_step_only", "food_step_close", "food_step_bad")

PLACES: Final[Mapping[What, str | None]] = {
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


def of_tube() -> Steps:
    """Return how to look after the water of a test tube, which a stand-in never fills."""
    return _in_words(TUBE)


def of_nest(ml: float | None, *, fills: bool) -> Steps:
    """Return how to water a nest with ``ml``, None where nobody measured how much; or only how to look at its water."""
    if not fills:
        return _in_words(NEST_LOOK)
    drip = reason("nest_step_drip") if ml is None else reason("nest_step_drip_ml", ml=ml)
    return [reason("nest_step_place"), drip, reason("nest_step_stop"), reason("nest_step_bad")]


def of_fault(fault: FaultCode) -> Steps:
    """Return the first steps where something is wrong: nothing but to call, what protects until then, what to say."""
    return _calling(FAULTS[fault].first_step)


def of_place(what: What) -> Steps:
    """Return the first steps about the warmth of a place."""
    return _calling(PLACES[what])


def of_look(what: What) -> Steps:
    """Return how to do what asks for no food and no water; none for what is no stand-in's."""
    return _in_words(TASKS[what].steps)


def of_food(task: Task) -> Steps:
    """Return how to give a portion: a drop, a feeder, prey whole or cut, seeds, leaves or a piece of something."""
    portion = task.portion
    form, unit = (None, None) if portion is None else (portion["form"], portion["unit"])
    if form == "feeder":
        return _in_words(FEEDER)
    if unit in ("drop", "ml"):
        return _in_words(DROPS)
    if task.need == "seeds":
        return _in_words(SEEDS)
    if task.need == "leaves":
        return _in_words(LEAVES)
    if form == "cut" or unit in ("leg", "slice"):
        return _in_words(CUT_PREY)
    return _in_words(PREY if form in ("whole_dead", "crushed") else PIECES)


def _calling(first: str | None) -> Steps:
    return _in_words(("helper_call", *((first,) if first is not None else ()), "helper_tell"))


def _in_words(codes: tuple[str, ...]) -> Steps:
    return [reason(code) for code in codes]
