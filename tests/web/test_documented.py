"""What docs/sync.md and docs/http-api.md show is what a server takes and gives."""

from __future__ import annotations

from tests.support.examples import json_examples


def test_the_operation_and_the_answer_that_the_page_on_sync_shows_are_a_servers(keeper):
    shown_operation, shown_request, shown_answer = json_examples("sync.md")[:3]
    operation = keeper.op("colony", {"name": "Amber"})

    renamed = {**keeper.op("colony", {"name": "Umber"}, operation["id"]), "made_at": operation["made_at"] + 1}

    answer = keeper.sync(operation, renamed).get_json()

    assert set(shown_operation) == set(operation) | {"adopt"}
    asked = {**shown_request, "device": keeper.me["device_id"], "epoch": None, "cursor": None}
    assert keeper.post("/api/sync", asked).status_code == 200
    assert set(shown_answer) == set(answer)
    assert set(answer["answers"][0]) <= set(shown_answer["answers"][0])
    row = next(row for row in answer["rows"] if row["id"] == operation["id"])
    assert set(row) == set(shown_answer["rows"][0])


def test_the_plan_that_the_page_on_http_shows_has_the_fields_of_a_plan(keeper):
    shown = next(example for example in json_examples("http-api.md") if "gauges" in example)

    answer = keeper.sync(keeper.op("colony", {"name": "Amber", "species_code": "lasius_niger"})).get_json()

    plan = next(row for row in answer["rows"] if row["kind"] == "plan")["set"]
    assert set(shown) == set(plan)
    assert set(shown["gauges"][0]) == set(plan["gauges"][0])
    assert set(shown["tasks"][0]) == set(plan["tasks"][0])
