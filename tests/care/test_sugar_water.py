"""Sugar water against the CRC Handbook's sucrose table, hand calculations and its own limits."""

from __future__ import annotations

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from broodshelf.care.catalogue import foods
from broodshelf.care.feeding.sugar_water import (
    SATURATED_PCT,
    UnknownSugars,
    batch_days,
    dilution,
    notes,
    percent_from_molarity,
    percent_from_parts,
    recipe,
    solution,
)
from broodshelf.model.quantities import OutOfRange

CRC_102 = (
    # % by mass, mol/kg water, mol/L, g/mL: CRC Handbook, 102nd ed., "Concentrative properties of aqueous solutions",
    # sucrose, 20 °C; second-hand, from another copy than the module's densities
    (1, 0.03, 0.029, 1.0021), (5, 0.154, 0.149, 1.0178), (10, 0.325, 0.303, 1.0381), (11, 0.361, 0.335, 1.0423),
    (15, 0.516, 0.464, 1.0592), (19, 0.685, 0.598, 1.0766), (20, 0.73, 0.632, 1.081), (26, 1.026, 0.842, 1.1082),
    (30, 1.252, 0.988, 1.127), (36, 1.643, 1.216, 1.1562), (42, 2.116, 1.456, 1.1868), (50, 2.921, 1.796, 1.2295),
    (60, 4.382, 2.255, 1.2864),
)  # fmt: skip


@pytest.mark.parametrize(("percent", "molality", "molarity", "density"), CRC_102)
def test_strength_agrees_with_the_crc_table_within_its_rounding(percent, molality, molarity, density):
    # 11, 15 and 19 % are not rows of the module's table: they test the interpolation between rows
    made = solution(percent)

    assert made.density_g_per_ml == pytest.approx(density, abs=0.0001)
    assert made.mol_per_l == pytest.approx(molarity, abs=0.0006)
    assert made.mol_per_kg_water == pytest.approx(molality, abs=0.0006)


@pytest.mark.parametrize(("percent", "g_per_l"), [(10, 103.8), (20, 216.2), (30, 338.1), (50, 614.8)])
def test_mass_concentration_agrees_with_the_crc_table(percent, g_per_l):
    assert solution(percent).sugar_g_per_l == pytest.approx(g_per_l, abs=0.1)


@pytest.mark.parametrize(
    ("molarity", "percent"), [(0.1, 3.38), (0.25, 8.30), (0.5, 16.09), (1.0, 30.33), (2.0, 54.55)]
)
def test_molarity_turns_into_percent(molarity, percent):
    # computed from the CRC table with 342.2965 g/mol, independently of this module
    assert percent_from_molarity(molarity) == pytest.approx(percent, abs=0.05)


def test_a_six_microlitre_load_of_thirty_percent_weighs_what_was_published():
    # 6 µL of 30 % sucrose is 6.8 mg: Schilman & Roces, Camponotus rufipes
    assert 6 * solution(30).density_g_per_ml == pytest.approx(6.8, rel=0.01)


@settings(deadline=None)
@given(st.floats(0, 60))
def test_density_agrees_with_an_independent_polynomial(percent):
    # ASBC: °P = -616.868 + 1111.14 SG - 630.272 SG² + 135.997 SG³, from memory; within 0.05 up to 30 %, 0.65 at 60 %
    gravity = solution(percent).density_g_per_ml / 0.9982
    plato = -616.868 + 1111.14 * gravity - 630.272 * gravity**2 + 135.997 * gravity**3

    assert plato == pytest.approx(percent, abs=0.05 if percent <= 30 else 0.65)


@pytest.mark.parametrize(
    ("sugar", "water", "by_mass", "by_volume"), [(1, 1, 50.0, 46.0), (1, 3, 25.0, 22.1), (1, 4, 20.0, 17.6)]
)
def test_parts_by_mass_and_by_volume_are_not_the_same(sugar, water, by_mass, by_volume):
    # hand calculation with 0.85 g/mL of poured sugar (from memory): 0.85 / (0.85 + 3 x 0.9982) = 22.1 %
    assert percent_from_parts(sugar, water, "mass") == pytest.approx(by_mass, abs=0.05)
    assert percent_from_parts(sugar, water, "volume") == pytest.approx(by_volume, abs=0.05)


def test_a_recipe_weighs_sugar_and_water():
    # 25 g of sugar in 100 g of water makes 20.0 % and 115.5 mL (reference computation from the CRC table)
    made = recipe(20, mass_g=125)

    assert (made.sweet_g, made.water_g) == (pytest.approx(25), pytest.approx(100))
    assert made.volume_ml == pytest.approx(115.6, abs=0.1)


@settings(deadline=None)
@given(st.floats(0.01, SATURATED_PCT), st.floats(0.1, 100_000))
def test_a_recipe_by_volume_gives_that_volume_and_strength(percent, volume_ml):
    made = recipe(percent, volume_ml=volume_ml)

    assert made.volume_ml == pytest.approx(volume_ml)
    assert 100 * made.sweet_g / made.mass_g == pytest.approx(percent)


def test_honey_is_diluted_by_its_own_sugars():
    # hand calculation: 100 g at 25 % hold 25 g of sugars; honey has 82.12 g per 100 g (USDA SR26), so 30.44 g
    made = dilution(foods()["honey"], 25, mass_g=100)

    assert made.sweet_g == pytest.approx(30.44, abs=0.01)
    assert made.water_g == pytest.approx(69.56, abs=0.01)


def test_a_food_cannot_be_diluted_to_more_than_its_own_sugars():
    with pytest.raises(OutOfRange, match=r"48\.5"):
        dilution(foods()["jam"], 50, mass_g=100)


@pytest.mark.parametrize("code", ["chia", "fruit"])
def test_a_food_with_unknown_sugars_is_refused_rather_than_taken_as_zero(code):
    with pytest.raises(UnknownSugars, match=code):
        dilution(foods()[code], 10, mass_g=100)


@pytest.mark.parametrize("percent", [-0.01, 67.1, 100, math.nan, math.inf])
def test_strengths_that_cannot_be_are_out_of_range(percent):
    with pytest.raises(OutOfRange):
        solution(percent)
    with pytest.raises(OutOfRange):
        notes(percent)


@pytest.mark.parametrize("percent", [0, SATURATED_PCT])
def test_strengths_at_both_ends_are_allowed(percent):
    assert solution(percent).density_g_per_ml > 0.99


@pytest.mark.parametrize("amounts", [{}, {"volume_ml": 1, "mass_g": 1}])
def test_a_recipe_wants_one_amount(amounts):
    with pytest.raises(ValueError, match="either"):
        recipe(20, **amounts)


@pytest.mark.parametrize(("sugar", "water"), [(3, 1), (1, 0), (-1, 1), (math.nan, 1)])
def test_parts_that_would_not_dissolve_or_make_no_sense_are_refused(sugar, water):
    with pytest.raises(OutOfRange):
        percent_from_parts(sugar, water, "mass")


def test_a_batch_keeps_longer_in_the_cold_and_shorter_from_honey():
    # common practice, no source
    assert batch_days("room").high < batch_days("fridge").low < batch_days("freezer").low
    assert batch_days("fridge", from_honey=True).best < batch_days("fridge").best


@pytest.mark.parametrize(
    ("percent", "code"),
    [(5, "sugar_thin"), (25, "sugar_good_range"), (50, "sugar_thick"), (65, "sugar_near_saturation")],
)
def test_the_first_note_fits_the_strength_and_hot_syrup_is_always_warned_of(percent, code):
    assert notes(percent) == (code, "sugar_dissolve_warm")
