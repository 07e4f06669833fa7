"""What a colony uses a day, and how heavy its workers are."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from broodshelf.care.catalogue import species
from broodshelf.care.colony.body import dry_mg, worker_fresh_mg
from broodshelf.care.colony.census import Brood, larval_days
from broodshelf.care.colony.census.groups import LIFE_GROUPS
from broodshelf.care.feeding.appetite import protein_mg_per_day, resting_rate_uw, sugar_mg_per_day
from broodshelf.model.quantities import Estimate, OutOfRange

exactly = Estimate.exactly
GARDEN_ANTS, FIRE_ANTS = LIFE_GROUPS["lasius"], LIFE_GROUPS["solenopsis"]
NO_BROOD = Brood("none", "none", "none", exactly(0), exactly(0), exactly(0))


def larvae(number: float) -> Brood:
    return replace(NO_BROOD, larvae="many", larvae_n=exactly(number))


@pytest.mark.parametrize(
    ("mass_mg", "microwatt"),
    [(1, 3.03), (5, 11.45), (10, 20.3), (50, 76.5)],
)
def test_the_resting_rate_is_the_published_law(mass_mg, microwatt):
    """906 x M^0.825 microwatt at 25 C, Lighton & Fielden 1995, to the digits of the reference table."""
    rate = resting_rate_uw(mass_mg / 1000, 25.0)

    assert rate.best == pytest.approx(906 * (mass_mg / 1000) ** 0.825, rel=1e-12)
    assert rate.best == pytest.approx(microwatt, rel=2e-3)
    assert rate.low == rate.high == rate.best  # at the law's own temperature Q10 has no part


def test_ten_degrees_more_double_the_rate_within_the_published_q10():
    """Q10 1.8 (Lighton 1988) to 2.4 (Quinlan & Lighton 1999)."""
    at_25, at_35, at_15 = (resting_rate_uw(0.001, temp_c) for temp_c in (25.0, 35.0, 15.0))

    assert at_35.best / at_25.best == pytest.approx(2.0)
    assert (at_35.low / at_25.best, at_35.high / at_25.best) == pytest.approx((1.8, 2.4))
    assert (at_15.low / at_25.best, at_15.high / at_25.best) == pytest.approx((1 / 2.4, 1 / 1.8))


def kcal_per_g_week(temp_c: float) -> tuple[float, float]:
    """Return the sugar and the prey [kcal] that 1 g of fire-ant colony uses a week.

    Half of the mass are workers of 0.71 mg (Porter et al. 2015); in the other half larvae, half-grown on average, and
    pupae are as many as their days are long, which is as long for both.
    """
    workers, mass = exactly(0.5e3 / 0.71), exactly(0.71)
    grubs = larvae(0.5e3 / 0.71 / (0.5 + 1))
    sugar_mg = sugar_mg_per_day(workers, mass, temp_c).best
    protein_mg = protein_mg_per_day(FIRE_ANTS, grubs, workers, mass, temp_c).best
    cricket_g = protein_mg / 1000 / (20.5 / 30.8)  # protein of dry cricket, Finke
    return sugar_mg * 16.5 / 4184 * 7, cricket_g * (1.40 / 0.308) * 7


@pytest.mark.parametrize("temp_c", [26.0, 28.0, 30.0])
def test_a_fire_ant_colony_eats_what_macom_and_porter_measured(temp_c):
    """1.14 +- 0.29 (SD) kcal per g and week; the temperature is not in the abstract, so three are tried."""
    assert sum(kcal_per_g_week(temp_c)) == pytest.approx(1.14, abs=0.29)


def test_at_the_assumed_temperature_sugar_and_prey_split_as_published():
    """0.106 g of dry cricket a week is 0.48 kcal, the rest of 1.14 kcal is sugar (Macom & Porter 1995)."""
    sugar, prey = kcal_per_g_week(28.0)

    assert sugar == pytest.approx(0.66, rel=0.03)
    assert prey == pytest.approx(0.48, rel=0.05)


def test_with_sugar_a_colony_takes_43_percent_less_prey():
    """0.186 against 0.106 g of dry cricket per g and week, Macom & Porter 1995."""
    eater = GARDEN_ANTS, larvae(30), exactly(60), exactly(1.75), 24.0
    with_sugar = protein_mg_per_day(*eater).best
    without = protein_mg_per_day(*eater, sugar_offered=False).best

    assert 1 - with_sugar / without == pytest.approx(0.43, abs=0.005)


def test_worker_groups_scale_with_their_number():
    """Isometric: Waters et al. 2010, Ko et al. 2022."""
    one, many = (sugar_mg_per_day(exactly(n), exactly(1.75), 24.0) for n in (1, 8_000))

    assert many.best == pytest.approx(8_000 * one.best)


def test_larvae_grow_as_many_days_as_published():
    """*Myrmica*: Q10 3.1 between 15 and 25 C, Elmes & Wardlaw 1983.

    *Linepithema humile*: 524.6 degree-days above 15.92 C, Abril et al. 2010, second-hand. *Lasius niger*: larvae rest
    at 17 C, Kipyatkov et al. 2004, abstract.
    """
    red, argentine = LIFE_GROUPS["myrmica"], LIFE_GROUPS["linepithema"]

    assert larval_days(red, 15.0).best / larval_days(red, 25.0).best == pytest.approx(3.1, rel=0.01)
    assert larval_days(argentine, 26.0).best == pytest.approx(524.6 / (26 - 15.92))
    assert larval_days(GARDEN_ANTS, 17.0) is None


def test_protein_goes_with_the_larvae_of_the_census_and_their_days():
    """A larva that takes twice as many days takes half as much a day, whatever the group."""
    fast, slow = LIFE_GROUPS["lasius"], LIFE_GROUPS["myrmica"]
    colony = exactly(100), exactly(1.75), 24.0
    of_larvae = [
        protein_mg_per_day(group, larvae(50), *colony).best
        - protein_mg_per_day(group, NO_BROOD, *colony).best
        for group in (fast, slow)
    ]

    assert of_larvae[0] / of_larvae[1] == pytest.approx(
        larval_days(slow, 24.0).best / larval_days(fast, 24.0).best
    )


def test_without_brood_or_in_the_cold_only_the_upkeep_is_left():
    colony = exactly(100), exactly(1.75)
    upkeep = protein_mg_per_day(GARDEN_ANTS, NO_BROOD, *colony, 24.0)

    assert 0 < upkeep.best < 0.1 * protein_mg_per_day(GARDEN_ANTS, larvae(50), *colony, 24.0).best
    assert protein_mg_per_day(GARDEN_ANTS, larvae(50), *colony, 16.9) == upkeep


def test_eggs_cost_protein_too_but_much_less_than_larvae():
    colony = exactly(10), exactly(1.75), 24.0
    laying = replace(NO_BROOD, eggs="some", eggs_n=exactly(20))
    bare, eggs, grubs = (
        protein_mg_per_day(GARDEN_ANTS, b, *colony).best for b in (NO_BROOD, laying, larvae(20))
    )

    assert bare < eggs < bare + 0.1 * (grubs - bare)


@pytest.mark.parametrize(("length_mm", "mg"), [(3, 0.30), (4, 0.63), (5, 1.12), (8, 3.74), (14, 15.8)])
def test_dry_mass_follows_rogers_1977_with_the_other_authors_around(length_mm, mg):
    """Rogers et al. 1977, values of the reference table."""
    mass = dry_mg(length_mm)

    assert mass.best == pytest.approx(mg, rel=0.01)
    assert mass.low < mass.best < mass.high


def test_black_garden_ants_weigh_what_was_derived_for_them():
    """Lasius niger: dry 0.58 mg (Jensen & Nielsen 1975), fresh about 1.5-2.0 mg."""
    mass = worker_fresh_mg(replace(species()["lasius_niger"], worker_mm=(3, 5), fresh_mg=None), nanitic=False)

    assert 1.5 <= mass.best <= 2.0
    assert dry_mg(4).low <= 0.58 <= dry_mg(4).high


def test_a_measured_mass_rules_over_length_and_nanitics_weigh_less():
    """Messor capensis 3.5-43.4 mg, mean 13.7 (Chown 2007, AnimalTraits). Nanitic share: common practice."""
    harvester = replace(species()["messor_barbarus"], fresh_mg=(3.5, 13.7, 43.4))
    grown, nanitic = (worker_fresh_mg(harvester, nanitic=small) for small in (False, True))

    assert grown.best == 13.7
    assert 3.5 < grown.low < grown.best < grown.high < 43.4
    assert nanitic.best == pytest.approx(0.6 * grown.best)


def test_every_species_of_the_catalogue_has_a_mass_that_an_ant_may_have():
    for kind in species().values():
        for nanitic in (False, True):
            mass = worker_fresh_mg(kind, nanitic=nanitic)
            assert 0.02 <= mass.low <= mass.high <= 500, kind.code


@given(
    group=st.sampled_from([*LIFE_GROUPS.values()]),
    workers=st.floats(0, 20_000),
    mass_mg=st.floats(0.02, 500),
    temp_c=st.floats(10, 40),
    grubs=st.floats(0, 20_000),
    sugar=st.booleans(),
)
def test_needs_are_finite_in_order_and_grow_with_the_colony(group, workers, mass_mg, temp_c, grubs, sugar):
    args = exactly(workers), exactly(mass_mg), temp_c
    needs = (sugar_mg_per_day(*args), protein_mg_per_day(group, larvae(grubs), *args, sugar_offered=sugar))

    for need in needs:
        assert 0 <= need.low <= need.best <= need.high < math.inf
    assert sugar_mg_per_day(exactly(workers + 1), *args[1:]).best > needs[0].best


@pytest.mark.parametrize("temp_c", [9.99, 40.01, 60.0, -5.0, math.nan, math.inf])
def test_a_temperature_outside_the_formulas_is_refused(temp_c):
    with pytest.raises(OutOfRange, match="temperature"):
        resting_rate_uw(0.001, temp_c)
    with pytest.raises(OutOfRange, match="temperature"):
        protein_mg_per_day(GARDEN_ANTS, NO_BROOD, exactly(1), exactly(1), temp_c)


@pytest.mark.parametrize("mass_g", [0.0, -0.001, 1.9e-5, 0.501, math.nan, math.inf])
def test_a_mass_that_no_ant_has_is_refused(mass_g):
    with pytest.raises(OutOfRange, match="worker mass"):
        resting_rate_uw(mass_g, 25.0)


@pytest.mark.parametrize("number", [-1.0, 2_000_001.0])
def test_a_number_of_ants_that_no_colony_has_is_refused(number):
    with pytest.raises(OutOfRange, match="number"):
        sugar_mg_per_day(exactly(number), exactly(1), 25.0)


@pytest.mark.parametrize("length_mm", [0.0, 0.79, 35.1, math.nan, math.inf])
def test_a_length_that_no_worker_has_is_refused(length_mm):
    with pytest.raises(OutOfRange, match="worker length"):
        dry_mg(length_mm)
