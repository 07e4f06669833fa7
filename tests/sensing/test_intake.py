"""Readings are taken in once, in any order, into the hours of their place; a broken sensor is told from a hot one."""

from __future__ import annotations

import random

import pytest
from sqlalchemy import select
from tests.sensing.conftest import hours_of
from tests.support.households import NOON_MS, make_household

from broodshelf.errors import BadRequest, NotFound, SignedOut
from broodshelf.records import database
from broodshelf.sensing.intake import HOUR_MS, KEPT_MS, forget_old_readings, note_away, take
from broodshelf.sensing.sensors import MOST_SENSORS, Sensor, end_sensor, make_sensor, sensor_with, sensors_of
from broodshelf.sensing.tables import readings

MINUTE_MS = 60_000


def sent_by(minutes: int, from_ms: int = NOON_MS - 3 * HOUR_MS) -> list[dict[str, float]]:
    """A reading a minute, each of its own temperature."""
    return [
        {"temperature": 20 + minute / 100, "humidity": 50.0, "at_ms": from_ms + minute * MINUTE_MS}
        for minute in range(minutes)
    ]


def the_sensor(connection, household_id: str) -> Sensor:
    return sensors_of(connection, household_id)[0]


def test_an_hour_holds_mean_least_and_most_of_its_readings(household_id, sensor):
    with database.writing() as connection:
        taken = take(connection, sensor, sent_by(120), NOON_MS)
        hours = hours_of(connection, household_id, sensor.place_id, 0, NOON_MS)

    assert (taken.stored, taken.known, taken.refused) == (120, 0, ())
    assert [hour["hour_ms"] for hour in hours] == [NOON_MS - 3 * HOUR_MS, NOON_MS - 2 * HOUR_MS]
    first = hours[0]  # 20.00 to 20.59 in steps of 0.01: their mean is 20.295 by Gauss' sum
    assert first["temperature_sum_c"] / first["temperatures"] == pytest.approx(20.295)
    assert (first["temperature_low_c"], first["temperature_high_c"]) == (20.0, 20.59)
    assert (first["humidities"], first["humidity_low_pct"]) == (60, 50.0)


def test_the_order_and_repeats_of_sending_change_nothing(household_id, sensor):
    sent = sent_by(150)
    shuffled = sent * 2
    random.Random(7).shuffle(shuffled)
    with database.writing() as connection:
        for start in range(0, len(shuffled), 37):
            take(connection, sensor, shuffled[start : start + 37], NOON_MS)
        again = take(connection, sensor, sent, NOON_MS)
        hours = hours_of(connection, household_id, sensor.place_id, 0, NOON_MS)

    assert (again.stored, again.known) == (0, 150)
    assert [hour["temperatures"] for hour in hours] == [60, 60, 30]
    assert hours[2]["temperature_sum_c"] == pytest.approx(sum(one["temperature"] for one in sent[120:]))
    assert hours[2]["temperature_high_c"] == pytest.approx(21.49)


def test_two_sensors_of_a_place_share_its_hours(household_id, sensor):
    with database.writing() as connection:
        make_sensor(
            connection, household_id, {"place_id": sensor.place_id, "name": "Above", "unit": "F"}, NOON_MS + 1
        )
        above = sensors_of(connection, household_id)[1]
        at_ms = NOON_MS - HOUR_MS
        take(connection, sensor, [{"temperature": 20.0, "at_ms": at_ms}], NOON_MS)
        take(connection, above, [{"temperature": 86.0, "at_ms": at_ms}], NOON_MS)  # 30 °C
        (hour,) = hours_of(connection, household_id, sensor.place_id, 0, NOON_MS)

    assert (hour["temperatures"], hour["temperature_sum_c"], hour["temperature_high_c"]) == (2, 50.0, 30.0)
    assert hour["humidity_low_pct"] is None


