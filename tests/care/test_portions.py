"""What is served at once and when next, in whole plans. Common practice, no source, unless a line names one.

Longer than 300 lines because it is the list of what a serving promises.
"""

from __future__ import annotations

import itertools

import pytest

from broodshelf.care.catalogue import species, words
from broodshelf.care.feeding.appetite import protein_mg_per_day
from broodshelf.care.feeding.content import content_mg
from broodshelf.care.feeding.ramp import Served, ramp
from broodshelf.care.plan.known import know
from broodshelf.care.plan.make import make_plan
from broodshelf.care.plan.ration import ration_of
from broodshelf.care.wording import say, say_portion
from broodshelf.model.facts import ColonyState, Event, Lot, Place, Rule, Vessel
from broodshelf.model.gauges import DAY_MS
from broodshelf.model.kinds import read
from broodshelf.model.kinds.log import Feeding

NOW_MS = 1_777_636_800_000  # 2026-05-01T12:00:00Z
HOUR_MS = 3_600_000
SIZES = (8, 20, 60, 100, 101, 300, 301, 1_000, 1_001, 5_000, 20_000)


def colony(workers: int = 60, larvae: str = "many", *log: Event, **values) -> ColonyState:
    first = Event("f", "check", NOW_MS - 90 * DAY_MS, {"need": "glance"})
    seen = Event("n", "count", NOW_MS - 1, {"workers": workers, "larvae": larvae})
    vessel = Vessel("tube_16x150" if workers < 100 else "nest_large")
    usual = {"id": "c", "species_code": "lasius_niger", "stage": "growing", "vessel": vessel}
    return ColonyState(
        **{**usual, "place": Place("room", 25, 22, 50), "events": (first, *log, seen), **values}
    )


def served(state: ColonyState, need: str = "protein", at_ms: int = NOW_MS):
    return next((t for t in make_plan(state, at_ms).tasks if t.need == need and t.portion), None)


def days(state: ColonyState, need: str, at_ms: int = NOW_MS) -> float:
    return next(g.capacity for g in make_plan(state, at_ms).gauges if g.need == need)


def codes(task) -> list[str]:
    return [r["code"] for r in task.reasons]


def held_mg(portion, need: str = "protein") -> float:
    protein_mg, sugar_mg = content_mg(read(Feeding, {"need": need, **portion}))
    return protein_mg if need == "protein" else sugar_mg


def fed(n: int, ago_days: float, portion, need: str = "protein") -> Event:
    return Event(f"f{n}", "feeding", NOW_MS - round(ago_days * DAY_MS), {"need": need, **portion})


def check(n: int, feeding: Event, outcome: str | None, after_h: float = 24, **values) -> Event:
    told = {"need": feeding.values["need"], "feeding_id": feeding.id, **values}
    if outcome:
        told["outcome"] = outcome
    return Event(f"k{n}", "check", feeding.happened_ms + round(after_h * HOUR_MS), told)


@pytest.mark.parametrize("larvae", ["none", "many"])
@pytest.mark.parametrize("code", sorted(species()))
def test_no_serving_is_a_heap(code, larvae):
    """At most four days of need, unless a single piece is already more; and no more pieces than a hand lays out."""
    for workers in (0, *SIZES):
        state = colony(workers, larvae, species_code=code, rules=(Rule("protein", every_days=14.0),))
        known = know(state, NOW_MS)
        for need in ("protein", "sugar"):
            task = served(state, need)
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


def grown(workers: int, outcome: str | None, feedings: int, every_days: float = 3.0) -> list[float]:
    """Feed as suggested again and again, with the same outcome; return what each serving held."""
    log: list[Event] = []
    held = []
    for n in range(feedings):
        at_ms = NOW_MS + round(n * every_days * DAY_MS)
        portion = served(colony(workers, "some", *log), at_ms=at_ms).portion
        feeding = Event(f"f{n}", "feeding", at_ms, {"need": "protein", **portion})
        log += [feeding, check(n, feeding, outcome)] if outcome else [feeding]
        held.append(held_mg(portion))
    return held


@pytest.mark.parametrize("workers", [8, 60, 300, 2_000])
def test_without_outcomes_a_serving_rises_slowly_to_the_need_and_no_further(workers):
    held = grown(workers, None, 14)
    state = colony(workers, "some")
    first_mg, last_mg = (
        ration_of("protein", know(state, NOW_MS + days * DAY_MS), None).aim_mg * 3 for days in (0, 13 * 3)
    )

    assert held[0] == pytest.approx(first_mg / 3, rel=0.5)
    assert held == sorted(held)
    # what it needed at first is reached; what it needs grows with the colony meanwhile
    assert 0.6 * first_mg <= held[-1] <= 1.3 * max(first_mg, last_mg)


def test_that_a_serving_rises_is_said():
    feeding = fed(0, 3, {"food_code": "cricket", "size_class": "extra_small", "amount": 1, "unit": "piece"})

    assert "portion_rises" in codes(served(colony(60, "many", feeding)))
    assert "prey_first_third" in codes(served(colony(60, "many")))


