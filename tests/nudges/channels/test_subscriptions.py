"""Phones that listen: subscribing, leaving, acknowledging, the test button and their health. On both databases."""

from __future__ import annotations

import pytest
from sqlalchemy import select, update
from tests.nudges.support import KEY_ID, LOOPBACK, URL, BrowserKeys, Shelf

from broodshelf.errors import BadRequest, NotFound
from broodshelf.model.gauges import DAY_MS
from broodshelf.nudges.channels.outcome import Gone, Refused, RetryLater
from broodshelf.nudges.channels.push.hosts import PushHosts
from broodshelf.nudges.channels.push.subscriptions import (
    acknowledge,
    anybody_listens,
    forget_device,
    subscribe,
    unsubscribe,
)
from broodshelf.nudges.health.phones import health
from broodshelf.nudges.sending.at_once import send_test
from broodshelf.nudges.sending.queue import claim
from broodshelf.nudges.tables import deliveries, subscriptions
from broodshelf.people.tables import devices
from broodshelf.records.database import reading, writing


def body(endpoint: str = "http://127.0.0.1:9/Mira", **more) -> dict:
    return {"endpoint": endpoint, "keys": BrowserKeys().as_json, "key_id": KEY_ID, **more}


def put(shelf: Shelf, phone, asked: dict, policy: PushHosts = LOOPBACK) -> dict:
    with writing() as connection:
        return subscribe(connection, phone.actor, asked, policy, KEY_ID, shelf.now_ms)


def rows():
    with reading() as connection:
        return connection.execute(select(subscriptions).order_by(subscriptions.c.id)).all()


def state(shelf: Shelf, phone) -> dict:
    with reading() as connection:
        return health(connection, phone.actor, shelf.now_ms)


def test_a_phone_that_says_again_where_it_listens_keeps_its_place(shelf: Shelf):
    mira = shelf.person("Mira", listens=False)
    first = put(shelf, mira, body())
    shelf.now_ms += DAY_MS
    second = put(shelf, mira, body())

    assert first == second
    assert [row.seen_ms for row in rows()] == [shelf.now_ms]


def test_a_new_address_replaces_the_old_one(shelf: Shelf):
    mira = shelf.person("Mira")
    put(shelf, mira, body("http://127.0.0.1:9/elsewhere"))

    assert [row.endpoint for row in rows()] == ["http://127.0.0.1:9/elsewhere"]


def test_what_waits_for_a_phone_goes_to_its_new_push_service(shelf: Shelf):
    mira = shelf.person("Mira")
    [phone] = rows()
    with writing() as connection:
        connection.execute(
            deliveries.insert().values(
                household_id=shelf.id, id="m", subscription_id=phone.id, host=phone.host, state="waiting",
                wake_ms=shelf.now_ms, made_ms=shelf.now_ms, useless_ms=shelf.now_ms + DAY_MS,
            )
        )  # fmt: skip
    put(shelf, mira, body("http://127.0.0.1:10/Mira"))

    with writing() as connection:
        old, new = (claim(connection, "me", host, shelf.now_ms, 9) for host in (phone.host, "127.0.0.1:10"))
    assert (old, [message.to.endpoint for message in new]) == ([], ["http://127.0.0.1:10/Mira"])


def test_one_browser_listens_for_one_device_only(shelf: Shelf):
    mira, anton = (shelf.person(name, listens=False) for name in ("Mira", "Anton"))
    the_browser = body()
    put(shelf, mira, the_browser)
    put(shelf, anton, the_browser)

    assert [row.device_id for row in rows()] == [anton.device_id]


@pytest.mark.parametrize(
    ("change", "field", "code"),
    [
        ({"endpoint": "https://evil.example/x"}, "endpoint", "push_host"),
        ({"endpoint": 7}, "endpoint", "bad_request"),
        ({"keys": {"p256dh": "AAAA", "auth": BrowserKeys().as_json["auth"]}}, "keys.p256dh", "bad_request"),
        ({"keys": {"p256dh": BrowserKeys().as_json["p256dh"], "auth": "AAAA"}}, "keys.auth", "bad_request"),
        ({"keys": None}, "keys", "bad_request"),
        ({"key_id": "an older one"}, "key_id", "other_key"),
        ({"extra": 1}, "extra", "bad_request"),
    ],
)
def test_a_subscription_that_cannot_work_is_refused_by_name(shelf: Shelf, change, field, code):
    mira = shelf.person("Mira", listens=False)
    with pytest.raises(BadRequest) as refused:
        put(shelf, mira, {**body(), **change})

    assert field in refused.value.fields
    assert refused.value.problem_code == code
    assert rows() == []


def test_loopback_is_refused_by_the_real_policy(shelf: Shelf):
    with pytest.raises(BadRequest):
        put(shelf, shelf.person("Mira", listens=False), body(), PushHosts())


def test_a_person_has_room_for_twenty_phones(shelf: Shelf, monkeypatch):
    monkeypatch.setattr("broodshelf.nudges.channels.push.subscriptions.MOST_PER_PERSON", 1)
    mira = shelf.person("Mira")
    spare = shelf.person("Spare", listens=False)
    spare.person_id = mira.person_id
    with pytest.raises(BadRequest) as refused:
        put(shelf, spare, body("http://127.0.0.1:9/spare"))

    assert refused.value.problem_code == "too_many_phones"


