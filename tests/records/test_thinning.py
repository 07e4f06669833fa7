"""What is thinned after 400 days only repeats: what a person logged, changed or deleted stays. On both databases."""

from __future__ import annotations

import json

import pytest
from sqlalchemy import func, select
from tests.support.house import House
from tests.support.households import HAPPENED
from tests.support.templates import Templates

from broodshelf.app import create_nudger
from broodshelf.model.gauges import DAY_MS
from broodshelf.people.sizes import cost_of_a_year
from broodshelf.records.database import reading, writing
from broodshelf.records.history import read_history
from broodshelf.records.tables import operations, records, revisions
from broodshelf.records.thinning import EVERY_DAYS, thin, whose_turn


@pytest.fixture(params=["sqlite", "postgresql"])
def house(request: pytest.FixtureRequest, templates: Templates, tmp_path):
    url = templates.of_an_app(request.param, tmp_path / "data")
    with House(tmp_path / "data", url) as made:
        yield made


@pytest.fixture
def shelf(house):
    """A colony with three notes: one left as it was, one changed later, one deleted later."""
    phone = house.phone()
    ids = {name: house.new_id() for name in ("colony", "left", "changed", "deleted")}
    phone.write("colony", {"name": "Amber"}, ids["colony"])
    for name in ("left", "changed", "deleted"):
        values = {"colony_id": ids["colony"], "happened_at": HAPPENED, "text": f"{name} as it was"}
        phone.write("note", values, ids[name])
    phone.sync()
    house.now_ms = phone.now_ms = house.now_ms + DAY_MS
    phone.write("note", {"text": "changed"}, ids["changed"])
    phone.write("note", {"gone": True}, ids["deleted"])
    phone.sync()
    assert {each["verdict"] for each in phone.verdicts.values()} == {"applied"}
    return phone, ids


def history(house, record_id):
    with reading() as connection:
        return read_history(connection, house.household_id, record_id)


def rows_of(house, table):
    with reading() as connection:
        mine = table.c.household_id == house.household_id
        return connection.scalar(select(func.count()).select_from(table).where(mine))


def present(house):
    with reading() as connection:
        rows = connection.execute(select(records).where(records.c.household_id == house.household_id))
        return sorted(rows.all())


def test_only_what_the_record_says_itself_goes_and_the_history_still_tells_it(house, shelf):
    _phone, ids = shelf
    before, told = present(house), {name: history(house, i) for name, i in ids.items()}
    with writing() as connection:
        assert thin(connection, house.household_id, house.now_ms + 399 * DAY_MS) == 0
        gone = thin(connection, house.household_id, house.now_ms + 401 * DAY_MS)

    assert present(house) == before
    assert rows_of(house, operations) == 0
    assert (
        gone == 6 + 4
    )  # six answers; the lines of the household, its keeper, the colony and the note left as it was
    for name in ("changed", "deleted"):
        assert history(house, ids[name]) == told[name]
    for name in ("colony", "left"):
        (line,), (was,) = history(house, ids[name]), told[name]
        assert {**line, "op_id": None} == {**was, "op_id": None}


def test_a_record_that_is_changed_after_its_line_went_still_tells_how_it_was_made(house, shelf):
    phone, ids = shelf
    made = history(house, ids["left"])[0]
    house.now_ms = phone.now_ms = house.now_ms + 401 * DAY_MS
    with writing() as connection:
        thin(connection, house.household_id, house.now_ms)
    phone.write("note", {"text": "changed at last"}, ids["left"])
    phone.sync()
    newest, first = history(house, ids["left"])

    assert newest["asked"] == {"text": "changed at last"}
    assert newest["before"] == {"text": "left as it was"}
    assert first["asked"] == made["asked"]
    assert first["at_ms"] == made["at_ms"]


def test_an_operation_that_comes_again_after_its_answer_went_changes_nothing(house):
    phone = house.phone()
    op = phone.write("colony", {"name": "Amber"}, house.new_id())
    phone.sync()
    phone.write("colony", {"name": "Birch"}, op["id"])
    house.now_ms = phone.now_ms = house.now_ms + DAY_MS
    phone.sync()
    house.now_ms = phone.now_ms = house.now_ms + 401 * DAY_MS
    with writing() as connection:
        thin(connection, house.household_id, house.now_ms)
    before = [json.loads(row.fields) for row in present(house)]
    phone.waiting = [op]
    phone.sync()

    assert [json.loads(row.fields) for row in present(house)] == before


def test_a_household_has_its_turn_once_a_month_and_the_nudger_sees_to_it(house, shelf):
    house.now_ms += 401 * DAY_MS
    days = [n for n in range(EVERY_DAYS) if whose_turn([house.household_id], house.now_ms + n * DAY_MS)]
    assert len(days) == 1
    house.now_ms += days[0] * DAY_MS
    nudger = create_nudger(house.app)
    for _ in range(3):
        nudger.tick(house.now_ms)
    nudger.close()

    assert rows_of(house, operations) == 0
    assert rows_of(house, revisions) < 8


def test_a_years_cost_is_told_by_what_came_in_the_last_one(house, shelf):
    with reading() as connection:
        now, later = (cost_of_a_year(connection, house.now_ms + n * DAY_MS) for n in (0, 366))

    assert (now.operations, now.households) == (6, 1)
    assert now.kib_a_household >= 1
    assert (later.operations, later.households, later.kib_a_household) == (0, 0, 0)
