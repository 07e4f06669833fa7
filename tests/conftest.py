"""Fixtures that every room's tests share."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from flask import Flask
from tests.support.households import make_household, make_tables
from tests.support.postgresql import Cluster

import broodshelf.records.tables
from broodshelf.records import database

__all__ = ["broodshelf"]


@pytest.fixture(scope="session")
def postgresql_cluster(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Cluster]:
    """A private PostgreSQL server for the whole test run."""
    with Cluster(tmp_path_factory.mktemp("postgresql")) as cluster:
        yield cluster


@pytest.fixture(params=["sqlite", "postgresql"])
def bare_app(request: pytest.FixtureRequest, tmp_path) -> Iterator[Flask]:
    """An app that has a database and nothing else, pushed as the current one."""
    app = Flask("bare")
    if request.param == "sqlite":
        app.config["SQLALCHEMY_DATABASE_URI"] = f"sqlite:///{tmp_path / 'shelf.sqlite3'}"
    else:
        cluster: Cluster = request.getfixturevalue("postgresql_cluster")
        app.config["SQLALCHEMY_DATABASE_URI"] = cluster.new_database()
    database.prepare(app)
    with app.app_context():
        make_tables(database.db.engine)
        yield app
        database.db.engine.dispose()


@pytest.fixture
def household_id(bare_app: Flask) -> str:
    """The id of an empty household in ``bare_app``'s database."""
    with database.writing() as connection:
        return make_household(connection)
