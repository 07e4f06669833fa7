"""The invented shelf says that it is invented and holds what it promises."""

from __future__ import annotations

from tests.support.households import NOON_MS

from broodshelf.demo.fill import fill
from broodshelf.records.database import reading, writing
from broodshelf.records.kinds import KINDS
from broodshelf.records.store import read_kind, read_record


def test_the_invented_shelf_has_four_months_of_history_and_plans(bare_app):
    with writing() as connection:
        household_id, _person = fill(connection, NOON_MS)
    with reading() as connection:
        colonies = read_kind(connection, household_id, "colony")
        plans = {p.values["colony_id"]: p.values for p in read_kind(connection, household_id, "plan")}
        events = [name for name, kind in KINDS.items() if kind.group == "event"]
        logged = (record for name in events for record in read_kind(connection, household_id, name))
        log = sorted(logged, key=lambda record: record.happened_ms)
        household = read_record(connection, household_id, household_id)
        passes = read_kind(connection, household_id, "pass")
    by_name = {c.values["name"]: c.id for c in colonies}
    tasks = {t["need"]: t for t in plans[by_name["Amber"]]["tasks"]}
    foods = {e.values.get("food_code") for e in log if e.colony_id == by_name["Old Oak"]}
    span_days = (log[-1].happened_ms - log[0].happened_ms) / 86_400_000

    assert household.values["invented"] is True
    assert len(colonies) == len(plans) == 5
    assert span_days > 115
    assert tasks["water"]["urgent"]  # the dry reservoir
    assert "ignored" in {e.values.get("outcome") for e in log if e.colony_id == by_name["Juniper"]}
    assert len(foods & {"cricket", "mealworm", "waxworm", "egg", "fruit_fly"}) == 5
    assert [p.values["name"] for p in passes] == ["Grandpa (invented)"]
