"""What the crops lack goes from feeding to feeding: each line worked out by hand for an appetite of 1."""

from __future__ import annotations

import math

import pytest

from broodshelf.care.feeding.intake import Crop, Filling, sugar_appetite

STAYED = Filling(offered=10, fresh=2, until_next=4)
DRUNK_UP = Filling(offered=1, fresh=3, until_next=3)
LONG_AGO = Filling(offered=1, fresh=math.inf, until_next=20)


@pytest.mark.parametrize(
    ("before", "lacked", "lacks"),
    [
        ((), 0, 0),
        ((), 1, 1),
        ((STAYED,), 1, math.exp(-6) + 2),  # filled but for a rest in 48 h, then two days without
        ((DRUNK_UP,), 0, 2),  # three days' use of which one was there
        ((LONG_AGO,), 0, 5),  # no more than the crops hold
        ((LONG_AGO, STAYED), 0, 5 * math.exp(-6) + 2),
        ((STAYED, DRUNK_UP), 1, math.exp(-6) + 4),
        ((Filling(offered=9, fresh=3, until_next=3),), 0, 0),  # never below nothing
    ],
)
def test_the_appetite_is_found_again_from_what_was_drunk(before, lacked, lacks):
    drunk = lacks * (1 - math.exp(-3)) + 1  # in 24 h, with 63 % of what is lacking in each 8 h

    found = sugar_appetite(before, 8, 2, Crop(5, lacked), gone=drunk / 8, hours=24)

    assert found == pytest.approx(1, rel=0.005)


def test_nothing_is_drunk_of_what_was_taken_away():
    assert sugar_appetite((), 4, 2, Crop(5, 0), gone=0.5, hours=100) == pytest.approx(1, rel=0.005)
