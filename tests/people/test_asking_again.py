"""A phone that was let in and did not hear of it asks again: it is let in once, nobody else is. On both databases."""

from __future__ import annotations

from dataclasses import replace

import pytest
from sqlalchemy import func, select
from tests.people.support import apply, make_pass
from tests.web.conftest import Browser

from broodshelf.people.devices import AGAIN_MS
from broodshelf.people.households import make_claim_code
from broodshelf.people.tables import devices
from broodshelf.records.database import reading, writing
from broodshelf.records.tables import households

SECRET, ANOTHER = "s" * 43, "t" * 43
NAMES = {"person_name": "Ada", "household_name": "Attic", "zone": "UTC"}


@pytest.fixture
def code(app, clock) -> str:
    """A claim code for a new household."""
    with app.app_context(), writing() as connection:
        return make_claim_code(connection, clock.now_ms)


@pytest.fixture
def link(keeper) -> dict[str, str]:
    _, made = make_pass(keeper, [apply(keeper, "colony", {"name": "Amber"})])
    return made


@pytest.fixture
def open_to_all(app) -> None:
    parts = app.extensions["broodshelf"]
    app.extensions["broodshelf"] = replace(parts, settings=replace(parts.settings, signup="open"))


def counted(app, table) -> int:
    with app.app_context(), reading() as connection:
        return connection.execute(select(func.count()).select_from(table)).scalar_one()


def device(phone: Browser, secret: str | None = SECRET) -> dict[str, str]:
    """A phone that introduces itself, with a new id each time; without a secret it is one of an older app."""
    return phone.device() if secret is None else {**phone.device(), "secret": secret}


def claim(phone: Browser, code: str | None, secret: str | None = SECRET):
    body = {"device": device(phone, secret), **NAMES}
    return phone.post("/api/claim", body if code is None else {**body, "code": code})


def open_pass(phone: Browser, link: dict[str, str], secret: str | None = SECRET):
    return phone.post("/api/passes/open", {"code": link["code"], "device": device(phone, secret)})


def told(keeper: Browser, what: str) -> int:
    return [entry["what"] for entry in keeper.get("/api/journal").json["entries"]].count(what)


def test_who_claims_again_gets_the_same_answer_and_a_session_that_holds(app, browser, code):
    deaf, phone = browser(), browser()
    first = claim(deaf, code)
    again = claim(phone, code.lower().replace("-", " "))  # typed anew after a reload

    assert (first.status_code, again.status_code) == (200, 200)
    assert again.json == first.json
    assert phone.get("/api/me").json["device_id"] == first.json["device_id"]
    assert deaf.get("/api/me").status_code == 401  # the session that nobody heard of is over
    assert (counted(app, households), counted(app, devices)) == (1, 1)
    assert told(phone, "new_phone") == 1


@pytest.mark.parametrize("secret", [None, ANOTHER], ids=["no secret", "another secret"])
def test_a_code_alone_does_not_open_twice(app, browser, code, secret):
    claim(browser(), code)
    refused = claim(browser(), code, secret)

    assert (refused.status_code, refused.json["code"]) == (410, "claim_code_ended")
    assert counted(app, devices) == 1


def test_a_secret_opens_nothing_with_another_code(app, browser, clock, code):
    first = claim(browser(), code)
    with app.app_context(), writing() as connection:
        other = make_claim_code(connection, clock.now_ms)
    second = claim(browser(), other)

    assert second.status_code == 200
    assert second.json["household_id"] != first.json["household_id"]
    assert claim(browser(), "BBBB-BBBB").status_code == 410


def test_a_claim_can_be_asked_for_again_for_ten_minutes(browser, clock, code):
    claim(browser(), code)
    clock.now_ms += AGAIN_MS
    assert claim(browser(), code).status_code == 200
    clock.now_ms += 1  # counted from the first time, however often it was asked

    assert claim(browser(), code).status_code == 410


def test_who_begins_without_a_code_begins_one_household_and_is_counted_once(app, browser, open_to_all):
    answers = [claim(browser(), None) for _ in range(7)]

    assert {answer.status_code for answer in answers} == {200}
    assert len({answer.json["household_id"] for answer in answers}) == 1
    assert counted(app, households) == 1
    assert [claim(browser(), None, f"{n}" * 43).status_code for n in range(5)] == [200] * 4 + [429]


