"""How much a household may keep, told at 80 %, and what happens when it is full. On both databases."""

from __future__ import annotations

from dataclasses import replace

import pytest
from sqlalchemy import select
from tests.people.support import apply
from tests.people.test_owners import photo, picture, send
from tests.support.households import HAPPENED

from broodshelf.model.gauges import DAY_MS
from broodshelf.people import room as rooms
from broodshelf.people.tables import household_sizes
from broodshelf.records.database import reading
from broodshelf.settings import Room

MINUTE_MS = 60_000


@pytest.fixture
def give(app):
    """Change how much a household may keep."""
    parts = app.extensions["broodshelf"]

    def change(**room: int) -> None:
        settings = replace(parts.settings, room=Room(**room))
        app.extensions["broodshelf"] = replace(parts, settings=settings)

    return change


@pytest.fixture
def colony(keeper) -> str:
    return apply(keeper, "colony", {"name": "Amber"})  # the third record: the household, its keeper


def notes(phone, colony: str, number: int) -> list[dict]:
    return [
        phone.op("note", {"colony_id": colony, "happened_at": HAPPENED, "text": "all calm"})
        for _ in range(number)
    ]


def test_beyond_its_records_new_ones_wait_and_what_changes_or_deletes_is_taken(keeper, colony, clock, give):
    give(records=6)
    kept = notes(keeper, colony, 3)
    assert keeper.sync(*kept).status_code == 200
    clock.now_ms += MINUTE_MS
    late = notes(keeper, colony, 1)
    refused = keeper.sync(*late)

    assert (refused.status_code, refused.json["code"]) == (429, "quota")
    assert "(6)" in refused.json["detail"]
    assert "stays there" in refused.json["detail"]
    assert keeper.sync().status_code == 200  # it still hears what is new
    changed = {**keeper.op("note", {"text": "eggs"}, kept[0]["id"]), "base_rev": 5}
    gone = [{**keeper.op("note", {"gone": True}, op["id"]), "base_rev": 5} for op in kept[1:]]
    assert keeper.sync(changed, *gone).status_code == 200
    clock.now_ms += MINUTE_MS
    assert [a["verdict"] for a in keeper.sync(*late).json["answers"]] == ["applied"]


def test_what_was_counted_too_high_is_counted_anew_before_anybody_is_refused(
    app, keeper, colony, clock, give
):
    give(records=8)
    op = notes(keeper, colony, 1)[0]
    for _ in range(4):
        assert keeper.sync(op).status_code == 200  # the same one, sent again and again
    with app.app_context(), reading() as connection:
        assert connection.scalar(select(household_sizes.c.records)) > 5
    clock.now_ms += MINUTE_MS

    assert keeper.sync(*notes(keeper, colony, 4)).status_code == 200
    clock.now_ms += MINUTE_MS
    assert keeper.sync(*notes(keeper, colony, 1)).status_code == 429


def test_pictures_and_bytes_have_an_end_as_well(keeper, colony, clock, give, monkeypatch):
    give(pictures=2)
    bodies = [picture(shade) for shade in (10, 90)]
    ids = [photo(keeper, colony, body) for body in bodies]
    clock.now_ms += MINUTE_MS
    one_more = keeper.op("photo", {"colony_id": colony, "happened_at": HAPPENED, "sha256": "a" * 64})
    refused = keeper.sync(one_more)
    assert (refused.status_code, "pictures" in refused.json["detail"]) == (429, True)
    assert send(keeper, ids[0], bodies[0]).status_code == 200  # its record was taken
    give(mib=1)
    monkeypatch.setattr(rooms, "MIB", 2_000)
    clock.now_ms += MINUTE_MS
    for full in (keeper.sync(*notes(keeper, colony, 9)), send(keeper, ids[1], bodies[1])):
        assert (full.status_code, "MiB" in full.json["detail"]) == (429, True)


def test_keepers_are_told_with_numbers_from_80_percent_on_one_day_a_week_and_from_95_always(
    keeper, colony, clock, give
):
    give(records=40)
    clock.now_ms += -(clock.now_ms // DAY_MS) % 7 * DAY_MS  # the day of the week on which it is told
    assert "told" not in keeper.sync(*notes(keeper, colony, 28)).json  # 31 of 40
    told = keeper.sync(*notes(keeper, colony, 1)).json["told"]
    assert told["code"] == "household_nearly_full"
    assert "80 % of its room on the server: 32 of 40 records, 0 of 20,000 pictures" in told["words"]
    clock.now_ms += DAY_MS
    assert "told" not in keeper.sync().json
    assert "97 %" in keeper.sync(*notes(keeper, colony, 7)).json["told"]["words"]
