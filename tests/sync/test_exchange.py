"""One round trip: verdicts, merging, paging, scope. On SQLite and on PostgreSQL.

Longer than 300 lines because it is the whole contract of one round trip, rule by rule.
"""

from __future__ import annotations

import json

import pytest
from tests.support.households import HAPPENED, NOON_MS, ModelPhone, no_plans

from broodshelf.errors import BadRequest, TooLarge, UpgradeRequired, WrongDevice
from broodshelf.people.actor import PassWindow
from broodshelf.people.devices import sign_in
from broodshelf.records.database import reading, writing
from broodshelf.records.history import read_history
from broodshelf.records.ids import uuid7
from broodshelf.records.store import Ledger
from broodshelf.sync.exchange import exchange

DAY_MS = 24 * 3600 * 1000


@pytest.fixture
def phone(household_id: str) -> ModelPhone:
    return ModelPhone(household_id)


@pytest.fixture
def other(household_id: str) -> ModelPhone:
    return ModelPhone(household_id)


def colony(phone: ModelPhone, name: str = "Amber") -> str:
    return phone.write("colony", {"name": name})["id"]


def sign_in_as(phone: ModelPhone) -> None:
    """Give the phone its row among the household's devices."""
    with writing() as connection:
        sign_in(
            connection, device_id=phone.device_id, device_name="a phone", household_id=phone.household_id,
            person_id=phone.person_id, role="keeper", now_ms=NOON_MS,
        )  # fmt: skip


def feeding(phone: ModelPhone, colony_id: str, **values) -> dict:
    return phone.write(
        "feeding", {"colony_id": colony_id, "happened_at": HAPPENED, "need": "protein", **values}
    )


def test_a_log_reaches_the_other_phone_with_who_did_it(phone, other):
    log = feeding(phone, colony(phone))
    phone.sync()
    other.sync()

    assert phone.values() == other.values()
    assert other.rows[log["id"]]["by"] == phone.person_id
    assert phone.outbox == []


def test_an_operation_sent_again_gets_its_original_verdict_and_is_stored_once(phone, other):
    log = feeding(phone, colony(phone))
    first = phone.sync(lose_answer=True)
    second = phone.sync()
    other.sync()

    assert first["answers"] == second["answers"]
    assert [row["id"] for row in other.rows.values() if row["kind"] == "feeding"] == [log["id"]]


def test_a_rejected_operation_blocks_nothing_and_names_its_reason(phone):
    bad = phone.write("colony", {"name": "Amber", "queens": -1})
    good = colony(phone, "Birch")
    phone.sync()

    assert phone.verdicts[bad["op_id"]]["verdict"] == "rejected"
    assert phone.verdicts[bad["op_id"]]["code"] == "bad_value"
    assert phone.verdicts[bad["op_id"]]["args"]["field"] == "queens"
    assert good in phone.rows


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
    assert op["id"] in phone.rows
    phone.write("rule", {"gone": True}, op["id"])
    phone.sync()

    assert op["id"] not in phone.rows


def test_a_log_whose_colony_is_not_here_yet_waits_and_is_applied_later(phone, other):
    colony_op = other.write("colony", {"name": "Amber"})
    log = feeding(phone, colony_op["id"])
    answer = phone.sync()
    waiting = phone.outbox[0]["op_id"]
    other.sync()
    phone.sync()

    assert answer["answers"][0]["verdict"] == "deferred"
    assert answer["answers"][0]["args"] == {"missing": colony_op["id"]}
    assert waiting == log["op_id"]
    assert log["id"] in phone.rows


def test_changes_of_different_fields_both_stand(phone, other):
    colony_id = colony(phone)
    phone.sync()
    other.sync()
    phone.write("colony", {"name": "Birch"}, colony_id)
    other.write("colony", {"queens": 2}, colony_id)
    phone.sync()
    other.sync()
    phone.sync()

    assert phone.values()[colony_id] == {"name": "Birch", "queens": 2}
    assert phone.values() == other.values()


