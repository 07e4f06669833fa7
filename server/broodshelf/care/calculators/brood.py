"""How long brood takes."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any, Final

from ..catalogue import species
from ..colony.brood import STAGES, days_to_worker
from ..colony.census.groups import life_group
from ..colony.founding import workers_from_eggs
from .model import Calculator, Input, Line, spread

_SPECIES: Final = tuple(species())


def _brood(given: Mapping[str, Any]) -> tuple[Line, ...]:
    group = life_group(species()[given["species"]].genus)
    night_c = given["day_c"] if given["night_c"] is None else given["night_c"]
    lines = [Line("brood_whole", spread(days_to_worker(group, given["day_c"], night_c)))]
    for stage in STAGES:
        days = days_to_worker(group, given["day_c"], night_c, stages=(stage,))
        lines.append(Line(f"brood_{stage}", spread(days)))
    lines.append(Line("brood_source", {"brood_group": group.code}))
    if given["eggs"] is not None:
        made = workers_from_eggs(given["eggs"])
        lines.append(Line("first_workers", {"eggs": round(given["eggs"]), **spread(made)}))
    return tuple(lines)


BROOD: Final = Calculator(
    "brood",
    (
        Input("species", "", "lasius_niger", choices=_SPECIES, kind="choice"),
        Input("day_c", "°C", 25.0, 0, 45),
        Input("night_c", "°C", None, 0, 45),
        Input("eggs", "eggs", None, 0, 1000),
    ),
    _brood,
)
