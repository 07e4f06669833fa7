"""How long feedings last and what rules: every rule for a store is walked over its edge."""

from __future__ import annotations

import math
from dataclasses import fields

import pytest
from hypothesis import example, given
from hypothesis import strategies as st
from tests.support.said import say

from broodshelf.care.colony.census import Brood, census_of
from broodshelf.care.feeding.removal import fresh_days
from broodshelf.care.feeding.stores import (
    CROP_UL_PER_MG,
    Drink,
    Drinkers,
    crop_days,
    protein_interval,
    solution_mg,
    store_mg,
    sugar_interval,
    sugar_mg,
)
from broodshelf.model.facts import Event
from broodshelf.model.kinds.log import Feeding
from broodshelf.model.quantities import Estimate, OutOfRange

exactly = Estimate.exactly
USUAL = exactly(1)
LASIUS, CARPENTER = exactly(1.75), exactly(40.0)
DROP, FEEDER = (
    fresh_days(Feeding(need="sugar", food_code="sugar_water", form=form)) for form in ("drop", "feeder")
)


def brood(larvae: str | None, workers: int = 50) -> Brood:
    return census_of([Event("c", "count", 0, {"workers": workers, "larvae": larvae})], None).brood


def sugar(**values):
    """Let a usual colony drink, but for what is said of it, of the drink and of the band."""
    said = {
        "workers": exactly(50),
        "worker_mg": LASIUS,
        "temp_c": 24.0,
        "band": (3, 5),
        "fresh": DROP,
        **values,
    }
    drinkers, drink = ({each.name for each in fields(part)} & said.keys() for part in (Drinkers, Drink))
    assert said.keys() == {*drinkers, *drink, "band"}
    return sugar_interval(
        Drinkers(**{name: said[name] for name in drinkers}), Drink(**{name: said[name] for name in drink}),
        said["band"],
    )  # fmt: skip


def protein(**values):
    usual = {
        "brood": brood("some"),
        "need_mg_per_day": Estimate(0.1, 0.2, 0.4),
        "temp_c": 24.0,
        "band": (2, 4),
    }
    return protein_interval(**{**usual, **values})


def test_six_microlitres_of_thirty_percent_sucrose_weigh_six_point_eight_mg():
    """Schilman & Roces, Camponotus rufipes; 6 x 1.127 = 6.76."""
    assert solution_mg(6, 30) == pytest.approx(6.8, rel=0.01)


@pytest.mark.parametrize(("percent_ww", "g_per_l"), [(10, 103.8), (20, 216.2), (30, 338.1), (50, 614.8)])
def test_sugar_in_solution_follows_the_crc_table(percent_ww, g_per_l):
    """CRC Handbook, sucrose at 20 C; added volumes are known to be up to 0.35 % low."""
    assert sugar_mg(1000, percent_ww) == pytest.approx(g_per_l, rel=0.0036)


def test_the_crop_stands_between_the_two_species_that_were_measured():
    """C. rufipes 6 microlitres at half of body mass; L. niger over 1 and under 3 microlitres at about 1.75 mg."""
    rufipes = 6 / (6.76 / 0.5)

    assert CROP_UL_PER_MG.low < rufipes < CROP_UL_PER_MG.best < 3 / 1.75
    assert CROP_UL_PER_MG.high > 1 / 1.75


def test_a_full_crop_of_a_large_ant_lasts_longer():
    """Store with mass, use with mass^0.825 (Lighton & Fielden 1995): days with mass^0.175."""
    small, large = (crop_days(mass, 24.0, USUAL).best for mass in (LASIUS, CARPENTER))

    assert large / small == pytest.approx((40 / 1.75) ** 0.175)
    assert 8 < large < 11


def test_the_store_of_a_small_colony_by_hand():
    """20 workers x 1.75 mg x 0.5 uL/mg x 0.338 mg/uL = 5.9 mg; a drop of 50 microlitres holds 16.9 mg."""
    assert store_mg(exactly(20), LASIUS).best == pytest.approx(5.9, rel=0.01)


