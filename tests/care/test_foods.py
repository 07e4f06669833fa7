"""The catalogue of foods: sums that must come out, sources, and unknown never 0."""

from __future__ import annotations

import pytest

from broodshelf.care.catalogue import foods
from broodshelf.model.kinds.words import FORMS, SIZE_CLASSES, UNITS

COMPOSED = sorted(code for code, food in foods().items() if food.composition)
SIZED = sorted(code for code, food in foods().items() if food.sizes)


@pytest.mark.parametrize("code", sorted(foods()))
def test_a_food_uses_known_words(code):
    food = foods()[code]

    assert (food.unit in UNITS, food.form in FORMS) == (True, True)
    assert {size.code for size in food.sizes} <= set(SIZE_CLASSES)
    assert food.serves


@pytest.mark.parametrize("code", COMPOSED)
def test_a_composition_names_its_source_and_never_exceeds_the_food(code):
    food = foods()[code]
    made_of = food.composition
    parts = [made_of.water_g, made_of.protein_g, made_of.fat_g, made_of.carbohydrate_g, made_of.ash_g]

    assert food.source
    assert sum(part for part in parts if part is not None) <= 100.5  # rounding of the source
    assert (made_of.sugars_g or 0) <= (made_of.carbohydrate_g or 100)
    assert (made_of.fibre_g or 0) <= (made_of.carbohydrate_g or 100)


@pytest.mark.parametrize(
    ("code", "published_kcal"),
    # Finke 2002/2013, kcal per 100 g; protein at 4 and fat at 9 kcal/g come within 5 % (reference computation)
    [("cricket", 140.2), ("mealworm", 205.6), ("superworm", 242.3), ("waxworm", 274.7)],
)
def test_protein_and_fat_explain_the_published_energy_of_prey(code, published_kcal):
    made_of = foods()[code].composition

    assert 4 * made_of.protein_g + 9 * made_of.fat_g == pytest.approx(published_kcal, rel=0.05)


def test_honey_and_chia_are_what_the_usda_lists():
    # USDA SR26, 19296 and 12006
    honey, chia = foods()["honey"].composition, foods()["chia"].composition

    assert (honey.water_g, honey.protein_g, honey.fat_g, honey.carbohydrate_g, honey.sugars_g, honey.kcal) == (
        17.10, 0.30, 0.00, 82.40, 82.12, 304,
    )  # fmt: skip
    assert (chia.water_g, chia.protein_g, chia.fat_g, chia.carbohydrate_g, chia.fibre_g) == (
        5.80, 16.54, 30.74, 42.12, 34.4,
    )  # fmt: skip


def test_what_a_source_leaves_blank_is_unknown_and_not_zero():
    assert foods()["chia"].composition.sugars_g is None
    assert foods()["silkworm"].composition.fat_g is None
    assert foods()["protein_jelly"].composition is None
    assert foods()["dandelion_seed"].composition is None


@pytest.mark.parametrize("code", SIZED)
def test_size_classes_grow_and_say_where_their_mass_comes_from(code):
    food = foods()[code]
    masses = [size.mass_mg.best for size in food.sizes]
    lengths = [size.length_mm for size in food.sizes]

    assert food.mass_source
    assert masses == sorted(masses)
    assert lengths == sorted(lengths)
    assert all(low < high for low, high in lengths)


def test_crickets_scale_with_length_cubed_from_the_weighed_adult():
    # 369 mg, adult male (Hack 1997, n = 26), at 18.5 mm: the middle of 16-21 mm
    for size in foods()["cricket"].sizes:
        for length, mass in zip(
            (size.length_mm[0], sum(size.length_mm) / 2, size.length_mm[1]),
            (size.mass_mg.low, size.mass_mg.best, size.mass_mg.high),
            strict=True,
        ):
            assert mass == pytest.approx(369 * (length / 18.5) ** 3, rel=0.07, abs=0.05)


def test_young_crickets_hold_less_protein_than_adults():
    # Finke 2002: nymph 15.4, adult 20.5 g per 100 g
    by_size = {size.code: size.composition.protein_g for size in foods()["cricket"].sizes}

    assert by_size == {"tiny": 15.4, "extra_small": 15.4, "small": 15.4, "medium": 15.4, "large": 20.5}


def test_what_is_mixed_at_home_is_taken_for_mixed_at_home():
    mixed = {code for code, food in foods().items() if food.usual_origin == "home_mixed"}

    assert mixed == {"sugar_water", "honey_water"}
    assert all(food.origin is None for code, food in foods().items() if code in mixed)
