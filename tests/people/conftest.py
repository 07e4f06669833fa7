"""The whole app on both databases, and browsers reduced to their HTTP."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from flask import Flask
from tests.nudges.support import LOOPBACK, Notebook
from tests.support.templates import Templates
from tests.web.conftest import Browser, Clock

from broodshelf.app import create_app
from broodshelf.records.database import db
from broodshelf.settings import from_environment


@pytest.fixture
def clock() -> Clock:
    return Clock()


@pytest.fixture
def notebook() -> Notebook:
    return Notebook()


@pytest.fixture(params=["sqlite", "postgresql"])
def app(
    request: pytest.FixtureRequest, templates: Templates, tmp_path: Path, clock: Clock, notebook: Notebook
) -> Iterator[Flask]:
    url = templates.of_an_app(request.param, tmp_path)
    settings = {"BROODSHELF_DATA": str(tmp_path), "BROODSHELF_DATABASE_URL": url}
    made = create_app(from_environment(settings), clock, LOOPBACK, notebook)
    yield made
    with made.app_context():
        db.engine.dispose()


@pytest.fixture
def browser(app: Flask, clock: Clock):
    """Make browsers: ``browser()`` is a new one, signed in nowhere."""
    return lambda address="127.0.0.1": Browser(app, clock, address)


@pytest.fixture
def keeper(browser) -> Browser:
    return browser().claim()
