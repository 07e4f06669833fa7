"""Model phones of one household; and a house of each engine for the proof of sync."""

from __future__ import annotations

import logging
from collections.abc import Iterator

import pytest
from tests.support.house import House
from tests.support.households import Requester
from tests.support.templates import Templates

from broodshelf.sync import envelope


@pytest.fixture
def phone(household_id: str) -> Requester:
    return Requester(household_id)


@pytest.fixture
def other(household_id: str) -> Requester:
    return Requester(household_id)


@pytest.fixture(scope="module")
def two_schemas() -> Iterator[None]:
    """A server that speaks the next schema and still the present one."""
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(envelope, "SCHEMA", envelope.SCHEMA + 1)
        yield


@pytest.fixture(scope="module")
def sqlite_house(
    tmp_path_factory: pytest.TempPathFactory, templates: Templates, two_schemas: None
) -> Iterator[House]:
    folder = tmp_path_factory.mktemp("sqlite") / "data"
    with quiet(), House(folder, templates.of_an_app("sqlite", folder)) as made:
        yield made


@pytest.fixture
def postgresql_house(
    tmp_path_factory: pytest.TempPathFactory, templates: Templates, two_schemas: None
) -> Iterator[House]:
    folder = tmp_path_factory.mktemp("postgresql") / "data"
    with quiet(), House(folder, templates.of_an_app("postgresql", folder)) as made:
        yield made


class quiet:  # noqa: N801 - read as words
    """No log lines of thousands of requests."""

    def __enter__(self) -> None:
        logging.disable(logging.CRITICAL)

    def __exit__(self, *_: object) -> None:
        logging.disable(logging.NOTSET)
