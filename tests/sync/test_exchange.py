"""One round trip as a whole: what it carries, paging, epochs, plans, envelopes that are refused. On both engines."""

from __future__ import annotations

import pytest
from tests.support.households import NOON_MS, Requester, by_id, colony, feeding, no_plans

from broodshelf.errors import BadRequest, TooLarge, UpgradeRequired, WrongDevice
from broodshelf.records.database import writing
from broodshelf.records.ids import uuid7
from broodshelf.records.store import Ledger
from broodshelf.sync.exchange import exchange


def test_a_log_reaches_the_other_phone_with_who_did_it(phone, other):
    log = feeding(phone, colony(phone))
    phone.sync()
    told = by_id(other.sync()["rows"])

    assert told[log["id"]]["set"].items() >= log["set"].items()
    assert told[log["id"]]["by"] == phone.person_id
    assert phone.waiting == []


def test_pages_of_any_size_give_the_same_rows(phone, household_id):
    colony_id = colony(phone)
    for _ in range(25):
        feeding(phone, colony_id)
    phone.sync()
    in_small_pages = Requester(household_id).sync(limit=3)["rows"]
    at_once = Requester(household_id).sync()["rows"]

    assert len(in_small_pages) == 26
    assert in_small_pages == at_once


def test_a_row_that_changes_while_a_phone_pages_is_not_missed(phone, household_id):
    colony_id = colony(phone)
    logs = [feeding(phone, colony_id) for _ in range(6)]
    phone.sync()
    reader = Requester(household_id)
    first = reader.ask(limit=3)
    reader.take(first)
    phone.write("feeding", {"remark": "changed"}, logs[0]["id"])
    phone.sync()
    told = by_id(first["rows"] + reader.sync(limit=3)["rows"])

    assert told[logs[0]["id"]]["set"]["remark"] == "changed"
    assert len(told) == 7


def test_a_new_epoch_gives_everything_anew_and_keeps_what_waits(phone, household_id):
    colony_id = colony(phone)
    phone.sync()
    phone.epoch = uuid7(NOON_MS)
    log = feeding(phone, colony_id)
    answer = phone.sync()

    assert answer["reset"] is True
    assert phone.verdicts[log["op_id"]]["verdict"] == "applied"
    assert {colony_id, log["id"]} <= by_id(answer["rows"]).keys()


def test_a_body_of_another_device_is_refused_and_nothing_is_stored(phone, other):
    colony_id = colony(phone)
    body = phone.request() | {"device": other.device_id}
    with pytest.raises(WrongDevice), writing() as connection:
        exchange(connection, phone.actor, body, NOON_MS, no_plans)

    assert colony_id not in by_id(other.sync()["rows"])


@pytest.mark.parametrize(
    ("change", "error", "field"),
    [
        ({"ops": {}}, BadRequest, "ops"),
        ({"ops": [1]}, BadRequest, "ops[0]"),
        ({"ops": [{}]}, BadRequest, "ops[0].set"),
        ({"device": "me"}, BadRequest, "device"),
        ({"device": 7}, BadRequest, "device"),
        ({"schema": "1"}, BadRequest, "schema"),
        ({"schema": 99}, BadRequest, "schema"),
        ({"schema": True}, BadRequest, "schema"),
        ({"limit": 0}, BadRequest, "limit"),
        ({"limit": float("nan")}, BadRequest, "limit"),
        ({"limit": float("inf")}, BadRequest, "limit"),
        ({"cursor": 5}, BadRequest, "cursor"),
        ({"epoch": "x"}, BadRequest, "epoch"),
        ({"schema": 0}, BadRequest, "schema"),
    ],
)
def test_a_malformed_envelope_names_the_field(phone, change, error, field):
    with pytest.raises(error) as caught, writing() as connection:
        exchange(connection, phone.actor, phone.request() | change, NOON_MS, no_plans)

    assert field in caught.value.fields


def test_more_operations_than_the_limit_are_refused_whole(phone):
    op = phone.write("colony", {"name": "Amber"})
    with pytest.raises(TooLarge), writing() as connection:
        exchange(connection, phone.actor, phone.request() | {"ops": [op] * 501}, NOON_MS, no_plans)


def test_a_phone_of_a_schema_before_the_last_is_told_to_upgrade(phone, monkeypatch):
    monkeypatch.setattr("broodshelf.sync.envelope.OLDEST_SCHEMA", 2)
    with pytest.raises(UpgradeRequired), writing() as connection:
        exchange(connection, phone.actor, phone.request(), NOON_MS, no_plans)


def test_plans_are_made_for_the_colonies_that_changed_and_travel_in_the_same_answer(phone):
    asked: list[set[str]] = []

    def recompute(ledger: Ledger, colonies: set[str], now_ms: int) -> None:
        asked.append(colonies)
        ledger.put(uuid7(now_ms), "plan", {"colony_id": min(colonies), "gauges": []}, now_ms=now_ms)

    colony_id = colony(phone)
    feeding(phone, colony_id)
    answer = phone.sync(recompute=recompute)

    assert asked == [{colony_id}]
    assert [row["kind"] for row in answer["rows"]].count("plan") == 1
