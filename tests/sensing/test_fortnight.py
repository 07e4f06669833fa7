"""An invented fortnight of a sensor behind a real broker: what fails is told once each, and plans go by what was."""

from __future__ import annotations

import datetime as dt
import math
import time
from collections.abc import Iterator
from pathlib import Path

import pytest
from flask import Flask
from tests.nudges.support import Shelf, ms
from tests.sensing.conftest import hours_of
from tests.support.broker import READER, MqttBroker, MqttSensor

from broodshelf.records import database
from broodshelf.records.ids import plan_id
from broodshelf.records.store import read_record
from broodshelf.sensing import mqtt
from broodshelf.sensing.intake import HOUR_MS
from broodshelf.sensing.mqtt import Listener
from broodshelf.sensing.sensors import make_sensor, sensors_of
from broodshelf.settings import BrokerSettings

TOPIC = "shelf/cabinet"
FIRST_DAY = "2026-07-01"
HOT_DAY = [25, 26.5, 28, 29.5, 31.2, 33, 34, 34, 33, 31.5, 29, 27]
"""From half past nine on; over 30 °C is too hot for Lasius niger (catalogue/temperatures.toml; Sociobiology 2015)."""


def weather(day: int, hour: int) -> float | None:
    """A heated cabinet. Its heater fails on the 7th from noon to ten, the 9th is hot, the sensor dies on the 11th."""
    if day == 7 and 12 <= hour < 22:
        return 19.0
    if day == 9 and 9 <= hour < 9 + len(HOT_DAY):
        return HOT_DAY[hour - 9]
    if (day == 11 and hour >= 15) or (day == 12 and hour < 10):
        return None
    return 24 + 2 * math.sin(2 * math.pi * (hour - 9) / 24)


class Fortnight:
    """A cabinet with a colony and a sensor, and a cupboard like it that nobody measures; hours pass as told."""

    def __init__(self, shelf: Shelf, sensor: MqttSensor) -> None:
        self.shelf, self._sensor = shelf, sensor
        mira = shelf.person("Mira")
        same = {"place_type": "cabinet", "day_temp_c": 22.0, "night_temp_c": 20.0}
        self.place_id = shelf.log(mira, "place", {"name": "Cabinet", **same})
        cupboard = shelf.log(mira, "place", {"name": "Cupboard", **same})
        self.measured, self.assumed = (
            shelf.colony(mira, name, protein_days=90) for name in ("Amber", "Umber")
        )
        for colony, place in ((self.measured, self.place_id), (self.assumed, cupboard)):
            shelf.log(mira, "colony", {"place_id": place}, colony)
            shelf.log(mira, "count", {"colony_id": colony, "workers": 40, "eggs": "some", "larvae": "some"})
        with database.writing() as connection:
            wish = {"place_id": self.place_id, "name": "Board", "broker": "home", "topic": TOPIC}
            make_sensor(connection, shelf.id, wish, shelf.now_ms)

    def pass_hour(self, temperature: float | None) -> list[str]:
        """Say what is measured through the broker, wait until it is stored, and let the nudger look."""
        if temperature is not None:
            deadline = time.monotonic() + 30
            while (
                not self._is_heard()
            ):  # only the first needs more than one: the topic is not listened to at once
                assert time.monotonic() < deadline, "the reading was not stored within 30 s"
                self._sensor.say(TOPIC, f"{temperature:.2f}")
                self._until_heard()
        return self.shelf.tick()

    def _is_heard(self) -> bool:
        with database.reading() as connection:
            hour_ms = self.shelf.now_ms - self.shelf.now_ms % HOUR_MS
            hours = hours_of(connection, self.shelf.id, self.place_id, hour_ms, hour_ms + HOUR_MS)
        return bool(hours)

    def _until_heard(self) -> None:
        for _ in range(50):
            if self._is_heard():
                return
            time.sleep(0.01)

    def plan(self, colony_id: str) -> dict:
        with database.reading() as connection:
            plan = read_record(connection, self.shelf.id, plan_id(colony_id))
        assert plan is not None
        return dict(plan.values)


@pytest.fixture
def fortnight(bare_app: Flask, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Fortnight]:
    monkeypatch.setattr(mqtt, "LOOK_S", 0.05)
    shelf = Shelf(bare_app, ms(f"{FIRST_DAY}T00:30"), tmp_path)
    with MqttBroker(tmp_path / "broker") as broker:
        sensor = MqttSensor(broker)
        line = BrokerSettings("home", "127.0.0.1", broker.port, True, *READER, str(broker.ca))
        stop = Listener(bare_app, (line,), lambda: shelf.now_ms).start()
        try:
            yield Fortnight(shelf, sensor)
        finally:
            stop()
            sensor.hang_up()
            shelf.nudger.close()


# one database: what differs between the two is tested with single readings
@pytest.mark.long
@pytest.mark.parametrize("bare_app", ["sqlite"], indirect=True)
def test_each_alarm_of_a_fortnight_comes_once_at_its_hour_and_the_plans_know_what_was(fortnight: Fortnight):
    told = []
    for hour in range(14 * 24):
        day, of_day = divmod(hour, 24)
        fortnight.shelf.now_ms = ms(f"{FIRST_DAY}T00:30") + hour * HOUR_MS
        at = dt.datetime.fromtimestamp(fortnight.shelf.now_ms / 1000, dt.UTC)
        told += [(f"{at:%d %H:%M}", title) for title in fortnight.pass_hour(weather(day + 1, of_day))]

    # the heater is out from noon on the 7th: four hours of it, then the next care hour; six silent hours on the 11th
    assert [each for each in told if "Umber" not in each[1]] == [
        ("07 18:30", "Look whether the heater has failed: Amber"),
        ("09 13:30", "Cool it down at once: Amber"),
        ("11 20:30", "Board says nothing any more"),
    ]
    with database.reading() as connection:
        assert sensors_of(connection, fortnight.shelf.id)[0].topic == TOPIC
    measured, assumed = fortnight.plan(fortnight.measured), fortnight.plan(fortnight.assumed)
    water, water_assumed = ({g["need"]: g for g in plan["gauges"]}["water"] for plan in (measured, assumed))
    # the cabinet was 24 °C on average instead of the 21 that were set: its water dries faster, its brood grows sooner
    assert water["rate_per_day"] > water_assumed["rate_per_day"] * 1.1
    assert measured["census"]["hatching"] != assumed["census"]["hatching"]
