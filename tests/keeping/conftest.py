"""A household's whole server on either engine, for the commands that keep it."""

from __future__ import annotations

import logging
from collections.abc import Iterator
from pathlib import Path

import pytest
from tests.keeping.shelves import server
from tests.support.house import House
from tests.support.templates import Templates


@pytest.fixture(params=["sqlite", "postgresql"])
def house(
    request: pytest.FixtureRequest, templates: Templates, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> Iterator[House]:
    """A house whose data folder, database and clock the commands of this test use, too."""
    url = templates.of_an_app(request.param, tmp_path / "data")
    logging.disable(logging.CRITICAL)
    with House(tmp_path / "data", url) as made:
        monkeypatch.setenv("BROODSHELF_DATA", str(made.settings.data))
        monkeypatch.setenv("BROODSHELF_DATABASE_URL", made.settings.database_url)
        for module in ("cli", "commands.household", "commands.household_list"):
            monkeypatch.setattr(f"broodshelf.{module}.system_clock", lambda: made.now_ms)
        yield made
    logging.disable(logging.NOTSET)


@pytest.fixture
def here(tmp_path: Path) -> Iterator[Path]:
    """The folder of a server of its own, on which nothing is."""
    with server(tmp_path, "here"):
        yield tmp_path
