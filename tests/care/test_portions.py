"""How much is served at once and when next, in whole plans. Common practice, no source, unless a line names one."""

from __future__ import annotations

import pytest
from tests.care.servings import NOW_MS, SIZES, codes, colony, days, fed, held_mg, served, served_by
from tests.support.said import words

from broodshelf.care.catalogue import species
from broodshelf.care.colony.census import life_group
from broodshelf.care.feeding.appetite import protein_mg_per_day
from broodshelf.care.plan.known import know
from broodshelf.care.plan.make import make_plan
from broodshelf.care.plan.ration import ration_of
from broodshelf.model.facts import ColonyState, Event, Place, Rule, Vessel
from broodshelf.model.gauges import DAY_MS


@pytest.mark.parametrize("larvae", ["none", "many"])
@pytest.mark.parametrize("code", sorted(species()))
def test_no_serving_is_a_heap(code, larvae):
    """At most four days of need, unless a single piece is already more; and no more pieces than a hand lays out."""
    for workers in (0, *SIZES):
        state = colony(workers, larvae, species_code=code, rules=(Rule("protein", every_days=14.0),))
        known, plan = know(state, NOW_MS), make_plan(state, NOW_MS)
        for need in ("protein", "sugar"):
            task = served_by(plan, need)
            if task is None:
                continue
            amount, held = task.portion["amount"], held_mg(task.portion, need)
            assert amount <= (12 if task.portion["unit"] == "piece" else 30)
            most_mg = 4 * ration_of(need, known, 14.0).mg_per_day.best
            assert amount in (1, 0.1) or held <= most_mg * 1.001, (workers, task.portion)


@pytest.mark.parametrize("code", [c for c, s in species().items() if s.founding == "semi_claustral"])
def test_a_founding_queen_gets_one_or_two_small_prey(code):
    task = served(colony(0, "many", species_code=code, stage="founding"))

    if task is not None:
        assert task.portion["amount"] <= 2
        assert task.portion["unit"] == "leg" or task.portion.get("size_class") not in ("medium", "large")


@pytest.mark.parametrize("code", ["lasius_niger", "camponotus_ligniperda", "aphaenogaster"])
def test_the_first_food_of_their_lives_is_the_smallest_serving(code):
    day = NOW_MS - 3 * DAY_MS
    log = (
        Event("a", "count", day - DAY_MS, {"workers": 0, "larvae": "many"}),
        Event("b", "count", day, {"workers": 8, "larvae": "many"}),
    )
    state = ColonyState(
        "c", code, stage="founding", vessel=Vessel("tube_16x150"), place=Place("room", 25, 22, 50), events=log
    )

    for need in ("protein", "sugar"):
        task = served(state, need)
        assert task.portion["amount"] == 1
        assert "portion_tiny" in codes(task)
    assert held_mg(served(state).portion) < 0.7  # a fruit fly 0.2 mg, an extra small cricket 0.57


def test_long_intervals_mean_less_food_and_say_so():
    state = colony(5_000, "none")
    task = served(state)

    assert days(state, "protein") == 10.5
    assert "portion_at_once" in codes(task)


@pytest.mark.parametrize(
    "code", ["lasius_niger", "camponotus_ligniperda", "camponotus_fulvopilosus", "pheidole_tropical"]
)
def test_sugar_is_one_notion_across_sizes(code):
    """A colony of 301 does not wait longer than one of 300, whatever its sugar stands in."""
    small, large = (colony(n, "many", species_code=code) for n in (300, 301))

    assert days(small, "sugar") == pytest.approx(days(large, "sugar"), abs=0.5)


@pytest.mark.parametrize("workers", [301, 800, 1_001, 20_000])
def test_a_feeder_is_filled_again_before_it_has_to_be_taken_out(workers):
    state = colony(workers, "many")
    task = served(state, "sugar")
    filled = Event("f", "feeding", NOW_MS, task.suggested["set"])
    made = make_plan(colony(workers, "many", filled), NOW_MS)
    due_ms = {t.need: t.due_at_ms for t in made.tasks}

    assert task.portion["form"] == "feeder"
    assert due_ms["sugar"] <= due_ms["leftovers"] == NOW_MS + 6 * DAY_MS  # a closed feeder keeps 5 to 7 days


def test_filling_a_feeder_takes_the_old_one_out():
    filling = {"food_code": "sugar_water", "amount": 0.5, "unit": "ml", "form": "feeder"}
    old, new = fed(0, 9, filling, "sugar"), fed(1, 2, filling, "sugar")
    keys = [
        str(t.key) for t in make_plan(colony(800, "many", old, new), NOW_MS).tasks if t.need == "leftovers"
    ]

    assert keys == ["leftovers:f1"]


@pytest.mark.parametrize("larvae", ["none", "some", "many"])
@pytest.mark.parametrize("condition", [None, "quarantine", "queenless_suspected"])
def test_the_bands_hold_in_every_condition(condition, larvae):
    """Sugar and protein in days, from the table of the trade; twice and half is the most that a model may say."""
    bands = ((20, (3, 7), (3, 5)), (100, (3, 5), (2, 4)), (1_000, (2, 4), (2, 3)), (10**9, (2, 3), (1, 2)))
    for workers in SIZES:
        sugar, protein = next(row[1:] for row in bands if workers <= row[0])
        protein = (7, 14) if larvae == "none" else protein
        state = colony(workers, larvae, condition=condition)
        assert sugar[0] / 2 <= days(state, "sugar") <= sugar[1], workers
        assert protein[0] / 2 <= days(state, "protein") <= 2 * protein[1], workers


def test_seeds_are_carbohydrate_too():
    """43 % less prey where sugar is given (Macom & Porter 1995): a harvester has its seeds for that."""
    state = colony(300, "many", species_code="messor_barbarus")
    same = colony(300, "many", species_code="messor_barbarus", guild="omnivore")
    with_seeds = ration_of("protein", know(state, NOW_MS), None).mg_per_day.best

    assert with_seeds == pytest.approx(ration_of("protein", know(same, NOW_MS), None).mg_per_day.best)
    assert with_seeds == pytest.approx(_need_with_sugar(state))


def _need_with_sugar(state: ColonyState) -> float:
    known = know(state, NOW_MS)
    census = known.census
    group = life_group(known.species.genus)
    return protein_mg_per_day(group, census.brood, census.workers, known.brood_mg, known.temp_c).best


def test_every_new_reason_has_words():
    asked = {"portion_rises", "portion_at_once", "portion_tiny", "appetite_hidden"}

    assert asked <= set(words()["reason"])