def test_a_pass_that_is_asked_for_again_makes_one_stand_in(app, browser, keeper, link):
    answers = [open_pass(browser(), link) for _ in range(4)]

    assert {answer.status_code for answer in answers} == {200}
    assert len({(answer.json["person_id"], answer.json["device_id"]) for answer in answers}) == 1
    assert told(keeper, "pass_opened") == 1
    assert open_pass(browser(), link, ANOTHER).json["person_id"] != answers[0].json["person_id"]


def test_a_pass_that_was_taken_back_meanwhile_lets_nobody_in_again(browser, keeper):
    pass_id, link = make_pass(keeper, [apply(keeper, "colony", {"name": "Amber"})])
    open_pass(browser(), link)
    keeper.post(f"/api/passes/{pass_id}/revoke")

    assert open_pass(browser(), link).json["code"] == "pass_revoked"


def shown(phone: Browser, secret: str | None = SECRET) -> tuple[str, dict[str, str]]:
    """Ask to be paired; return the code that the phone shows, and what it collects with."""
    asked = phone.post("/api/pairings", {"device": device(phone, secret)}).json
    return asked["code"], {name: asked[name] for name in ("pairing_id", "collect_secret")}


def collected(keeper: Browser, phone: Browser, secret: str | None = None):
    """Let a phone in by pairing; return what it collects with, and the answer."""
    code, collect = shown(phone, secret)
    keeper.post("/api/pairings/approve", {"code": code, "person_name": "Jon"})
    return collect, phone.post("/api/pairings/collect", collect).json


def test_who_collects_a_pairing_again_gets_the_same_answer_for_ten_minutes(browser, keeper, clock):
    collect, first = collected(keeper, browser())
    clock.now_ms += AGAIN_MS
    again = browser().post("/api/pairings/collect", collect)
    other = browser().post("/api/pairings/collect", {**collect, "collect_secret": ANOTHER})
    clock.now_ms += 1
    late = browser().post("/api/pairings/collect", collect)

    assert again.json | {"server_time": 0} == first | {"server_time": 0}
    assert told(keeper, "new_phone") == 2  # Mira's own and Jon's
    assert [(each.status_code, each.json["code"]) for each in (other, late)] == [(410, "pairing_ended")] * 2


@pytest.mark.parametrize("answer", ["of the approval", "of the collecting"])
def test_a_phone_whose_page_was_loaded_anew_collects_what_it_did_not_hear_of(browser, keeper, answer):
    code, collect = shown(browser())
    keeper.post("/api/pairings/approve", {"code": code, "person_name": "Jon"})
    if answer == "of the collecting":
        browser().post("/api/pairings/collect", collect)
    phone = browser()
    _, now = shown(phone)
    me = phone.post("/api/pairings/collect", now).json

    assert (me["name"], phone.get("/api/me").status_code) == ("Jon", 200)
    assert len(keeper.get("/api/devices").json["devices"]) == 2


def test_a_phone_that_asks_too_late_for_its_answer_is_paired_anew(browser, keeper, clock):
    collected(keeper, browser(), SECRET)
    clock.now_ms += AGAIN_MS
    shown(browser())
    clock.now_ms += 1
    _, collect = shown(browser())

    assert browser().post("/api/pairings/collect", collect).json == {"state": "waiting"}


def test_of_a_pairing_only_the_last_code_is_good_and_only_for_the_phone_that_shows_it(browser, keeper):
    before, _ = shown(browser())
    phone, other = browser(), browser()
    code, collect = shown(phone)
    _, others = shown(other, ANOTHER)
    refused = keeper.post("/api/pairings/approve", {"code": before, "person_name": "Jon"})
    keeper.post("/api/pairings/approve", {"code": code, "person_name": "Jon"})

    assert refused.json["code"] == "pairing_ended"
    assert other.post("/api/pairings/collect", others).json == {"state": "waiting"}
    assert phone.post("/api/pairings/collect", collect).json["name"] == "Jon"


@pytest.mark.parametrize("how", ["leaves", "is removed"])
def test_a_phone_that_leaves_or_is_removed_cannot_ask_again(browser, keeper, how):
    phone = browser()
    collect, me = collected(keeper, phone)
    if how == "leaves":
        phone.post("/api/logout")
    else:
        keeper.post(f"/api/devices/{me['device_id']}/revoke")

    assert browser().post("/api/pairings/collect", collect).json["code"] == "pairing_ended"


def test_a_secret_that_could_be_guessed_is_refused(browser, code):
    refused = claim(browser(), code, "1234")

    assert (refused.status_code, list(refused.json["fields"])) == (400, ["device"])
