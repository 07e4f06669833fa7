"""The catalogue of species, vessels and cautions: complete, consistent, sourced, and usable in a plan.

Lengths and masses name their sources in the catalogue itself; the tests hold them against the same publications
or against the length-mass formula of Rogers et al. 1977. Everything else is common practice, no source.
"""

from __future__ import annotations

import math

import pytest
from tests.support.said import words

from broodshelf.care import catalogue
from broodshelf.care.catalogue import cautions, cautions_of, source_of, species, vessels
from broodshelf.care.plan.make import make_plan
from broodshelf.model.facts import ColonyState, Event, Vessel
from broodshelf.model.kinds.words import FOUNDING_MODES, GUILDS

NOW_MS = 1_777_636_800_000  # 2026-05-01T12:00:00Z
CONTINENTS = {"europe", "asia", "africa", "north_america", "south_america", "australia"}
DRY_SHARE = 0.35
"""Dry of fresh mass, the middle of 0.3 to 0.4 (derived, reference values B)."""
FACTOR = 3.5
"""How far a published mass may stand from its length's: authors of length formulas differ by 30 to 55 %, dry
shares by 15 %, and a group's weighed species need not have the group's middle length."""
UNION_LIST = ("Solenopsis geminata", "Solenopsis invicta", "Solenopsis richteri", "Wasmannia auropunctata")
"""Ants of Commission Implementing Regulation (EU) 2022/1203."""

every_species = pytest.mark.parametrize("kind", species().values(), ids=species())
every_weighed = pytest.mark.parametrize(
    "kind", [k for k in species().values() if k.fresh_mg], ids=lambda k: k.code
)


def rogers_fresh_mg(length_mm: float) -> float:
    """Dry mass exp(-4.029 + 2.572 ln L) mg (Rogers et al. 1977), over the dry share."""
    return math.exp(-4.029 + 2.572 * math.log(length_mm)) / DRY_SHARE


def events(workers: int) -> tuple[Event, ...]:
    return (Event("count", "count", NOW_MS - 86_400_000, {"workers": workers, "larvae": "some"}),)


def test_the_list_holds_thirty_six_kinds_and_every_continent():
    assert len(species()) >= 36
    for continent in CONTINENTS:
        assert sum(continent in kind.continents for kind in species().values()) >= 5


def test_no_species_of_the_union_list_is_offered():
    names = " ".join(kind.name for kind in species().values())
    for latin in UNION_LIST:
        assert latin not in names
    assert "Solenopsis species" not in names  # a group of that name would let them in
    assert "Wasmannia" not in names


@every_species
def test_each_kind_is_within_what_ants_can_be(kind):
    shortest, longest = kind.worker_mm
    assert 0.8 <= shortest <= longest <= 40  # the limits of the record field worker_length_mm
    assert kind.guild in GUILDS
    assert kind.founding in FOUNDING_MODES
    assert kind.continents and kind.continents <= CONTINENTS
    low_c, high_c = kind.temp_c
    assert 12 < low_c < high_c <= 35  # below 12 degrees C the plan offers no protein
    if kind.rest:
        warmest_c = high_c if kind.rest.summer else low_c
        assert 2 <= kind.rest.low_c < kind.rest.high_c < warmest_c <= 35
        assert 1 <= kind.rest.low_months < kind.rest.high_months <= 7


@every_species
def test_each_kind_is_consistent_in_itself(kind):
    if kind.hunts_by_sight:
        assert kind.guild == "predator"
    if kind.yearly_clock:
        assert kind.rest is not None, "a yearly clock without a rest"
    if kind.spins_cocoons:
        assert kind.guild == "predator"
    if kind.guild == "fungus_grower":
        assert kind.rest is None and kind.majors
    if "sting_allergy" in kind.cautions:
        assert kind.stings
    if kind.majors:
        assert kind.worker_mm[1] >= 1.5 * kind.worker_mm[0]
    assert not (kind.stings and "sprays" in kind.cautions), "ants that spray have no sting"


