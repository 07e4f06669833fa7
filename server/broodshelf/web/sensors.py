"""Sensors: a keeper makes, lists, moves and ends them; they themselves send readings with their token."""

from __future__ import annotations

from typing import Any, Final

from flask import Blueprint, Response, jsonify, request

from ..errors import BadRequest, NotFound, SignedOut
from ..languages import told
from ..model.gauges import DAY_MS
from ..people.actor import Actor
from ..people.limits import count_try, refuse_beyond
from ..records.apart import enter, every_household
from ..records.database import reading, writing
from ..records.store import read_record
from ..sensing.intake import hours_by_place, take
from ..sensing.mqtt import may_listen
from ..sensing.sensors import Sensor, change_sensor, end_sensor, make_sensor, sensor_with, sensors_of
from . import bodies
from . import parts as p
from .guard import Given, open_to

blueprint = Blueprint("sensors", __name__, url_prefix="/api")

SHOWN_DAYS: Final = 14
MOST_SENDINGS_A_MINUTE: Final = 60
"""Of one sensor: twice what one that speaks every two seconds sends; each may bring 1,000 readings."""


@blueprint.get("/sensors")
@open_to("keeper")
def show(actor: Actor) -> Response:
    """Return the household's sensors.

    → `{sensors: [{id, place_id, name, unit, broker, topic, temperature_path, humidity_path, heard_ms, away_ms,
    broken_ms, broken_word}], brokers, topics}`, oldest first; `brokers`: the names of those that the server listens to,
    `topics`: the MQTT filter that this household's topics must match
    """
    with reading() as connection:
        found = sensors_of(connection, actor.household_id)
    settings = p.parts().settings
    return jsonify(
        sensors=[_shown(sensor) for sensor in found],
        brokers=[broker.name for broker in settings.brokers],
        topics=settings.broker_topics.replace("{household}", actor.household_id),
    )


@blueprint.post("/sensors")
@open_to("keeper", body=bodies.SENSOR)
def make(actor: Actor, body: Given) -> Response:
    """Make a sensor for a place: one that sends here itself, or with `broker` and `topic` one that speaks to a broker.

    → `{id, token}`; the token is shown once, and null for one with a topic
    """
    _check_topic(actor.household_id, body)
    with writing() as connection:
        sensor_id, token = make_sensor(connection, actor.household_id, body, p.now_ms())
    return jsonify(id=sensor_id, token=token)


@blueprint.post("/sensors/<sensor_id>")
@open_to("keeper", body=bodies.SENSOR_CHANGE)
def change(actor: Actor, sensor_id: str, body: Given) -> Response:
    """Give a sensor another name or place; what it sent before stays with the place where it was.

    → `{}`
    """
    with writing() as connection:
        change_sensor(connection, actor.household_id, sensor_id, body["place_id"], body["name"])
    return jsonify({})


@blueprint.post("/sensors/<sensor_id>/end")
@open_to("keeper", body=bodies.NOTHING)
def end(actor: Actor, sensor_id: str) -> Response:
    """End a sensor; the hours of its place stay.

    → `{}`
    """
    with writing() as connection:
        end_sensor(connection, actor.household_id, sensor_id, p.now_ms())
    return jsonify({})


@blueprint.get("/places/<place_id>/hours")
@open_to("keeper")
def hours(actor: Actor, place_id: str) -> Response:
    """Return what a place's sensors measured in the last two weeks.

    → `{hours: [[hour_ms, mean_c, low_c, high_c, humidity_pct]]}`, oldest first, null for what was not measured
    """
    until_ms = p.now_ms() + 1
    with reading() as connection:
        place = read_record(connection, actor.household_id, place_id)
        if place is None or place.kind != "place":
            raise NotFound(told("problem-no-place"))
        found = hours_by_place(connection, actor.household_id, until_ms - SHOWN_DAYS * DAY_MS, until_ms)
    rows = [(h.hour_ms, h.temperature_c, h.low_c, h.high_c, h.humidity_pct) for h in found.get(place_id, ())]
    return jsonify(hours=rows)


@blueprint.post("/readings")
@open_to("sensor", body=bodies.READINGS)
def receive(body: Given) -> Response:
    """Take a sensor's readings: one by itself, or up to 1,000 in a list, in any order, any number of times.

    → `{stored, known, refused: [{place, why}]}`; `place` counts from 0. `why`: `nothing_measured`, `not_a_number`,
    `broken_temperature`, `broken_humidity`, `too_old`, `in_the_future` (docs/sensors.md)
    """
    sensor = _asking()
    sent = body.get("readings", [body])
    now_ms = p.now_ms()
    with writing() as connection:
        count_try(connection, "readings", sensor.id, now_ms, MOST_SENDINGS_A_MINUTE)
        taken = take(connection, sensor, [_as_measured(one) for one in sent], now_ms)
    refused = [{"place": place, "why": why} for place, why in taken.refused]
    return jsonify(stored=taken.stored, known=taken.known, refused=refused)


def _check_topic(household_id: str, body: Given) -> None:
    """Raise for a topic without a broker that we listen to, or outside of what this household may hear."""
    if ("broker" in body) != ("topic" in body):
        raise BadRequest(told("problem-broker-and-topic"), fields={"topic": "needs a broker"})
    if "broker" not in body:
        return
    settings = p.parts().settings
    if body["broker"] not in {broker.name for broker in settings.brokers}:
        raise BadRequest(told("problem-no-broker"), fields={"broker": "not known"})
    if not may_listen(settings.broker_topics, household_id, body["topic"]):
        wanted = settings.broker_topics.replace("{household}", household_id)
        raise BadRequest(
            told("problem-topic-not-yours", wanted=wanted), fields={"topic": "not yours to hear"}
        )


def _asking() -> Sensor:
    """Return the sensor whose token the request carries, or raise ``SignedOut``; guesses are counted by address."""
    scheme, _, token = request.headers.get("Authorization", "").partition(" ")
    try:
        with every_household(), reading() as connection:
            found = sensor_with(connection, token.strip() if scheme == "Bearer" else "")
            refuse_beyond(connection, "readings", found.id, p.now_ms(), MOST_SENDINGS_A_MINUTE)
    except SignedOut:
        p.count_try("sensor")
        raise
    enter(found.household_id)
    return found


def _as_measured(one: Given) -> dict[str, Any]:
    at_s = one.get("at_s")
    return {
        "temperature": one.get("temperature"),
        "humidity": one.get("humidity"),
        "at_ms": round(at_s * 1000) if at_s else None,
    }


def _shown(sensor: Sensor) -> dict[str, Any]:
    names = ("id", "place_id", "name", "unit", "broker", "topic", "temperature_path", "humidity_path")
    states = ("heard_ms", "away_ms", "broken_ms", "broken_word")
    return {name: getattr(sensor, name) for name in (*names, *states)}
