"""An invented fortnight of a sensor, told by the nudger: heat once, silence once, nonsense once, each at its hour."""

from __future__ import annotations

import pytest
from tests.nudges.support import Shelf

from broodshelf.model.gauges import HOUR_MS
from broodshelf.records.database import writing
from broodshelf.sensing.intake import take
from broodshelf.sensing.sensors import make_sensor, sensors_of

MINUTE_MS = 60_000


class Cabinet:
    """A place with a sensor and a Lasius, in which hours pass as told."""

    def __init__(self, shelf: Shelf) -> None:
        self.shelf = shelf
        self.mira = shelf.person("Mira")
        self.place_id = shelf.log(self.mira, "place", {"name": "Cabinet", "place_type": "cabinet"})
        colony = shelf.colony(self.mira, protein_days=90)
        shelf.log(self.mira, "colony", {"place_id": self.place_id}, colony)
        with writing() as connection:
            make_sensor(connection, shelf.id, {"place_id": self.place_id, "name": "Board"}, shelf.now_ms)

    def pass_hours(self, *temperatures: float | None) -> list[tuple[str, str]]:
        """Let an hour pass for each temperature; None: the sensor says nothing. Return what was told, with its time."""
        told = []
        for temperature in temperatures:
            self.shelf.now_ms += HOUR_MS
            if temperature is not None:
                with writing() as connection:
                    sensor = sensors_of(connection, self.shelf.id)[0]
                    take(connection, sensor, [{"temperature": temperature}], self.shelf.now_ms)
            told += [(self.clock, title) for title in self.shelf.tick()]
        return told

    @property
    def clock(self) -> str:
        minutes = self.shelf.now_ms // MINUTE_MS % 1440
        return f"{minutes // 60:02}:{minutes % 60:02}"


@pytest.fixture
def cabinet(shelf: Shelf) -> Cabinet:
    shelf.at("2026-07-01T05:00")
    made = Cabinet(shelf)
    made.pass_hours(*[24.0] * 7)  # until noon
    return made


def test_a_summer_day_of_34_degrees_is_told_once_and_is_over_by_itself(cabinet: Cabinet):
    """Lasius niger: too hot over 30 °C (catalogue/temperatures.toml; Sociobiology 2015)."""
    assert cabinet.pass_hours(25, 26.5, 28, 29.5) == []
    told = cabinet.pass_hours(31.4, 33, 34, 33, 31)
    assert told == [("17:00", "Cool it down at once: Amber")]
    assert cabinet.pass_hours(28, 26, 24, 24, 24) == []


def test_the_sun_on_the_cabinet_is_told_before_it_is_too_hot_in_it(cabinet: Cabinet):
    assert cabinet.pass_hours(27, 30, 31) == [
        ("13:00", "See why it warms up so fast: Amber"),
        ("15:00", "Cool it down at once: Amber"),
    ]


@pytest.mark.long
def test_heat_is_told_at_night_and_a_heater_in_the_morning(cabinet: Cabinet):
    """Quiet hours of this shelf are 21:30 to 07:30. It knows its own days after five of them."""
    cabinet.pass_hours(*[24.0] * (24 * 6 + 11))  # 23:00
    assert cabinet.pass_hours(31) == [("00:00", "Cool it down at once: Amber")]
    cabinet.pass_hours(*[24.0] * 24)  # and a night later
    told = cabinet.pass_hours(*[19.0] * 9)
    assert told == [("08:00", "Look whether the heater has failed: Amber")]


def test_a_sensor_that_dies_is_told_after_six_hours_and_not_again_until_it_spoke(cabinet: Cabinet):
    assert cabinet.pass_hours(*[None] * 5) == []
    assert cabinet.pass_hours(*[None] * 12) == [("18:00", "Board says nothing any more")]
    assert cabinet.pass_hours(24, 24) == []
    told = cabinet.pass_hours(*[None] * 8)
    assert [title for _, title in told] == ["Board says nothing any more"]


def test_what_breaks_at_night_is_told_in_the_morning(cabinet: Cabinet):
    """Quiet hours of this shelf end at 07:30."""
    cabinet.pass_hours(*[24.0] * 10)  # 22:00
    told = cabinet.pass_hours(*[-127.0] * 12)

    assert told == [("08:00", "Board measures nonsense")]


def test_the_heater_that_fails_in_winter_is_told_for_a_tropical_colony_only(shelf: Shelf):
    shelf.at("2026-01-10T05:00")
    cabinet = Cabinet(shelf)
    tropical = shelf.colony(cabinet.mira, "Ember", protein_days=90)
    shelf.log(cabinet.mira, "colony", {"species_code": "acromyrmex", "place_id": cabinet.place_id}, tropical)
    cabinet.pass_hours(*[25.0] * 8)

    told = cabinet.pass_hours(21, 17, 14, 12, 11)

    assert [each for each in told if "warmer" in each[1]] == [("16:00", "Bring it somewhere warmer: Ember")]
