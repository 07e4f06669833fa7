"""An id in use belongs to its owner; what a stand-in may do ends with the pass. On both databases."""

from __future__ import annotations

import hashlib
import io

import pytest
from PIL import Image
from sqlalchemy import select
from tests.nudges.support import BrowserKeys
from tests.people.support import apply, let_in, listen, make_pass, open_pass
from tests.support.households import HAPPENED

from broodshelf.model.gauges import DAY_MS
from broodshelf.nudges.tables import subscriptions
from broodshelf.people.households import make_claim_code
from broodshelf.records.database import reading, writing

ADDRESS = "http://127.0.0.1:9/mira"


@pytest.fixture
def colony(keeper) -> str:
    return apply(keeper, "colony", {"name": "Amber"})


def listening(app) -> list[tuple[str, str, str]]:
    with app.app_context(), reading() as connection:
        s = subscriptions.c
        return [tuple(row) for row in connection.execute(select(s.device_id, s.endpoint, s.auth))]


def test_a_stand_in_cannot_take_the_phone_id_of_a_keeper(browser, keeper, colony):
    _, link = make_pass(keeper, [colony])
    guest = browser()
    device = {"id": keeper.me["device_id"], "name": "mine now"}
    answer = guest.post("/api/passes/open", {"code": link["code"], "device": device})

    assert (answer.status_code, answer.json["code"]) == (400, "device_id_taken")
    assert keeper.get("/api/me").json["role"] == "keeper"


def test_another_keeper_cannot_take_a_phone_id_by_pairing_and_the_owner_can_come_back(browser, keeper):
    mira = {"id": keeper.me["device_id"], "name": "a phone"}
    thief = browser()
    asked = thief.post("/api/pairings", {"device": mira}).json
    keeper.post("/api/pairings/approve", {"code": asked["code"], "person_name": "Anton"})
    collect = {name: asked[name] for name in ("pairing_id", "collect_secret")}
    refused = thief.post("/api/pairings/collect", collect)
    with keeper.app.app_context(), writing() as connection:
        code = make_claim_code(
            connection, keeper.clock.now_ms, keeper.me["household_id"], keeper.me["person_id"]
        )
    back = browser().post("/api/claim", {"code": code, "device": mira})

    assert (refused.status_code, refused.json["code"]) == (400, "device_id_taken")
    assert (back.status_code, back.json["device_id"]) == (200, mira["id"])


def test_another_household_cannot_take_a_phone_id(browser, keeper):
    with keeper.app.app_context(), writing() as connection:
        code = make_claim_code(connection, keeper.clock.now_ms)
    names = {"person_name": "Ada", "household_name": "Attic", "zone": "UTC"}
    device = {"id": keeper.me["device_id"], "name": "mine now"}
    answer = browser().post("/api/claim", {"code": code, "device": device, **names})

    assert (answer.status_code, answer.json["code"]) == (400, "device_id_taken")
    assert keeper.get("/api/me").status_code == 200


def test_a_push_address_stays_with_the_phone_that_listens_there(app, browser, keeper, colony):
    _, link = make_pass(keeper, [colony])
    guest = open_pass(browser(), link)
    stranger = browser().claim("Ada")
    assert listen(keeper, ADDRESS).status_code == 200
    before = listening(app)
    answers = [listen(phone, ADDRESS, BrowserKeys(secret=b"another secret!!")) for phone in (guest, stranger)]

    assert [(a.status_code, a.json["code"]) for a in answers] == [(400, "endpoint_taken")] * 2
    assert listening(app) == before


def test_the_same_browser_under_a_new_device_takes_its_push_address_along(app, browser, keeper):
    keys = BrowserKeys()
    listen(keeper, ADDRESS, keys)
    again = let_in(keeper, browser(), person_id=keeper.me["person_id"])

    assert listen(again, ADDRESS, keys).status_code == 200
    assert [device for device, _, _ in listening(app)] == [again.me["device_id"]]


def picture(shade: int) -> bytes:
    made = io.BytesIO()
    Image.new("RGB", (32, 32), (shade, 90, 90)).save(made, "JPEG")
    return made.getvalue()


def photo(phone, colony_id: str, body: bytes) -> str:
    values = {
        "colony_id": colony_id, "happened_at": HAPPENED, "sha256": hashlib.sha256(body).hexdigest(),
    }  # fmt: skip
    return apply(phone, "photo", values)


def send(phone, record_id: str, body: bytes):
    headers = {"Sec-Fetch-Site": "same-origin"}
    return phone.client.put(f"/api/photos/{record_id}", data=body, content_type="image/jpeg", headers=headers)


def test_after_the_pass_a_stand_in_reads_nothing_and_sends_only_what_was_logged_in_its_dates(
    browser, keeper, colony, clock
):
    _, link = make_pass(keeper, [colony])
    theirs, mine = picture(10), picture(200)
    shown = photo(keeper, colony, theirs)
    send(keeper, shown, theirs)
    guest = open_pass(browser(), link)
    assert guest.get(f"/api/photos/{shown}").status_code == 200
    clock.now_ms += 3 * DAY_MS

    late = photo(guest, colony, mine)
    assert send(guest, late, mine).status_code == 200
    for path in (f"/api/photos/{shown}", f"/api/photos/{late}", "/api/push/health", "/api/reckon"):
        answer = guest.get(path)
        assert (path, answer.status_code, answer.json["code"]) == (path, 403, "pass_ended")
    assert listen(guest, "http://127.0.0.1:9/guest").json["code"] == "pass_ended"
    assert guest.post("/api/push/test").json["code"] == "pass_ended"
    assert guest.get("/api/me").json["pass"]["state"] == "ended"
    assert guest.post("/api/logout").status_code == 200


def test_the_calendar_that_a_keeper_made_ends_with_them_and_not_with_another(browser, keeper):
    ada = let_in(keeper, browser(), person_name="Ada")
    made = ada.post("/api/feeds", {"pass_id": None}).json["url"]
    path = made.removeprefix("http://127.0.0.1:8080")
    other = let_in(keeper, browser(), person_name="Anton")
    seen = []
    for person in (other, ada):
        apply(keeper, "person", {"gone": True}, person.me["person_id"])
        seen.append(browser().get(path).status_code)

    assert seen == [200, 404]
