"""A served household behind the fault proxy, and Chromium."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Browser, BrowserContext, Page
from tests.faults.lab import Shelf, behind_proxy, open_tab
from tests.support.server import Server
from tests.support.templates import Templates


@pytest.fixture
def shelf(tmp_path: Path, templates: Templates) -> Iterator[Shelf]:
    templates.of_an_app("sqlite", tmp_path / "data")
    with behind_proxy(Server(tmp_path / "data")) as made:
        yield made


@pytest.fixture
def context(chromium: Browser) -> Iterator[BrowserContext]:
    made = chromium.new_context()
    made.set_default_timeout(30_000)
    yield made
    made.close()


@pytest.fixture
def tab(context: BrowserContext, shelf: Shelf) -> Callable[[], Page]:
    """Open tabs of the one phone."""
    return lambda: open_tab(context, shelf)
