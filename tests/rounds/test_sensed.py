"""An alarm of a sensor is told once, at the right hour, and ends by itself; nothing else is written for it."""

from __future__ import annotations

import datetime as dt

import pytest
from sqlalchemy import select
from tests.support.households import NOON_MS

from broodshelf.model.tasks import SENSED
from broodshelf.records import database
from broodshelf.records.ids import plan_id, uuid7
from broodshelf.records.store import Ledger, read_record
from broodshelf.rounds.recompute import stale, stale_households, touched
from broodshelf.rounds.sensed import mark_overtaken, overtaken_households
from broodshelf.rounds.tables import occurrences
from broodshelf.sensing.intake import HOUR_MS, take
from broodshelf.sensing.sensors import make_sensor, sensors_of

MORNING_MS = NOON_MS - 6 * HOUR_MS
NIGHT_MS = NOON_MS + 11 * HOUR_MS


class Shelf:
    """A household with a Lasius in a cabinet and a sensor beside it; its clock goes by whole hours."""

    def __init__(self, household_id: str, *, species_code: str = "lasius_niger") -> None:
        self.household_id, self.colony_id, self.place_id = household_id, uuid7(NOON_MS), uuid7(NOON_MS + 1)
        with database.writing() as connection:
            ledger = Ledger(connection, household_id)
            quiet = {"quiet_from": "22:00", "quiet_to": "07:00"}
            home = {"name": "Shelf", "zone": "UTC", "care_hours": ["08:00"], **quiet}
            ledger.put(household_id, "household", home, now_ms=NOON_MS)
            ledger.put(self.place_id, "place", {"name": "Cabinet", "place_type": "cabinet"}, now_ms=NOON_MS)
            colony = {
                "name": "Amber",
                "species_code": species_code,
                "place_id": self.place_id,
                "stage": "growing",
            }
            ledger.put(self.colony_id, "colony", colony, now_ms=NOON_MS)
            touched(ledger, {self.colony_id}, MORNING_MS)
            ledger.flush()
            make_sensor(connection, household_id, {"place_id": self.place_id, "name": "Board"}, NOON_MS)

    def measure(self, temperature: float, now_ms: int) -> None:
        with database.writing() as connection:
            take(
                connection,
                sensors_of(connection, self.household_id)[0],
                [{"temperature": temperature}],
                now_ms,
            )

    def look(self, now_ms: int) -> bool:
        """Look as the nudger does; say whether the plan was made anew."""
        with database.writing() as connection:
            assert overtaken_households(connection, now_ms) in ([], [self.household_id])
            mark_overtaken(connection, self.household_id, now_ms)
            is_stale = self.household_id in stale_households(connection, now_ms, 10)
            ledger = Ledger(connection, self.household_id)
            stale(ledger, now_ms)
            ledger.flush()
        return is_stale

    def alarms(self) -> list[str]:
        with database.reading() as connection:
            plan = read_record(connection, self.household_id, plan_id(self.colony_id))
        assert plan is not None
        return [task["key"] for task in plan.values["tasks"] if task["what"] in SENSED]

    def due(self) -> dict[str, int]:
        """Return when each alarm is to be told."""
        o = occurrences.c
        with database.reading() as connection:
            rows = connection.execute(select(o.task_what, o.at_ms).where(o.household_id == self.household_id))
            return {row.task_what: row.at_ms for row in rows if row.task_what in SENSED}


def test_a_summer_day_is_one_alarm_from_its_first_hot_hour_to_its_first_cool_one(bare_app, household_id):
    """Over 30 °C is too hot for Lasius niger (catalogue/temperatures.toml; Sociobiology 2015)."""
    shelf = Shelf(household_id)
    day = [24.0, 25.5, 27.0, 32.0, 34.0, 33.0, 28.0, 25.0]
    found = []
    for number, temperature in enumerate(day):
        now_ms = MORNING_MS + number * HOUR_MS + 60_000
        shelf.measure(temperature, now_ms)
        shelf.look(now_ms)
        found.append(shelf.alarms())

    began_ms = MORNING_MS + 3 * HOUR_MS
    the_alarm = [f"overheating:sensor-{began_ms}"]
    assert found == [[], [], [], the_alarm, the_alarm, the_alarm, [], []]


def test_hours_that_change_nothing_write_nothing(bare_app, household_id):
    shelf = Shelf(household_id)
    shelf.measure(24.0, MORNING_MS)
    shelf.look(MORNING_MS)
    with database.reading() as connection:
        before = read_record(connection, household_id, plan_id(shelf.colony_id))

    for hour in range(1, 5):
        shelf.measure(24.0 + hour, MORNING_MS + hour * HOUR_MS)
        assert not shelf.look(MORNING_MS + hour * HOUR_MS)

    with database.reading() as connection:
        assert read_record(connection, household_id, plan_id(shelf.colony_id)) == before


def test_an_alarm_whose_sensor_falls_silent_ends(bare_app, household_id):
    shelf = Shelf(household_id)
    shelf.measure(34.0, MORNING_MS)
    shelf.look(MORNING_MS)
    assert len(shelf.alarms()) == 1

    later_ms = MORNING_MS + 3 * HOUR_MS + HOUR_MS // 2
    shelf.look(later_ms)

    assert shelf.alarms() == []
    assert dt.datetime.fromtimestamp(later_ms / 1000, dt.UTC).hour == 9


@pytest.mark.parametrize(
    ("measured", "told_at"),
    [
        ({"overheating": 34.0}, NIGHT_MS + HOUR_MS),
        ({"freezing": -1.0}, NIGHT_MS + HOUR_MS),
        ({"rising_fast": 28.0}, NIGHT_MS + 8 * HOUR_MS),
        ({"too_cold": 3.0}, NIGHT_MS + 8 * HOUR_MS),
    ],
)
def test_only_what_kills_by_the_morning_is_told_in_the_quiet_hours(bare_app, household_id, measured, told_at):
    """It is 23:00 in a household that is quiet from 22:00 to 7:00."""
    ((what, temperature),) = measured.items()
    shelf = Shelf(household_id, species_code="camponotus_tropical" if what == "too_cold" else "lasius_niger")
    shelf.measure(25.0, NIGHT_MS)
    shelf.look(NIGHT_MS)
    shelf.measure(temperature, NIGHT_MS + HOUR_MS)
    shelf.look(NIGHT_MS + HOUR_MS)

    assert shelf.due() == {what: told_at}
