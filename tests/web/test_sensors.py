"""A sensor sends readings with its token: they become hours of its place and the climate of the plans there."""

from __future__ import annotations

import datetime as dt
from typing import Any

import pytest
from tests.web.conftest import Browser

from broodshelf.app import create_app
from broodshelf.model.gauges import HOUR_MS
from broodshelf.model.tasks import SENSED
from broodshelf.records.database import db
from broodshelf.settings import from_environment


class Sensor:
    """A board with a token: no cookie, no origin."""

    def __init__(self, keeper: Browser, place_id: str, **wish: str) -> None:
        self.keeper = keeper
        made = keeper.post("/api/sensors", {"place_id": place_id, "name": "On the board", **wish}).get_json()
        self.id, self.token = made["id"], made["token"]
        self.client = keeper.app.test_client()

    def send(self, body: Any, **headers: str):
        bearer = {"Authorization": f"Bearer {self.token}"}
        return self.client.post("/api/readings", json=body, headers={**bearer, **headers})

    def state(self) -> dict[str, Any]:
        found = self.keeper.get("/api/sensors").get_json()["sensors"]
        return next(one for one in found if one["id"] == self.id)


def place_of(keeper: Browser, name: str = "Cabinet", **values: Any) -> str:
    operation = keeper.op("place", {"name": name, **values})
    assert keeper.sync(operation).get_json()["answers"][0]["verdict"] == "applied"
    return str(operation["id"])


@pytest.fixture
def place_id(keeper) -> str:
    return place_of(keeper, place_type="cabinet", day_temp_c=24, night_temp_c=21)


@pytest.fixture
def sensor(keeper, place_id) -> Sensor:
    return Sensor(keeper, place_id)


def hours_of(keeper: Browser, place_id: str) -> list[list[Any]]:
    return keeper.get(f"/api/places/{place_id}/hours").get_json()["hours"]


def test_one_reading_by_itself_is_of_now(keeper, place_id, sensor, clock):
    answer = sensor.send({"temperature": 25.5, "humidity": 48})

    assert answer.get_json() == {"stored": 1, "known": 0, "refused": []}
    assert hours_of(keeper, place_id) == [[clock.now_ms - clock.now_ms % HOUR_MS, 25.5, 25.5, 25.5, 48.0]]
    assert sensor.state()["heard_ms"] == clock.now_ms


def test_a_batch_says_of_each_reading_that_is_none_why(keeper, place_id, sensor, clock):
    now_s = clock.now_ms / 1000
    sent = [
        {"temperature": 20, "at_s": now_s - 60},
        {"temperature": -127},
        {"temperature": 22, "at_s": now_s},
        {"temperature": 22, "at_s": now_s},
        {"humidity": 120},
        {"temperature": 20, "at_s": now_s + 3600},
        {},
    ]

    assert sensor.send({"readings": sent}).get_json() == {
        "stored": 2,
        "known": 1,
        "refused": [
            {"place": 1, "why": "broken_temperature"},
            {"place": 4, "why": "broken_humidity"},
            {"place": 5, "why": "in_the_future"},
            {"place": 6, "why": "nothing_measured"},
        ],
    }
    assert sensor.state()["broken_ms"] is None  # a good one came with it


def test_fahrenheit_is_said_when_the_sensor_is_made(keeper, place_id):
    warm = Sensor(keeper, place_id, unit="F")
    warm.send({"temperature": 86.0})

    assert hours_of(keeper, place_id)[0][1] == 30.0


@pytest.mark.parametrize(
    "body",
    [
        {"temperature": "warm"},
        {"readings": []},
        {"readings": {}},
        {"readings": [5]},
        {"readings": [{"temperature": 20}] * 1001},
        {"temperature": 20, "at_s": -1},
        {"heat": 20},
        [],
    ],
)
def test_a_body_of_another_shape_is_refused_whole_and_said(sensor, body):
    answer = sensor.send(body)

    assert answer.status_code == 400
    assert answer.mimetype == "application/problem+json"


