"""Workers and brood from what was last seen. Coarse figures: common practice, no source."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from broodshelf.care.colony.census import census_of
from broodshelf.model.facts import Event
from broodshelf.model.gauges import DAY_MS
from broodshelf.model.quantities import Estimate, OutOfRange


def count(day: float = 0, **values) -> Event:
    return Event(f"count{day}", "count", round(day * DAY_MS), values)


def test_an_exact_count_is_taken_as_it_is():
    assert census_of([count(workers=37)], "mature").workers == Estimate.exactly(37)


def test_a_range_keeps_its_ends_whichever_way_round_they_were_typed():
    assert census_of([count(workers_low=80, workers_high=120)], None).workers == Estimate(80, 100, 120)
    assert census_of([count(workers_low=120, workers_high=80)], None).workers == Estimate(80, 100, 120)


def test_few_some_and_many_rise_and_overlap():
    few, some, many = (
        census_of([count(workers_coarse=word)], None).workers for word in ("few", "some", "many")
    )

    assert few.best < some.best < many.best
    assert few.high > some.low
    assert some.high > many.low


def test_without_a_count_the_stage_speaks_and_says_that_it_guesses():
    guessed = census_of([], "nanitics")

    assert guessed.workers == Estimate(3, 8, 20)
    assert guessed.basis == "stage"
    assert [r["code"] for r in guessed.reasons(0)] == ["census_guessed"]
    founding = census_of([], "founding")
    assert founding.workers == Estimate.exactly(0)
    assert founding.reasons(0) == ()  # that she has no workers yet is no guess
    assert [r["code"] for r in census_of([], None).reasons(0)] == ["census_unknown"]


def test_a_field_left_open_keeps_what_an_earlier_count_said():
    seen = census_of([count(1, workers=40, larvae="many"), count(2, larvae=None, pupae="few")], None)

    assert seen.workers.best == 40
    assert (seen.brood.larvae, seen.brood.pupae, seen.brood.eggs) == ("many", "few", None)
    assert seen.counted_ms == DAY_MS


def test_the_latest_word_on_a_field_wins():
    log = [count(1, workers=40, larvae="many"), count(2, workers=50, larvae="none", pupae="some")]

    assert census_of(log, None).workers.best == 50
    assert census_of(log, None).brood.larvae_n == Estimate.exactly(0)
    assert census_of(log, None).brood.all_pupae


def test_brood_seen_two_months_before_the_last_look_counts_as_not_seen():
    """Common practice, no source: by then it has hatched or gone."""
    log = [count(0, workers=40, larvae="many"), count(61, pupae="few")]

    assert census_of(log, None).brood.larvae is None
    assert census_of(log, None).workers.best == 40


def test_a_count_that_falls_to_zero_is_believed_and_told():
    fallen = census_of([count(1, workers=40), count(2, larvae="few"), count(3, workers=0)], "growing")

    assert fallen.workers == Estimate.exactly(0)
    assert fallen.fell_to_zero
    assert "workers_fell_to_zero" in [r["code"] for r in fallen.reasons(3 * DAY_MS)]
    assert not census_of([count(1, workers=0), count(2, workers=0)], "founding").fell_to_zero


def test_a_count_grows_old():
    seen = census_of([count(0, workers=40)], None)

    assert seen.age_days(61 * DAY_MS) == 61
    assert [r["code"] for r in seen.reasons(61 * DAY_MS)] == ["census_old"]
    assert seen.reasons(59 * DAY_MS) == ()


def test_brood_numbers_grow_with_the_colony_but_never_vanish_beside_a_queen_alone():
    large = census_of([count(workers=1_000, larvae="some")], None).brood.larvae_n
    alone = census_of([count(workers=0, larvae="some")], None).brood.larvae_n

    assert large.best == 300
    assert 0 < alone.best < 20


def test_brood_that_nobody_looked_for_may_be_none_or_many():
    unseen = census_of([count(workers=100)], None).brood

    assert unseen.larvae is None
    assert unseen.larvae_n.low == 0
    assert unseen.larvae_n.high >= 100
    assert not unseen.all_pupae


@pytest.mark.parametrize("workers", [-1, math.nan, math.inf, 1_000_001])
def test_a_number_that_cannot_be_is_refused(workers):
    with pytest.raises(OutOfRange, match="workers"):
        census_of([count(workers=workers)], None)


COARSE = st.sampled_from(["none", "few", "some", "many", None])


@given(
    st.lists(
        st.fixed_dictionaries(
            {"workers": st.none() | st.integers(0, 20_000), "workers_coarse": COARSE, "larvae": COARSE}
        ),
        max_size=5,
    ),
    st.sampled_from(["founding", "nanitics", "growing", "mature", None]),
)
def test_every_log_has_a_census_that_is_finite_and_in_order(counts, stage):
    seen = census_of([count(day, **values) for day, values in enumerate(counts)], stage)

    for number in (seen.workers, seen.brood.eggs_n, seen.brood.larvae_n, seen.brood.pupae_n):
        assert 0 <= number.low <= number.best <= number.high < math.inf
