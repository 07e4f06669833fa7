"""Listening to the operator's brokers (MQTT 3.1.1, OASIS standard) for the topics that households' sensors have.

One client a broker, in the network thread of paho-mqtt, which connects again by itself. What arrives waits in a
bounded queue for one thread that stores it, so a flood costs messages and nothing else. A retained message is what
the broker remembers from some earlier time: it says nothing of now, and is passed over.
"""

from __future__ import annotations

import logging
import queue
import threading
from collections.abc import Callable
from dataclasses import dataclass
from typing import Any, Final

import paho.mqtt.client as paho
from flask import Flask
from paho.mqtt.enums import CallbackAPIVersion

from ..logs import say, say_failure
from ..records.database import reading, writing
from ..settings import BrokerSettings
from .intake import note_away, take
from .payload import LONGEST_BYTES, SaidAway, number_of
from .sensors import Sensor, listening

MOST_WAITING: Final = 5_000
AT_ONCE: Final = 500
LOOK_S: Final = 10.0
"""So long a new sensor waits until its topic is listened to, at most."""
LONGEST_TOPIC: Final = 250
KEEPALIVE_S: Final = 60
LONGEST_PAUSE_S: Final = 120


@dataclass(frozen=True, slots=True)
class Message:
    """A message that waits to be stored: from which broker, for which topic, and when it came."""

    broker: str
    topic: str
    payload: bytes
    at_ms: int


def may_listen(topics: str, household_id: str, topic: str) -> bool:
    """Say whether a household's sensor may have this topic: a whole one, inside the operator's filter ``topics``."""
    whole = bool(topic) and not {"+", "#", "\0"} & set(topic) and len(topic) <= LONGEST_TOPIC
    return whole and paho.topic_matches_sub(topics.replace("{household}", household_id), topic)


class Listener:
    """Listens for one process. ``start`` and ``stop`` are called once each."""

    def __init__(self, app: Flask, brokers: tuple[BrokerSettings, ...], clock: Callable[[], int]) -> None:
        self._app, self._clock = app, clock
        self._waiting: queue.Queue[Message | None] = queue.Queue(MOST_WAITING)
        self._lines = [_Line(broker, self._arrive) for broker in brokers]
        self._ended = threading.Event()
        self._dropped = 0
        self._threads = [
            threading.Thread(target=self._look_again, name="sensor topics", daemon=True),
            threading.Thread(target=self._store_all, name="sensor readings", daemon=True),
        ]

    def start(self) -> Callable[[], None]:
        """Connect to every broker in the background; return what stops it."""
        for line in self._lines:
            line.open()
        for thread in self._threads:
            thread.start()
        return self.stop

    def stop(self) -> None:
        """Hang up, and store what has come."""
        self._ended.set()
        for line in self._lines:
            line.close()
        self._waiting.put(None)
        for thread in self._threads:
            thread.join(timeout=LOOK_S)

    def _arrive(self, broker: str, topic: str, payload: bytes) -> None:
        try:
            self._waiting.put_nowait(Message(broker, topic, payload, self._clock()))
        except queue.Full:
            self._dropped += 1
            if self._dropped % MOST_WAITING == 1:
                say("sensors send faster than they can be stored; some of it is dropped", logging.WARNING)

    def _look_again(self) -> None:
        while True:
            try:
                with self._app.app_context(), reading() as connection:
                    wanted = {
                        line.name: {s.topic for s in listening(connection, line.name)} for line in self._lines
                    }
                for line in self._lines:
                    line.listen_to({topic for topic in wanted[line.name] if topic is not None})
            except Exception as error:  # noqa: BLE001 - a database that is away comes back
                say_failure("looking for the topics of sensors", error)
            if self._ended.wait(LOOK_S):
                return

    def _store_all(self) -> None:
        while True:
            first = self._waiting.get()
            batch = [] if first is None else [first]
            while len(batch) < AT_ONCE and not self._waiting.empty():
                message = self._waiting.get_nowait()
                if message is None:
                    first = None
                else:
                    batch.append(message)
            try:
                with self._app.app_context():
                    store(batch)
            except Exception as error:  # noqa: BLE001 - the next readings come in a minute
                say_failure("storing what sensors sent", error, dropped=len(batch))
            if first is None:
                return


