"""A household with a place, on both databases, without phones."""

from __future__ import annotations

from typing import Any

import pytest
from sqlalchemy import Connection, select
from tests.support.households import NOON_MS

from broodshelf.records import database
from broodshelf.records.ids import uuid7
from broodshelf.records.store import Ledger
from broodshelf.sensing.sensors import Sensor, make_sensor, sensors_of
from broodshelf.sensing.tables import place_hours


def make_place(connection: Connection, household_id: str, name: str = "Cabinet") -> str:
    ledger = Ledger(connection, household_id)
    place = ledger.put(uuid7(NOON_MS), "place", {"name": name}, now_ms=NOON_MS)
    ledger.flush()
    return place.id


def hours_of(
    connection: Connection, household_id: str, place_id: str, from_ms: int, until_ms: int
) -> list[Any]:
    """The hours of a place as they are stored, oldest first, as columns by name."""
    h = place_hours.c
    query = select(place_hours).where(
        h.household_id == household_id, h.place_id == place_id, h.hour_ms >= from_ms, h.hour_ms < until_ms
    )
    return [dict(row) for row in connection.execute(query.order_by(h.hour_ms)).mappings()]


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
