"""Sugar water at 20 °C: strength in every unit, recipes, dilution, and how long a batch keeps.

Strength is percent by mass (% w/w): g of sugar in 100 g of solution. The densities are those of the CRC Handbook
of Chemistry and Physics, "Concentrative properties of aqueous solutions", read second-hand in two transcripts
that agree.
"""

from __future__ import annotations

from bisect import bisect_right
from dataclasses import dataclass
from typing import Final, Literal

from ...model.quantities import Estimate, within
from ..catalogue import Food

SUCROSE_G_PER_MOL: Final = 342.2965
WATER_G_PER_ML: Final = 0.9982
SATURATED_PCT: Final = 67.09
"""All that dissolves at 20 °C (CRC Handbook, older data by Herzfeld, second-hand; newer data say 66.74)."""
BULK_SUGAR_G_PER_ML: Final = 0.85
"""Granulated sugar, poured and not pressed (from memory; a spoon may hold a tenth more or less)."""
CROP_FILLS_BEST_PCT: Final = 42.6
INTAKE_FASTEST_PCT: Final = 30.8
"""Camponotus mus (Josens, Farina & Roces 1998, J. Insect Physiol. 44:579-585, abstract)."""

_DENSITY: Final = (
    (0, 998.2), (1, 1002.1), (2, 1006.0), (3, 1009.9), (4, 1013.9), (5, 1017.8), (6, 1021.8), (7, 1025.9),
    (8, 1029.9), (9, 1034.0), (10, 1038.1), (12, 1046.5), (14, 1054.9), (16, 1063.5), (18, 1072.2), (20, 1081.0),
    (22, 1089.9), (24, 1099.0), (26, 1108.2), (28, 1117.5), (30, 1127.0), (32, 1136.6), (34, 1146.4),
    (36, 1156.2), (38, 1166.3), (40, 1176.5), (42, 1186.8), (44, 1197.2), (46, 1207.9), (48, 1218.6),
    (50, 1229.5), (52, 1240.6), (54, 1251.8), (56, 1263.2), (58, 1274.7), (60, 1286.4), (62, 1298.3),
    (64, 1310.3), (66, 1322.4), (68, 1334.8),
)  # fmt: skip
"""Percent by mass and g/L of solution."""

Kept = Literal["room", "fridge", "freezer"]
_BATCH_DAYS: Final = {
    "room": Estimate(1, 2, 3),
    "fridge": Estimate(5, 7, 10),
    "freezer": Estimate(60, 90, 180),
}
_HONEY_BATCH_DAYS: Final = {
    "room": Estimate(0.5, 1, 2),
    "fridge": Estimate(3, 4, 7),
    "freezer": Estimate(60, 90, 180),
}


@dataclass(frozen=True, slots=True)
class Solution:
    """A sugar solution at 20 °C, with its strength in the units that books and papers use."""

    percent_ww: float
    density_g_per_ml: float
    sugar_g_per_l: float
    mol_per_l: float
    mol_per_kg_water: float


@dataclass(frozen=True, slots=True)
class Recipe:
    """What to weigh: ``sweet_g`` of sugar, honey or syrup and ``water_g`` of water; 1 g of water is 1 mL."""

    sweet_g: float
    water_g: float
    volume_ml: float
    solution: Solution

    @property
    def mass_g(self) -> float:
        """The whole, in g."""
        return self.sweet_g + self.water_g


class UnknownSugars(ValueError):  # noqa: N818 - named after what is wrong
    """Nobody reports how much sugar the food holds, so it cannot be brought to a strength."""

    def __init__(self, food_code: str) -> None:
        super().__init__(f"the sugars of {food_code} are unknown; use a food whose composition names them")
        self.food_code = food_code


def density_g_per_ml(percent_ww: float) -> float:
    """Return the density at 20 °C of 0..67.09 % w/w sucrose, g/mL; between table rows within 0.00005."""
    percent = within("strength", percent_ww, "% w/w", 0, SATURATED_PCT)
    upper = bisect_right(_DENSITY, percent, key=lambda row: row[0])
    (low_pct, low), (high_pct, high) = _DENSITY[upper - 1], _DENSITY[upper]
    return (low + (high - low) * (percent - low_pct) / (high_pct - low_pct)) / 1000