@pytest.mark.parametrize("ahead_ms", [0, DAY_MS, -DAY_MS])
def test_the_later_edit_of_a_field_wins_whatever_the_phones_clock_says(phone, other, ahead_ms):
    colony_id = colony(phone)
    phone.sync()
    other.sync()
    sign_in_as(other)
    phone.clock_ahead_ms = ahead_ms
    phone.now_ms = NOON_MS + 1_000
    phone.write("colony", {"name": "Earlier"}, colony_id)
    other.now_ms = NOON_MS + 2_000
    other.write("colony", {"name": "Later"}, colony_id)
    other.now_ms = phone.now_ms = NOON_MS + 60_000
    other.sync()
    answer = phone.sync()
    other.sync()

    assert phone.values()[colony_id]["name"] == other.values()[colony_id]["name"] == "Later"
    assert answer["answers"][0]["conflicts"] == [
        {
            "field": "name",
            "winner": "theirs",
            "mine": "Earlier",
            "theirs": "Later",
            "by": other.person_id,
            "at_ms": NOON_MS + 2_000,
        }
    ]


def test_the_value_that_lost_stays_in_the_history(phone, other):
    colony_id = colony(phone)
    phone.sync()
    other.sync()
    phone.write("colony", {"name": "Mine"}, colony_id)
    other.now_ms += 1_000
    other.write("colony", {"name": "Theirs"}, colony_id)
    other.sync()
    phone.now_ms += 5_000
    phone.sync()
    with reading() as connection:
        newest = read_history(connection, phone.household_id, colony_id)[0]

    assert newest["lost"] == {"name": "Mine"}
    assert newest["by"] == phone.person_id


def test_a_deletion_does_not_erase_and_can_be_taken_back(phone, other):
    colony_id = colony(phone)
    phone.sync()
    other.sync()
    phone.write("colony", {"gone": True}, colony_id)
    phone.sync()
    other.sync()
    seen_gone = colony_id not in other.rows
    phone.write("colony", {"gone": False}, colony_id)
    phone.sync()
    other.sync()

    assert seen_gone
    assert other.values()[colony_id]["name"] == "Amber"


def test_pages_of_any_size_give_the_same_rows(phone, household_id):
    colony_id = colony(phone)
    for _ in range(25):
        feeding(phone, colony_id)
    phone.sync()
    small, large = ModelPhone(household_id), ModelPhone(household_id)
    small.sync(limit=3)
    large.sync()

    assert len(small.rows) == 26
    assert small.rows == large.rows


def test_a_row_that_changes_while_a_phone_pages_is_not_missed(phone, household_id):
    colony_id = colony(phone)
    logs = [feeding(phone, colony_id) for _ in range(6)]
    phone.sync()
    reader = ModelPhone(household_id)
    with writing() as connection:
        first = json.loads(
            exchange(connection, reader.actor, reader.request(limit=3), NOON_MS, no_plans).text
        )
    reader.take(first)
    phone.write("feeding", {"remark": "changed"}, logs[0]["id"])
    phone.sync()
    reader.sync(limit=3)

    assert reader.values()[logs[0]["id"]]["remark"] == "changed"
    assert len(reader.rows) == 7


def test_two_people_answering_one_task_are_both_kept_and_the_second_is_marked(phone, other):
    colony_id = colony(phone)
    phone.sync()
    other.sync()
    first = feeding(phone, colony_id, task_key="protein:start")
    second = feeding(other, colony_id, task_key="protein:start")
    phone.sync()
    other.sync()
    phone.sync()

    assert "possible_repeat" not in phone.values()[first["id"]]
    assert phone.values()[second["id"]]["possible_repeat"] is True


def test_a_new_epoch_gives_everything_anew_and_keeps_what_waits(phone, household_id):
    colony_id = colony(phone)
    phone.sync()
    phone.epoch = uuid7(NOON_MS)
    log = feeding(phone, colony_id)
    answer = phone.sync()

    assert answer["reset"] is True
    assert phone.verdicts[log["op_id"]]["verdict"] == "applied"
    assert log["id"] in phone.rows


