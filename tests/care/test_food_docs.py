"""The figures of docs/care-model/food.md are the code's own."""

from __future__ import annotations

from pathlib import Path

import pytest

from broodshelf.care.catalogue import foods
from broodshelf.care.feeding.cooling import VESSELS_PER_MIN, minutes_until
from broodshelf.care.feeding.servings import protein_mg_of
from broodshelf.care.feeding.sugar_water import recipe

PAGE = (Path(__file__).parents[2] / "docs/care-model/food.md").read_text()


@pytest.mark.parametrize("percent", [10, 20, 25, 30, 50])
def test_the_page_gives_the_recipe_that_the_code_gives(percent):
    made = recipe(percent, volume_ml=100)
    strength = made.solution

    assert (
        f"| {percent} | {made.sweet_g:.1f} | {made.water_g:.1f} | {strength.density_g_per_ml:.4f} "
        f"| {strength.mol_per_l:.3f} |"
    ) in PAGE


@pytest.mark.parametrize("vessel", VESSELS_PER_MIN)
def test_the_page_gives_the_wait_that_the_code_gives(vessel):
    k, wait = VESSELS_PER_MIN[vessel], minutes_until(90, 21, VESSELS_PER_MIN[vessel])

    assert (
        f"| {vessel.replace('_', ' ')} | {k.low:g} – {k.best:g} – {k.high:g} "
        f"| {wait.low:.0f} – {wait.best:.0f} – {wait.high:.0f} |"
    ) in PAGE


def test_the_page_gives_the_prey_of_the_catalogue():
    for food in foods().values():
        for size in food.sizes:
            words = [food.code, *([size.code] if len(food.sizes) > 1 else [])]
            name = " ".join(words).replace("_", " ")
            mass, (shortest, longest) = size.mass_mg, size.length_mm
            protein = protein_mg_of(food, size)  # None: nothing published was found
            row = (
                f"| {name} | {shortest:g}–{longest:g} | {mass.best:g} ({mass.low:g}–{mass.high:g}) "
                f"| {'–' if protein is None else f'{protein.best:.2f}'} |"
            )
            assert row in PAGE
