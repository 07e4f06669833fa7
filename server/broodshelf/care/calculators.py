"""Calculators that stand by themselves: inputs with units, result lines, formula, source and limits of each.

One registry for the command line and the app. To add one, write its function and one ``Calculator`` in
``CALCULATORS``, and its words in the sections ``reckon`` and ``reckoned`` of ``catalogue/words.toml``.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping
from dataclasses import dataclass, replace
from typing import Any, Final, Literal

from .catalogue import foods
from .feeding import cooling, prey, sugar_water
from .quantities import Estimate, within
from .wording import say, say_portion

BY: Final[tuple[Literal["mass", "volume"], ...]] = ("mass", "volume")
USUAL_PERCENT: Final = 25.0
PROTEIN_MG_PER_G_WORKERS: Final = 20.0
"""Macom & Porter 1995: 0.106 g of dry cricket per g of colony and week, two thirds of it protein, is 10 mg of protein
per g and day; half of such a colony's mass is brood (Porter et al. 2015), so twice that per g of workers."""
Value = float | str | bool
Kind = Literal["number", "choice", "yes_no"]


@dataclass(frozen=True, slots=True)
class Input:
    """One thing to fill in. ``low`` and ``high`` in ``unit``, both allowed.

    ``default`` None: it may be left out, and ``left_out`` says what is taken then.
    """

    name: str
    what: str
    unit: str = ""
    default: Value | None = None
    low: float = -math.inf
    high: float = math.inf
    choices: tuple[str, ...] = ()
    kind: Kind = "number"
    left_out: str = ""


@dataclass(frozen=True, slots=True)
class Line:
    """A line of a result, worded in section ``reckoned`` (or ``reason``) of the word table."""

    code: str
    args: Mapping[str, Any]
    section: str = "reckoned"

    def __str__(self) -> str:
        return say(self.section, self.code, self.args)


@dataclass(frozen=True, slots=True)
class Calculator:
    """A calculator with everything that a person needs to trust it or not."""

    code: str
    inputs: tuple[Input, ...]
    work: Callable[[Mapping[str, Any]], tuple[Line, ...]]
    formula: str
    source: str
    limits: str

    @property
    def title(self) -> str:
        """Its name in words."""
        return say("reckon", self.code)

    def run(self, given: Mapping[str, Value | None]) -> tuple[Line, ...]:
        """Return the result lines; what is not given has its default.

        Raises ``OutOfRange`` outside a formula's range and ``ValueError`` for an unknown name or choice.
        """
        known = {each.name for each in self.inputs}
        if unknown := sorted(set(given) - known):
            raise ValueError(f"{self.code} has no input {unknown[0]}; it has {', '.join(sorted(known))}")
        return self.work({each.name: _read(each, given.get(each.name)) for each in self.inputs})


def _read(each: Input, value: Value | None) -> Value | None:
    chosen = each.default if value is None else value
    if chosen is None:
        return None
    if each.kind == "number":
        return within(each.what, float(chosen), each.unit, each.low, each.high)
    if each.kind == "choice" and chosen not in each.choices:
        raise ValueError(f"{each.name} is {chosen}; it must be one of {', '.join(each.choices)}")
    return chosen


def _sugar_water(given: Mapping[str, Any]) -> tuple[Line, ...]:
    percent = USUAL_PERCENT if given["percent"] is None else given["percent"]
    head: tuple[Line, ...] = ()
    if given["sugar_parts"] is not None:
        parts = {"sugar": given["sugar_parts"], "water": given["water_parts"] or 1.0}
        means = {way: sugar_water.percent_from_parts(parts["sugar"], parts["water"], way) for way in BY}
        if given["parts_by"] is None:
            raise ValueError(
                f"say whether the parts are by mass ({means['mass']:.1f} %) or by volume ({means['volume']:.1f} %)"
            )
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
    sweet = Line("weigh_sweet", {"food": say("food", food.code), "g": round(made.sweet_g, 1)})
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


def _prey(given: Mapping[str, Any]) -> tuple[Line, ...]:
    length_mm, workers, days = given["worker_mm"], given["workers"], given["days"]
    per_day = given["protein_mg"]
    if per_day is None:
        per_day = workers * (given["worker_mg"] or _fresh_mg(length_mm)) / 1000 * PROTEIN_MG_PER_G_WORKERS
    served = prey.prey_portion(
        per_day * days, worker_length_mm=length_mm, majors=given["majors"], workers=workers,
        hunts_by_sight=given["hunts_by_sight"], slow=given["slow"], in_tube=given["in_tube"], for_days=days,
        options=(given["food"],) if given["food"] else prey.USUAL_OPTIONS, first_third=given["first"],
    )  # fmt: skip
    protein = served.protein_mg
    need = {"need": round(per_day * days, 2), "days": days}
    counted = Line("serving_unknown", {}) if protein is None else Line("serving_protein", {
        "mg": round(protein.best, 2), "low": round(protein.low, 2), "high": round(protein.high, 2), **need,
    })  # fmt: skip
    return (
        Line("serve", {"portion": say_portion(served.as_portion())}),
        counted,
        Line("lasts", {"days": round(served.share_over_days, 1)}),
        *(Line(reason["code"], reason["args"], "reason") for reason in served.reasons),
    )