def test_a_full_crop_by_hand():
    """L. niger, 24 C: 0.5 x 1.75 uL of 30 % = 0.295 mg; 4.82 uW x 2^-0.1 x 2.3 = 0.0541 mg/day; 5.46 days."""
    assert crop_days(LASIUS, 24.0, USUAL).best == pytest.approx(5.46, rel=0.01)


def test_hungry_and_warm_colonies_empty_their_crops_sooner():
    usual = crop_days(LASIUS, 24.0, USUAL).best

    assert crop_days(LASIUS, 24.0, exactly(2)).best == pytest.approx(usual / 2)
    assert crop_days(LASIUS, 34.0, USUAL).best == pytest.approx(usual / 2)


def test_the_size_of_a_drop_does_not_rule_in_a_small_colony():
    """50 microlitres would feed 20 workers for weeks: it spoils first."""
    drop, two_drops = (sugar(workers=exactly(20), band=(3, 7), offered_mg=sugar_mg(v, 30)) for v in (50, 100))

    assert drop == two_drops
    assert drop.ruled in ("crop_lasts", "freshness_rules")
    assert 4 < drop.days < 7


def test_a_drop_for_a_thousand_runs_out_and_the_band_holds_the_plan():
    short = sugar(workers=exactly(1_000), offered_mg=sugar_mg(50, 30), band=(2, 4))

    assert short.days == 1
    assert short.ruled == "band_rules"
    assert "amount_rules" in [r["code"] for r in short.reasons]


def test_a_feeder_is_due_when_it_spoils_or_is_empty():
    feeder = {"workers": exactly(400), "always_there": True, "fresh": FEEDER, "band": (2, 8)}
    full = sugar(**feeder, offered_mg=sugar_mg(1_000, 30))
    scant = sugar(**feeder, offered_mg=sugar_mg(200, 30))

    assert (full.ruled, full.days) == ("freshness_rules", FEEDER.best)
    assert scant.ruled == "amount_rules"
    assert scant.days == pytest.approx(sugar_mg(200, 30) / (400 * 0.0541), rel=0.01)


def test_the_crop_rules_where_it_outlasts_the_drop():
    assert sugar(worker_mg=CARPENTER, band=(4.5, 7.5)).ruled == "crop_lasts"
    assert sugar(worker_mg=LASIUS, temp_c=32.0).ruled == "freshness_rules"


def test_protein_is_banked_for_four_days_however_big_the_prey():
    """Common practice, no source."""
    feast = protein(eaten_mg=80)

    assert (feast.days, feast.ruled) == (4, "bank_rules")


def test_a_small_prey_lasts_as_long_as_its_protein():
    scant = protein(eaten_mg=0.5)

    assert (scant.days, scant.ruled) == (2.5, "prey_rules")
    assert scant.low_days <= 1.25


def test_a_colony_whose_brood_nobody_saw_still_gets_an_interval():
    unseen = protein(brood=brood(None, workers=0), need_mg_per_day=Estimate(0, 0.2, 0.4), eaten_mg=0.5)

    assert (unseen.days, unseen.high_days) == (2.5, 4)


def test_without_a_known_prey_the_usual_rhythm_is_the_plan():
    assert (protein().days, protein().ruled) == (3, "interval_band")


def test_without_larvae_the_rhythm_is_that_of_upkeep():
    idle = protein(brood=brood("none"), band=(7, 14), eaten_mg=80)

    assert (idle.days, idle.ruled) == (10.5, "maintenance_only")


def test_every_reason_has_words_for_all_its_arguments():
    given_ = [
        *sugar(worker_mg=CARPENTER).reasons,
        *sugar(workers=exactly(1_000), offered_mg=17.0).reasons,
        *sugar(always_there=True, fresh=FEEDER).reasons,
        *protein().reasons,
        *protein(eaten_mg=0.1).reasons,
        *protein(eaten_mg=80).reasons,
        *protein(brood=brood("none")).reasons,
    ]

    codes = {r["code"] for r in given_}
    assert codes >= {
        "crop_lasts",
        "freshness_rules",
        "amount_rules",
        "band_rules",
        "brood_grows",
        "prey_rules",
    }
    assert codes >= {"bank_rules", "maintenance_only", "interval_band"}
    for reason in given_:
        words = say("reason", reason["code"], reason["args"])
        assert words != reason["code"].replace("_", " ")
        assert "?" not in words


