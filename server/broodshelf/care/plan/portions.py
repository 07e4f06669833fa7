"""How much of what: portions that can be served with a hand. Common practice, no source, where nothing is named."""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from ..catalogue import foods
from ..feeding.content import DROP_UL, strength_percent_ww
from ..feeding.food_origin import origin_verdict
from ..feeding.prey import FIRST_SHARE, prey_portion, seed_form
from ..feeding.stores import FRESH_DAYS, KEPT_IN_HAND, PERCENT_WW, store_mg, sugar_mg
from ..quantities import Estimate
from .known import Known
from .state import Lot

FEEDER_FROM_WORKERS = 300
MOST_DROPS = 6
MOST_PROTEIN_MG = 100_000.0
"""More than a serving of crickets for any colony that a shelf holds."""
FEEDER_ML = (0.5, 30.0)
SUGARS = ("sugar_water", "honey_water")
PREY = ("cricket", "fruit_fly", "mealworm", "egg")
TINY_COLONY_PREY = ("fruit_fly", "cricket", "mealworm", "egg")
"""In the order in which the trade reaches for them; fruit flies first for few small workers."""
TINY_COLONY, TINY_WORKER_MM = 20, 8.0

Portion = dict[str, Any]
Reasons = tuple[Mapping[str, Any], ...]


@dataclass(frozen=True, slots=True)
class Appetite:
    """What a colony uses of sugar or protein a day, and which share of it to serve while it is being learnt."""

    mg_per_day: Estimate
    serving_share: float


def portion(
    need: str, known: Known, appetite: Appetite | None, days: float, only: str | None = None
) -> tuple[Portion, Reasons]:
    """Return a portion (amount, unit, food_code, form; for prey a size class, where there is one a lot) and why.

    ``only``: the food that a tasting wants to offer.
    """
    if need == "sugar" and appetite is not None:
        return _from_lot(_sugar(known, appetite, only or _liked(known, "sugar", SUGARS)[0]), known), ()
    if need == "protein" and appetite is not None:
        made, why = _prey(known, appetite, days, only)
        return _from_lot(made, known), why
    if need == "seeds":
        form = seed_form(majors=known.species.majors)
        made = {"food_code": only or "seeds", "amount": _seeds(known.workers), "unit": "seed", "form": form}
        return _from_lot(made, known), ()
    leaves = max(1, round(known.workers / 500))
    return {"food_code": "leaves", "amount": leaves, "unit": "leaf", "form": "whole"}, ()


def suggested(need: str, portion_: Mapping[str, Any]) -> dict[str, Any]:
    """Return the operation that 'log as suggested' makes, without colony and time."""
    return {"kind": "feeding", "set": {"need": need, **portion_, "suggested": True}}


def _sugar(known: Known, appetite: Appetite, code: str) -> Portion:
    if (unit := foods()[code].unit) not in ("drop", "ml"):
        return {"food_code": code, "amount": 1, "unit": unit, "form": "piece"}
    lot = lot_of(code, known)
    percent = min(PERCENT_WW[1], strength_percent_ww(code, lot.percent_ww if lot else None))
    fills_mg = store_mg(known.census.workers, known.worker_mg).best * KEPT_IN_HAND
    mg_per_ul = sugar_mg(1.0, max(PERCENT_WW[0], percent))
    if known.workers > FEEDER_FROM_WORKERS:
        wanted_ul = (fills_mg + appetite.mg_per_day.best * FRESH_DAYS["feeder"].best) / mg_per_ul
        ml = min(FEEDER_ML[1], max(FEEDER_ML[0], math.ceil(wanted_ul / 500) / 2))
        return {"food_code": code, "amount": ml, "unit": "ml", "form": "feeder"}
    wanted_ul = (fills_mg + appetite.mg_per_day.best * FRESH_DAYS["drop"].best) / mg_per_ul
    drops = min(MOST_DROPS, max(1, math.ceil(wanted_ul / DROP_UL)))
    return {"food_code": code, "amount": drops, "unit": "drop", "form": "drop"}


def _prey(known: Known, appetite: Appetite, days: float, only: str | None) -> tuple[Portion, Reasons]:
    kind = known.species
    tiny = known.workers <= TINY_COLONY and known.worker_mm < TINY_WORKER_MM
    share = appetite.serving_share
    first = share <= FIRST_SHARE  # nothing was eaten up yet
    needed_mg = appetite.mg_per_day.best * days * (1.0 if first else share)
    served = prey_portion(
        min(MOST_PROTEIN_MG, needed_mg),
        worker_length_mm=known.worker_mm, majors=kind.majors, workers=known.workers,
        hunts_by_sight=kind.hunts_by_sight, slow=kind.slow, in_tube=known.in_tube,
        options=(only,) if only else _liked(known, "protein", TINY_COLONY_PREY if tiny else PREY),
        for_days=days, first_third=first,
    )  # fmt: skip
    return served.as_portion(), served.reasons


def _liked(known: Known, need: str, options: tuple[str, ...]) -> tuple[str, ...]:
    """Return what may be offered, first what is in the house; refused foods only when nothing else is left."""
    table, state = foods(), known.state
    fitting = tuple(o for o in options if table[o].need == need and known.species.guild in table[o].serves)
    liked = tuple(o for o in fitting or options if o not in state.refused_foods) or fitting or options
    at_home = {lot.food_code for lot in state.lots if _offerable(lot, known.today)}
    more = tuple(
        code for code in sorted(at_home)
        if code not in options and code not in state.refused_foods and table[code].need == need
        and known.species.guild in table[code].serves
    )  # fmt: skip
    return tuple(sorted((*liked, *more), key=lambda code: code not in at_home))


def _from_lot(made: Portion, known: Known) -> Portion:
    lot = lot_of(made["food_code"], known)
    return made if lot is None else {**made, "lot_id": lot.id, "origin": lot.origin}


def lot_of(food_code: str, known: Known) -> Lot | None:
    """Return the first lot of a food that may be offered today."""
    return next(
        (lot for lot in known.state.lots if lot.food_code == food_code and _offerable(lot, known.today)), None
    )


def _offerable(lot: Lot, today: str) -> bool:
    if lot.food_code not in foods():
        return False
    if (lot.hold_until and today < lot.hold_until) or (lot.use_by and lot.use_by < today):
        return False
    return origin_verdict(lot.origin, got_on=lot.got_on, today=today).offerable


def _seeds(workers: float) -> int:
    return max(3, min(500, round(workers / 4)))