def solution(percent_ww: float) -> Solution:
    """Return a sucrose solution of 0..67.09 % w/w at 20 °C; ``OutOfRange`` beyond."""
    density = density_g_per_ml(percent_ww)
    g_per_l = 10 * percent_ww * density
    water_kg = (100 - percent_ww) / 1000
    return Solution(
        percent_ww,
        density,
        g_per_l,
        g_per_l / SUCROSE_G_PER_MOL,
        percent_ww / SUCROSE_G_PER_MOL / water_kg,
    )


def percent_from_molarity(mol_per_l: float) -> float:
    """Return % w/w of a sucrose solution from mol/L at 20 °C, by halving: molarity rises with strength."""
    within("molarity", mol_per_l, "mol/L", 0, solution(SATURATED_PCT).mol_per_l)
    low, high = 0.0, SATURATED_PCT
    for _ in range(50):
        middle = (low + high) / 2
        low, high = (middle, high) if solution(middle).mol_per_l < mol_per_l else (low, middle)
    return (low + high) / 2


def percent_from_parts(sugar_parts: float, water_parts: float, by: Literal["mass", "volume"]) -> float:
    """Return % w/w of so many parts of sugar to so many of water; a recipe must say which parts it means.

    By volume the sugar is taken at its bulk density, so "1:3" is 25.0 % by mass and 22.1 % by volume.
    ``OutOfRange`` where it would not dissolve at 20 °C.
    """
    within("parts of sugar", sugar_parts, "parts", 0, 1_000_000)
    within("parts of water", water_parts, "parts", 1e-6, 1_000_000)
    sugar = sugar_parts * (BULK_SUGAR_G_PER_ML if by == "volume" else 1)
    water = water_parts * (WATER_G_PER_ML if by == "volume" else 1)
    return within("strength", 100 * sugar / (sugar + water), "% w/w", 0, SATURATED_PCT)


def recipe(percent_ww: float, *, volume_ml: float | None = None, mass_g: float | None = None) -> Recipe:
    """Return what to weigh for a strength and either a volume or a mass of solution (0.1..100,000)."""
    made = solution(percent_ww)
    mass = _mass_g(made, volume_ml, mass_g)
    sugar = mass * percent_ww / 100
    return Recipe(sugar, mass - sugar, mass / made.density_g_per_ml, made)


def dilution(
    food: Food, percent_ww: float, *, volume_ml: float | None = None, mass_g: float | None = None
) -> Recipe:
    """Return how much of a honey, syrup or jam, and how much water, gives a target of sugars in % w/w.

    The sugars count by the food's composition; volume and density are those of sucrose of that strength, within
    about 1 % for honey's glucose and fructose. ``OutOfRange`` for a target above the food's own sugars;
    ``UnknownSugars`` where no source reports them.
    """
    sugars = food.composition.sugars_g if food.composition else None
    if sugars is None:
        raise UnknownSugars(food.code)
    within("strength", percent_ww, "% w/w", 0, min(sugars, SATURATED_PCT))
    made = solution(percent_ww)
    mass = _mass_g(made, volume_ml, mass_g)
    sweet = mass * percent_ww / sugars
    return Recipe(sweet, mass - sweet, mass / made.density_g_per_ml, made)


def batch_days(kept: Kept, *, from_honey: bool = False) -> Estimate:
    """Return how many days a batch keeps. Common practice, no source; honey carries yeasts and ferments sooner."""
    return (_HONEY_BATCH_DAYS if from_honey else _BATCH_DAYS)[kept]


def notes(percent_ww: float) -> tuple[str, ...]:
    """Return the reason codes that belong to a strength, the most useful first."""
    within("strength", percent_ww, "% w/w", 0, SATURATED_PCT)
    codes = ["sugar_dissolve_warm"]
    if percent_ww > 60:
        codes.insert(0, "sugar_near_saturation")
    elif percent_ww > CROP_FILLS_BEST_PCT:
        codes.insert(0, "sugar_thick")
    elif percent_ww < 10:
        codes.insert(0, "sugar_thin")
    else:
        codes.insert(0, "sugar_good_range")
    return tuple(codes)


def _mass_g(made: Solution, volume_ml: float | None, mass_g: float | None) -> float:
    if (volume_ml is None) == (mass_g is None):
        raise ValueError("give either a volume in mL or a mass in g")
    if volume_ml is not None:
        return within("volume", volume_ml, "mL", 0.1, 100_000) * made.density_g_per_ml
    return within("mass", mass_g if mass_g is not None else 0, "g", 0.1, 100_000)
