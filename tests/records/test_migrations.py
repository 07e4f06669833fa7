"""The migrations lead to the tables that the code declares, on both databases."""

from __future__ import annotations

import pytest
from alembic.autogenerate import compare_metadata
from alembic.migration import MigrationContext
from flask import Flask

from broodshelf import migrations
from broodshelf.records import database


@pytest.mark.parametrize("kind", ["sqlite", "postgresql"])
def test_migrations_and_tables_agree(kind, tmp_path, request):
    app = Flask("bare")
    app.config["SQLALCHEMY_DATABASE_URI"] = (
        f"sqlite:///{tmp_path / 'm.sqlite3'}"
        if kind == "sqlite"
        else request.getfixturevalue("postgresql_cluster").new_database()
    )
    database.prepare(app)
    with app.app_context():
        migrations.upgrade(database.db.engine)
        migrations.upgrade(database.db.engine)  # a second start changes nothing
        with database.reading() as connection:
            assert compare_metadata(MigrationContext.configure(connection), database.metadata) == []
        database.db.engine.dispose()
