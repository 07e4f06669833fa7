"""Which food is served and in what form, by what is in the house. Common practice, no source."""

from __future__ import annotations

import itertools

import pytest
from tests.care.servings import NOW_MS, SIZES, check, colony, held_mg, lot, served
from tests.support.said import say, say_portion

from broodshelf.care.catalogue import species
from broodshelf.care.plan.known import know
from broodshelf.care.plan.ration import ration_of
from broodshelf.model.facts import Event, Vessel
from broodshelf.model.gauges import DAY_MS


@pytest.mark.parametrize(
    ("workers", "food", "size", "unit"),
    [
        (8, "cricket", "large", "leg"),
        (20, "mealworm", "large", "slice"),
        (60, "mealworm", "large", "slice"),
        (800, "cricket", "small", "piece"),
        (800, "roach_nymph", "medium", "piece"),
    ],
)
def test_what_is_in_the_house_comes_before_a_size_that_is_not(workers, food, size, unit):
    portion = served(colony(workers, "many", lots=(lot(food, size),))).portion

    assert (portion["food_code"], portion["size_class"], portion["unit"]) == (food, size, unit)
    assert portion["lot_id"] == "l"


def test_a_lot_of_another_size_is_not_the_one_that_is_taken():
    portion = served(colony(5_000, "many", lots=(lot("cricket", "tiny"),))).portion

    assert portion["size_class"] != "tiny"
    assert "lot_id" not in portion


@pytest.mark.parametrize(
    "code", ["camponotus_ligniperda", "myrmecia_large", "paraponera_clavata", "polyrhachis"]
)
def test_no_prey_is_absurdly_small_for_the_species(code):
    """Shorter than three tenths of a worker: not worth the way out."""
    shortest, longest = species()[code].worker_mm
    lengths = {"tiny": 2.5, "extra_small": 4, "small": 6.5, "medium": 11, "large": 18.5}
    for workers in SIZES[1:]:
        for larvae in ("none", "many"):
            portion = served(colony(workers, larvae, species_code=code)).portion
            length = lengths[portion["size_class"]] if portion.get("size_class") else 2.5
            assert portion["unit"] == "leg" or length >= 0.3 * (shortest * longest) ** 0.5


@pytest.mark.parametrize("workers", [60, 300, 2_000])
def test_the_size_does_not_change_at_every_feeding(workers):
    log: list[Event] = []
    sizes = []
    for n in range(8):
        at_ms = NOW_MS + 3 * n * DAY_MS
        portion = served(colony(workers, "some", *log), at_ms=at_ms).portion
        feeding = Event(f"f{n}", "feeding", at_ms, {"need": "protein", **portion})
        log += [feeding, check(n, feeding, ("all", "some")[n % 2])]
        sizes.append((portion["food_code"], portion.get("size_class"), portion["unit"]))

    assert sum(a != b for a, b in itertools.pairwise(sizes)) <= 1


def test_seeds_are_crushed_until_this_colony_has_majors():
    young, old = (
        served(colony(n, "some", species_code="messor_barbarus"), "seeds").portion for n in (40, 400)
    )

    assert (young["form"], old["form"]) == ("crushed", "whole")


@pytest.mark.parametrize("food", ["mealworm", "fruit_fly", "egg", "roach_nymph", "cricket"])
def test_reasons_and_cautions_fit_the_food_that_is_named(food):
    task = served(colony(60, "many", lots=(lot(food),), vessel=Vessel("nest_small")))
    said = " ".join(
        [*(say("reason", r["code"], r["args"]) for r in task.reasons),
         *(say("caution", c["code"], c["args"]) for c in task.cautions)]
    )  # fmt: skip

    assert task.portion["food_code"] == food
    assert food == "cricket" or "cricket" not in said
    assert food != "egg" or "prey" not in said.replace("no prey", "").lower() or "A crumb" in said


def test_an_egg_in_a_tube_has_no_caution_about_live_prey_and_a_leg_needs_no_blade():
    egg = served(colony(20, "many", lots=(lot("egg"),)))
    leg = served(colony(8, "many", lots=(lot("cricket", "large"),)))

    assert egg.cautions == ()
    assert [c["code"] for c in leg.cautions] == ["dead_only"]


def test_one_leaf_is_one_leaf():
    task = served(colony(60, "many", species_code="atta"), "leaves")

    assert say_portion(task.portion) == "1 leaf"


def test_a_tinted_lot_is_never_suggested_by_the_plan():
    dyed = lot("sugar_water", tint="blue")

    assert "lot_id" not in served(colony(60, "many", lots=(dyed,)), "sugar").portion


@pytest.mark.parametrize(("food", "said"), [("egg", "crumb of boiled egg"), ("fruit", "1 crumb of fruit")])
def test_what_is_no_animal_comes_in_crumbs(food, said):
    need = "protein" if food == "egg" else "sugar"

    assert said in say_portion(served(colony(60, "none", lots=(lot(food),)), need).portion)


def test_sugar_in_a_bag_is_there_to_be_mixed():
    portion = served(colony(60, "many", lots=(lot("white_sugar"),)), "sugar").portion

    assert portion["food_code"] == "sugar_water"


@pytest.mark.parametrize("food", ["sugar_water", "honey_water", "honey", "maple_syrup"])
def test_thick_sugar_is_served_by_what_it_holds(food):
    """Honey holds 1.42 mg x 82 % in a microlitre, sugar water of 30 % a third of that."""
    state = colony(800, "many", lots=(lot(food),))
    portion = served(state, "sugar").portion

    assert portion["food_code"] == food
    assert held_mg(portion, "sugar") <= 4.001 * ration_of("sugar", know(state, NOW_MS), None).mg_per_day.best