def store(messages: list[Message]) -> None:
    """Store what these messages say, each for every sensor that listens to its topic, in one transaction."""
    if not messages:
        return
    with writing() as connection:
        sensors: dict[tuple[str, str], list[Sensor]] = {}
        for name in {message.broker for message in messages}:
            for sensor in listening(connection, name):
                sensors.setdefault((name, str(sensor.topic)), []).append(sensor)
        for message in messages:
            for sensor in sensors.get((message.broker, message.topic), ()):
                _store_one(connection, sensor, message)


def _store_one(connection: Any, sensor: Sensor, message: Message) -> None:
    try:
        sent: dict[str, Any] = {"at_ms": message.at_ms}
        if sensor.temperature_path is not None or sensor.humidity_path is None:
            sent["temperature"] = number_of(message.payload, sensor.temperature_path)
        if sensor.humidity_path is not None:
            sent["humidity"] = number_of(message.payload, sensor.humidity_path)
    except SaidAway:
        note_away(connection, sensor, message.at_ms)
    except ValueError:
        take(connection, sensor, [{"temperature": float("nan")}], message.at_ms)  # told once, as broken
    else:
        take(connection, sensor, [sent], message.at_ms)


class _Line:
    """The line to one broker and the topics that are listened to on it."""

    def __init__(self, broker: BrokerSettings, arrive: Callable[[str, str, bytes], None]) -> None:
        self.name = broker.name
        self._broker, self._arrive = broker, arrive
        self._topics: set[str] = set()
        self._guard = threading.Lock()
        self._client = paho.Client(CallbackAPIVersion.VERSION2, reconnect_on_failure=True)
        self._client.on_connect = self._connected
        self._client.on_disconnect = self._hung_up
        self._client.on_message = self._heard
        self._client.reconnect_delay_set(1, LONGEST_PAUSE_S)
        if broker.tls:
            self._client.tls_set(ca_certs=broker.ca)
        if broker.user is not None:
            self._client.username_pw_set(broker.user, broker.password)

    def open(self) -> None:
        self._client.connect_async(self._broker.host, self._broker.port, KEEPALIVE_S)
        self._client.loop_start()

    def close(self) -> None:
        self._client.disconnect()
        self._client.loop_stop()

    def listen_to(self, topics: set[str]) -> None:
        """Listen to these topics and no others, now or as soon as there is a line."""
        with self._guard:
            new, old = topics - self._topics, self._topics - topics
            self._topics = set(topics)
        if self._client.is_connected():
            for topic in new:
                self._client.subscribe(topic, qos=1)
            for topic in old:
                self._client.unsubscribe(topic)

    def _connected(self, client: paho.Client, _data: Any, _flags: Any, reason: Any, _properties: Any) -> None:
        if reason.is_failure:
            say("a broker refuses us", logging.WARNING, broker=self.name, reason=str(reason))
            return
        say("listening to a broker", broker=self.name)
        with self._guard:
            topics = [(topic, 1) for topic in sorted(self._topics)]
        if topics:
            client.subscribe(topics)

    def _hung_up(self, _client: paho.Client, _data: Any, _flags: Any, reason: Any, _properties: Any) -> None:
        if reason.is_failure:
            say(
                "the line to a broker broke; it is tried again",
                logging.WARNING,
                broker=self.name,
                reason=str(reason),
            )

    def _heard(self, _client: paho.Client, _data: Any, message: paho.MQTTMessage) -> None:
        if not message.retain and len(message.payload) <= LONGEST_BYTES:
            self._arrive(self.name, message.topic, bytes(message.payload))
