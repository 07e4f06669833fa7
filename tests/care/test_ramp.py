"""How servings grow and shrink with what was eaten. Common practice, no source, unless a line names one."""

from __future__ import annotations

import pytest
from tests.care.servings import NOW_MS, check, codes, colony, fed, held_mg, served

from broodshelf.care.feeding.ramp import Served, ramp
from broodshelf.care.plan.known import know
from broodshelf.care.plan.ration import ration_of
from broodshelf.model.facts import Event
from broodshelf.model.gauges import DAY_MS


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


def test_one_reading_of_a_feeder_before_anything_is_known_moves_little():
    """What the crops lacked before nobody knows: half of a filling left after two days may be right."""
    filling = {"food_code": "sugar_water", "amount": 0.45, "unit": "ml", "form": "feeder"}
    feeding = fed(0, 3, filling, "sugar")
    state = colony(800, "many", feeding, check(0, feeding, None, after_h=48, level="half"))

    assert 0.6 < ration_of("sugar", know(state, NOW_MS), None).taught.multiplier.best < 1.2
