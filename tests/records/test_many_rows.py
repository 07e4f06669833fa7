"""Rows that are inserted together stand as they were given, on both databases."""

from __future__ import annotations

import pytest
from sqlalchemy import select
from sqlalchemy.exc import IntegrityError
from tests.support.households import NOON_MS

from broodshelf.records.database import reading, writing
from broodshelf.records.ids import uuid7
from broodshelf.records.many_rows import insert_rows
from broodshelf.records.tables import households, records

HOUSE = uuid7(NOON_MS)
AWKWARD = '{"text": "a \\"quote\\", a back\\\\slash, \\u0000, \\n, ants 🐜, NULL, é, [1]"}'


def record(**values):
    whole = {"household_id": HOUSE, "id": uuid7(NOON_MS), "kind": "note", "rev": 2**40, "colony_id": None}
    return {**whole, "made_ms": NOON_MS, "fields": AWKWARD, "stamps": "{}", **values}


@pytest.fixture
def house(bare_app):
    with writing() as connection:
        insert_rows(connection, households, [{"id": HOUSE, "epoch": HOUSE, "created_ms": NOON_MS}])


def test_every_value_comes_back_as_it_was_given_and_defaults_fill_the_rest(house):
    given = [record(task_key="protein:start"), record(task_key=None)]
    with writing() as connection:
        insert_rows(connection, records, given)

    with reading() as connection:
        rows = connection.execute(select(records).order_by(records.c.id)).mappings().all()
        [household] = connection.execute(select(households)).mappings()
    assert [{name: row[name] for name in given[0]} for row in rows] == sorted(given, key=lambda r: r["id"])
    assert [(row["gone"], row["topic"], row["happened_ms"]) for row in rows] == [(False, "", None)] * 2
    assert (household["rev"], household["purged_rev"]) == (0, 0)


def test_one_row_that_cannot_stand_keeps_all_of_them_out(house):
    good = record()
    with pytest.raises(IntegrityError), writing() as connection:
        insert_rows(connection, records, [good, good])

    with reading() as connection:
        assert connection.execute(select(records)).all() == []


def test_no_rows_are_no_statement(house):
    with writing() as connection:
        insert_rows(connection, records, [])
