"""Fixtures that every room's tests share."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from flask import Flask
from hypothesis import settings
from playwright.sync_api import Browser, Playwright, expect, sync_playwright
from tests.support.chromium import launched
from tests.support.households import make_household
from tests.support.postgresql import Cluster
from tests.support.templates import Templates

import broodshelf.records.tables
from broodshelf.records import database

__all__ = ["broodshelf"]

settings.register_profile(
    "untimed", deadline=None
)  # how long a busy machine takes is no matter of right or wrong
settings.load_profile("untimed")


@pytest.hookimpl(tryfirst=True)  # before what is left out is
def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """Mark what runs once more, on the second database."""
    for item in items:
        if "postgresql" in item.name.rpartition("[")[2].rstrip("]").split("-"):
            item.add_marker(pytest.mark.again)


@pytest.fixture(scope="session")
def postgresql_cluster(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Cluster]:
    """A private PostgreSQL server for the whole test run."""
    with Cluster(tmp_path_factory.mktemp("postgresql")) as cluster:
        yield cluster


@pytest.fixture(scope="session")
def playwright() -> Iterator[Playwright]:
    """Playwright, started when a test first wants a browser."""
    expect.set_options(timeout=15_000)
    with sync_playwright() as made:
        yield made


@pytest.fixture(scope="session")
def chromium(playwright: Playwright) -> Iterator[Browser]:
    """One Chromium for the whole test run; each test has contexts of its own, with their own storage."""
    with launched(playwright) as browser:
        yield browser


@pytest.fixture(scope="session")
def templates(request: pytest.FixtureRequest, tmp_path_factory: pytest.TempPathFactory) -> Templates:
    """Databases that are made once and copied for each test."""
    return Templates(
        tmp_path_factory.mktemp("templates"), lambda: request.getfixturevalue("postgresql_cluster")
    )


@pytest.fixture(params=["sqlite", "postgresql"])
def bare_app(request: pytest.FixtureRequest, templates: Templates, tmp_path) -> Iterator[Flask]:
    """An app that has a database and nothing else, pushed as the current one."""
    app = Flask("bare")
    app.config["SQLALCHEMY_DATABASE_URI"] = templates.with_tables(request.param, tmp_path)
    database.prepare(app)
    with app.app_context():
        yield app
        database.db.engine.dispose()


@pytest.fixture
def household_id(bare_app: Flask) -> str:
    """The id of an empty household in ``bare_app``'s database."""
    with database.writing() as connection:
        return make_household(connection)
