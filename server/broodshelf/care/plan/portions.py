"""From milligrams to what a hand can serve, of what is in the house. How much it should be is ``ration``'s word.

Common practice, no source, where nothing is named.
"""

from __future__ import annotations

import math
from typing import Final

from ...model.facts import Lot
from ...model.kinds.log import Feeding
from ...model.kinds.plan import Portion, Reason, Suggested
from ...model.needs import Need
from ...model.quantities import DROP_UL, Estimate
from ..catalogue import foods
from ..feeding.content import content_mg
from ..feeding.food_origin import origin_verdict
from ..feeding.prey import Choice, Eaters, Wanted, has_majors, prey_portion, seed_form
from .known import Known
from .ration import Ration

FEEDER_FROM_WORKERS: Final = 300
MOST_DROPS: Final = 6
"""Whoever drinks more gets a feeder, however few they are."""
FEEDER_FROM_ML: Final = 0.1
"""Less is a drop, however many they are: a few thousand very small ants drink as little as that."""
MOST_ML: Final = 30.0
MOST_PROTEIN_MG: Final = 100_000.0
"""More than a serving of crickets for any colony that a shelf holds."""
LEAST_MG_A_ML: Final = 10.0
"""A lot that is said to hold less than 1 % is served as if it held that."""
LEAST_DRY_MG: Final = 5
"""Of dry sugar: a few grains (common practice, no source)."""
INGREDIENTS: Final = frozenset({"white_sugar"})
"""In the house to be mixed: offered as they are only in a tasting."""
SUGARS: Final = ("sugar_water", "honey_water")
PREY: Final = ("cricket", "fruit_fly", "mealworm", "egg")
TINY_COLONY_PREY: Final = ("fruit_fly", "cricket", "mealworm", "egg")
"""In the order in which the trade reaches for them; fruit flies first for few small workers."""
TINY_COLONY, TINY_WORKER_MM = 20, 8.0

Reasons = tuple[Reason, ...]


def portion(ration: Ration, known: Known, only: str | None = None) -> tuple[Portion, Reasons]:
    """Return a portion (amount, unit, food_code, form; for prey a size class, where there is one a lot) and why.

    ``only``: the food that a tasting wants to offer.
    """
    if ration.need == "sugar":
        return _from_lot(
            _sugar(known, ration, only or _liked(known, "sugar", SUGARS)[0]), known
        ), ration.reasons
    if ration.need == "protein":
        made, why = _prey(known, ration, only)
        return _from_lot(made, known), (*ration.reasons, *why)
    if ration.need == "seeds":
        form = seed_form(majors=_majors(known))
        made = {"food_code": only or "seeds", "amount": _seeds(known.workers), "unit": "seed", "form": form}
        return _from_lot(made, known), ()
    leaves = max(1, round(known.workers / 500))
    return {"food_code": "leaves", "amount": leaves, "unit": "leaf", "form": "whole"}, ()


def suggested(need: Need, portion_: Portion) -> Suggested:
    """Return the operation that 'log as suggested' makes, without colony and time."""
    return {"kind": "feeding", "set": {"need": need, **portion_, "suggested": True}}


def serves(food_code: str | None, need: Need) -> bool:
    """Say whether a food is one for this need."""
    return food_code is not None and foods()[food_code].need == need


def is_prey(served: Portion) -> bool:
    """Say whether a portion is an animal."""
    return bool(foods()[served["food_code"]].sizes)


def _sugar(known: Known, ration: Ration, code: str) -> Portion:
    if (unit := foods()[code].unit) not in ("drop", "ml"):
        if unit != "mg":
            return {"food_code": code, "amount": 1, "unit": unit, "form": "piece"}
        amount = max(LEAST_DRY_MG, round(ration.aim_mg))
        return {"food_code": code, "amount": amount, "unit": unit, "form": "whole"}
    lot = lot_of(code, known)
    a_ml = Feeding(need="sugar", food_code=code, amount=1, unit="ml")
    in_a_ml = content_mg(a_ml, lot.percent_ww if lot else None)[1]
    wanted_ul = 1000 * min(ration.aim_mg, ration.most_mg) / max(LEAST_MG_A_ML, in_a_ml or 0.0)
    drops, ml = max(1, math.floor(wanted_ul / DROP_UL + 1e-9)), min(MOST_ML, _poured_ml(wanted_ul / 1000))
    if drops > MOST_DROPS or (known.workers > FEEDER_FROM_WORKERS and ml >= FEEDER_FROM_ML):
        return {"food_code": code, "amount": ml, "unit": "ml", "form": "feeder"}
    return {"food_code": code, "amount": drops, "unit": "drop", "form": "drop"}


