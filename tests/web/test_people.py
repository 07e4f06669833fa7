"""Claim, pairing, devices and passes over HTTP, from the first code to taking a pass back."""

from __future__ import annotations

import pytest
from tests.support.households import HAPPENED, NOON_MS

from broodshelf.model.gauges import DAY_MS
from broodshelf.people.households import make_claim_code
from broodshelf.people.language import language_of_person
from broodshelf.records.database import reading, writing


def colony(keeper, name="Amber"):
    op = keeper.op("colony", {"name": name})
    assert keeper.sync(op).json["answers"][0]["verdict"] == "applied"
    return op["id"]


def make_pass(keeper, colony_ids, starts="2026-05-01", ends="2026-05-03"):
    op = keeper.op(
        "pass",
        {
            "name": "Grandpa",
            "colony_ids": colony_ids,
            "starts_on": starts,
            "ends_on": ends,
            "instructions": "Be kind.",
        },
    )
    assert keeper.sync(op).json["answers"][0]["verdict"] == "applied"
    return op["id"], keeper.post(f"/api/passes/{op['id']}/link").json


def test_a_claim_code_works_once(browser, keeper):
    me = keeper.get("/api/me").json

    assert (me["role"], me["name"]) == ("keeper", "Mira")
    again = browser().post(
        "/api/claim",
        {
            "code": "BBBB-BBBB",
            "device": keeper.device(),
            "person_name": "x",
            "household_name": "y",
            "zone": "UTC",
        },
    )
    assert (again.status_code, again.json["code"]) == (410, "claim_code_ended")


def test_a_code_for_a_known_person_says_whose_it_is_and_needs_no_name(browser, keeper):
    with keeper.app.app_context(), writing() as connection:
        code = make_claim_code(connection, NOON_MS, keeper.me["household_id"], keeper.me["person_id"])
    back = browser()

    assert back.post("/api/claim/look", {"code": code}).json == {"person_name": "Mira"}
    answer = back.post("/api/claim", {"code": code, "device": back.device()})
    assert (answer.status_code, answer.json["person_id"]) == (200, keeper.me["person_id"])
    assert back.post("/api/claim/look", {"code": code}).status_code == 410  # it was used


def test_a_code_for_a_new_household_needs_the_names_and_is_not_used_up_without_them(browser, keeper):
    with keeper.app.app_context(), writing() as connection:
        code = make_claim_code(connection, NOON_MS)
    new = browser()
    claim = {"code": code, "device": new.device()}

    assert new.post("/api/claim/look", {"code": code}).json == {"person_name": None}
    refused = new.post("/api/claim", claim)
    assert (refused.status_code, set(refused.json["fields"])) == (
        400,
        {"person_name", "household_name", "zone"},
    )
    full = {**claim, "person_name": "Ada", "household_name": "Attic", "zone": "UTC"}
    assert new.post("/api/claim", full).status_code == 200


def test_a_new_phone_shows_a_code_that_a_keeper_approves_once(browser, keeper):
    new = browser()
    asked = new.post("/api/pairings", {"device": new.device()}).json
    collect = {"pairing_id": asked["pairing_id"], "collect_secret": asked["collect_secret"]}
    waiting = new.post("/api/pairings/collect", collect).json
    typed = asked["code"].lower().replace("-", " ")
    looked = keeper.post("/api/pairings/look", {"code": typed}).json
    keeper.post("/api/pairings/approve", {"code": typed, "person_name": "Jon"})
    in_now = new.post("/api/pairings/collect", collect)
    again = keeper.post("/api/pairings/approve", {"code": typed, "person_name": "Jon"})

    assert waiting == {"state": "waiting"}
    assert looked["device_name"] == "a phone"
    assert (in_now.json["name"], in_now.json["role"]) == ("Jon", "keeper")
    assert again.status_code == 410
    assert len(keeper.get("/api/devices").json["devices"]) == 2


@pytest.mark.parametrize(("wanted", "known"), [("pl-PL, en;q=0.5", "pl-PL"), ("sv", None)])
def test_a_keeper_who_is_let_in_is_told_in_the_language_of_their_phone(browser, keeper, wanted, known):
    new = browser()
    asked = new.post("/api/pairings", {"device": new.device()}).json
    keeper.post("/api/pairings/approve", {"code": asked["code"], "person_name": "Jon"})
    collect = {"pairing_id": asked["pairing_id"], "collect_secret": asked["collect_secret"]}
    me = new.post("/api/pairings/collect", collect, **{"Accept-Language": wanted}).json

    with keeper.app.app_context(), reading() as connection:
        assert language_of_person(connection, me["household_id"], me["person_id"]) == known


def test_phones_that_call_themselves_the_same_are_told_apart_by_a_number(browser, keeper):
    def back(name):
        with keeper.app.app_context(), writing() as connection:
            code = make_claim_code(connection, NOON_MS, keeper.me["household_id"], keeper.me["person_id"])
        phone = browser()
        device = {**phone.device(), "name": name}
        assert phone.post("/api/claim", {"code": code, "device": device}).status_code == 200
        return device["id"]

    def names():
        return sorted(device["name"] for device in keeper.get("/api/devices").json["devices"])

    second, _, _ = back("a phone"), back("a phone"), back("w" * 80)
    back("w" * 80)
    assert names() == ["a phone", "a phone 2", "a phone 3", "w" * 76 + " 2", "w" * 80]

    keeper.post(f"/api/devices/{second}/revoke")
    back("a phone")
    assert names()[:3] == ["a phone", "a phone 2", "a phone 3"]  # the number of one that went is free