def test_a_huge_body_is_refused_unread(sensor):
    answer = sensor.send({"temperature": 20, "at_s": 0, "x": "y" * 100_000})

    assert answer.status_code == 413


def test_a_token_opens_readings_and_nothing_else(keeper, sensor):
    bearer = {"Authorization": f"Bearer {sensor.token}"}
    for method, path in (
        ("GET", "/api/me"),
        ("GET", "/api/sensors"),
        ("POST", "/api/sync"),
        ("GET", "/api/larder"),
    ):
        answer = sensor.client.open(
            path, method=method, json={}, headers={**bearer, "Sec-Fetch-Site": "same-origin"}
        )
        assert answer.status_code == 401, path


def test_a_page_of_another_site_cannot_send_readings(sensor):
    assert sensor.send({"temperature": 20}, Origin="https://elsewhere.example.org").status_code == 403
    assert sensor.send({"temperature": 20}, **{"Sec-Fetch-Site": "cross-site"}).status_code == 403


def test_a_sensor_that_was_ended_is_refused_at_once_and_its_hours_stay(keeper, place_id, sensor):
    sensor.send({"temperature": 20})
    assert keeper.post(f"/api/sensors/{sensor.id}/end").status_code == 200

    refused = sensor.send({"temperature": 20})

    assert (refused.status_code, refused.get_json()["code"]) == (401, "bad_token")
    assert keeper.get("/api/sensors").get_json()["sensors"] == []
    assert len(hours_of(keeper, place_id)) == 1


def test_a_flood_of_one_sensor_is_refused_and_nobody_else_suffers(keeper, place_id, sensor):
    other = Sensor(keeper, place_id)
    answers = [sensor.send({"temperature": 20}).status_code for _ in range(61)]

    assert answers == [200] * 60 + [429]
    assert sensor.send({"temperature": 20}).headers["Retry-After"]
    assert other.send({"temperature": 20}).status_code == 200
    assert keeper.get("/api/me").status_code == 200


def test_guesses_at_tokens_are_counted(app, keeper, sensor):
    sensor.token = "x" * 43
    answers = [sensor.send({"temperature": 20}).status_code for _ in range(21)]

    assert answers == [401] * 20 + [429]


def test_a_sensor_that_moves_keeps_what_it_sent_where_it_was(keeper, place_id, sensor):
    other = place_of(keeper, "Cellar")
    sensor.send({"temperature": 25})
    assert keeper.post(f"/api/sensors/{sensor.id}", {"place_id": other, "name": "Below"}).status_code == 200
    keeper.clock.now_ms += 1000
    sensor.send({"temperature": 12})

    assert [hour[1] for hour in hours_of(keeper, place_id)] == [25.0]
    assert [hour[1] for hour in hours_of(keeper, other)] == [12.0]


def test_what_sensors_measured_is_in_the_plan_of_who_lives_there(keeper, place_id, sensor, clock):
    """Lasius niger at 31 °C: catalogue/temperatures.toml has its limit at 30 °C (Sociobiology 2015)."""
    colony = keeper.op("colony", {"name": "Amber", "species_code": "lasius_niger", "place_id": place_id})
    before = [{"temperature": 24.0, "at_s": (clock.now_ms - ago * HOUR_MS) / 1000} for ago in range(1, 30)]
    sensor.send({"readings": before})
    calm = keeper.sync(colony).get_json()
    sensor.send({"temperature": 31.5})
    hot = keeper.sync(
        keeper.op("note", {"colony_id": colony["id"], "text": "warm in here", "happened_at": _now(clock)})
    )

    def alarms(answer: dict[str, Any]) -> list[str]:
        plans = [row["set"] for row in answer["rows"] if row["kind"] == "plan"]
        return [task["what"] for task in plans[-1]["tasks"] if task["what"] in SENSED]

    assert alarms(calm) == []
    assert alarms(hot.get_json()) == ["overheating"]


