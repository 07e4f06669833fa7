"""What each operation is answered: applied, seen before, waiting or refused, with its reason. On both engines."""

from __future__ import annotations

import pytest
from tests.support.households import HAPPENED, NOON_MS, colony, feeding

from broodshelf.model.gauges import DAY_MS
from broodshelf.records.ids import uuid7


def test_an_operation_sent_again_gets_its_original_verdict_and_is_stored_once(phone, other):
    log = feeding(phone, colony(phone))
    first = phone.ask()  # its answer is lost
    second = phone.sync()
    told = other.sync()["rows"]

    assert first["answers"] == second["answers"]
    assert [row["id"] for row in told if row["kind"] == "feeding"] == [log["id"]]


def test_what_asks_for_what_stands_with_a_clock_ahead_is_told_for_which_time_it_was_taken(phone):
    """Else the journal kept the time ahead, and after a restore a year later it beat all that came since."""
    colony_id = colony(phone)
    phone.sync()
    phone.clock_ahead_ms = DAY_MS
    ahead = {"made_at": phone.now_ms + DAY_MS, "skew_ms": 0}
    first = phone.write("colony", {"name": "Birch"}, colony_id, **ahead)
    again = phone.write("colony", {"name": "Birch"}, colony_id, **ahead)
    phone.sync()

    assert (
        phone.verdicts[first["op_id"]]["made_ms"] == phone.now_ms + 1
    )  # after the name that it took the place of
    assert phone.verdicts[again["op_id"]]["made_ms"] == phone.now_ms


def test_a_rejected_operation_blocks_nothing_and_names_its_reason(phone):
    bad = phone.write("colony", {"name": "Amber", "queens": -1})
    good = colony(phone, "Birch")
    phone.sync()

    assert phone.verdicts[bad["op_id"]]["verdict"] == "rejected"
    assert phone.verdicts[bad["op_id"]]["code"] == "bad_value"
    assert phone.verdicts[bad["op_id"]]["args"]["field"] == "queens"
    assert good in phone.rows()


@pytest.mark.parametrize(
    ("kind", "values", "code"),
    [
        ("cloud", {"name": "x"}, "unknown_kind"),
        ("colony", {"name": "x", "wings": 2}, "unknown_field"),
        ("colony", {"name": None}, "bad_value"),
        ("colony", {"name": "x", "worker_length_mm": "long"}, "bad_value"),
        ("household", {"zone": "Mars/Base", "name": "x"}, "bad_value"),
        ("note", {"text": "hello", "colony_id": uuid7(1)}, "missing_field"),
        ("plan", {"gauges": []}, "not_allowed"),
        ("person", {"name": "x", "role": "keeper"}, "not_allowed"),
        ("note", {"text": "x" * 5000, "happened_at": HAPPENED, "colony_id": uuid7(1)}, "bad_value"),
        ("feeding", {"need": "protein", "happened_at": "yesterday", "colony_id": uuid7(1)}, "bad_value"),
        (
            "feeding",
            {"need": "protein", "happened_at": "2026-05-01T12:00:00", "colony_id": uuid7(1)},
            "bad_value",
        ),
    ],
)
def test_what_can_never_be_accepted_is_rejected_with_its_code(phone, kind, values, code):
    op = phone.write(kind, values)
    phone.sync()

    assert phone.verdicts[op["op_id"]] | {"args": None} == {
        "op_id": op["op_id"],
        "verdict": "rejected",
        "code": code,
        "args": None,
    }


@pytest.mark.parametrize("need", ["water", "room", "leftovers"])
def test_a_rule_for_what_cannot_wait_is_refused_and_says_why(phone, need):
    op = phone.write("rule", {"colony_id": colony(phone), "need": need, "weekdays": [3]})
    phone.sync()

    verdict = phone.verdicts[op["op_id"]]
    assert (verdict["verdict"], verdict["code"]) == ("rejected", "bad_value")
    assert verdict["args"]["field"] == "need"
    assert need in verdict["args"]["why"]
    assert "no rule puts them off" in verdict["args"]["why"]


@pytest.mark.parametrize("need", ["sugar", "barrier", "rest", "glance"])
def test_a_rule_for_what_can_wait_stands(phone, need):
    op = phone.write("rule", {"colony_id": colony(phone), "need": need, "weekdays": [3]})
    phone.sync()

    assert phone.values()[op["id"]]["need"] == need


