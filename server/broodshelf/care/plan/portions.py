"""How much of what: portions that can be served with a hand. Common practice, no source, where nothing is named."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from ..catalogue import Species, foods
from ..feeding.food_origin import origin_verdict
from .state import ColonyState, Lot

FEEDER_FROM_WORKERS = 300
SMALL_WORKER_MM = 4.0
"""Below this length prey is always freshly killed and cut (common practice, no source)."""


def portion(
    need: str, state: ColonyState, species: Species, workers: float, *, in_tube: bool, today: str
) -> dict[str, Any]:
    """Return a portion for a food need: amount, unit, food_code, form and, for prey, a size class or lot."""
    if need == "sugar":
        return _sugar(state, species, workers, today)
    if need == "protein":
        return _prey(state, species, workers, in_tube, today)
    if need == "seeds":
        return _from_lot(
            {"food_code": "seeds", "amount": _seeds(workers), "unit": "seed", "form": "whole"}, state, today
        )
    return {"food_code": "leaves", "amount": max(1, round(workers / 500)), "unit": "leaf", "form": "whole"}


def suggested(need: str, portion_: Mapping[str, Any]) -> dict[str, Any]:
    """Return the operation that 'log as suggested' makes, without colony and time."""
    return {"kind": "feeding", "set": {"need": need, **portion_, "suggested": True}}


def _sugar(state: ColonyState, species: Species, workers: float, today: str) -> dict[str, Any]:
    base: dict[str, Any] = {"food_code": _choose("sugar", state, species, ("sugar_water", "honey_water"))}
    if workers > FEEDER_FROM_WORKERS:
        base |= {"amount": round(min(20.0, 0.5 + workers / 1000), 1), "unit": "ml", "form": "feeder"}
    else:
        base |= {"amount": max(1, min(4, round(workers / 50))), "unit": "drop", "form": "drop"}
    return _from_lot(base, state, today)


def _prey(state: ColonyState, species: Species, workers: float, in_tube: bool, today: str) -> dict[str, Any]:
    length_mm = sum(species.worker_mm) / 2
    small = workers <= 20 or length_mm < SMALL_WORKER_MM
    if workers <= 20 and length_mm < 8:
        options: tuple[str, ...] = ("fruit_fly", "cricket", "mealworm", "egg")
    else:
        options = ("cricket", "mealworm", "fruit_fly", "egg")
    food = _choose("protein", state, species, options)
    made: dict[str, Any] = {
        "food_code": food,
        "form": "cut" if small and food != "fruit_fly" else "whole_dead",
    }
    if food == "egg":
        return _from_lot({"food_code": food, "form": "piece", "amount": 1, "unit": "piece"}, state, today)
    if food == "fruit_fly":
        made |= {"amount": max(1, min(6, round(workers / 10))), "unit": "piece"}
    elif food == "cricket" and workers <= 20 and length_mm < 8:
        made |= {"amount": 1, "unit": "leg", "size_class": "small", "form": "cut"}
    else:
        size, per_piece = (
            ("extra_small", 40) if workers <= 100 else ("small", 150) if workers <= 1_000 else ("medium", 600)
        )
        made |= {"amount": max(1, min(30, round(workers / per_piece))), "unit": "piece"}
        if food == "cricket":
            made["size_class"] = size
    if in_tube and made["form"] == "live":  # nothing live goes into a test tube
        made["form"] = "whole_dead"
    return _from_lot(made, state, today)


def _choose(need: str, state: ColonyState, species: Species, options: tuple[str, ...]) -> str:
    """Prefer what is in the house and was not refused lately; else the first that serves the guild."""
    known = foods()
    fitting = [o for o in options if known[o].need == need and species.guild in known[o].serves] or list(
        options
    )
    liked = [o for o in fitting if o not in state.refused_foods] or fitting
    at_home = {lot.food_code for lot in state.lots}
    return next((o for o in liked if o in at_home), liked[0])


def _from_lot(made: dict[str, Any], state: ColonyState, today: str) -> dict[str, Any]:
    lot = next(
        (lot for lot in state.lots if lot.food_code == made["food_code"] and _offerable(lot, today)), None
    )
    return made if lot is None else {**made, "lot_id": lot.id, "origin": lot.origin}


def _offerable(lot: Lot, today: str) -> bool:
    if (lot.hold_until and today < lot.hold_until) or (lot.use_by and lot.use_by < today):
        return False
    return origin_verdict(lot.origin, got_on=lot.got_on, today=today).offerable


def _seeds(workers: float) -> int:
    return max(3, min(500, round(workers / 4)))
