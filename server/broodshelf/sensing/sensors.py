"""A household's sensors: made with a token that is shown once, or with a topic; renamed, moved, ended."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any, Final

from sqlalchemy import Connection, Row, delete, func, insert, select, update

from ..errors import BadRequest, NotFound, SignedOut
from ..languages import told
from ..people.secrets import hash_token, new_token
from ..people.tables import sensor_tokens
from ..records.home.ending import note_ended
from ..records.ids import uuid7
from ..records.store import read_record
from .reading import Unit
from .tables import sensors

MOST_SENSORS: Final = 200
"""Of a household; far above what shelves have, and what a household may make the server listen to."""


@dataclass(frozen=True, slots=True)
class Sensor:
    """A source of readings for one place. ``broker`` and ``topic`` are null for one that sends over HTTP."""

    id: str
    household_id: str
    place_id: str
    name: str
    unit: Unit
    broker: str | None
    topic: str | None
    temperature_path: str | None
    humidity_path: str | None
    heard_ms: int | None
    away_ms: int | None
    broken_ms: int | None
    broken_word: str | None
    told_word: str | None


def make_sensor(
    connection: Connection, household_id: str, wish: Mapping[str, Any], now_ms: int
) -> tuple[str, str | None]:
    """Make a sensor and return its id and, for one that sends over HTTP, its token, which is shown once.

    ``wish``: ``place_id``, ``name``, ``unit`` and, for MQTT, ``broker``, ``topic`` and the two paths.
    Raises ``NotFound`` for a place that is not here, ``BadRequest`` beyond ``MOST_SENSORS`` or for a topic in use.
    """
    place = read_record(connection, household_id, wish["place_id"])
    if place is None or place.kind != "place" or place.gone:
        raise NotFound(told("problem-no-place-yet"))
    s = sensors.c
    count = connection.scalar(select(func.count()).select_from(sensors).where(s.household_id == household_id))
    if (count or 0) >= MOST_SENSORS:
        raise BadRequest(told("problem-too-many-sensors", most=MOST_SENSORS), code="too_many_sensors")
    topic = wish.get("topic")
    if topic is not None and connection.scalar(
        select(s.id).where(s.household_id == household_id, s.broker == wish["broker"], s.topic == topic,
                           s.temperature_path.is_not_distinct_from(wish.get("temperature_path")))
    ):  # fmt: skip
        raise BadRequest(told("problem-topic-taken"), code="topic_taken")
    sensor_id, token = uuid7(now_ms), None if topic is not None else new_token()
    connection.execute(
        insert(sensors).values(
            household_id=household_id,
            id=sensor_id,
            place_id=wish["place_id"],
            name=wish["name"],
            unit=wish.get("unit", "C"),
            broker=wish.get("broker"),
            topic=topic,
            temperature_path=wish.get("temperature_path"),
            humidity_path=wish.get("humidity_path"),
            made_ms=now_ms,
        )
    )
    if token is not None:
        row = {"sensor_id": sensor_id, "token_hash": hash_token(token), "made_ms": now_ms}
        connection.execute(insert(sensor_tokens).values(household_id=household_id, **row))
    return sensor_id, token


def end_sensor(connection: Connection, household_id: str, sensor_id: str, now_ms: int) -> None:
    """End a sensor: its token opens nothing from now on, and its raw readings go. Hours and days stay."""
    _row(connection, household_id, sensor_id)
    t = sensor_tokens.c
    its = (t.household_id == household_id, t.sensor_id == sensor_id)
    note_ended(
        connection, "sensor", household_id, connection.scalars(select(t.token_hash).where(*its)).all(), now_ms
    )
    connection.execute(delete(sensor_tokens).where(*its))
    connection.execute(
        delete(sensors).where(sensors.c.household_id == household_id, sensors.c.id == sensor_id)
    )


def change_sensor(
    connection: Connection, household_id: str, sensor_id: str, place_id: str, name: str
) -> None:
    """Give a sensor another name or place; what it sent before stays with the place where it was."""
    _row(connection, household_id, sensor_id)
    place = read_record(connection, household_id, place_id)
    if place is None or place.kind != "place" or place.gone:
        raise NotFound(told("problem-no-place-yet"))
    its = (sensors.c.household_id == household_id, sensors.c.id == sensor_id)
    connection.execute(update(sensors).where(*its).values(place_id=place_id, name=name))


def sensors_of(connection: Connection, household_id: str) -> list[Sensor]:
    """Return a household's sensors, oldest first."""
    rows = connection.execute(
        select(sensors).where(sensors.c.household_id == household_id).order_by(sensors.c.id)
    )
    return [_sensor(row) for row in rows]


def sensor_with(connection: Connection, token: str) -> Sensor:
    """Return the sensor that a token belongs to. Raises ``SignedOut`` for one that is unknown or ended."""
    t = sensor_tokens.c
    on = (sensors.c.household_id == t.household_id) & (sensors.c.id == t.sensor_id)
    query = select(sensors).join(sensor_tokens, on).where(t.token_hash == hash_token(token))
    row = connection.execute(query).one_or_none()
    if row is None:
        raise SignedOut(
            told("problem-bad-token"),
            code="bad_token",
        )
    return _sensor(row)


def listening(connection: Connection, broker: str) -> list[Sensor]:
    """Return the sensors of every household that listen to topics of a broker."""
    query = select(sensors).where(sensors.c.broker == broker).order_by(sensors.c.household_id, sensors.c.id)
    return [_sensor(row) for row in connection.execute(query)]


def households_with_trouble(connection: Connection, silent_since_ms: int) -> list[str]:
    """Return the households of a sensor that is broken, or was heard last before then, and of which nobody was told."""
    s = sensors.c
    wrong = s.broken_ms.is_not(None) | (s.heard_ms <= silent_since_ms)
    query = select(s.household_id).where(wrong, s.told_word.is_(None)).distinct()
    return list(connection.scalars(query.order_by(s.household_id)))


def heard_since(connection: Connection, since_ms: int) -> list[str]:
    """Return the households of which a sensor was heard since then."""
    query = select(sensors.c.household_id).where(sensors.c.heard_ms >= since_ms).distinct()
    return list(connection.scalars(query.order_by(sensors.c.household_id)))


def _row(connection: Connection, household_id: str, sensor_id: str) -> Row[Any]:
    its = (sensors.c.household_id == household_id, sensors.c.id == sensor_id)
    row = connection.execute(select(sensors).where(*its)).one_or_none()
    if row is None:
        raise NotFound(told("problem-no-sensor"))
    return row


def _sensor(row: Row[Any]) -> Sensor:
    return Sensor(
        row.id,
        row.household_id,
        row.place_id,
        row.name,
        row.unit,
        row.broker,
        row.topic,
        row.temperature_path,
        row.humidity_path,
        row.heard_ms,
        row.away_ms,
        row.broken_ms,
        row.broken_word,
        row.told_word,
    )
