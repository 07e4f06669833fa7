"""What a person sees of the past: who changed what when, what went and how it comes back."""

from __future__ import annotations

import gzip

from tests.support.households import NOON_MS


def history(browser, record_id):
    return browser.get(f"/api/records/{record_id}/history").json["revisions"]


def test_a_records_history_says_who_asked_for_what_when_and_what_stood_before(keeper, clock):
    made = keeper.op("colony", {"name": "Amber"})
    keeper.sync(made)
    clock.now_ms += 60_000
    changed = keeper.op("colony", {"name": "Birch", "queens": 2}, made["id"])
    keeper.sync(changed)
    newest, first = history(keeper, made["id"])

    assert (newest["asked"], newest["before"]) == (
        {"name": "Birch", "queens": 2},
        {"name": "Amber", "queens": None},
    )
    assert (newest["by"], newest["at_ms"], newest["op_id"]) == (
        keeper.me["person_id"], NOON_MS + 60_000, changed["op_id"],
    )  # fmt: skip
    assert (first["asked"], first["at_ms"], first["lost"]) == ({"name": "Amber"}, NOON_MS, {})


def test_what_was_deleted_is_listed_with_who_and_when_and_comes_back_by_an_operation(keeper, clock):
    made = keeper.op("colony", {"name": "Amber", "queens": 1})
    keeper.sync(made)
    clock.now_ms += 60_000
    keeper.sync(keeper.op("colony", {"gone": True}, made["id"]))
    listed = keeper.get("/api/records/gone").json["gone"]
    keeper.sync(keeper.op("colony", {"gone": False}, made["id"]))
    rows = {row["id"]: row["set"] for row in keeper.sync().json["rows"]}

    assert [(row["id"], row["kind"], row["by"], row["at_ms"]) for row in listed] == [
        (made["id"], "colony", keeper.me["person_id"], NOON_MS + 60_000)
    ]
    assert listed[0]["set"] == {"name": "Amber", "queens": 1, "gone": True}
    assert rows[made["id"]] | {"gone": False} == {"name": "Amber", "queens": 1, "gone": False}
    assert keeper.get("/api/records/gone").json["gone"] == []


def test_a_value_that_lost_is_brought_back_by_an_ordinary_operation(keeper):
    made = keeper.op("colony", {"name": "Amber"})
    keeper.sync(made)
    keeper.sync(keeper.op("colony", {"name": "Birch"}, made["id"]))
    before = history(keeper, made["id"])[0]["before"]
    keeper.sync(keeper.op("colony", before, made["id"]))

    assert [line["asked"]["name"] for line in history(keeper, made["id"])] == ["Amber", "Birch", "Amber"]


def test_another_household_sees_nothing_of_what_went(browser, keeper):
    made = keeper.op("colony", {"name": "Amber"})
    keeper.sync(made)
    keeper.sync(keeper.op("colony", {"gone": True}, made["id"]))
    other = browser().claim("Ada")

    assert other.get("/api/records/gone").json["gone"] == []


def test_a_large_answer_is_compressed_for_who_asks_and_is_the_same_answer(keeper):
    keeper.sync(*(keeper.op("colony", {"name": f"colony {i}"}) for i in range(60)))
    body = {"device": keeper.me["device_id"], "epoch": None, "cursor": None, "schema": 1, "ops": []}
    plain = keeper.post("/api/sync", body)
    packed = keeper.post("/api/sync", body, **{"Accept-Encoding": "gzip"})

    assert packed.headers["Content-Encoding"] == "gzip"
    assert "Content-Encoding" not in plain.headers
    assert plain.headers["Vary"] == packed.headers["Vary"] == "Accept-Encoding"
    assert gzip.decompress(packed.data) == plain.data
    assert len(packed.data) * 4 < len(plain.data)
