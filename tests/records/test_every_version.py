"""A database of every version so far comes to the present schema with all that was in it, on both engines."""

from __future__ import annotations

from pathlib import Path

import pytest
from alembic import command
from alembic.autogenerate import compare_metadata
from alembic.migration import MigrationContext
from sqlalchemy import func, select
from tests.support.filled import fill_every_table, read_tables
from tests.support.templates import engine_of

from broodshelf import migrations
from broodshelf.records import database
from broodshelf.records.database import metadata
from broodshelf.records.whole import contents, erase, tables_of_households

VERSIONS = sorted(file.name[:4] for file in (Path(migrations.__file__).parent / "versions").glob("[0-9]*.py"))
HOUSEHOLDS = ("00000000-0000-7000-8000-00000000000a", "00000000-0000-7000-8000-00000000000b")


@pytest.fixture(params=["sqlite", "postgresql"])
def url(request, tmp_path):
    if request.param == "sqlite":
        return f"sqlite:///{tmp_path / 'old.sqlite3'}"
    return request.getfixturevalue("postgresql_cluster").new_database()


@pytest.mark.parametrize("version", VERSIONS)
def test_rows_of_two_households_come_through_and_stay_apart(url, version):
    with engine_of(url) as engine:
        command.upgrade(migrations.config(engine), version)
        with database.writing() as connection:
            old = read_tables(connection)
            for household_id in HOUSEHOLDS:
                fill_every_table(connection, old, household_id, f"Yarrow-{household_id[-1]}")
        migrations.upgrade(engine)
        with database.writing() as connection:
            assert compare_metadata(MigrationContext.configure(connection), metadata) == []
            if engine.dialect.name == "sqlite":
                assert connection.exec_driver_sql("PRAGMA foreign_key_check").all() == []
            for table in old.sorted_tables:
                if table.name != "alembic_version":
                    there = connection.scalar(select(func.count()).select_from(metadata.tables[table.name]))
                    assert (table.name, there) == (table.name, 2)
            before = {h: contents(connection, tables_of_households(), h) for h in HOUSEHOLDS}
            for name, content in before.items():
                assert {t for t, c in content.items() if c.count} == {
                    t.name for t in tables_of_households() if t.name in old.tables
                }, name
            erase(connection, HOUSEHOLDS[0])
            assert contents(connection, tables_of_households(), HOUSEHOLDS[1]) == before[HOUSEHOLDS[1]]
