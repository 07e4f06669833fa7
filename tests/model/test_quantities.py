"""An estimate is three finite numbers in order, and nothing else can be made."""

from __future__ import annotations

import math

import pytest

from broodshelf.model.quantities import Estimate


@pytest.mark.parametrize(
    "ends",
    [
        (-math.inf, 1, 2),
        (0, 1, math.inf),
        (0, math.nan, 2),
        (math.nan, 1, 2),
        (0, 1, math.nan),
        (2, 1, 3),
        (0, 3, 2),
    ],
)
def test_what_is_not_finite_or_not_in_order_is_no_estimate(ends):
    with pytest.raises(ValueError, match="finite and in order"):
        Estimate(*ends)


def test_a_number_multiplies_an_estimate_as_one_that_is_known_does():
    assert Estimate(1, 2, 4).times(3) == Estimate(3, 6, 12) == Estimate(1, 2, 4).times(Estimate.exactly(3))
