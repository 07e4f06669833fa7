"""Two households, made once for all tests of the guard."""

from __future__ import annotations

import logging
from collections.abc import Iterator

import pytest
from tests.support.templates import Templates
from tests.support.two_houses import TwoHouses


@pytest.fixture(scope="session")
def houses(tmp_path_factory: pytest.TempPathFactory, templates: Templates) -> Iterator[TwoHouses]:
    folder = tmp_path_factory.mktemp("houses") / "data"
    with TwoHouses(folder, templates.of_an_app("sqlite", folder)) as made:
        yield made


@pytest.fixture(autouse=True)
def quiet() -> Iterator[None]:
    """No log lines of thousands of requests."""
    logging.disable(logging.CRITICAL)
    yield
    logging.disable(logging.NOTSET)
