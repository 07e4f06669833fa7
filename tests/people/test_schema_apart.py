"""Every table of a household has it first in its keys, and PostgreSQL holds a transaction to one household."""

from __future__ import annotations

import pytest
from sqlalchemy import insert, select, text, update
from sqlalchemy.exc import DBAPIError
from tests.support.households import make_household

from broodshelf.app import create_app
from broodshelf.records.apart import EVERY, SETTING, column_of, enter, household_in_hand
from broodshelf.records.database import db, metadata, reading, writing
from broodshelf.records.tables import households, records
from broodshelf.settings import from_environment

EMPTY = {"fields": "{}", "stamps": "{}"}
BEFORE_THE_DOOR = {"claim_codes", "pairings", "attempts"}
"""Codes and tries of people who are in no household yet."""
THE_SERVERS = {"vendor_pauses", "nudger_state", "builds", "taken", "server_notes"}


def keys_of(table):
    """The columns of the primary key, of each unique constraint and of each unique index, in order."""
    yield [c.name for c in table.primary_key.columns]
    for constraint in table.constraints:
        if type(constraint).__name__ == "UniqueConstraint":
            yield [c.name for c in constraint.columns]
    for index in table.indexes:
        if index.unique:
            yield [c.name for c in index.columns]


def finds_a_household(key: list[str]) -> bool:
    """The hash of a secret says which household is meant; nobody can give two the same."""
    return len(key) == 1 and key[0].endswith("_hash")


def test_whatever_belongs_to_a_household_has_it_first_in_every_key():
    for table in metadata.sorted_tables:
        if table.name in BEFORE_THE_DOOR | THE_SERVERS:
            assert column_of(table) is None, table.name
            continue
        first = column_of(table)
        assert first is not None, table.name
        for key in keys_of(table):
            assert key[0] == first or finds_a_household(key), (table.name, key)


def test_what_joins_two_tables_of_a_household_joins_them_by_the_household_first():
    for table in metadata.sorted_tables:
        for constraint in table.foreign_key_constraints:
            there = [element.column for element in constraint.elements]
            assert constraint.column_keys[0] == "household_id", (table.name, constraint.name)
            assert there[0].name == column_of(there[0].table), (table.name, constraint.name)


@pytest.fixture
def served(tmp_path, templates):
    """The app as migrations make its database on PostgreSQL, pushed as the current one."""
    settings = {
        "BROODSHELF_DATA": str(tmp_path),
        "BROODSHELF_DATABASE_URL": templates.of_an_app("postgresql", tmp_path),
    }
    app = create_app(from_environment(settings))
    with app.app_context():
        yield app
        db.engine.dispose()


POLICIES = text(
    "SELECT c.relname, c.relrowsecurity, c.relforcerowsecurity, p.polname, p.polcmd,"
    " pg_get_expr(p.polqual, p.polrelid), pg_get_expr(p.polwithcheck, p.polrelid)"
    " FROM pg_class c LEFT JOIN pg_policy p ON p.polrelid = c.oid"
    " WHERE c.relkind = 'r' AND c.relnamespace = 'public'::regnamespace"
)


def test_every_such_table_is_secured_and_forced_by_the_migrations(served):
    with reading() as connection:
        found = {row[0]: tuple(row[1:]) for row in connection.execute(POLICIES)}
        role = connection.execute(
            text("SELECT rolsuper OR rolbypassrls FROM pg_roles WHERE rolname = current_user")
        ).scalar_one()

    assert role is False
    for table in metadata.sorted_tables:
        column = column_of(table)
        if column is None:
            assert found[table.name][:3] == (False, False, None), table.name
            continue
        secured, forced, name, command, sees, writes = found[table.name]
        assert (table.name, secured, forced, name, command) == (table.name, True, True, "one_household", "*")
        assert sees == writes
        assert f"current_setting('{SETTING}'" in sees
        assert column in sees


@pytest.fixture
def two(served):
    with writing() as connection:
        made = [make_household(connection) for _ in range(2)]
        connection.execute(
            insert(records),
            [
                {"household_id": h, "id": "same", "rev": 1, "kind": "note", "made_ms": 1, **EMPTY}
                for h in made
            ],
        )
    return made


def seen() -> set[str]:
    with reading() as connection:
        return set(connection.scalars(select(records.c.household_id)))


def test_a_request_sees_nothing_until_it_is_known_whose_it_is_and_then_one_household(served, two):
    mine, theirs = two
    with served.test_request_context("/api/sync"):
        nobody = seen()
        enter(mine)
        assert seen() == {mine}
        with writing() as connection:
            changed = connection.execute(update(records).values(kind="check")).rowcount
            there = connection.scalars(select(households.c.id)).all()

    assert nobody == set()
    assert changed == 1
    assert there == [mine]
    assert seen() == {mine, theirs}


def test_a_request_cannot_write_into_another_household(served, two):
    mine, theirs = two
    row = {"id": "x", "kind": "note", "rev": 2, "made_ms": 1, **EMPTY}
    with served.test_request_context("/api/sync"):
        enter(mine)
        with pytest.raises(DBAPIError, match="row-level security"), writing() as connection:
            connection.execute(insert(records).values(household_id=theirs, **row))


def test_no_pooled_connection_takes_a_household_along(served, two):
    with served.test_request_context("/api/sync"):
        enter(two[0])
        seen()
    with db.engine.connect() as connection:
        raw = connection.connection.dbapi_connection
        left = raw.execute(f"SELECT current_setting('{SETTING}', true)").fetchone()[0]
        hidden = raw.execute("SELECT count(*) FROM records").fetchone()[0]
        raw.rollback()

    assert left in (None, "")
    assert hidden == 0  # a statement outside our transactions sees nobody's rows


def test_the_nudger_and_the_operators_commands_work_for_all(served, two):
    assert household_in_hand() == EVERY
    assert seen() == set(two)