@pytest.mark.parametrize("workers", [8, 60, 300, 2_000])
def test_after_all_taken_a_serving_rises_at_most_by_half_or_by_one_piece(workers):
    held = grown(workers, "all", 8)
    smallest_mg = 0.6  # an extra small cricket: 3.7 mg x 15.4 % (Finke)

    for n in range(2, len(held)):
        assert (
            held[n] <= max(1.5 * held[n - 1], held[n - 1] + smallest_mg) * 1.001
            or held[n] <= 2.25 * held[n - 2]
        )
    assert held[-1] >= 2 * held[0]


def test_the_steps_of_a_ramp_by_hand():
    """A third of 12 is 4; after 'all' 6, then 9; unchecked 15 % more; after 'some' no more."""
    assert ramp([], 12, 12).most_mg == pytest.approx(4)
    assert ramp([Served(4, 2, "all")], 12, 12).most_mg == pytest.approx(6)
    assert ramp([Served(4, 2, "all"), Served(6, 3, "all")], 12, 12).most_mg == pytest.approx(9)
    assert ramp([Served(4, 2, None)], 12, 12).most_mg == pytest.approx(4.6)
    assert ramp([Served(6, 3, "some")], 12, 12).most_mg == pytest.approx(6)
    assert not ramp([Served(12, 3, "all")], 12, 12).rising


def test_one_piece_becomes_two_after_it_was_eaten_up_twice():
    """1.5 x 1.5 = 2.25."""
    once, twice = ([Served(1, 1, "all")] * n for n in (1, 2))

    assert ramp(once, 12, 12, first_share=0).most_mg == pytest.approx(1.5)
    assert ramp(twice, 12, 12, first_share=0).most_mg == pytest.approx(2)


def test_brood_that_was_counted_since_is_not_starved_by_what_was_right_without_it():
    assert ramp([Served(1, 1, "all")] * 5, 30, 30).most_mg == pytest.approx(10)


def test_a_feeder_that_is_not_empty_yet_teaches_nothing_downward():
    filling = {"food_code": "sugar_water", "amount": 0.5, "unit": "ml", "form": "feeder"}
    log = []
    for n in range(6):
        feeding = fed(n, 30 - 4 * n, filling, "sugar")
        log += [feeding, check(n, feeding, "some", after_h=48)]
    task = served(colony(800, "many", *log), "sugar")

    assert task.portion == served(colony(800, "many"), "sugar").portion
    assert not [code for code in codes(task) if code.startswith("appetite")]


@pytest.mark.parametrize(("level", "more"), [("empty", True), ("three_quarters", False)])
def test_a_feeder_is_learnt_by_its_level(level, more):
    """0.5 mL is about four days' use of 800 workers: after two days half of it should be left."""
    filling = {"food_code": "sugar_water", "amount": 0.5, "unit": "ml", "form": "feeder"}
    log = []
    for n in range(6):
        feeding = fed(n, 30 - 4 * n, filling, "sugar")
        log += [feeding, check(n, feeding, None, after_h=48, level=level)]
    state = colony(800, "many", *log)
    taught = ration_of("sugar", know(state, NOW_MS), None).taught

    assert (taught.multiplier.best > 1.3) == more
    assert (taught.multiplier.best < 0.8) == (not more)


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


def lot(food: str, size: str | None = None, **values) -> Lot:
    return Lot("l", food, "bought_or_bred", size_class=size, **values)


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
    return protein_mg_per_day(
        census.brood, census.workers, known.brood_mg, known.temp_c, sugar_offered=True
    ).best


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


def test_every_new_reason_has_words():
    asked = {"portion_rises", "portion_at_once", "portion_tiny", "appetite_hidden"}

    assert asked <= set(words()["reason"])


@pytest.mark.parametrize(("food", "said"), [("egg", "crumb of boiled egg"), ("fruit", "1 crumb of fruit")])
def test_what_is_no_animal_comes_in_crumbs(food, said):
    need = "protein" if food == "egg" else "sugar"

    assert said in say_portion(served(colony(60, "none", lots=(lot(food),)), need).portion)


def test_sugar_in_a_bag_is_there_to_be_mixed():
    portion = served(colony(60, "many", lots=(lot("white_sugar"),)), "sugar").portion

    assert portion["food_code"] == "sugar_water"


def test_one_reading_of_a_feeder_before_anything_is_known_moves_little():
    """What the crops lacked before nobody knows: half of a filling left after two days may be right."""
    filling = {"food_code": "sugar_water", "amount": 0.45, "unit": "ml", "form": "feeder"}
    feeding = fed(0, 3, filling, "sugar")
    state = colony(800, "many", feeding, check(0, feeding, None, after_h=48, level="half"))

    assert 0.6 < ration_of("sugar", know(state, NOW_MS), None).taught.multiplier.best < 1.2


@pytest.mark.parametrize("food", ["sugar_water", "honey_water", "honey", "maple_syrup"])
def test_thick_sugar_is_served_by_what_it_holds(food):
    """Honey holds 1.42 mg x 82 % in a microlitre, sugar water of 30 % a third of that."""
    state = colony(800, "many", lots=(lot(food),))
    portion = served(state, "sugar").portion

    assert portion["food_code"] == food
    assert held_mg(portion, "sugar") <= 4.001 * ration_of("sugar", know(state, NOW_MS), None).mg_per_day.best