def test_an_adopted_record_is_inserted_if_absent_and_otherwise_without_effect(phone):
    colony_id = colony(phone)
    phone.sync()
    phone.write("colony", {"name": "Old name"}, colony_id, adopt=True)
    lost = phone.write("colony", {"name": "Lost in the restore"}, adopt=True)
    phone.sync()

    assert phone.values()[colony_id]["name"] == "Amber"
    assert phone.values()[lost["id"]]["name"] == "Lost in the restore"


def pass_for(colony_id: str, state: str = "active") -> PassWindow:
    return PassWindow(
        uuid7(1),
        frozenset({colony_id}),
        "2026-04-30",
        "2026-05-02",
        NOON_MS - DAY_MS,
        NOON_MS + DAY_MS,
        state,
    )


def test_a_stand_in_sees_and_feeds_only_the_colonies_of_the_pass(phone, household_id):
    mine, hidden = colony(phone, "Amber"), colony(phone, "Birch")
    secret = phone.write("note", {"colony_id": hidden, "happened_at": HAPPENED, "text": "secret"})
    phone.sync()
    guest = ModelPhone(household_id, role="stand_in", window=pass_for(mine))
    allowed, foreign = feeding(guest, mine), feeding(guest, hidden)
    rename = guest.write("colony", {"name": "Mine now"}, mine)
    early = feeding(guest, mine, happened_at="2026-04-01T12:00:00+00:00")
    guest.sync()

    assert guest.verdicts[allowed["op_id"]]["verdict"] == "applied"
    assert guest.verdicts[foreign["op_id"]]["code"] == "outside_pass"
    assert guest.verdicts[rename["op_id"]]["code"] == "not_allowed"
    assert guest.verdicts[early["op_id"]]["code"] == "outside_pass"
    assert mine in guest.rows
    assert not {hidden, secret["id"]} & guest.rows.keys()


def test_a_pass_that_gains_a_colony_leads_to_a_full_pull(phone, household_id):
    first, second = colony(phone, "Amber"), colony(phone, "Birch")
    phone.sync()
    guest = ModelPhone(household_id, role="stand_in", window=pass_for(first))
    guest.sync()
    window = pass_for(first)
    guest.window = PassWindow(
        window.pass_id, frozenset({first, second}), window.starts_on, window.ends_on,
        window.starts_ms, window.ends_ms, "active",
    )  # fmt: skip
    answer = guest.sync()

    assert answer["reset"] is True
    assert {first, second} <= guest.rows.keys()


def test_a_reset_that_begins_again_on_the_way_says_so_and_forgets_its_first_pages(phone, household_id):
    shown, hidden = colony(phone, "Amber"), colony(phone, "Birch")
    logs = [feeding(phone, shown) for _ in range(3)]
    phone.sync()
    guest = ModelPhone(household_id, role="stand_in", window=pass_for(shown))
    guest.sync(limit=2, lose_answer=True)
    with writing() as connection:
        page = json.loads(exchange(connection, guest.actor, guest.request(2), NOON_MS, no_plans).text)
    guest.take(page)
    guest.window = pass_for(hidden)
    with writing() as connection:
        again = json.loads(exchange(connection, guest.actor, guest.request(2), NOON_MS, no_plans).text)
    guest.take(again)
    guest.sync()

    assert (page["reset"], page["first"], page["more"]) == (True, True, True)
    assert (again["reset"], again["first"]) == (True, True)
    assert hidden in guest.rows
    assert not {shown, *(log["id"] for log in logs)} & guest.rows.keys()


def test_an_ended_pass_takes_what_was_logged_in_its_dates_and_gives_no_rows(phone, household_id):
    mine = colony(phone)
    phone.sync()
    guest = ModelPhone(household_id, role="stand_in", window=pass_for(mine, "ended"))
    log = feeding(guest, mine)
    answer = guest.sync()
    phone.sync()

    assert answer["rows"] == []
    assert answer["pass"]["state"] == "ended"
    assert log["id"] in phone.rows


def test_a_body_of_another_device_is_refused_and_nothing_is_stored(phone, other):
    colony_id = colony(phone)
    body = phone.request() | {"device": other.device_id}
    with pytest.raises(WrongDevice), writing() as connection:
        exchange(connection, phone.actor, body, NOON_MS, no_plans)
    other.sync()

    assert colony_id not in other.rows


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


