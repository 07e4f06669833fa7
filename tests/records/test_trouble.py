"""Errors of the store are told from errors of what was to be stored, on both databases."""

from __future__ import annotations

import errno
import sqlite3

import pytest
from sqlalchemy import text
from sqlalchemy.exc import DBAPIError, SQLAlchemyError

from broodshelf.records import database
from broodshelf.records.database import db, is_about_one_row, reading, writing, writing_soon
from broodshelf.records.trouble import trouble_of


def code_of(statement: str) -> str | None:
    with pytest.raises(DBAPIError) as caught, writing() as connection:
        connection.execute(text(statement))
    found = trouble_of(caught.value)
    return None if found is None else found.problem_code


def raising(state: str) -> str:
    return f"DO $$ BEGIN RAISE EXCEPTION USING ERRCODE = '{state}', MESSAGE = 'said by the test'; END $$"


def test_a_missing_table_is_damage_and_a_bad_statement_is_none(bare_app):
    assert code_of("SELECT * FROM a_table_that_was_lost") == "database_damaged"
    assert code_of("SELEKT 1") is None


@pytest.mark.parametrize(
    ("state", "code"),
    [
        ("53100", "disk_full"),
        ("53200", "database_locked"),
        ("55P03", "database_locked"),
        ("40P01", "database_locked"),
        ("40001", "database_locked"),
        ("57014", "database_locked"),
        ("25006", "database_read_only"),
        ("XX001", "database_damaged"),
        ("58030", "database_away"),
        ("57P01", "database_away"),
        ("08006", "database_away"),
        ("23505", None),
        ("22003", None),
    ],
)
def test_what_postgresql_says_of_itself_is_understood(bare_app, state, code):
    if db.engine.dialect.name == "sqlite":
        assert trouble_of(sqlite3.OperationalError("nothing known")) is None
        return
    assert code_of(raising(state)) == code


def test_a_connection_that_the_database_ended_is_one_that_is_away(bare_app):
    if db.engine.dialect.name == "sqlite":
        db.engine.dispose()
        assert trouble_of(OSError(errno.EIO, "a broken disk")).problem_code == "database_away"
        return
    with pytest.raises(DBAPIError) as caught, reading() as mine:
        own = mine.execute(text("SELECT pg_backend_pid()")).scalar_one()
        with writing() as other:
            other.execute(text("SELECT pg_terminate_backend(:pid)"), {"pid": own})
        mine.execute(text("SELECT 1"))

    assert trouble_of(caught.value).problem_code == "database_away"
    with reading() as again:
        assert again.execute(text("SELECT 1")).scalar_one() == 1


def test_who_is_in_a_hurry_does_not_wait_for_a_lock(bare_app, household_id, monkeypatch):
    statement = text("UPDATE households SET rev = rev WHERE id = :id")
    engine = db.engine
    with engine.connect().execution_options(writes=True) as holder, holder.begin():
        holder.execute(statement, {"id": household_id})
        with pytest.raises(SQLAlchemyError) as caught, writing_soon(50) as hurried:
            hurried.execute(statement, {"id": household_id})

    assert trouble_of(caught.value).problem_code == "database_locked"
    with writing() as connection:  # the patience of the others is as before
        if engine.dialect.name == "sqlite":
            wait_ms = connection.exec_driver_sql("PRAGMA busy_timeout").scalar_one()
            assert wait_ms == database.SQLITE_BUSY_TIMEOUT_MS


def test_troubles_of_the_store_are_no_fault_of_one_row(bare_app):
    assert not is_about_one_row(OSError(errno.ENOSPC, "full"))
    with pytest.raises(DBAPIError) as caught, reading() as connection:
        connection.execute(text("SELECT * FROM a_table_that_was_lost"))
    assert not is_about_one_row(caught.value)
    assert is_about_one_row(ValueError("a date beyond the calendar"))