def test_a_broken_sensor_is_marked_once_and_sound_again_with_its_next_good_reading(household_id, sensor):
    with database.writing() as connection:
        taken = take(connection, sensor, [{"temperature": -127.0}], NOON_MS)
        take(connection, the_sensor(connection, household_id), [{"temperature": 85.0}], NOON_MS + MINUTE_MS)
        broken = the_sensor(connection, household_id)
        take(connection, broken, [{"temperature": 22.0}], NOON_MS + 2 * MINUTE_MS)
        sound = the_sensor(connection, household_id)
        hours = hours_of(connection, household_id, sensor.place_id, 0, NOON_MS + HOUR_MS)

    assert taken.refused == ((0, "broken_temperature"),)
    assert (broken.broken_ms, broken.broken_word, broken.heard_ms) == (NOON_MS, "broken_temperature", None)
    assert (sound.broken_ms, sound.heard_ms) == (None, NOON_MS + 2 * MINUTE_MS)
    assert [hour["temperatures"] for hour in hours] == [1]


def test_late_readings_do_not_make_a_sensor_look_older_than_it_is(household_id, sensor):
    with database.writing() as connection:
        take(connection, sensor, [{"temperature": 22.0}], NOON_MS)
        take(connection, the_sensor(connection, household_id), sent_by(3), NOON_MS)
        assert the_sensor(connection, household_id).heard_ms == NOON_MS


def test_a_sensor_that_says_it_is_away_is_away_until_it_is_heard(household_id, sensor):
    with database.writing() as connection:
        note_away(connection, sensor, NOON_MS)
        note_away(connection, the_sensor(connection, household_id), NOON_MS + MINUTE_MS)
        assert the_sensor(connection, household_id).away_ms == NOON_MS
        take(
            connection, the_sensor(connection, household_id), [{"temperature": 22.0}], NOON_MS + 2 * MINUTE_MS
        )
        assert the_sensor(connection, household_id).away_ms is None


def test_a_token_opens_its_sensor_until_it_is_ended(household_id, place_id):
    with database.writing() as connection:
        wish = {"place_id": place_id, "name": "On the board", "unit": "C"}
        sensor_id, token = make_sensor(connection, household_id, wish, NOON_MS)
        assert token is not None
        assert sensor_with(connection, token).id == sensor_id
        with pytest.raises(SignedOut):
            sensor_with(connection, token + "x")

        take(connection, sensor_with(connection, token), sent_by(3), NOON_MS)
        end_sensor(connection, household_id, sensor_id, NOON_MS)

        with pytest.raises(SignedOut):
            sensor_with(connection, token)
        assert sensors_of(connection, household_id) == []
        assert len(hours_of(connection, household_id, place_id, 0, NOON_MS)) == 1


def test_a_sensor_needs_a_place_of_its_own_household(household_id, place_id):
    with database.writing() as connection:
        other = make_household(connection, NOON_MS + 5)
        with pytest.raises(NotFound):
            make_sensor(connection, other, {"place_id": place_id, "name": "Spy", "unit": "C"}, NOON_MS)


def test_a_topic_has_one_sensor_and_a_household_a_bounded_number(household_id, place_id):
    with database.writing() as connection:
        wish = {"place_id": place_id, "name": "By radio", "unit": "C", "broker": "home", "topic": "shelf/1"}
        assert make_sensor(connection, household_id, wish, NOON_MS)[1] is None
        with pytest.raises(BadRequest, match="topic already"):
            make_sensor(connection, household_id, wish, NOON_MS)
        for number in range(MOST_SENSORS - 1):
            make_sensor(
                connection, household_id, {"place_id": place_id, "name": f"{number}", "unit": "C"}, NOON_MS
            )
        with pytest.raises(BadRequest, match="at most"):
            make_sensor(
                connection, household_id, {"place_id": place_id, "name": "One more", "unit": "C"}, NOON_MS
            )


def test_old_readings_are_forgotten_and_their_hours_stay(household_id, sensor):
    later_ms = NOON_MS + KEPT_MS
    with database.writing() as connection:
        take(connection, sensor, [{"temperature": 22.0}], NOON_MS - 1)
        take(connection, sensor, [{"temperature": 24.0}], later_ms)
        forget_old_readings(connection, [household_id], later_ms)
        left = connection.scalars(select(readings.c.at_ms)).all()
        again = take(connection, sensor, [{"temperature": 22.0, "at_ms": NOON_MS - 1}], later_ms)

    assert left == [later_ms]
    assert again.refused == ((0, "too_old"),)  # so nothing counts twice in an hour
    with database.reading() as connection:
        assert len(hours_of(connection, household_id, sensor.place_id, 0, later_ms + 1)) == 2
