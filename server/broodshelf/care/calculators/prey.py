"""Prey for a colony: which, how large, how many."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any, Final

from ...model.quantities import Estimate
from ..catalogue import Species, foods
from ..colony.body import worker_fresh_mg
from ..feeding import prey
from .model import Calculator, Input, Line, yes_no

PROTEIN_MG_PER_G_WORKERS: Final = 20.0
"""Macom & Porter 1995: 0.106 g of dry cricket per g of colony and week, two thirds of it protein, is 10 mg of protein
per g and day; half of such a colony's mass is brood (Porter et al. 2015), so twice that per g of workers."""


def _prey(given: Mapping[str, Any]) -> tuple[Line, ...]:
    length_mm, workers, days = given["worker_mm"], given["workers"], given["days"]
    per_day = given["protein_mg"]
    if per_day is None:
        per_day = workers * (given["worker_mg"] or _fresh_mg(length_mm)) / 1000 * PROTEIN_MG_PER_G_WORKERS
    served = prey.prey_portion(
        prey.Wanted(Estimate.exactly(per_day * days), days, first_third=given["first"]),
        prey.Eaters(
            length_mm, workers, majors=given["majors"], slow=given["slow"], hunts_by_sight=given["hunts_by_sight"],
            in_tube=given["in_tube"],
        ),
        prey.Choice((given["food"],) if given["food"] else prey.USUAL_OPTIONS),
    )  # fmt: skip
    protein = served.protein_mg
    need = {"need": round(per_day * days, 2), "days": days}
    counted = Line("serving_unknown", {}) if protein is None else Line("serving_protein", {
        "mg": round(protein.best, 2), "low": round(protein.low, 2), "high": round(protein.high, 2), **need,
    })  # fmt: skip
    return (
        Line("serve", {"portion": served.as_portion()}),
        counted,
        Line("lasts", {"days": round(served.share_over_days, 1)}),
        *(Line(reason["code"], reason["args"], "reason") for reason in served.reasons),
    )


def _fresh_mg(length_mm: float) -> float:
    """Return a worker's fresh mass by its length; see ``colony.body``."""
    kind = Species(None, "", (length_mm, length_mm), "omnivore", "claustral")
    return worker_fresh_mg(kind, nanitic=False).best


_PREY_FOODS: Final = tuple(code for code, food in foods().items() if food.need == "protein")

PREY: Final = Calculator(
    "prey",
    (
        Input("worker_mm", "mm", 4.0, 0.8, 40),
        Input("workers", "workers", 50.0, 1, 1_000_000),
        Input("days", "d", 3.0, 0.5, 14),
        Input("protein_mg", "mg/d", None, 0, 10_000),
        Input("worker_mg", "mg", None, 0.02, 500),
        Input("food", "", None, choices=_PREY_FOODS, kind="choice"),
        yes_no("majors"),
        yes_no("hunts_by_sight"),
        yes_no("slow"),
        yes_no("in_tube"),
        yes_no("first"),
    ),
    _prey,
)
