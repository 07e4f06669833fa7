"""How long brood takes."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any, Final

from ..catalogue import species
from ..colony.brood import days_to_worker
from ..colony.brood_groups import STAGES, brood_group
from .model import Calculator, Input, Line

_SPECIES: Final = tuple(species())


def _brood(given: Mapping[str, Any]) -> tuple[Line, ...]:
    group = brood_group(species()[given["species"]])
    night_c = given["day_c"] if given["night_c"] is None else given["night_c"]
    whole = days_to_worker(group, given["day_c"], night_c)
    shown = {"low": round(whole.low), "best": round(whole.best), "high": round(whole.high)}
    lines = [Line("brood_whole", shown)]
    for stage in STAGES:
        days = days_to_worker(group, given["day_c"], night_c, stages=(stage,))
        lines.append(
            Line(
                f"brood_{stage}", {"low": round(days.low), "best": round(days.best), "high": round(days.high)}
            )
        )
    return (*lines, Line("brood_source", {"source": group.source}))


BROOD: Final = Calculator(
    "brood",
    (
        Input("species", "species", "", "lasius_niger", choices=_SPECIES, kind="choice"),
        Input("day_c", "day temperature", "°C", 25.0, 0, 45),
        Input("night_c", "night temperature", "°C", None, 0, 45, left_out="as by day"),
    ),
    _brood,
)