def test_a_pairing_code_lasts_ten_minutes(browser, keeper, clock):
    new = browser()
    asked = new.post("/api/pairings", {"device": new.device()}).json
    clock.now_ms += 10 * 60_000 + 1

    assert (
        keeper.post("/api/pairings/approve", {"code": asked["code"], "person_name": "Jon"}).status_code == 410
    )


def test_a_revoked_phone_is_told_why(browser, keeper):
    new = browser()
    asked = new.post("/api/pairings", {"device": new.device()}).json
    keeper.post("/api/pairings/approve", {"code": asked["code"], "person_id": keeper.me["person_id"]})
    me = new.post(
        "/api/pairings/collect",
        {"pairing_id": asked["pairing_id"], "collect_secret": asked["collect_secret"]},
    ).json
    keeper.post(f"/api/devices/{me['device_id']}/revoke")

    assert (new.get("/api/me").status_code, new.get("/api/me").json["code"]) == (401, "device_revoked")


def test_a_pass_opens_by_link_or_code_and_shows_only_its_colonies(browser, keeper):
    mine, hidden = colony(keeper), colony(keeper, "Birch")
    _pass_id, link = make_pass(keeper, [mine])
    guest = browser()
    guest.me = guest.post("/api/passes/open", {"code": link["code"], "device": guest.device()}).json
    secret = link["link"].rpartition("/")[2]
    spare = browser()
    opened = spare.post("/api/passes/open", {"secret": secret, "device": spare.device()})
    rows = {row["id"] for row in guest.sync().json["rows"]}

    assert (guest.me["role"], guest.me["name"], opened.status_code) == ("stand_in", "Grandpa", 200)
    assert mine in rows
    assert hidden not in rows


def test_a_pass_admits_two_phones_and_says_so_to_the_third(browser, keeper):
    _pass_id, link = make_pass(keeper, [colony(keeper)])
    statuses = [
        (b := browser()).post("/api/passes/open", {"code": link["code"], "device": b.device()}).status_code
        for _ in range(3)
    ]

    assert statuses == [200, 200, 403]


def test_a_stand_ins_feeding_reaches_the_keeper_under_their_name(browser, keeper):
    mine = colony(keeper)
    _pass_id, link = make_pass(keeper, [mine])
    guest = browser()
    guest.me = guest.post("/api/passes/open", {"code": link["code"], "device": guest.device()}).json
    log = guest.op("feeding", {"colony_id": mine, "happened_at": HAPPENED, "need": "protein"})
    verdict = guest.sync(log).json["answers"][0]["verdict"]
    rows = {row["id"]: row for row in keeper.sync().json["rows"]}

    assert verdict == "applied"
    assert rows[rows[log["id"]]["by"]]["set"]["name"] == "Grandpa"


def test_a_pass_that_is_taken_back_stops_at_once_and_for_new_phones(browser, keeper):
    pass_id, link = make_pass(keeper, [colony(keeper)])
    guest = browser()
    guest.me = guest.post("/api/passes/open", {"code": link["code"], "device": guest.device()}).json
    keeper.post(f"/api/passes/{pass_id}/revoke")
    late = browser()

    assert guest.sync().json["code"] == "pass_revoked"
    assert late.post("/api/passes/open", {"code": link["code"], "device": late.device()}).status_code == 410
    assert keeper.get(f"/api/passes/{pass_id}").json["state"] == "revoked"


@pytest.mark.parametrize(("days", "state"), [(-1, "not_yet"), (0, "active"), (2, "active"), (3, "ended")])
def test_a_passs_dates_are_days_in_the_households_zone(browser, keeper, clock, days, state):
    # the pass covers 1 to 3 May; now is noon UTC, 14:00 in Vienna, on 1 May
    pass_id, _link = make_pass(keeper, [colony(keeper)])
    clock.now_ms = NOON_MS + days * DAY_MS

    assert keeper.get(f"/api/passes/{pass_id}").json["state"] == state


def test_a_keeper_who_opens_a_pass_sees_a_preview_and_stays_a_keeper(keeper):
    _pass_id, link = make_pass(keeper, [colony(keeper)])
    seen = keeper.post("/api/passes/open", {"code": link["code"], "device": keeper.device()}).json

    assert seen["preview"]["instructions"] == "Be kind."
    assert keeper.get("/api/me").json["role"] == "keeper"


def test_a_session_ends_after_ninety_idle_days(keeper, clock):
    clock.now_ms += 91 * DAY_MS

    assert keeper.get("/api/me").json["code"] == "session_old"


def test_codes_cannot_be_guessed_fast(browser):
    guesser = browser("127.0.0.9")
    body = {"code": "BBBB-BBBB", "device": guesser.device()}
    statuses = [guesser.post("/api/passes/open", body).status_code for _ in range(22)]

    assert statuses[:20] == [410] * 20
    assert statuses[20:] == [429, 429]
