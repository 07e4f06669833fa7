"""Sensors behind a real broker (mosquitto) with TLS and a password: heard, heard again after it was away, told away."""

from __future__ import annotations

import threading
import time
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from flask import Flask
from tests.sensing.conftest import hours_of, make_place
from tests.support.broker import READER, MqttBroker, MqttSensor
from tests.support.households import NOON_MS, make_household, make_tables

from broodshelf.records import database
from broodshelf.sensing import mqtt
from broodshelf.sensing.mqtt import Listener, may_listen
from broodshelf.sensing.sensors import Sensor, make_sensor, sensors_of
from broodshelf.settings import BrokerSettings


class House:
    """A household on SQLite with sensors behind a broker, looked at from other threads."""

    def __init__(self, app: Flask) -> None:
        self.app = app
        self.changed = threading.Event()
        with app.app_context(), database.writing() as connection:
            self.household_id = make_household(connection)
            self.place_id = make_place(connection, self.household_id)

    def add(self, topic: str, **wish: str) -> None:
        with self.app.app_context(), database.writing() as connection:
            whole = {
                "place_id": self.place_id,
                "name": topic,
                "unit": "C",
                "broker": "home",
                "topic": topic,
                **wish,
            }
            make_sensor(connection, self.household_id, whole, NOON_MS)

    def sensor(self, topic: str) -> Sensor:
        with self.app.app_context(), database.reading() as connection:
            return next(one for one in sensors_of(connection, self.household_id) if one.topic == topic)

    def hour(self) -> dict[str, float]:
        with self.app.app_context(), database.reading() as connection:
            hours = hours_of(connection, self.household_id, self.place_id, 0, NOON_MS + 1)
        return hours[0] if hours else {"temperatures": 0, "humidities": 0}


def until(holds: Callable[[], bool]) -> None:
    """Wait for what another thread does; the end of the wait is a failure, not a result."""
    deadline = time.monotonic() + 30
    while not holds():
        assert time.monotonic() < deadline, "it did not happen within 30 s"
        time.sleep(0.02)


@pytest.fixture
def broker(tmp_path: Path) -> Iterator[MqttBroker]:
    with MqttBroker(tmp_path / "broker") as running:
        yield running


@pytest.fixture
def house(tmp_path: Path) -> Iterator[House]:
    app = Flask("sensing")
    app.config["SQLALCHEMY_DATABASE_URI"] = f"sqlite:///{tmp_path / 'shelf.sqlite3'}"
    database.prepare(app)
    with app.app_context():
        make_tables(database.db.engine)
    yield House(app)
    with app.app_context():
        database.db.engine.dispose()


@pytest.fixture
def listen(house: House, broker: MqttBroker, monkeypatch: pytest.MonkeyPatch):
    """Start a listener with a clock that goes on by a millisecond with every look, so that no two messages meet."""
    monkeypatch.setattr(mqtt, "LOOK_S", 0.05)
    ticks = iter(range(10**6))
    stops = []

    def start(password: str = READER[1]) -> None:
        line = BrokerSettings("home", "127.0.0.1", broker.port, True, READER[0], password, str(broker.ca))
        stops.append(Listener(house.app, (line,), lambda: NOON_MS + next(ticks)).start())

    yield start
    for stop in stops:
        stop()


def repeat_until(sensor: MqttSensor, topic: str, payload: str, holds: Callable[[], bool]) -> None:
    """Say it every 50 ms, as a sensor would every minute, until it holds: nobody knows when a topic is listened to."""
    deadline = time.monotonic() + 30
    while not holds():
        assert time.monotonic() < deadline, "it did not happen within 30 s"
        sensor.say(topic, payload)
        time.sleep(0.05)


def test_a_number_and_a_path_in_json_are_heard_through_tls_and_a_password(
    house: House, broker: MqttBroker, listen
):
    house.add("shelf/bare")
    house.add("shelf/json", temperature_path="climate.0.t", humidity_path="climate.0.h")
    listen()
    sensor = MqttSensor(broker)

    repeat_until(sensor, "shelf/bare", "21.5", lambda: house.hour()["temperatures"] > 0)
    assert house.hour()["temperature_high_c"] == 21.5
    assert house.hour()["humidities"] == 0
    repeat_until(
        sensor, "shelf/json", '{"climate": [{"t": 30.25, "h": 44}]}', lambda: house.hour()["humidities"] > 0
    )
    assert house.hour()["temperature_high_c"] == 30.25
    assert house.hour()["humidity_high_pct"] == 44
    sensor.hang_up()


