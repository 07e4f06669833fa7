"""One operation can fail alone: what nobody foresaw refuses that one and stops neither its batch nor its phone."""

from __future__ import annotations

import logging

import pytest
from sqlalchemy.exc import OperationalError
from tests.support.households import HAPPENED, by_id, colony, feeding

from broodshelf.logs import told_without_words
from broodshelf.records import store
from broodshelf.records.database import db
from broodshelf.rounds import recompute
from broodshelf.rounds.recompute import touched
from broodshelf.sync import operations

SECRET = "what the keeper wrote"


@pytest.fixture
def unforeseen(monkeypatch):
    """A server whose checks let through what it then cannot store: an instant that is none, an id that is too long."""
    right = operations.check_fields
    monkeypatch.setattr(
        operations,
        "check_fields",
        lambda kind, values: (dict(values), None) if values.get("remark") == SECRET else right(kind, values),
    )


def test_the_one_that_fails_is_refused_as_failed_and_the_rest_of_its_batch_stands(phone, other, unforeseen):
    colony_id = colony(phone)
    before = feeding(phone, colony_id)
    bad = feeding(phone, colony_id, happened_at="no instant", remark=SECRET)
    after = feeding(phone, colony_id)
    phone.sync()
    told = by_id(other.sync()["rows"])

    assert phone.verdicts[bad["op_id"]] == {
        "op_id": bad["op_id"], "verdict": "rejected", "code": "failed", "args": {},
    }  # fmt: skip
    assert phone.waiting == []
    assert told.keys() == {colony_id, before["id"], after["id"]}
    assert [row["rev"] for row in told.values()] == [1, 2, 3]


def test_what_the_database_refuses_fails_alone_as_well(phone, other, unforeseen):
    """PostgreSQL holds columns to their lengths; on SQLite the same operation can be stored."""
    colony_id = colony(phone)
    bad = phone.write("note", {"text": "x", "happened_at": HAPPENED, "colony_id": "x" * 50, "remark": SECRET})
    good = feeding(phone, colony_id)
    parents = operations._require_parents
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(
            operations,
            "_require_parents",
            lambda batch, change: None if change.values.get("remark") else parents(batch, change),
        )
        phone.sync()
    told = by_id(other.sync()["rows"])

    refused = phone.verdicts[bad["op_id"]].get("code") == "failed"
    assert refused == (db.engine.dialect.name == "postgresql")
    assert good["id"] in told


def test_sent_again_what_failed_gets_the_same_verdict_even_when_the_server_was_mended(
    phone, unforeseen, monkeypatch
):
    bad = feeding(phone, colony(phone), happened_at="no instant", remark=SECRET)
    first = phone.ask()["answers"]
    monkeypatch.setattr(store, "happened_ms", lambda _text: 0)
    second = phone.sync()["answers"]

    assert first == second
    assert phone.verdicts[bad["op_id"]]["code"] == "failed"


def test_the_log_says_where_it_failed_and_nothing_of_what_was_written(phone, unforeseen, caplog):
    bad = feeding(phone, colony(phone), happened_at=f"no instant but {SECRET}", remark=SECRET)
    with caplog.at_level(logging.ERROR, "broodshelf"):
        phone.sync()
    lines = [
        record.getMessage() + repr(record.values) + told_without_words(record.exc_info[1])
        for record in caplog.records
        if record.name == "broodshelf"
    ]

    assert any("operation failed" in line and bad["op_id"] in line and "store.py" in line for line in lines)
    assert not any(SECRET in line for line in lines)


def test_a_database_that_fails_is_no_fault_of_an_operation(phone, monkeypatch):
    colony_id = colony(phone)
    phone.sync()
    log = feeding(phone, colony_id)

    def away(*_args, **_more):
        raise OperationalError("INSERT", {}, Exception("the disk is full"))

    with monkeypatch.context() as patch:
        patch.setattr(operations, "_store", away)
        with pytest.raises(OperationalError):
            phone.sync()
    waited = list(phone.waiting)
    phone.sync()

    assert waited == [log]
    assert phone.verdicts[log["op_id"]]["verdict"] == "applied"


