"""Rows that are inserted or changed together stand as they were given, on both databases."""

from __future__ import annotations

import pytest
from sqlalchemy import select
from sqlalchemy.exc import IntegrityError
from tests.support.households import NOON_MS

from broodshelf.records.database import reading, writing
from broodshelf.records.ids import uuid7
from broodshelf.records.quick.many_rows import are_among, insert_rows, is_among, update_rows
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
        update_rows(connection, households, [], rev=3)


def test_each_row_is_changed_by_its_id_and_no_other(house):
    others = [{"id": uuid7(NOON_MS), "epoch": HOUSE, "created_ms": NOON_MS} for _ in range(3)]
    with writing() as connection:
        insert_rows(connection, households, others)
        update_rows(
            connection,
            households,
            [{"id": HOUSE, "epoch": AWKWARD[:30]}, {"id": others[1]["id"], "epoch": "b"}],
            rev=2**40,
        )

    with reading() as connection:
        rows = {row.id: row for row in connection.execute(select(households))}
    assert [(rows[i].epoch, rows[i].rev) for i in (HOUSE, others[1]["id"])] == [
        (AWKWARD[:30], 2**40),
        ("b", 2**40),
    ]
    assert {(rows[others[n]["id"]].epoch, rows[others[n]["id"]].rev) for n in (0, 2)} == {(HOUSE, 0)}


def test_what_becomes_of_all_alike_may_be_nothing(house):
    given = record(task_key="protein:start")
    with writing() as connection:
        insert_rows(connection, records, [given])
        update_rows(
            connection,
            records,
            [{"household_id": HOUSE, "id": given["id"], "rev": 7}],
            task_key=None,
            kind="check",
        )

    with reading() as connection:
        row = connection.execute(select(records)).one()
    assert (row.rev, row.task_key, row.kind) == (7, None, "check")


@pytest.mark.parametrize("wanted", [[], [0], [0, 2], [0, 0, 1]])
def test_a_condition_of_many_ids_finds_those_and_no_other(house, wanted):
    given = sorted((record() for _ in range(3)), key=lambda r: r["id"])
    with writing() as connection:
        insert_rows(connection, records, given)

    ids = [*(given[n]["id"] for n in wanted), "it's nobody's"]
    with reading() as connection:
        found = connection.scalars(
            select(records.c.id).where(is_among(connection, records.c.id, ids)).order_by(records.c.id)
        ).all()
    assert found == [given[n]["id"] for n in sorted(set(wanted))]


def test_a_value_with_the_signs_of_an_array_or_of_json_is_one_value(house):
    odd = ['a","b', "a,b", "{a}", "a\\", '\\"', "", "NULL", " a ", "a'b", "%s", ":a", "\n", "\N{ANT}"]
    given = [{**record(), "id": value} for value in odd]
    with writing() as connection:
        insert_rows(connection, records, given)

    with reading() as connection:
        for value in odd:
            found = connection.scalars(
                select(records.c.id).where(is_among(connection, records.c.id, [value]))
            ).all()
            assert found == [value]
        every = connection.scalars(select(records.c.id).where(is_among(connection, records.c.id, odd))).all()
    assert sorted(every) == sorted(odd)


def test_pairs_find_what_belongs_together_and_not_what_two_lists_would(house):
    other = uuid7(NOON_MS)
    with writing() as connection:
        insert_rows(connection, households, [{"id": other, "epoch": HOUSE, "created_ms": NOON_MS}])
        mine, same, theirs = record(id="a"), record(id="b"), record(id="a", household_id=other)
        insert_rows(connection, records, [mine, same, theirs])

    c = records.c
    with reading() as connection:
        pairs = are_among(connection, (c.household_id, c.id), [(other, "a"), (HOUSE, "b"), (other, "b")])
        found = connection.execute(select(c.household_id, c.id).where(pairs)).all()
        none = connection.execute(select(c.id).where(are_among(connection, (c.household_id, c.id), []))).all()
    assert sorted(map(tuple, found)) == sorted([(other, "a"), (HOUSE, "b")])
    assert none == []
