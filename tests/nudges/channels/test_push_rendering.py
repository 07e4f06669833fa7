"""What a phone is sent, and how large it may be."""

from __future__ import annotations

import json

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.nudges.support import URL
from tests.nudges.test_messages import FLY, item
from tests.support.examples import json_examples, shape

from broodshelf.nudges.channels.push.rendering import MOST_BYTES, render
from broodshelf.nudges.messages import Item, in_brief, of_round, of_test


def rendered(items: list[Item]) -> bytes:
    return render(of_round(items, "n1", URL), "d1")


def test_the_message_has_the_agreed_shape():
    suggested = {"kind": "feeding", "set": {"need": "protein", **FLY}}
    message = json.loads(rendered([item(portion=FLY, suggested=suggested)]))

    assert message == {
        "web_push": 8030,
        "notification": {
            "title": "Protein for Amber", "body": "Amber: 1 fruit fly, killed",
            "navigate": "https://shelf.example.org/#/round?nudge=n1", "tag": "round", "lang": "en", "data": {},
        },
        "app_badge": 1,
        "broodshelf": {"nudge_id": "n1", "delivery_id": "d1", "items": [{
            "colony_id": "id-of-Amber", "need": "protein", "task_key": "protein:start",
            "occurrence_id": "occurrence-0", "suggested": suggested,
        }]},
    }  # fmt: skip


def test_the_page_on_http_shows_the_message_that_is_rendered():
    shown = next(example for example in json_examples("http-api.md") if "web_push" in example)
    suggested = {"kind": "feeding", "set": {}}
    message = json.loads(rendered([item(portion=FLY, suggested=suggested)]))

    assert shape(shown) == shape(message)
    assert (shown["web_push"], shown["notification"]["tag"]) == (8030, message["notification"]["tag"])


@given(st.lists(st.text(min_size=1, max_size=60), min_size=1, max_size=60), st.integers(0, 400))
def test_a_message_is_never_longer_than_3000_bytes_and_never_logs_what_it_does_not_carry(names, padding):
    items = [
        item(name, n=n, portion=FLY, suggested={"kind": "feeding", "set": {"remark": "x" * padding}})
        for n, name in enumerate(names)
    ]
    raw = render(of_round(items, "n" * 36, URL), "d" * 43)
    message = json.loads(raw)

    assert len(raw) <= MOST_BYTES
    assert len(message["broodshelf"]["items"]) <= len(items)
    assert message["notification"]["title"]


def test_many_items_say_how_many_more():
    message = json.loads(rendered([item(f"C{n}", n=n) for n in range(20)]))

    assert message["notification"]["body"].endswith("and 14 more")
    assert message["app_badge"] == 20


@pytest.mark.parametrize("said", [in_brief(of_round([item()], "n", URL)), of_test(URL)])
def test_the_short_and_the_test_message_carry_nothing_to_log(said):
    message = json.loads(render(said, "d"))

    assert message["broodshelf"]["items"] == []
    assert message["notification"]["navigate"].startswith(URL)