def _now(clock) -> str:
    return dt.datetime.fromtimestamp(clock.now_ms / 1000, dt.UTC).isoformat(timespec="milliseconds")


@pytest.fixture
def listening(tmp_path, clock, templates):
    """A server that knows a broker called ``home``."""
    templates.of_an_app("sqlite", tmp_path)
    environment = {"BROODSHELF_DATA": str(tmp_path), "BROODSHELF_MQTT_BROKERS": "home=mqtt://127.0.0.1:1"}
    made = create_app(from_environment(environment), clock)
    yield made
    with made.app_context():
        db.engine.dispose()


def test_a_sensor_behind_a_broker_has_a_topic_of_its_own_household_and_no_token(listening, clock):
    keeper, other = Browser(listening, clock).claim(), Browser(listening, clock).claim("Anton")
    place_id = place_of(keeper)
    told = keeper.get("/api/sensors").get_json()
    wish = {"place_id": place_id, "name": "By radio", "broker": "home", "temperature_path": "t"}
    own = f"broodshelf/{keeper.me['household_id']}/cabinet"
    assert (told["brokers"], told["topics"]) == (["home"], f"broodshelf/{keeper.me['household_id']}/#")

    for body in (
        wish,
        {**wish, "topic": f"broodshelf/{other.me['household_id']}/cabinet"},
        {**wish, "topic": f"broodshelf/{keeper.me['household_id']}/#"},
        {**wish, "topic": own, "broker": "elsewhere"},
        {"place_id": place_id, "name": "By radio", "topic": own},
    ):
        assert keeper.post("/api/sensors", body).status_code == 400, body

    made = keeper.post("/api/sensors", {**wish, "topic": own}).get_json()
    assert made["token"] is None
    assert keeper.get("/api/sensors").get_json()["sensors"][0]["topic"] == own
    assert keeper.post("/api/sensors", {**wish, "topic": own}).get_json()["code"] == "topic_taken"


def test_a_file_is_looked_at_first_and_then_taken_in_once_and_given_out_again(keeper, place_id):
    text = "when,warm\n2026-01-05 12:00,20.5\n2026-01-05 12:30,21.5\n2026-01-05 13:00,no\n"
    wish = {"text": text, "time": "when", "temperature": "warm", "utc": True}

    seen = keeper.post(f"/api/places/{place_id}/file", {**wish, "preview": True}).get_json()
    before = keeper.get(f"/api/places/{place_id}/hours.csv").get_data(as_text=True)
    taken = keeper.post(f"/api/places/{place_id}/file", {**wish, "preview": False}).get_json()
    again = keeper.post(f"/api/places/{place_id}/file", {**wish, "preview": False}).get_json()
    lines = keeper.get(f"/api/places/{place_id}/hours.csv").get_data(as_text=True).splitlines()

    assert (seen["rows"], seen["hours"], seen["new_hours"], seen["low_c"], seen["high_c"]) == (
        2,
        1,
        1,
        20.5,
        21.5,
    )
    assert seen["bad"] == [{"line": 4, "why": "“no” is no number."}]
    assert len(before.splitlines()) == 1
    assert (taken["new_hours"], again["new_hours"]) == (1, 0)
    assert lines[1].endswith(",21.0,20.5,21.5,")


def test_a_file_without_a_measure_or_a_column_is_refused_in_words(keeper, place_id):
    wish = {"text": "when,warm\n2026-01-05 12:00,20.5\n", "time": "when"}
    nothing = keeper.post(f"/api/places/{place_id}/file", wish)
    other = keeper.post(f"/api/places/{place_id}/file", {**wish, "temperature": "cold"})

    assert nothing.status_code == other.status_code == 400
    assert "'cold'" in other.get_json()["detail"]