@pytest.mark.parametrize(
    ("kind", "values", "field"),
    [
        ("rule", {"need": "sugar", "paused_until": "9999-12-31"}, "paused_until"),
        ("rule", {"need": "sugar", "weekdays": [None]}, "weekdays"),
        ("pass", {"name": "x", "starts_on": "2026-05-01", "ends_on": "9999-12-31"}, "ends_on"),
        ("later", {"need": "sugar", "happened_at": HAPPENED, "until": "9999-12-31T23:59:59-12:00"}, "until"),
        ("household", {"name": "x", "zone": "UTC\n"}, "zone"),
    ],
)
def test_days_without_a_sensible_end_are_refused_by_name_and_the_rest_goes_through(
    phone, kind, values, field
):
    colony_id = colony(phone)
    tied = {"pass": {"colony_ids": [colony_id]}, "household": {}}.get(kind, {"colony_id": colony_id})
    odd = phone.write(kind, {**values, **tied})
    good = feeding(phone, colony_id)
    phone.sync(recompute=touched)

    assert phone.verdicts[odd["op_id"]]["code"] == "bad_value"
    assert phone.verdicts[odd["op_id"]]["args"]["field"] == field
    assert phone.verdicts[good["op_id"]]["verdict"] == "applied"


def plan_of(phone, colony_id):
    return next(v for v in phone.values().values() if v.get("colony_id") == colony_id and "gauges" in v)


def test_a_plan_that_fails_keeps_the_old_one_says_so_and_lets_the_others_be_made(phone, monkeypatch):
    sound, sick = colony(phone, "Birch"), colony(phone, "Amber")
    phone.sync(recompute=touched)
    old = plan_of(phone, sick)
    make_plan = recompute.make_plan

    def fails_for_one(state, now_ms):
        if state.id == sick:
            raise ZeroDivisionError
        return make_plan(state, now_ms)

    log = feeding(phone, sick)
    feeding(phone, sound)
    phone.now_ms += 1000
    with monkeypatch.context() as patch:
        patch.setattr(recompute, "make_plan", fails_for_one)
        phone.sync(recompute=touched)
    while_failing, other_plan = plan_of(phone, sick), plan_of(phone, sound)
    feeding(phone, sick)
    phone.sync(recompute=touched)

    assert phone.verdicts[log["op_id"]]["verdict"] == "applied"
    assert while_failing["notices"] == [{"code": "plan_failed", "args": {}}, *old["notices"]]
    assert while_failing["gauges"] == old["gauges"]
    assert other_plan["computed_at_ms"] == phone.now_ms
    assert {"code": "plan_failed", "args": {}} not in plan_of(phone, sick)["notices"]


def test_a_first_plan_that_fails_is_an_empty_one_that_says_so(phone, monkeypatch):
    monkeypatch.setattr(recompute, "read_shelf", lambda *_: 1 / 0)
    colony_id = colony(phone)
    phone.sync(recompute=touched)

    assert plan_of(phone, colony_id)["notices"] == [{"code": "plan_failed", "args": {}}]
    assert plan_of(phone, colony_id)["tasks"] == []


@pytest.mark.parametrize(
    "clock_ms", [-1, 0, 4_200_000_000_000, 8_640_000_000_000_000, -8_640_000_000_000_000]
)
def test_a_phone_whose_clock_is_off_by_ages_is_answered_and_its_skew_makes_it_right(phone, clock_ms):
    colony_id = colony(phone)
    log = feeding(phone, colony_id)
    log.update(made_at=clock_ms, skew_ms=phone.now_ms - clock_ms if abs(clock_ms) < 10**13 else 0)
    row = by_id(phone.sync()["rows"])[log["id"]]

    assert phone.verdicts[log["op_id"]]["verdict"] == "applied"
    assert 0 <= row["made_ms"] <= phone.now_ms
    if abs(clock_ms) < 10**13:
        assert row["made_ms"] == phone.now_ms
