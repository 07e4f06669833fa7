"""How much a pass, a household and an address may send; and what is forgotten when it is over. On both databases."""

from __future__ import annotations

import pytest
from sqlalchemy import func, select
from tests.people.support import apply, listen, make_pass, open_pass, verdict
from tests.people.test_owners import photo, picture, send
from tests.support.households import HAPPENED

from broodshelf.app import create_nudger
from broodshelf.model.gauges import DAY_MS
from broodshelf.nudges.tables import subscriptions
from broodshelf.people import quotas
from broodshelf.people.quotas import Share
from broodshelf.people.tables import claim_codes, pairings, usage
from broodshelf.records.database import reading
from broodshelf.records.tables import operations, records


@pytest.fixture
def colony(keeper) -> str:
    return apply(keeper, "colony", {"name": "Amber"})


@pytest.fixture
def guest(browser, keeper, colony):
    return open_pass(browser("127.0.0.7"), make_pass(keeper, [colony])[1])


def notes(phone, colony: str, number: int, text: str = "all calm") -> list[dict]:
    values = {"colony_id": colony, "happened_at": HAPPENED, "text": text}
    return [phone.op("note", values) for _ in range(number)]


def count(app, table) -> int:
    with app.app_context(), reading() as connection:
        return connection.scalar(select(func.count()).select_from(table))


def counted_pictures(app) -> set[int]:
    with app.app_context(), reading() as connection:
        return set(connection.scalars(select(usage.c.pictures)))


def test_a_pass_that_sends_too_much_is_told_so_nothing_is_stored_and_it_goes_on_the_next_day(
    app, keeper, guest, colony, clock, monkeypatch
):
    monkeypatch.setattr(quotas, "PASS", Share(10, 10_000_000, 300))
    queue = notes(guest, colony, 8)
    assert guest.sync(*queue[:6]).status_code == 200
    before = count(app, records)
    refused = guest.sync(*queue[6:], *notes(guest, colony, 4))

    assert (refused.status_code, refused.json["code"]) == (429, "quota")
    assert "stays there" in refused.json["detail"]
    assert 0 < int(refused.headers["Retry-After"]) <= 3600
    assert count(app, records) == before
    assert guest.sync().status_code == 200  # it still hears what is new
    assert keeper.sync(*notes(keeper, colony, 20)).status_code == 200
    clock.now_ms += DAY_MS
    assert [a["verdict"] for a in guest.sync(*queue[6:]).json["answers"]] == ["applied"] * 2


def test_the_bytes_of_a_pass_are_bounded(guest, colony):
    long = notes(guest, colony, 200, "x" * 4000)  # 0.85 MB each time
    statuses = [guest.sync(*long).status_code for _ in range(13)]

    assert statuses == [200] * 11 + [429] * 2


def test_pictures_are_counted_once_each(keeper, guest, colony, monkeypatch):
    monkeypatch.setattr(quotas, "PASS", Share(1000, 10_000_000, 2))
    bodies = [picture(shade) for shade in (10, 90, 170)]
    ids = [photo(guest, colony, body) for body in bodies]

    assert [send(guest, ids[n], bodies[n]).status_code for n in (0, 0, 0, 1)] == [200] * 4
    assert send(guest, ids[2], bodies[2]).json["code"] == "quota"
    assert send(keeper, ids[2], bodies[2]).status_code == 200


def test_a_picture_that_is_told_to_come_later_is_not_counted(app, guest, colony):
    drawing = app.extensions["broodshelf"].photos._drawing
    body = picture(10)
    record_id = photo(guest, colony, body)
    with drawing._place(guest.me["household_id"]):  # as while another one of the household is drawn
        busy = [send(guest, record_id, body) for _ in range(3)]
    before = counted_pictures(app)
    taken = send(guest, record_id, body)

    assert [(answer.status_code, answer.json["code"]) for answer in busy] == [(503, "busy")] * 3
    assert (taken.status_code, before, counted_pictures(app)) == (200, {0}, {1})


def test_a_household_and_an_address_have_their_shares_as_well(browser, keeper, colony, monkeypatch):
    monkeypatch.setattr(quotas, "HOUSEHOLD", Share(5, 500_000_000, 5))
    assert keeper.sync(*notes(keeper, colony, 5)).json["code"] == "quota"
    other = browser().claim("Ada")
    birch = apply(other, "colony", {"name": "Birch"})
    monkeypatch.setattr(quotas, "ADDRESS_KIB_AN_HOUR", 4)
    assert other.sync(*notes(other, birch, 4, "x" * 4000)).json["code"] == "quota"
    other.address = "127.0.0.99"
    assert other.sync(*notes(other, birch, 1)).status_code == 200


def test_what_is_over_is_forgotten(app, browser, keeper, guest, colony, clock):
    new = browser()
    new.post("/api/pairings", {"device": new.device()})
    assert verdict(keeper, "colony", {"name": "bad", "queens": -1})["verdict"] == "rejected"
    assert listen(guest, "http://127.0.0.1:9/guest").status_code == 200
    nudger = create_nudger(app)
    clock.now_ms += 91 * DAY_MS
    nudger.tick(clock.now_ms)
    nudger.tick(clock.now_ms)
    nudger.close()

    with app.app_context(), reading() as connection:
        kept = set(connection.scalars(select(operations.c.verdict)))
    assert kept == {"applied"}
    for table in (pairings, claim_codes, usage, subscriptions):
        assert (table.name, count(app, table)) == (table.name, 0)