def test_the_ruling_figure_is_said_in_words():
    said = [say("reason", r["code"], r["args"]) for r in sugar(worker_mg=CARPENTER).reasons]

    assert said[0] == "A full crop lasts about 9.4 days at 24 °C; half of it is kept in hand."


@given(
    crowd=st.tuples(st.floats(0, 20_000), st.floats(0.05, 200)),  # workers, and the weight of each in mg
    temp_c=st.floats(10, 40),
    band=st.tuples(st.floats(0.5, 10), st.floats(1, 3)).map(lambda b: (b[0], b[0] * b[1])),
    fresh=st.tuples(st.sampled_from([DROP, FEEDER, exactly(1)]), st.booleans()),
    offered=st.tuples(st.none() | st.floats(0, 1e6), st.floats(1, 67)),  # mg, and how sweet in % (w/w)
    appetite=st.floats(0.3, 3),
)
@example(
    crowd=(1.1e-308, 1.0), temp_c=24.0, band=(1.0, 2.0), fresh=(DROP, False), offered=(1.0, 25.0), appetite=1.0,
)  # fmt: skip
def test_sugar_intervals_stay_between_half_of_the_band_and_its_end(
    crowd, temp_c, band, fresh, offered, appetite
):
    (workers, mass_mg), (offered_mg, percent_ww) = crowd, offered
    lasting = sugar(
        workers=exactly(workers), worker_mg=exactly(mass_mg), temp_c=temp_c, band=band, fresh=fresh[0],
        always_there=fresh[1], offered_mg=offered_mg, percent_ww=percent_ww,
        multiplier=Estimate(appetite / 2, appetite, 2 * appetite),
    )  # fmt: skip

    assert band[0] / 2 <= lasting.low_days <= lasting.days <= lasting.high_days <= band[1]
    assert lasting.ruled in {r["code"] for r in lasting.reasons}


@given(
    seen=st.sampled_from(["none", "few", "some", "many", None]),
    workers=st.integers(0, 20_000),
    need=st.floats(1e-6, 1e4),
    band=st.tuples(st.floats(0.5, 10), st.floats(1, 3)).map(lambda b: (b[0], b[0] * b[1])),
    eaten_mg=st.none() | st.floats(0, 1e6),
)
def test_protein_intervals_stay_within_half_to_twice_the_band(seen, workers, need, band, eaten_mg):
    lasting = protein(
        brood=brood(seen, workers),
        need_mg_per_day=Estimate(need / 2, need, need * 2),
        band=band,
        eaten_mg=eaten_mg,
    )

    assert band[0] / 2 <= lasting.low_days <= lasting.days <= lasting.high_days <= 2 * band[1]
    assert lasting.ruled in {r["code"] for r in lasting.reasons}


@pytest.mark.parametrize(
    "bad",
    [
        {"temp_c": 60.0},
        {"temp_c": math.nan},
        {"offered_mg": -1.0},
        {"offered_mg": math.inf},
        {"percent_ww": 80.0},
        {"multiplier": exactly(0)},
        {"band": (5, 3)},
        {"band": (0, 3)},
        {"worker_mg": exactly(0)},
    ],
)
def test_sugar_that_cannot_be_is_refused(bad):
    with pytest.raises(OutOfRange):
        sugar(**bad)


@pytest.mark.parametrize(
    "bad", [{"eaten_mg": -1.0}, {"eaten_mg": math.nan}, {"need_mg_per_day": exactly(0), "eaten_mg": 1.0}]
)
def test_protein_that_cannot_be_is_refused(bad):
    with pytest.raises(OutOfRange):
        protein(**bad)
