"""A household with a place, on both databases, without phones."""

from __future__ import annotations

import pytest
from sqlalchemy import Connection
from tests.support.households import NOON_MS

from broodshelf.records import database
from broodshelf.records.ids import uuid7
from broodshelf.records.store import Ledger
from broodshelf.sensing.sensors import Sensor, make_sensor, sensors_of


def make_place(connection: Connection, household_id: str, name: str = "Cabinet") -> str:
    ledger = Ledger(connection, household_id)
    place = ledger.put(uuid7(NOON_MS), "place", {"name": name}, now_ms=NOON_MS)
    ledger.flush()
    return place.id


@pytest.fixture
def place_id(household_id: str) -> str:
    with database.writing() as connection:
        return make_place(connection, household_id)


@pytest.fixture
def sensor(household_id: str, place_id: str) -> Sensor:
    with database.writing() as connection:
        make_sensor(
            connection, household_id, {"place_id": place_id, "name": "On the board", "unit": "C"}, NOON_MS
        )
        return sensors_of(connection, household_id)[0]