@every_species
def test_each_field_of_each_kind_names_its_source_or_says_that_it_has_none(kind):
    named = {field: source_of(kind, field) for field in ("worker_mm", "founding", "guild", "temp_c", "rest")}
    assert all(named.values())
    assert (kind.fresh_mg is None) == (source_of(kind, "fresh_mg") == "not weighed")
    assert set(kind.sources) <= {"worker_mm", "fresh_mg", "founding", "guild", "temp_c", "rest"}


@every_weighed
def test_each_published_mass_agrees_with_the_length_mass_formula(kind):
    smallest, usual, largest = kind.fresh_mg
    middle_mm = math.sqrt(kind.worker_mm[0] * kind.worker_mm[1])
    assert smallest < usual < largest
    assert 1 / FACTOR <= usual / rogers_fresh_mg(middle_mm) <= FACTOR


@pytest.mark.parametrize(
    ("code", "fresh_mg"),
    [
        # Chown et al. 2007 Funct. Ecol. 21:282-290, in AnimalTraits (its data file)
        ("messor_capensis", (3.5, 13.7, 43.4)),
        ("veromessor_pergandei", (1.33, 5.0, 9.7)),
        ("camponotus_maculatus", (7.7, 41.4, 129)),
        ("camponotus_fulvopilosus", (10.9, 45.6, 155)),
        # Sheehan et al. 2019, in AnimalTraits: M. gulosa 59.4, M. pyriformis 67.7, M. nigriceps 66.7
        ("myrmecia_large", (19.9, (59.4 + 67.7 + 66.7) / 3, 128)),
        ("myrmecia_pilosula", (14, 20.3, 26)),  # its M. croslandi
        # Weier et al. 1995 J. Insect Physiol. 41:321: P. maricopa 8.9 +- 1.4 mg live
        ("pogonomyrmex", (8.9 - 1.4, 8.9, 8.9 + 1.4)),
        ("paraponera_clavata", (169, (169 + 190) / 2, 190)),
        ("atta", (3.6, math.sqrt(3.6 * 33), 33)),
    ],
)
def test_weighed_kinds_carry_the_published_fresh_masses(code, fresh_mg):
    assert species()[code].fresh_mg == pytest.approx(fresh_mg, rel=0.005)


@pytest.mark.parametrize(
    ("code", "dry_mg"),
    [  # Jensen & Nielsen 1975 Nat. Jutl. 18:21-25, in AnimalTraits; "dry" is inferred
        ("lasius_niger", 0.58),
        ("lasius_flavus", 0.86),
        ("myrmica_rubra", 0.92),
        ("tetramorium", 0.23),
        ("formica_fusca", 1.47),
        ("camponotus_herculeanus", 6.71),
    ],
)
def test_masses_that_were_published_dry_are_given_fresh(code, dry_mg):
    kind = species()[code]
    smallest, usual, largest = kind.fresh_mg
    assert usual == pytest.approx(dry_mg / DRY_SHARE, rel=0.08)
    assert smallest == pytest.approx(rogers_fresh_mg(kind.worker_mm[0]), abs=0.06)
    assert largest == pytest.approx(rogers_fresh_mg(kind.worker_mm[1]), rel=0.03)


@every_species
@pytest.mark.parametrize("workers", [0, 8, 300, 8_000])
def test_each_kind_gets_a_plan_at_every_size(kind, workers):
    plan = make_plan(ColonyState("c", kind.code, vessel=Vessel("nest_small"), events=events(workers)), NOW_MS)

    needs = {gauge.need for gauge in plan.gauges}
    assert "water" in needs
    if workers:
        # what each guild lives on: common practice, no source
        assert {
            "omnivore": {"sugar", "protein"},
            "predator": {"protein"},
            "harvester": {"seeds"},
            "honeypot": {"sugar", "protein"},
            "fungus_grower": {"leaves"},
        }[kind.guild] <= needs
    assert "species_unknown" not in [notice["code"] for notice in plan.notices]
    assert [caution["code"] for caution in plan.cautions] == list(cautions_of(kind))


