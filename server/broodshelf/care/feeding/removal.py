"""How long a food may lie before it is taken out: one answer for the task, the portion and the next feeding.

All figures are common practice, no source: prey 24 h, egg or jelly 12 to 24 h, fruit 24 h, an open drop 2 to 3 days,
a closed feeder 5 to 7 days, and less for honey, which ferments (catalogue/foods.toml).
"""

from __future__ import annotations

from typing import Final

from ...model.kinds.log import Feeding
from ...model.quantities import Estimate
from ..catalogue import foods

SPREAD: Final = 0.2
"""The ranges of the trade lie about a fifth to either side of their middle: 2 to 3 days, 5 to 7 days."""


def remove_after_h(feeding: Feeding) -> float | None:
    """Return after how many hours a feeding is taken out; None: it may stay, or is not known."""
    food = foods().get(feeding.food_code or "")
    if food is None:
        return None
    in_feeder = feeding.form == "feeder"
    return food.feeder_h if in_feeder and food.feeder_h is not None else food.remove_after_h


def fresh_days(feeding: Feeding) -> Estimate | None:
    """Return for how many days a feeding stays good, as ``remove_after_h`` says, with the trade's spread."""
    hours = remove_after_h(feeding)
    return None if hours is None else Estimate(1 - SPREAD, 1, 1 + SPREAD).times(hours / 24)
