"""Founding: a queen left in peace, and when her first workers are fed.

Common practice, no source, but for the choice to feed her: claustral queens of Lasius niger that were fed raised
more pupae and workers ("Claustral colony founding is limited by body condition", abstract).
"""

from __future__ import annotations

import datetime as dt
import math
from typing import Final

from ...model.facts import ColonyState
from ...model.kinds.plan import Reason
from ...model.quantities import Estimate, within
from ...model.tasks import reason
from ..catalogue import Species
from .history import History, local_day

QUIET_LOOK_DAYS: Final = 7
"""At most one quiet look a week."""
FIRST_FOOD_DAYS: Final = (2, 7)
"""The first food comes so many days after the first workers."""
STAGE_LOSS_PCT: Final = (25.3, 19.4, 3.9, 4.2)
LOSS_SPREAD_PCT: Final = 7.5
"""Loss in each of four successive stages from egg to worker, and the spread of the total: Camponotus kiusiuensis,
claustral founding, Ito 1988 (abstract). No other genus was found; elsewhere it is a guess."""


def left_in_peace(
    state: ColonyState, species: Species, history: History, today: dt.date
) -> tuple[Reason, ...]:
    """Return the notices for a claustral queen without workers: the rule, the next quiet look, the choice to feed."""
    quiet_days = 0
    if history.looked_ms is not None:
        since_days = (today - local_day(history.looked_ms, state.utc_offset_min)).days
        quiet_days = max(0, QUIET_LOOK_DAYS - since_days)
    look = reason("quiet_for", days=quiet_days) if quiet_days else reason("quiet_look")
    if species.guild == "fungus_grower":
        return (reason("claustral_fungus"), look)
    rule = reason("claustral")
    return (rule, look) if species.guild == "harvester" else (rule, look, reason("fed_queens_choice"))


def first_food_days(state: ColonyState, history: History) -> tuple[dt.date, dt.date] | None:
    """Return from and until which day the first food is given, or None where nobody saw the first workers come.

    That is seen when a count without workers comes before the first with some, or the stage is still founding.
    """
    watched = state.stage == "founding"
    for count in history.counts:
        if count.any_workers is False:
            watched = True
        elif count.any_workers:
            first = local_day(count.at_ms, state.utc_offset_min)
            low, high = (first + dt.timedelta(days=days) for days in FIRST_FOOD_DAYS)
            return (low, high) if watched else None
    return None


def first_workers_ms(history: History) -> int | None:
    """Return when workers were first counted; before that a claustral queen could not be fed. None: never."""
    return next((count.at_ms for count in history.counts if count.any_workers), None)


def workers_from_eggs(eggs: float) -> Estimate:
    """Return how many first workers so many eggs (0..1000, else ``OutOfRange``) may give a founding queen.

    The share is the product of what survives each stage. Example: 20 eggs give 11, 10 to 13.
    """
    within("eggs", eggs, "eggs", 0, 1000)
    share = math.prod(1 - loss / 100 for loss in STAGE_LOSS_PCT)
    spread = LOSS_SPREAD_PCT / 100
    return Estimate(eggs * (share - spread), eggs * share, eggs * (share + spread))
