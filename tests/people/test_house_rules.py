"""What nobody can bring a household into: people who are nobody, a second record of itself, no keeper."""

from __future__ import annotations

import pytest
from sqlalchemy import select
from tests.nudges.support import Shelf, ms
from tests.people.support import apply, let_in, listen, make_pass, open_pass, verdict
from tests.support.households import HAPPENED, NOON_MS

from broodshelf.nudges.tables import subscriptions
from broodshelf.people.households import make_claim_code
from broodshelf.people.tables import mail_addresses, pass_secrets
from broodshelf.records.database import reading, writing
from broodshelf.records.ids import uuid7
from broodshelf.records.store import Ledger, read_kind


@pytest.fixture
def shelf(bare_app, tmp_path):
    made = Shelf(bare_app, ms("2026-05-01T12:00"), tmp_path)
    yield made
    made.nudger.close()


def test_a_person_without_a_role_is_nobody_and_the_others_hear_of_what_is_due(shelf):
    mira = shelf.person("Mira")
    shelf.colony(mira)
    with writing() as connection:  # as an older version took it from an import
        ledger = Ledger(connection, shelf.id)
        ledger.put(uuid7(shelf.now_ms), "person", {"name": "Nobody"}, now_ms=shelf.now_ms)
        ledger.flush()

    assert shelf.at("2026-05-04T18:30").tick() == ["Protein for Amber"]


def test_a_keepers_phone_cannot_make_a_person_and_an_offer_needs_a_role(keeper):
    plain = verdict(keeper, "person", {"name": "Nobody"})
    offered = verdict(keeper, "person", {"name": "Nobody"}, adopt=True)
    whole = verdict(keeper, "person", {"name": "Jo", "role": "keeper"}, adopt=True)

    assert (plain["verdict"], plain["code"], plain["args"]["field"]) == ("rejected", "not_allowed", "role")
    assert (offered["verdict"], offered["code"]) == ("rejected", "missing_field")
    assert whole["verdict"] == "applied"


@pytest.mark.parametrize("adopt", [False, True])
def test_a_household_has_one_record_of_itself(app, keeper, adopt):
    values = {"name": "Second", "zone": "UTC"}
    answer = verdict(keeper, "household", values, adopt=adopt)
    gone = verdict(keeper, "household", {"gone": True}, keeper.me["household_id"])
    with app.app_context(), reading() as connection:
        found = read_kind(connection, keeper.me["household_id"], "household", gone=True)

    assert (answer["verdict"], answer["code"]) == ("rejected", "not_allowed")
    assert (gone["verdict"], gone["code"]) == ("rejected", "not_allowed")
    assert [record.id for record in found] == [keeper.me["household_id"]]


def test_the_last_keeper_cannot_be_removed(browser, keeper):
    alone = verdict(keeper, "person", {"gone": True}, keeper.me["person_id"])
    anton = let_in(keeper, browser(), person_name="Anton")
    both = keeper.sync(
        keeper.op("person", {"gone": True}, anton.me["person_id"]),
        keeper.op("person", {"gone": True}, keeper.me["person_id"]),
    ).json["answers"]

    assert (alone["verdict"], alone["code"]) == ("rejected", "last_keeper")
    assert [a["verdict"] for a in both] == ["applied", "rejected"]
    assert keeper.get("/api/me").status_code == 200


def test_deleting_a_keeper_ends_their_phones_push_mail_and_codes_at_once_and_for_good(app, browser, keeper):
    anton = let_in(keeper, browser(), person_name="Anton")
    listen(anton, "http://127.0.0.1:9/anton")
    with app.app_context(), writing() as connection:
        household_id, person_id = anton.me["household_id"], anton.me["person_id"]
        connection.execute(
            mail_addresses.insert().values(
                household_id=household_id, person_id=person_id, address="a@example.org", asked_ms=NOON_MS
            )
        )
        code = make_claim_code(connection, NOON_MS, household_id, person_id)
    apply(keeper, "person", {"gone": True}, person_id)

    assert (anton.get("/api/me").status_code, anton.get("/api/me").json["code"]) == (401, "device_revoked")
    assert anton.sync().status_code == 401
    assert browser().post("/api/claim", {"code": code, "device": anton.device()}).status_code == 410
    with app.app_context(), reading() as connection:
        assert connection.execute(select(subscriptions.c.id)).all() == []
        assert connection.execute(select(mail_addresses.c.person_id)).all() == []
    noted = app.extensions["broodshelf"].witness.revocations.read()
    ended = {(what, i) for what, _, i, _ in noted}
    assert {("device", anton.me["device_id"]), ("person", person_id)} <= ended


def test_a_deleted_person_is_not_let_in_again_under_their_old_name(browser, keeper):
    anton = let_in(keeper, browser(), person_name="Anton")
    apply(keeper, "person", {"gone": True}, anton.me["person_id"])
    new = browser()
    asked = new.post("/api/pairings", {"device": new.device()}).json
    body = {"code": asked["code"], "person_id": anton.me["person_id"]}

    assert keeper.post("/api/pairings/approve", body).status_code == 404


def test_deleting_a_stand_in_ends_the_pass_its_link_and_its_calendar(app, browser, keeper):
    colony = apply(keeper, "colony", {"name": "Amber"})
    pass_id, link = make_pass(keeper, [colony])
    feed = keeper.post("/api/feeds", {"pass_id": pass_id}).json["url"].partition("8080")[2]
    guest = open_pass(browser(), link)
    log = {"colony_id": colony, "happened_at": HAPPENED, "need": "protein"}
    apply(guest, "feeding", log)
    assert keeper.get(feed).status_code == 200
    apply(keeper, "person", {"gone": True}, guest.me["person_id"])

    assert guest.sync().status_code == 401
    late = browser()
    assert late.post("/api/passes/open", {"code": link["code"], "device": late.device()}).status_code == 410
    assert keeper.get(feed).status_code == 404
    assert keeper.get(f"/api/passes/{pass_id}").json["state"] == "revoked"
    with app.app_context(), reading() as connection:
        assert connection.execute(select(pass_secrets.c.pass_id)).all() == []


def test_codes_of_new_phones_cannot_be_guessed_by_a_keeper(keeper):
    body = {"code": "BBBB-BBBB", "person_name": "x"}
    statuses = [keeper.post("/api/pairings/approve", body).status_code for _ in range(22)]

    assert statuses == [410] * 20 + [429] * 2


def test_strangers_at_the_same_address_do_not_use_up_a_keepers_tries(browser, keeper):
    stranger = browser()
    for _ in range(25):
        stranger.post("/api/passes/open", {"code": "BBBB-BBBB", "device": stranger.device()})

    assert keeper.post("/api/pairings/look", {"code": "BBBB-BBBB"}).status_code == 410