def test_a_retained_message_is_of_some_earlier_time_and_no_reading(house: House, broker: MqttBroker, listen):
    sensor = MqttSensor(broker)
    sensor.say("shelf/kept", "66.0", retain=True)
    house.add("shelf/kept")
    listen()

    repeat_until(sensor, "shelf/kept", "20.0", lambda: house.hour()["temperatures"] > 0)
    assert house.hour()["temperature_high_c"] == 20.0
    sensor.hang_up()


def test_the_last_will_of_a_sensor_says_that_it_is_away_until_it_is_heard(
    house: House, broker: MqttBroker, listen
):
    house.add("shelf/will")
    listen()
    sensor = MqttSensor(broker, last_will=("shelf/will", "offline"))
    repeat_until(sensor, "shelf/will", "20.0", lambda: house.hour()["temperatures"] > 0)

    sensor.die()

    until(lambda: house.sensor("shelf/will").away_ms is not None)
    again = MqttSensor(broker)
    repeat_until(again, "shelf/will", "20.0", lambda: house.sensor("shelf/will").away_ms is None)
    again.hang_up()


def test_a_broker_that_was_away_is_listened_to_again(house: House, broker: MqttBroker, listen):
    house.add("shelf/again")
    listen()
    sensor = MqttSensor(broker)
    repeat_until(sensor, "shelf/again", "20.0", lambda: house.hour()["temperatures"] > 0)

    sensor.hang_up()
    broker.stop()
    broker.start()

    before = house.hour()["temperatures"]
    sensor = MqttSensor(broker)
    repeat_until(sensor, "shelf/again", "21.0", lambda: house.hour()["temperatures"] > before)
    sensor.hang_up()


def test_nonsense_marks_the_sensor_broken_and_stops_nobody_else(house: House, broker: MqttBroker, listen):
    house.add("shelf/cut")
    house.add("shelf/words")
    house.add("shelf/good")
    listen()
    sensor = MqttSensor(broker)

    repeat_until(sensor, "shelf/cut", "-127.0", lambda: house.sensor("shelf/cut").broken_ms is not None)
    repeat_until(
        sensor, "shelf/words", "warm", lambda: house.sensor("shelf/words").broken_word == "not_a_number"
    )
    sensor.say("shelf/good", "\udcff".encode("utf-8", "surrogateescape").decode("latin-1"))
    repeat_until(sensor, "shelf/good", "20.0", lambda: house.hour()["temperatures"] > 0)
    assert house.hour()["temperature_high_c"] == 20.0
    sensor.hang_up()


def test_a_topic_that_nobody_wants_any_more_is_let_go(house: House, broker: MqttBroker, listen):
    house.add("shelf/one")
    listen()
    sensor = MqttSensor(broker)
    repeat_until(sensor, "shelf/one", "20.0", lambda: house.hour()["temperatures"] > 0)
    house.add("shelf/two")

    repeat_until(sensor, "shelf/two", "25.0", lambda: house.hour()["temperature_high_c"] == 25.0)
    sensor.hang_up()


@pytest.mark.parametrize(
    ("topics", "topic", "may"),
    [
        ("broodshelf/{household}/#", "broodshelf/h1/cabinet", True),
        ("broodshelf/{household}/#", "broodshelf/h2/cabinet", False),
        ("broodshelf/{household}/#", "broodshelf/+/cabinet", False),
        ("broodshelf/{household}/#", "broodshelf/h1/#", False),
        ("shelf/+/climate", "shelf/cabinet/climate", True),
        ("shelf/+/climate", "shelf/cabinet/door/climate", False),
        ("#", "anything/at/all", True),
        ("#", "", False),
    ],
)
def test_a_sensor_has_one_whole_topic_that_its_household_may_hear(topics: str, topic: str, may: bool):
    """Filters as in MQTT 3.1.1, 4.7 (OASIS)."""
    assert may_listen(topics, "h1", topic) is may
