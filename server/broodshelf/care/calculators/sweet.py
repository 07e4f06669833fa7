"""Sugar water, dilution, and how long a warm solution has to cool."""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import replace
from typing import Any, Final, Literal

from ...model.quantities import Estimate
from ..catalogue import foods
from ..feeding import cooling, sugar_water
from .model import Calculator, Input, Line, Refused

BY: Final[tuple[Literal["mass", "volume"], ...]] = ("mass", "volume")
USUAL_PERCENT: Final = 25.0


def _sugar_water(given: Mapping[str, Any]) -> tuple[Line, ...]:
    percent = USUAL_PERCENT if given["percent"] is None else given["percent"]
    head: tuple[Line, ...] = ()
    if given["mol_per_l"] is not None:
        percent = sugar_water.percent_from_molarity(given["mol_per_l"])
    if given["sugar_parts"] is not None:
        parts = {"sugar": given["sugar_parts"], "water": given["water_parts"] or 1.0}
        means = {way: sugar_water.percent_from_parts(parts["sugar"], parts["water"], way) for way in BY}
        if given["parts_by"] is None:
            raise Refused("parts_by", **{way: round(value, 1) for way, value in means.items()})
        percent = means[given["parts_by"]]
        head = tuple(
            Line("parts_mean", {**parts, "by": way, "percent": round(value, 1)})
            for way, value in means.items()
        )
    made = sugar_water.recipe(percent, volume_ml=given["ml"])
    return (*head, Line("weigh_sugar", {"g": round(made.sweet_g, 1)}), *_mixed(made), *_batch(honey=False))


def _dilute(given: Mapping[str, Any]) -> tuple[Line, ...]:
    food = foods()[given["food"]]
    made = sugar_water.dilution(food, given["percent"], volume_ml=given["ml"])
    sweet = Line("weigh_sweet", {"food": food.code, "g": round(made.sweet_g, 1)})
    return (sweet, *_mixed(made), *_batch(honey=food.code == "honey"))


def _mixed(made: sugar_water.Recipe) -> tuple[Line, ...]:
    strength = made.solution
    shown = {"percent": round(strength.percent_ww, 1), "g_per_l": round(strength.sugar_g_per_l, 1),
             "mol_per_l": f"{strength.mol_per_l:.3f}", "density": f"{strength.density_g_per_ml:.4f}"}  # fmt: skip
    water_ml = made.water_g / sugar_water.WATER_G_PER_ML
    return (
        Line("weigh_water", {"g": round(made.water_g, 1), "ml": round(water_ml, 1)}),
        Line("makes", {"ml": round(made.volume_ml, 1), "g": round(made.mass_g, 1)}),
        Line("strength", shown),
        *(
            Line(code, {"limit": sugar_water.SATURATED_PCT}, "reason")
            for code in sugar_water.notes(strength.percent_ww)
        ),
    )


def _batch(*, honey: bool) -> tuple[Line, ...]:
    days = sugar_water.batch_days("fridge", from_honey=honey)
    return (Line("keeps", {"days": days.best, "low": days.low, "high": days.high}),)


def _cooling(given: Mapping[str, Any]) -> tuple[Line, ...]:
    start_c, room_c = given["from_c"], given["room_c"]
    k: Estimate | float = cooling.VESSELS_PER_MIN[given["vessel"]]
    if given["later_c"] is not None and given["later_min"] is not None:
        k = cooling.k_from_two_readings(start_c, given["later_c"], room_c, given["later_min"])
        start_c = given["later_c"]
    wait = cooling.minutes_until(start_c, room_c, k, given["to_c"])
    shown = {"low": math.ceil(wait.low), "best": math.ceil(wait.best), "high": math.ceil(wait.high)}
    first = Line("wait", shown) if wait.high > 0 else Line("cool_already", {})
    return (first, Line("cooling_check", {}, "reason"), Line("cooling_spread", {}, "reason"))


_PERCENT: Final = Input("percent", "% by mass", USUAL_PERCENT, 0.1, sugar_water.SATURATED_PCT)
_ML: Final = Input("ml", "mL", 100.0, 0.1, 100_000)
_STRONGEST_MOL_PER_L: Final = (
    math.floor(100 * sugar_water.solution(sugar_water.SATURATED_PCT).mol_per_l) / 100
)
_SWEET: Final = tuple(
    code for code, food in foods().items()
    if food.need == "sugar" and food.composition is not None and food.composition.sugars_g is not None
)  # fmt: skip

SUGAR_WATER: Final = Calculator(
    "sugar_water",
    (
        replace(_PERCENT, default=None, left_out="25"),
        _ML,
        Input("sugar_parts", "parts", None, 0, 1_000_000),
        Input("water_parts", "parts", None, 1e-6, 1_000_000, left_out="1"),
        Input("parts_by", choices=BY, kind="choice"),
        Input("mol_per_l", "mol/L", None, 0.01, _STRONGEST_MOL_PER_L),
    ),
    _sugar_water,
)
DILUTE: Final = Calculator(
    "dilute",
    (
        Input("food", "", "honey", choices=_SWEET, kind="choice"),
        _PERCENT,
        _ML,
    ),
    _dilute,
)
COOLING: Final = Calculator(
    "cooling",
    (
        Input("from_c", "°C", 90.0, -10, 110),
        Input("room_c", "°C", 21.0, -10, 50),
        Input("to_c", "°C", cooling.SAFE_TO_OFFER_C, 0, 40),
        Input("vessel", "", "cup", choices=tuple(cooling.VESSELS_PER_MIN), kind="choice"),
        Input("later_c", "°C", None, -10, 110),
        Input("later_min", "min", None, 0.1, 10_000),
    ),
    _cooling,
)
