"""Two households, made once for all tests of the guard."""

from __future__ import annotations

import logging
from collections.abc import Iterator

import pytest
from tests.support.two_houses import TwoHouses


@pytest.fixture(scope="package")
def houses(tmp_path_factory: pytest.TempPathFactory) -> Iterator[TwoHouses]:
    logging.disable(logging.CRITICAL)  # no log lines of thousands of requests
    with TwoHouses(tmp_path_factory.mktemp("houses") / "data") as made:
        yield made
    logging.disable(logging.NOTSET)
