"""Water for nests that are not tubes. Bands: common practice, no source."""

from __future__ import annotations

import math

import pytest
from tests.support.said import words

from broodshelf.care.water.hydration import (
    DRINKER_WORKERS,
    hydration_days,
    hydration_ml,
    hydration_reasons,
)
from broodshelf.model.quantities import Estimate, OutOfRange


def test_a_nest_in_a_usual_room_is_watered_every_3_to_10_days():
    assert hydration_days(24, 50) == Estimate(3.0, 5.5, 10.0)


def test_warm_dry_air_shortens_it_and_a_cold_rest_makes_it_weeks():
    assert hydration_days(30, 30).best == 3.0
    assert 14 <= hydration_days(6, 60).best <= 28
    assert hydration_days(24, 100).high == 28


@pytest.mark.parametrize(
    ("full_ml", "share", "ml"), [(5, 0.25, 3.5), (15, 0.5, 7.5), (5, 1, 0.5), (0, 0, 0.5)]
)
def test_the_amount_fills_up_in_half_millilitres(full_ml, share, ml):
    assert hydration_ml(full_ml, share) == ml


def test_large_colonies_are_told_of_a_drinker():
    few, many = hydration_reasons(DRINKER_WORKERS - 1), hydration_reasons(DRINKER_WORKERS)

    assert [r["code"] for r in few] == ["water_damp_end"]
    assert [r["code"] for r in many] == ["water_damp_end", "water_drinker"]
    assert {r["code"] for r in many} <= set(words()["reason"])


@pytest.mark.parametrize("bad", [math.nan, math.inf, -1])
def test_nonsense_is_refused(bad):
    for call in (
        lambda: hydration_days(bad, 50),
        lambda: hydration_days(24, bad),
        lambda: hydration_ml(bad, 0.5),
        lambda: hydration_ml(5, bad),
        lambda: hydration_reasons(bad),
    ):
        with pytest.raises(OutOfRange):
            call()
    with pytest.raises(OutOfRange):
        hydration_days(60, 50)
    with pytest.raises(OutOfRange):
        hydration_days(24, 120)
