"""What a feeding held: its protein and its sugar in mg, as far as anybody knows."""

from __future__ import annotations

from collections.abc import Mapping
from functools import lru_cache
from typing import Final

from ...model.kinds.log import Feeding
from ...model.quantities import DROP_UL
from ..catalogue import Food, foods
from .servings import protein_mg_of
from .stores import PERCENT_WW, USUAL_PERCENT_WW, sugar_mg

_HONEY_MG_PER_UL: Final = 1.42
"""Honey of 17 % water at 20 °C (from memory); syrups thicker than sugar dissolves are taken alike."""
_MICROLITRES: Final[Mapping[str, float]] = {"drop": DROP_UL, "ml": 1000.0}


def strength_percent_ww(food_code: str, lot_percent_ww: float | None = None) -> float:
    """Return the sugar of a liquid in % w/w: what the lot says, else the food's composition, else 30 %."""
    if lot_percent_ww is not None:
        return lot_percent_ww
    food = foods().get(food_code)
    made_of = food.composition if food else None
    return made_of.sugars_g if made_of is not None and made_of.sugars_g is not None else USUAL_PERCENT_WW


def content_mg(feeding: Feeding, lot_percent_ww: float | None = None) -> tuple[float | None, float | None]:
    """Return protein and sugar [mg] of a feeding, by its food, amount, unit and size class; None: unknown."""
    return _content_mg(feeding.food_code, feeding.amount, feeding.unit, feeding.size_class, lot_percent_ww)


@lru_cache(maxsize=1024)  # tests.bench.plan_cost: a sixth of a plan
def _content_mg(
    food_code: str | None,
    amount: float | None,
    unit: str | None,
    size_class: str | None,
    percent: float | None,
) -> tuple[float | None, float | None]:
    """The same few feedings come again and again."""
    food = foods().get(food_code or "")
    if food is None or amount is None:
        return None, None
    if food.need == "protein":
        return _protein_mg(food, float(amount), str(unit), size_class), 0.0
    return (0.0, _sugar_mg(food, float(amount), str(unit), percent)) if food.need == "sugar" else (None, None)


def _sugar_mg(food: Food, amount: float, unit: str, lot_percent_ww: float | None) -> float | None:
    if unit in _MICROLITRES:
        percent = strength_percent_ww(food.code, lot_percent_ww)
        volume_ul = amount * _MICROLITRES[unit]
        if percent <= PERCENT_WW[1]:
            return sugar_mg(volume_ul, percent)
        return volume_ul * _HONEY_MG_PER_UL * percent / 100
    made_of = food.composition
    mass_mg = amount if unit == "mg" else amount * food.mass_mg if food.mass_mg else None
    if mass_mg is None or made_of is None or made_of.sugars_g is None:
        return None
    return mass_mg * made_of.sugars_g / 100


def _protein_mg(food: Food, amount: float, unit: str, size_class: str | None) -> float | None:
    if unit == "mg":
        made_of = food.composition
        return None if made_of is None or made_of.protein_g is None else amount * made_of.protein_g / 100
    size = next((s for s in food.sizes if s.code == size_class), food.sizes[0] if food.sizes else None)
    piece = protein_mg_of(food, size)
    if piece is None:
        return None
    if unit in ("leg", "slice"):
        share = food.leg_share if unit == "leg" else food.slice_share
        return None if share is None else amount * piece.best * share
    return amount * piece.best