def _fresh_mg(length_mm: float) -> float:
    """Return a worker's fresh mass: dry mass exp(-4.029 + 2.572 ln L) (Rogers et al. 1977) over a dry share of 0.35."""
    return math.exp(-4.029 + 2.572 * math.log(length_mm)) / 0.35


_PERCENT: Final = Input("percent", "strength", "% by mass", USUAL_PERCENT, 0.1, sugar_water.SATURATED_PCT)
_ML: Final = Input("ml", "volume to make", "mL", 100.0, 0.1, 100_000)
_SWEET: Final = tuple(
    code for code, food in foods().items()
    if food.need == "sugar" and food.composition is not None and food.composition.sugars_g is not None
)  # fmt: skip
_PREY_FOODS: Final = tuple(code for code, food in foods().items() if food.need == "protein")


def _yes_no(name: str, what: str, *, default: bool = False) -> Input:
    return Input(name, what, default=default, kind="yes_no")


CALCULATORS: Final[Mapping[str, Calculator]] = {
    calculator.code: calculator
    for calculator in (
        Calculator(
            "sugar_water",
            (
                replace(_PERCENT, default=None, left_out="25"),
                _ML,
                Input("sugar_parts", "parts of sugar, instead of a strength", "parts", None, 0, 1_000_000),
                Input("water_parts", "parts of water", "parts", None, 1e-6, 1_000_000, left_out="1"),
                Input("parts_by", "what the parts are by", choices=BY, kind="choice"),
            ),
            _sugar_water,
            "sugar = strength x mass; mass = volume x density(strength); mol/L = g/L / 342.2965",
            "CRC Handbook of Chemistry and Physics, sucrose, 20 °C (second-hand); bulk density of sugar 0.85 g/mL "
            "(from memory)",
            "0 to 67.09 % by mass, 20 °C; by volume a spoon may hold a tenth more or less",
        ),
        Calculator(
            "dilute",
            (
                Input("food", "what to dilute", "", "honey", choices=_SWEET, kind="choice"),
                _PERCENT,
                _ML,
            ),
            _dilute,
            "sweet food = strength x mass / share of sugars in the food; the rest is water",
            "USDA SR26 compositions; density as of sucrose of that strength",
            "up to the sugars of the food itself; honey's own sugars differ from sucrose by about 1 % in volume",
        ),
        Calculator(
            "cooling",
            (
                Input("from_c", "temperature now, or at the first of two readings", "°C", 90.0, -10, 110),
                Input("room_c", "temperature of the room", "°C", 21.0, -10, 50),
                Input("to_c", "temperature to offer at", "°C", cooling.SAFE_TO_OFFER_C, 0, 40),
                Input(
                    "vessel", "open vessel", "", "cup", choices=tuple(cooling.VESSELS_PER_MIN), kind="choice"
                ),
                Input("later_c", "a later reading of your own vessel", "°C", None, -10, 110),
                Input("later_min", "minutes between the two readings", "min", None, 0.1, 10_000),
            ),
            _cooling,
            "T(t) = room + (start - room) exp(-k t)",
            "Newton's law of cooling; k of the vessels is our own estimate, or from your two readings",
            "still air, no lid; the room at least half a degree below the goal",
        ),
        Calculator(
            "prey",
            (
                Input("worker_mm", "length of a usual worker", "mm", 4.0, 0.8, 40),
                Input("workers", "workers", "workers", 50.0, 1, 1_000_000),
                Input("days", "days until the next serving", "d", 3.0, 0.5, 14),
                Input("protein_mg", "protein need", "mg/d", None, 0, 10_000, left_out="by mass"),
                Input("worker_mg", "fresh mass of a worker", "mg", None, 0.02, 500, left_out="by length"),
                Input("food", "only this food", "", None, choices=_PREY_FOODS, kind="choice"),
                _yes_no("majors", "the species has majors"),
                _yes_no("hunts_by_sight", "it hunts by sight"),
                _yes_no("slow", "it eats slowly"),
                _yes_no("in_tube", "they live in a test tube"),
                _yes_no("first", "first servings of a new colony: a third"),
            ),
            _prey,
            "pieces = protein need / (fresh mass x protein share); need = 20 mg per g of workers and day",
            "Macom & Porter 1995; Finke 2002/2013 and USDA SR26 compositions; sizes and handling: common practice",
            "a colony with growing brood and sugar on offer, one species measured; other colonies differ twofold",
        ),
    )
}


def calculator(code: str) -> Calculator:
    """Return a calculator by its code; a name with dashes means the same. ``ValueError`` for an unknown one."""
    found = CALCULATORS.get(code.replace("-", "_"))
    if found is None:
        raise ValueError(f"there is no calculator {code}; there are {', '.join(CALCULATORS)}")
    return found
