"""What a nudge says and how large it may be."""

from __future__ import annotations

import json

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.nudges.support import URL

from broodshelf.nudges.grouping import MOST_BYTES, Item, compose, compose_short, compose_test, title

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
        ([item(), item(need="water")], "Amber: protein, water"),
        ([item(), item("Birch"), item("Cedar", "water")], "3 colonies: protein for 2, water for 1"),
    ],
)
def test_the_title_says_what_for_whom(items, expected):
    assert title(items) == expected


def test_the_message_has_the_agreed_shape():
    suggested = {"kind": "feeding", "set": {"need": "protein", **FLY}}
    message = json.loads(compose([item(portion=FLY, suggested=suggested)], "n1", "d1", URL))

    assert message == {
        "web_push": 8030,
        "notification": {
            "title": "Protein for Amber", "body": "Amber: 1 fruit fly, killed",
            "navigate": "https://shelf.example.org/#/round?nudge=n1", "tag": "round", "data": {},
        },
        "app_badge": 1,
        "broodshelf": {"nudge_id": "n1", "delivery_id": "d1", "items": [{
            "colony_id": "id-of-Amber", "need": "protein", "task_key": "protein:start",
            "occurrence_id": "occurrence-0", "suggested": suggested,
        }]},
    }  # fmt: skip


@given(st.lists(st.text(min_size=1, max_size=60), min_size=1, max_size=60), st.integers(0, 400))
def test_a_message_is_never_longer_than_3000_bytes_and_never_logs_what_it_does_not_carry(names, padding):
    items = [
        item(name, n=n, portion=FLY, suggested={"kind": "feeding", "set": {"remark": "x" * padding}})
        for n, name in enumerate(names)
    ]
    raw = compose(items, "n" * 36, "d" * 43, URL)
    message = json.loads(raw)

    assert len(raw) <= MOST_BYTES
    assert len(message["broodshelf"]["items"]) <= len(items)
    assert message["notification"]["title"]


def test_many_items_say_how_many_more():
    message = json.loads(compose([item(f"C{n}", n=n) for n in range(20)], "n", "d", URL))

    assert message["notification"]["body"].endswith("and 14 more")
    assert message["app_badge"] == 20


@pytest.mark.parametrize("raw", [compose_short("n", "d", URL), compose_test("d", URL)])
def test_the_short_and_the_test_message_carry_nothing_to_log(raw):
    message = json.loads(raw)

    assert message["broodshelf"]["items"] == []
    assert message["notification"]["navigate"].startswith(URL)