def _poured_ml(wanted_ml: float) -> float:
    """Round down to what a syringe shows: steps of a drop, tenths from half a mL on, halves from two mL on."""
    steps = 20 if wanted_ml < 0.5 else 10 if wanted_ml < 2 else 2
    return math.floor(wanted_ml * steps + 1e-9) / steps


def _prey(known: Known, ration: Ration, only: str | None) -> tuple[Portion, Reasons]:
    kind, state = known.species, known.state
    small = known.workers <= TINY_COLONY and known.worker_mm < TINY_WORKER_MM
    options = _liked(known, "protein", TINY_COLONY_PREY if small else PREY)
    per_day = ration.mg_per_day.best if ration.mg_per_day is not None else 0.0
    last = ration.last.said if ration.last is not None else None
    served = prey_portion(
        Wanted(
            Estimate.exactly(min(MOST_PROTEIN_MG, per_day * ration.days)), ration.days,
            aim_mg=min(MOST_PROTEIN_MG, ration.aim_mg), most_mg=ration.most_mg,
        ),
        Eaters(
            known.worker_mm, known.workers, majors=_majors(known), slow=kind.slow,
            hunts_by_sight=kind.hunts_by_sight, in_tube=known.in_tube,
        ),
        Choice(
            (only,) if only else options, _at_home(state.lots, known.today),
            last=None if last is None else (last.food_code, last.size_class, last.unit),
        ),
    )  # fmt: skip
    return served.as_portion(), served.reasons


def _majors(known: Known) -> bool:
    return has_majors(
        species_has=known.species.majors, workers=known.workers, nanitics=known.switched.nanitics
    )


def _liked(known: Known, need: Need, options: tuple[str, ...]) -> tuple[str, ...]:
    """Return what may be offered, first what is in the house; refused foods only when nothing else is left."""
    table, state = foods(), known.state
    fitting = tuple(o for o in options if table[o].need == need and known.species.guild in table[o].serves)
    liked = tuple(o for o in fitting or options if o not in state.refused_foods) or fitting or options
    at_home = {lot.food_code for lot in state.lots if _offerable(lot, known.today)}
    more = tuple(
        code for code in sorted(at_home)
        if code not in (*options, *INGREDIENTS, *state.refused_foods) and table[code].need == need
        and known.species.guild in table[code].serves
    )  # fmt: skip
    return tuple(sorted((*liked, *more), key=lambda code: code not in at_home))


def _at_home(lots: tuple[Lot, ...], today: str) -> frozenset[tuple[str, str | None]]:
    """Return the foods in the house with their size class; None: nobody said, or it comes in one size only."""
    return frozenset(
        (lot.food_code, lot.size_class if len(foods()[lot.food_code].sizes) > 1 else None)
        for lot in lots
        if _offerable(lot, today)
    )


def _from_lot(made: Portion, known: Known) -> Portion:
    lot = lot_of(made["food_code"], known, made.get("size_class"))
    return made if lot is None else {**made, "lot_id": lot.id, "origin": lot.origin}


def lot_of(food_code: str, known: Known, size_class: str | None = None) -> Lot | None:
    """Return the first lot of a food that may be offered today; of a size class where the portion has one."""
    fitting = (
        lot for lot in known.state.lots
        if lot.food_code == food_code and _offerable(lot, known.today)
        and (size_class is None or lot.size_class in (None, size_class))
    )  # fmt: skip
    return next(fitting, None)


def _offerable(lot: Lot, today: str) -> bool:
    """Say whether a plan may suggest a lot today: while something is left, and no tinted one.

    That only the keeper offers, to one colony for one day.
    """
    if lot.food_code not in foods() or lot.tint or lot.finished:
        return False
    if (lot.hold_until and today < lot.hold_until) or (lot.use_by and lot.use_by < today):
        return False
    return origin_verdict(lot.origin, got_on=lot.got_on, today=today).offerable


def _seeds(workers: float) -> int:
    return max(3, min(500, round(workers / 4)))
