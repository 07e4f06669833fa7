"""Fixtures that every room's tests share."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from flask import Flask
from hypothesis import settings
from playwright.sync_api import Browser, Playwright, expect, sync_playwright
from tests.support.browser_push import BrowserPush
from tests.support.chromium import ONE_RENDERER, launched
from tests.support.firefox import Firefox, push_preferences
from tests.support.households import make_household
from tests.support.once_a_run import folder_of_the_run
from tests.support.one_compiler import one_compiler
from tests.support.one_shell import one_shell
from tests.support.postgresql import Cluster, shared_cluster
from tests.support.templates import Templates

import broodshelf.records.tables
from broodshelf.records import database

__all__ = ["broodshelf"]

settings.register_profile(
    "untimed", deadline=None
)  # how long a busy machine takes is no matter of right or wrong
settings.load_profile("untimed")


@pytest.fixture(scope="session")
def run_folder(tmp_path_factory: pytest.TempPathFactory, request: pytest.FixtureRequest) -> Path:
    """The folder that all workers of the run share."""
    return folder_of_the_run(tmp_path_factory, request.config)


@pytest.fixture(scope="session", autouse=True)
def apps_share_what_is_costly() -> Iterator[None]:
    """The apps of a worker share the phone's files and what was compiled of their statements."""
    with one_shell(), one_compiler():
        yield


@pytest.fixture(scope="session")
def postgresql_cluster(run_folder: Path) -> Iterator[Cluster]:
    """A private PostgreSQL server for the whole test run."""
    with shared_cluster(run_folder) as cluster:
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
    with launched(playwright, more=(ONE_RENDERER,)) as browser:
        yield browser


@pytest.fixture(scope="session")
def push_of_firefox() -> Iterator[BrowserPush]:
    """The push service that the worker's Firefox listens to."""
    with BrowserPush() as made:
        yield made


@pytest.fixture(scope="session")
def firefox(push_of_firefox: BrowserPush) -> Iterator[Firefox]:
    """One Firefox for all tests of a worker."""
    with Firefox(push_preferences(push_of_firefox.port)) as browser:
        yield browser


@pytest.fixture(scope="session")
def templates(request: pytest.FixtureRequest, run_folder: Path) -> Templates:
    """Databases that are made once and copied for each test."""
    return Templates(run_folder, lambda: request.getfixturevalue("postgresql_cluster"))


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
