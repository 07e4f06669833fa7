"""What a nudge says."""

from __future__ import annotations

import pytest

from broodshelf.nudges.messages import Item, title

FLY = {"amount": 1, "unit": "piece", "food_code": "fruit_fly", "form": "whole_dead"}


def item(colony: str = "Amber", need: str = "protein", n: int = 0, **more) -> Item:
    return Item(f"occurrence-{n}", f"id-of-{colony}", colony, need, f"{need}:start", **more)


@pytest.mark.parametrize(
    ("items", "expected"),
    [
        ([item()], "Protein for Amber"),
        ([item(need="water")], "See to the water: Amber"),
        ([item(need="water", fault="leak")], "Leaking reservoir: Amber"),
        ([item(), item("Birch")], "Protein for 2 colonies"),
        ([item(), item(need="water")], "Amber: protein and water"),
        ([item(), item("Birch"), item("Cedar", "water")], "3 colonies: protein for 2 and water for 1"),
    ],
)
def test_the_title_says_what_for_whom(items, expected):
    assert title(items) == expected
