"""The worked examples of docs/care-model/energy.md, from the code itself.

python -m tests.care.energy_examples        writes the table
"""

from __future__ import annotations

import sys

from broodshelf.care.catalogue import Species
from broodshelf.care.colony.body import worker_fresh_mg
from broodshelf.care.colony.census import census_of
from broodshelf.care.colony.census.groups import LIFE_GROUPS
from broodshelf.care.feeding.appetite import protein_mg_per_day, sugar_mg_per_day
from broodshelf.care.feeding.stores import crop_days, store_mg
from broodshelf.model.facts import Event
from broodshelf.model.quantities import Estimate

COLONIES = (
    ("lasius", "garden ants, 3 to 5 mm", (3, 5), 8, True, "few"),
    ("lasius", "garden ants, 3 to 5 mm", (3, 5), 50, False, "some"),
    ("lasius", "garden ants, 3 to 5 mm", (3, 5), 800, False, "many"),
    ("camponotus", "carpenter ants, 6 to 14 mm", (6, 14), 12, True, "few"),
    ("camponotus", "carpenter ants, 6 to 14 mm", (6, 14), 150, False, "some"),
    ("tetramorium", "big-headed ants, 2 to 5 mm", (2, 5), 500, False, "many"),
)
"""Group of life histories, ants, shortest and longest worker [mm], workers, whether they are nanitics, larvae seen."""
HEAD = (
    "| colony at 24 °C, larvae | worker mg | sugar mg/day | full store mg | full crop days | protein mg/day |",
    "|---|---|---|---|---|---|",
)


def table() -> list[str]:
    """Return the lines of the table: best value (low to high)."""
    lines = list(HEAD)
    for group, name, worker_mm, workers, nanitic, larvae in COLONIES:
        log = [
            Event("c", "count", 0, {"workers": workers, "eggs": larvae, "larvae": larvae, "pupae": larvae})
        ]
        census, mass = (
            census_of(log, None),
            worker_fresh_mg(Species(None, name, worker_mm, "omnivore", "claustral"), nanitic=nanitic),
        )
        figures = (
            mass,
            sugar_mg_per_day(census.workers, mass, 24.0),
            store_mg(census.workers, mass),
            crop_days(mass, 24.0, Estimate.exactly(1)),
            protein_mg_per_day(LIFE_GROUPS[group], census.brood, census.workers, mass, 24.0),
        )
        kind = f"{name}, {workers} {'nanitics' if nanitic else 'workers'}, {larvae}"
        lines.append(f"| {kind} | " + " | ".join(map(_shown, figures)) + " |")
    return lines


def _shown(estimate: Estimate) -> str:
    best, low, high = (f"{float(f'{value:.2g}'):g}" for value in (estimate.best, estimate.low, estimate.high))
    return f"{best} ({low} to {high})"


if __name__ == "__main__":
    sys.stdout.write("\n".join(table()) + "\n")