def test_a_rule_for_water_of_before_it_was_refused_can_be_deleted(phone, monkeypatch):
    with monkeypatch.context() as before:
        before.setattr("broodshelf.sync.operations.check_fields", lambda _kind, values: (dict(values), None))
        op = phone.write("rule", {"colony_id": colony(phone), "need": "water", "weekdays": [3]})
        phone.sync()
    assert op["id"] in phone.rows()
    phone.write("rule", {"gone": True}, op["id"])
    phone.sync()

    assert op["id"] not in phone.rows()


def test_a_log_whose_colony_is_not_here_yet_waits_and_is_applied_later(phone, other):
    colony_op = other.write("colony", {"name": "Amber"})
    log = feeding(phone, colony_op["id"])
    answer = phone.sync()
    waiting = phone.waiting[0]["op_id"]
    other.sync()
    phone.sync()

    assert answer["answers"][0]["verdict"] == "deferred"
    assert answer["answers"][0]["args"] == {"missing": colony_op["id"]}
    assert waiting == log["op_id"]
    assert log["id"] in phone.rows()


def test_an_adopted_record_is_inserted_if_absent_and_otherwise_without_effect(phone):
    colony_id = colony(phone)
    phone.sync()
    phone.write("colony", {"name": "Old name"}, colony_id, adopt=True)
    lost = phone.write("colony", {"name": "Lost in the restore"}, adopt=True)
    phone.sync()

    assert phone.values()[colony_id]["name"] == "Amber"
    assert phone.values()[lost["id"]]["name"] == "Lost in the restore"


def test_a_log_waits_thirty_days_for_its_colony_and_is_then_refused_by_name(phone):
    phone.sync()
    missing = uuid7(NOON_MS)
    log = feeding(phone, missing)
    phone.now_ms += 29 * DAY_MS
    phone.sync()
    waits = phone.waiting == [log]
    phone.now_ms += 2 * DAY_MS
    phone.sync()

    assert waits
    assert phone.verdicts[log["op_id"]] | {"op_id": ""} == {
        "op_id": "", "verdict": "rejected", "code": "parent_missing", "args": {"missing": missing},
    }  # fmt: skip


def test_an_old_log_is_not_refused_while_its_colony_is_on_its_way_in_the_same_outbox(phone):
    phone.sync()
    missing = uuid7(NOON_MS)
    log = feeding(phone, missing)
    phone.now_ms += 60 * DAY_MS
    phone.write("colony", {"name": "Offered after a restore"}, missing, adopt=True)
    phone.sync()
    phone.sync()

    assert phone.verdicts[log["op_id"]]["verdict"] == "applied"


ODD_TEXTS = ["\x00", "a\x00b", "\ud800", "cut off \ud83d", "\U0001f41c", "\ufffe"]


@pytest.mark.parametrize("odd", ODD_TEXTS, ids=ascii)
def test_no_character_in_a_log_stops_the_queue(phone, other, odd):
    colony_id = colony(phone)
    phone.sync()
    odd_ones = [
        feeding(phone, colony_id, remark=odd, task_key=odd),
        phone.write(odd, {"name": "x"}),
        phone.write("colony", {"name": odd, odd: 1}),
        phone.write("colony", {"name": "x", "vessel_id": odd}),
        feeding(phone, odd, happened_at=odd, need=odd),
    ]
    good = feeding(phone, colony_id)
    phone.sync()
    other.sync()

    assert good["id"] in other.rows()
    assert [phone.verdicts[op["op_id"]]["verdict"] for op in odd_ones] == ["applied"] + ["rejected"] * 4
    assert other.values()[odd_ones[0]["id"]]["remark"] == odd.replace("\ud800", "\ufffd").replace(
        "\ud83d", "\ufffd"
    )


def test_a_correction_waits_with_the_log_that_waits_for_its_colony(phone):
    """After a restore a journal comes in the order of its making; the colony may be offered after it."""
    phone.sync()
    missing = uuid7(NOON_MS)
    log = phone.write("note", {"colony_id": missing, "happened_at": HAPPENED, "text": "as it was"})
    correction = phone.write("note", {"text": "as it is"}, log["id"])
    phone.write("colony", {"name": "Offered"}, missing, adopt=True)
    phone.sync()
    phone.sync()

    assert phone.verdicts[correction["op_id"]]["verdict"] == "applied"
    assert phone.values()[log["id"]]["text"] == "as it is"
