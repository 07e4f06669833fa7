"""From what a sensor sends to a reading, or to the word for why it is none."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.support.households import NOON_MS

from broodshelf.sensing.payload import SaidAway, number_of
from broodshelf.sensing.reading import AHEAD_MS, OLDEST_MS, Reading, celsius_of, read


@pytest.mark.parametrize(
    ("fahrenheit", "celsius"),
    [
        (32.0, 0.0),
        (212.0, 100.0),
        (98.6, 37.0),
        (-40.0, -40.0),
    ],  # the fixed points of both scales, and where they meet
)
def test_fahrenheit_becomes_celsius(fahrenheit: float, celsius: float):
    assert celsius_of(fahrenheit, "F") == celsius


def test_a_sensor_without_a_clock_speaks_of_now():
    assert read({"temperature": 24.06, "humidity": 55.04}, "C", NOON_MS) == Reading(NOON_MS, 24.06, 55.0)
    assert read({"temperature": 24.0, "at_ms": 0}, "C", NOON_MS) == Reading(NOON_MS, 24.0, None)


@pytest.mark.parametrize(
    ("sent", "why"),
    [
        ({"temperature": -127.0}, "broken_temperature"),  # DS18B20: the word of its drivers for no answer
        ({"temperature": 85.0}, "broken_temperature"),  # DS18B20 data sheet: the value at power-on
        ({"temperature": 71.0}, "broken_temperature"),
        ({"temperature": -41.0, "humidity": 50.0}, "broken_temperature"),
        ({"temperature": 24.0, "humidity": 101.0}, "broken_humidity"),
        ({"humidity": -1.0}, "broken_humidity"),
        ({"temperature": math.nan}, "not_a_number"),
        ({"temperature": math.inf}, "not_a_number"),
        ({}, "nothing_measured"),
        ({"temperature": None, "humidity": None, "at_ms": NOON_MS}, "nothing_measured"),
        ({"temperature": 24.0, "at_ms": NOON_MS - OLDEST_MS - 1}, "too_old"),
        ({"temperature": 24.0, "at_ms": NOON_MS + AHEAD_MS + 1}, "in_the_future"),
    ],
)
def test_what_cannot_be_is_no_reading_and_says_why(sent: dict[str, float | None], why: str):
    assert read(sent, "C", NOON_MS) == why


def test_the_value_of_a_cut_wire_is_known_in_fahrenheit_too():
    assert read({"temperature": -196.6}, "F", NOON_MS) == "broken_temperature"
    assert read({"temperature": 185.0}, "F", NOON_MS) == "broken_temperature"


@pytest.mark.parametrize("temperature", [-20.0, 34.0, 45.0, 62.0])
def test_what_is_only_extreme_is_a_reading(temperature: float):
    assert isinstance(read({"temperature": temperature}, "C", NOON_MS), Reading)


def test_a_clock_a_little_ahead_counts_as_now():
    assert read({"temperature": 20.0, "at_ms": NOON_MS + AHEAD_MS}, "C", NOON_MS) == Reading(
        NOON_MS, 20.0, None
    )


@given(st.floats(-40, 70), st.floats(0, 100), st.integers(NOON_MS - OLDEST_MS, NOON_MS))
def test_whatever_can_be_is_a_reading_of_its_own_instant(temperature: float, humidity: float, at_ms: int):
    made = read({"temperature": temperature, "humidity": humidity, "at_ms": at_ms}, "C", NOON_MS)

    assert isinstance(made, Reading)
    assert made.at_ms == at_ms
    assert made.temperature_c == pytest.approx(temperature, abs=0.005 + 1e-9)  # kept in hundredths


@pytest.mark.parametrize(
    ("payload", "path", "number"),
    [
        (b"23.4", None, 23.4),
        (b" 23,4\n", "", 23.4),
        (b'{"temperature": 23.4}', "temperature", 23.4),
        (b'{"a": {"b": [{"c": "21.5"}]}}', "a.b.0.c", 21.5),
        (b'{"a": null}', "a", None),
        (b'{"a": 1}', "b", None),
        (b'{"a": 1}', "a.b", None),
        (b"[1, 2]", "5", None),
    ],
)
def test_a_message_is_a_number_or_holds_one_at_a_path(payload: bytes, path: str | None, number: float | None):
    assert number_of(payload, path) == number


@pytest.mark.parametrize("payload", [b"offline", b"unavailable", b"", b"NaN", b"None"])
def test_the_word_of_a_last_will_says_that_the_sensor_is_away(payload: bytes):
    with pytest.raises(SaidAway):
        number_of(payload, "temperature")


@pytest.mark.parametrize(
    "payload", [b"warm", b"\xff", b'{"a": true}', b'{"a": {}}', b"{", b"1e400", b"9" * 9000]
)
def test_what_is_no_number_is_refused_in_words(payload: bytes):
    with pytest.raises(ValueError):
        number_of(payload, "a")
