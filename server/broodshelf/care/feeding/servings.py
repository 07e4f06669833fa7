"""Everything that can be put before a colony from a list of foods: whole prey by size, a leg, a slice, a crumb."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from functools import lru_cache
from typing import Final, Literal

from ...model.kinds.words import SizeClass
from ...model.quantities import Estimate
from ..catalogue import Food, PreySize, foods

LEG_FROM_MM: Final = 6.0
"""Shorter prey has legs too small to hold in tweezers (common practice, no source)."""
SLICE_FROM_MM: Final = 10.0
"""Shorter prey is not cut into slices (common practice, no source)."""
Part = Literal["piece", "leg", "slice"]


@dataclass(frozen=True, slots=True)
class Serving:
    """One piece, leg or slice: its length (0: a crumb), its protein and how far down the keeper's list it stands.

    ``size_class`` None: the food comes in one size only. ``shortest``: no shorter piece of this food exists.
    """

    food_code: str
    size_class: SizeClass | None
    length_mm: float
    unit: Part
    protein_mg: Estimate
    rank: int
    shortest: bool = False


def protein_mg_of(food: Food, size: PreySize | None = None) -> Estimate | None:
    """Return the crude protein (N x 6.25) in one piece, mg; None where mass or composition is unknown."""
    made_of = size.composition if size else food.composition
    mass = size.mass_mg if size else Estimate.exactly(food.mass_mg) if food.mass_mg else None
    if mass is None or made_of is None or made_of.protein_g is None:
        return None
    return mass.times(made_of.protein_g / 100)


@lru_cache(maxsize=256)  # tests.bench.plan_cost
def servings_of(options: tuple[str, ...]) -> tuple[Serving, ...]:
    """Return every serving of known protein from these food codes; what is no protein food is passed over."""
    known = foods()
    listed = [known[code] for code in options if code in known and known[code].need == "protein"]
    return tuple(serving for rank, food in enumerate(listed) for serving in _of_food(food, rank))


def _of_food(food: Food, rank: int) -> Iterator[Serving]:
    if not food.sizes:
        if (crumb := protein_mg_of(food)) is not None:
            yield Serving(food.code, None, 0.0, "piece", crumb, rank)
        return
    shortest_mm = min(_middle_mm(size) for size in food.sizes)
    for size in food.sizes:
        protein, middle_mm = protein_mg_of(food, size), _middle_mm(size)
        if protein is None:
            continue
        code = size.code if len(food.sizes) > 1 else None
        yield Serving(food.code, code, middle_mm, "piece", protein, rank, middle_mm == shortest_mm)
        if food.leg_share is not None and middle_mm >= LEG_FROM_MM:
            yield Serving(food.code, code, middle_mm, "leg", protein.times(food.leg_share), rank)
        if food.slice_share is not None and middle_mm >= SLICE_FROM_MM:
            yield Serving(food.code, code, middle_mm, "slice", protein.times(food.slice_share), rank)


def _middle_mm(size: PreySize) -> float:
    return sum(size.length_mm) / 2