def test_a_cursor_from_before_a_purge_gets_everything_anew(phone, household_id):
    from broodshelf.records.purge import KEPT_MS, purge_gone

    kept, lost = colony(phone), colony(phone, "Birch")
    phone.sync()
    reader = ModelPhone(household_id)
    reader.sync()
    phone.write("colony", {"gone": True}, lost)
    phone.sync()
    with writing() as connection:
        purged = purge_gone(connection, household_id, NOON_MS + KEPT_MS + DAY_MS)
    answer = reader.sync()

    assert purged == 1
    assert answer["reset"] is True
    assert set(reader.rows) == {kept}


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


def test_an_edit_that_meets_a_later_deletion_is_told_and_can_take_it_back(phone, other):
    colony_id = colony(phone)
    phone.sync()
    other.sync()
    sign_in_as(other)
    edit = phone.write("colony", {"name": "Edited first"}, colony_id)
    other.now_ms += 1_000
    other.write("colony", {"gone": True}, colony_id)
    other.sync()
    phone.now_ms += 5_000
    phone.sync()
    told = phone.verdicts[edit["op_id"]]["conflicts"]
    gone = colony_id not in phone.rows
    phone.write("colony", {"gone": False}, colony_id)
    phone.sync()

    assert [(met["field"], met["winner"], met["by"]) for met in told] == [("gone", "theirs", other.person_id)]
    assert gone
    assert phone.values()[colony_id]["name"] == "Edited first"


def test_a_deletion_that_came_first_but_was_made_before_an_edit_does_not_stand(phone, other):
    colony_id = colony(phone)
    phone.sync()
    other.sync()
    other.write("colony", {"gone": True}, colony_id)
    other.sync()
    phone.now_ms += 1_000
    phone.write("colony", {"name": "Edited later"}, colony_id)
    phone.sync()
    other.sync()

    assert other.values()[colony_id]["name"] == "Edited later"


def purge(household_id, now_ms):
    from broodshelf.records.purge import purge_gone

    with writing() as connection:
        return purge_gone(connection, household_id, now_ms)


def test_what_was_purged_stays_gone_whoever_edits_or_offers_it(phone, other, household_id):
    colony_id = colony(phone)
    phone.sync()
    other.sync()
    phone.write("colony", {"gone": True}, colony_id)
    phone.sync()
    later = NOON_MS + 401 * DAY_MS
    purged = purge(household_id, later)
    edit = other.write("colony", {"name": "Back from the dead"}, colony_id)
    offer = other.write("colony", {"name": "Amber"}, colony_id, adopt=True)
    phone.now_ms = other.now_ms = later
    other.sync()
    phone.sync()

    assert purged == 1
    assert other.verdicts[edit["op_id"]]["code"] == "purged"
    assert other.verdicts[offer["op_id"]]["verdict"] == "applied"
    assert colony_id not in other.rows.keys() | phone.rows.keys()


def test_a_purged_record_does_not_come_back_by_its_own_creation_sent_again(phone, household_id):
    colony_id = colony(phone)
    phone.write("colony", {"name": "Renamed before the first answer"}, colony_id)
    whole = list(phone.outbox)
    creation = [whole[0]]
    phone.outbox = creation
    phone.sync(lose_answer=True)
    remover = ModelPhone(household_id)
    remover.sync()
    remover.write("colony", {"gone": True}, colony_id)
    remover.sync()
    purge(household_id, NOON_MS + 401 * DAY_MS)
    phone.outbox = whole
    phone.sync()

    assert phone.verdicts[whole[0]["op_id"]]["verdict"] == "applied"
    assert phone.verdicts[whole[1]["op_id"]]["code"] == "purged"
    assert colony_id not in phone.rows


def test_a_log_waits_thirty_days_for_its_colony_and_is_then_refused_by_name(phone):
    phone.sync()
    missing = uuid7(NOON_MS)
    log = feeding(phone, missing)
    phone.now_ms += 29 * DAY_MS
    phone.sync()
    waits = phone.outbox == [log]
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

    assert good["id"] in other.rows
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