def test_a_sting_stands_on_every_feeding_and_an_allergy_with_the_colony():
    plan = make_plan(ColonyState("c", "myrmecia_pilosula", events=events(20)), NOW_MS)

    assert [c["code"] for c in plan.cautions] == ["stings", "sting_allergy"]
    fed = [task for task in plan.tasks if task.portion]
    assert fed and all("stings" in [c["code"] for c in task.cautions] for task in fed)


@pytest.mark.parametrize(
    ("guild", "lives_on"), [("harvester", "seeds"), ("fungus_grower", "leaves"), ("honeypot", "sugar")]
)
def test_a_species_of_the_keepers_own_follows_the_guild_they_chose(guild, lives_on):
    own = ColonyState("c", None, worker_length_mm=7.5, guild=guild, stings=True, events=events(40))
    plan = make_plan(own, NOW_MS)

    assert lives_on in {gauge.need for gauge in plan.gauges}
    assert ("sugar" in {gauge.need for gauge in plan.gauges}) == (guild == "honeypot")
    assert [c["code"] for c in plan.cautions] == ["stings"]
    assert "species_unknown" in [notice["code"] for notice in plan.notices]


def test_length_alone_is_enough_for_a_species_of_the_keepers_own():
    plan = make_plan(ColonyState("c", None, worker_length_mm=2.0, events=events(40)), NOW_MS)

    assert {"sugar", "protein", "water"} <= {gauge.need for gauge in plan.gauges}


def test_a_listed_species_keeps_its_guild_whatever_the_colony_says():
    plan = make_plan(ColonyState("c", "messor_barbarus", guild="omnivore", events=events(40)), NOW_MS)

    assert "seeds" in {gauge.need for gauge in plan.gauges}


@pytest.mark.parametrize("tube", [v for v in vessels().values() if v.tube], ids=lambda v: v.code)
def test_each_tube_holds_what_its_bore_and_length_give(tube):
    wall_mm = 1.0 if tube.bore_mm <= 14 else 1.2
    radius_mm = tube.bore_mm / 2
    brimful_ml = math.pi * radius_mm**2 * (tube.length_mm - wall_mm - radius_mm / 3) / 1000  # round bottom
    assert tube.volume_ml == pytest.approx(brimful_ml, abs=0.051)
    assert 0.25 <= tube.reservoir_ml / tube.volume_ml <= 0.45  # "about a third"


@pytest.mark.parametrize(
    ("code", "brimful_ml"),
    [("tube_16x150", 22.6), ("tube_18x150", 27.9), ("tube_20x150", 35.5), ("tube_25x150", 58.2),
     ("tube_16x100", 14.9), ("tube_13x100", 9.2)],
)  # fmt: skip
def test_tube_volumes_agree_with_a_second_calculation(code, brimful_ml):
    """Computed apart from the catalogue, from the outer sizes of ASTM E982-94 and the same assumed walls."""
    assert vessels()[code].volume_ml == pytest.approx(brimful_ml, abs=0.1)


def test_nests_and_outworlds_have_inner_sizes_and_room_that_grows_with_the_floor():
    for kind in ("nest", "outworld"):
        rows = sorted(
            (v for v in vessels().values() if v.kind == kind and v.code.startswith(kind)),
            key=lambda v: v.room_workers,
        )
        floors = [v.size_mm[0] * v.size_mm[1] for v in rows]
        assert len(rows) >= 3
        assert floors == sorted(floors)


def test_every_caution_has_words_and_a_source():
    used = {code for kind in species().values() for code in cautions_of(kind)}

    assert used == set(cautions())
    assert used <= set(words()["caution"])
    assert all(row["source"] for row in cautions().values())


def test_the_phone_gets_all_of_it():
    served = catalogue.as_json()

    assert set(served["species"]) == set(species())
    assert set(served["vessels"]) == set(vessels())
    assert set(served["cautions"]) == set(cautions())
    assert set(served["default_source"]) >= {"worker_mm", "fresh_mg", "founding", "guild"}
