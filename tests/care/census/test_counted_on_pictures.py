"""A count on a picture says how far it may be off, and the census believes it no more than that."""

from __future__ import annotations

import math

import pytest
from tests.care.test_census import count

from broodshelf.care.colony import census
from broodshelf.care.colony.census.counted import census_of
from broodshelf.care.colony.census.facts import Facts, Seen, Warmth
from broodshelf.care.colony.census.groups import LIFE_GROUPS
from broodshelf.care.colony.census.likelihood import OFFSET, likelihood_of

DAY = 20_600
LOOK = DAY + 60


def workers_after(*seen: Seen):
    told = Facts(
        LIFE_GROUPS["lasius"], DAY, (Warmth(DAY, 24, 22),), stage="growing",
        seen=(Seen(DAY, "workers", number=100.0), *seen),
    )  # fmt: skip
    return census.of(told, LOOK).today.workers


def width(estimate) -> float:
    return math.log((estimate.high + 0.5) / (estimate.low + 0.5))


def picture(low: float, high: float | None) -> Seen:
    return Seen(LOOK, "workers", low=low, high=high)


def test_the_wider_the_range_the_less_it_moves_the_census():
    """The same middle, half as many again as were thought to be there, told more and less surely."""
    before = workers_after()
    middle = 1.5 * before.best
    sure, unsure, vague = (workers_after(picture(middle / by, middle * by)) for by in (1.06, 1.4, 2.2))

    assert before.best < vague.best < unsure.best < sure.best
    assert sure.best == pytest.approx(middle, rel=0.06)
    assert width(sure) < width(unsure) < width(vague)


def test_the_ends_are_those_of_four_in_five():
    """A bell over the logarithm: 10 of 100 lie beyond each end, so each end is 1.28 deviations off (normal table)."""
    bell = likelihood_of(picture(160, 230), 100)
    low, high = math.log(160 + OFFSET), math.log(230 + OFFSET)

    assert bell.middle == pytest.approx((low + high) / 2, abs=0.002)
    assert bell.deviation == pytest.approx((high - low) / 2 / 1.28, rel=0.08)


def test_at_least_so_many_raises_a_census_that_is_below_and_leaves_one_that_is_above():
    before = workers_after()
    far_above = workers_after(picture(3 * before.best, None))
    far_below = workers_after(picture(before.best / 4, None))

    assert far_above.best > 1.8 * before.best
    assert far_below.best == pytest.approx(before.best, rel=0.05)  # what lies below is left out
    assert far_below.high == pytest.approx(before.high, rel=0.05)


def test_at_least_says_nothing_of_how_many_more_there_are():
    likely = likelihood_of(picture(140, None), 100)

    assert likely(math.log(140)) == pytest.approx(likely(math.log(5_000)), rel=0.01)
    assert likely(math.log(90)) < 0.01


def test_the_last_count_keeps_its_ends_and_the_number_between_them():
    found = census_of(
        [count(workers=180, workers_low=160, workers_high=230, workers_at_least=140)], "growing"
    )

    assert (found.workers.low, found.workers.best, found.workers.high, found.basis) == (
        160,
        180,
        230,
        "range",
    )


def test_where_a_part_was_seen_and_nothing_else_is_known_there_are_more():
    found = census_of([count(workers_at_least=140)], None)

    assert found.workers.low == 140
    assert found.workers.low < found.workers.best < found.workers.high


def test_nothing_on_a_picture_is_nothing():
    found = census_of([count(workers=0, workers_low=0, workers_high=0, workers_at_least=0)], "growing")

    assert found.workers.high == 0