def test_leaving_and_being_revoked_end_the_listening_of_that_phone_only(shelf: Shelf):
    mira, anton, jo = (shelf.person(name) for name in ("Mira", "Anton", "Jo"))
    with writing() as connection:
        unsubscribe(connection, mira.actor)
        forget_device(connection, "another-household", anton.device_id)
        forget_device(connection, shelf.id, jo.device_id)

    assert [row.device_id for row in rows()] == [anton.device_id]
    with reading() as connection:
        assert anybody_listens(connection)


def test_the_test_message_says_what_came_of_it_and_the_acknowledgement_is_kept(shelf: Shelf):
    mira = shelf.person("Mira")
    answer = send_test(mira.actor, shelf.channels, URL, shelf.now_ms)
    [(_, payload, _)] = shelf.notebook.sent
    with writing() as connection:
        acknowledge(connection, answer["delivery_id"], True, shelf.now_ms + 2000)
        acknowledge(connection, "unknown", True, shelf.now_ms)
    seen = state(shelf, mira)

    assert answer["outcome"] == "sent"
    assert payload["broodshelf"]["delivery_id"] == answer["delivery_id"]
    assert len(answer["delivery_id"]) == 43  # 256 bits in base64url
    assert (seen["last_delivered_ms"], seen["last_ack_ms"]) == (shelf.now_ms, shelf.now_ms + 2000)
    assert (seen["subscribed"], seen["key_id"], seen["last_outcome"]) == (True, KEY_ID, "sent")


@pytest.mark.parametrize(
    ("answer", "word"),
    [
        (Gone(), "gone"),
        (RetryLater("network", vendor=True), "network"),
        (Refused("status_403", True), "status_403"),
    ],
)
def test_the_test_button_names_what_went_wrong(shelf: Shelf, answer, word):
    mira = shelf.person("Mira")
    shelf.notebook.answer = answer

    assert send_test(mira.actor, shelf.channels, URL, shelf.now_ms)["outcome"] == word


def test_a_phone_that_does_not_listen_is_told_so(shelf: Shelf):
    mira = shelf.person("Mira", listens=False)
    with pytest.raises(NotFound) as refused:
        send_test(mira.actor, shelf.channels, URL, shelf.now_ms)

    assert refused.value.problem_code == "not_subscribed"
    assert state(shelf, mira)["subscribed"] is False


def test_a_phone_that_never_acknowledges_shows_as_silent(shelf: Shelf):
    mira = shelf.person("Mira")
    silent = []
    for _ in range(2):
        send_test(mira.actor, shelf.channels, URL, shelf.now_ms)
        silent.append(state(shelf, mira)["devices"][0]["silent"])
    with reading() as connection:
        last = connection.scalars(select(deliveries.c.id)).all()[-1]
    with writing() as connection:
        acknowledge(connection, last, True, shelf.now_ms)
    silent.append(state(shelf, mira)["devices"][0]["silent"])

    assert silent == [False, True, False]


def test_a_phone_not_used_for_a_month_shows_as_silent(shelf: Shelf):
    mira = shelf.person("Mira")
    shelf.now_ms += 31 * DAY_MS

    assert state(shelf, mira)["devices"][0]["silent"] is True


def test_health_tells_of_the_persons_own_phones_only(shelf: Shelf):
    mira = shelf.person("Mira")
    shelf.person("Anton")

    assert [device["id"] for device in state(shelf, mira)["devices"]] == [mira.device_id]
    assert state(shelf, mira)["silent_elsewhere"] == []


def test_a_phone_that_fell_silent_shows_to_the_other_keepers_and_not_to_stand_ins(shelf: Shelf):
    mira, anton = shelf.person("Mira"), shelf.person("Anton")
    jo = shelf.person("Jo", role="stand_in")
    for _ in range(2):
        send_test(anton.actor, shelf.channels, URL, shelf.now_ms)
    [seen] = state(shelf, mira)["silent_elsewhere"]

    assert (seen["id"], seen["person"], seen["why"]) == (anton.device_id, "Anton", "unheard")
    assert state(shelf, jo)["silent_elsewhere"] == []
    shelf.now_ms += 31 * DAY_MS
    with writing() as connection:  # Mira's own phone was used meanwhile
        connection.execute(
            update(devices).where(devices.c.id == mira.device_id).values(last_seen_ms=shelf.now_ms)
        )
    whys = {each["person"]: each["why"] for each in state(shelf, mira)["silent_elsewhere"]}
    assert whys == {"Anton": "unseen", "Jo": "unseen"}


def test_a_revoked_phone_is_not_missed(shelf: Shelf):
    mira, anton = shelf.person("Mira"), shelf.person("Anton")
    with writing() as connection:
        connection.execute(update(devices).where(devices.c.id == anton.device_id).values(revoked_ms=1))
    shelf.now_ms += 31 * DAY_MS

    assert state(shelf, mira)["silent_elsewhere"] == []
