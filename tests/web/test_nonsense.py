"""Whatever bytes come: every address answers with a status that says so, never with a failure of the server.

On both databases, with a look into the log for what nobody may find there.
"""

from __future__ import annotations

import json
import re

import pytest
from sqlalchemy import insert
from sqlalchemy.exc import SQLAlchemyError
from tests.web.conftest import Browser, Clock

from broodshelf.app import create_app
from broodshelf.logs import told_without_words
from broodshelf.people.tables import claim_codes
from broodshelf.records.database import db, writing
from broodshelf.records.ids import uuid7
from broodshelf.records.store import Ledger
from broodshelf.settings import from_environment

ID = "019dd000-0000-7000-8000-000000000001"
LONG_NUMBER = "9" * 400
TEXTS = {
    "half a character": '"\\ud83d"',
    "a NUL": '"a\\u0000b"',
    "a number of 400 digits": LONG_NUMBER,
    "a negative one": f"-{LONG_NUMBER}",
    "a number with an exponent": "1e400",
    "an id with a line break": json.dumps(f"{ID}\n"),
    "an id of 4,000 characters": json.dumps(ID * 111),
    "deep": "[" * 5000 + "]" * 5000,
    "a deep object": '{"a":' * 5000 + "1" + "}" * 5000,
    "null": "null",
    "a list of null": "[null]",
    "an empty text": '""',
    "the last day": '"9999-12-31"',
    "the first day": '"0001-01-01"',
    "half a character in UTF-8": b'"\xed\xa0\xbd"',
    "bytes": b'"\xff\xfe"',
}
FIELDS = (b"code", b"pass_id", b"texts", b"ops")
"""Of the fields that any address takes: each is sent to each."""
SEEN = {400, 401, 403, 404, 409, 410, 413, 415, 422, 426, 429}


EMPTY = {"null", "an empty text", "a list of null"}
"""With these some addresses have nothing to refuse."""


def raw_of(name: str) -> bytes:
    text = TEXTS[name]
    return text if isinstance(text, bytes) else text.encode()


def send(browser: Browser, method: str, path: str, body: bytes):
    headers = {"Sec-Fetch-Site": "same-origin", "Content-Type": "application/json"}
    return browser.client.open(path, method=method, data=body, headers=headers)


@pytest.fixture(params=["sqlite", "postgresql"])
def app(request, templates, tmp_path, clock: Clock):
    url = templates.of_an_app(request.param, tmp_path)
    settings = {"BROODSHELF_DATA": str(tmp_path), "BROODSHELF_DATABASE_URL": url}
    made = create_app(from_environment(settings), clock)
    yield made
    with made.app_context():
        db.engine.dispose()


def addresses(app):
    for rule in app.url_map.iter_rules():
        if rule.rule.startswith("/api/"):
            for method in sorted(rule.methods - {"HEAD", "OPTIONS", "GET"}):
                yield method, re.sub(r"<code>", "prey", re.sub(r"<\w+_id>", ID, rule.rule))


@pytest.mark.parametrize("name", TEXTS)
def test_no_body_makes_any_address_fail(app, keeper, name):
    raw = raw_of(name)
    right = SEEN | ({200, 204} if name in EMPTY else set())
    for method, path in addresses(app):
        if path == "/api/logout" or path.startswith("/api/photos"):
            continue
        device = b'{"device":{"id":' + raw + b',"name":' + raw + b"}}"
        named = [b'{"' + field + b'":' + raw + b"}" for field in FIELDS]
        for body in [raw, b'{"' + b"a" * 3000 + b'":' + raw + b"}", device, *named]:
            answer = send(keeper, method, path, body)
            assert answer.status_code in right, (path, body[:200], answer.text)
            if answer.status_code >= 400:
                assert answer.content_type == "application/problem+json"
                assert answer.json["status"] == answer.status_code


@pytest.mark.parametrize("name", [name for name in TEXTS if name != "null"])
def test_no_value_of_an_operation_stops_the_others(app, keeper, name):
    """In an operation's own fields it is refused or mended; the request that carries it is answered either way."""
    good = keeper.op("colony", {"name": "Amber"})
    for field in ("name", "queens", "founded_on", "vessel_id", "interval_days", "stings", "worker_length_mm"):
        odd = keeper.op("colony", {"name": "Birch", field: "PUT HERE"})
        head = {"device": keeper.me["device_id"], "epoch": None, "cursor": None, "schema": 1}
        body = json.dumps({**head, "ops": [odd, good]}).encode().replace(b'"PUT HERE"', raw_of(name))
        answer = send(keeper, "POST", "/api/sync", body)

        assert answer.status_code in (200, 400), answer.text
        if answer.status_code == 200:
            assert answer.json["answers"][1]["verdict"] == "applied"


@pytest.mark.parametrize(
    "path",
    [
        "/%00", "/static/%00/x", "/static/0000000000000000/%00", "/feed/%00.ics", "/api/records/%00/history",
        "/api/photos/%ed%a0%80", "/api/%ff", f"/api/records/{ID}%0A/history", "/api/holiday?leave_on=%00",
        f"/feed/{'9' * 5000}.ics",
    ],
)  # fmt: skip
def test_no_address_makes_the_server_fail(keeper, path):
    for method in ("GET", "POST", "PUT", "DELETE"):
        answer = send(keeper, method, path, b"{}")
        assert answer.status_code in SEEN | {200, 405}, (method, answer.text)


@pytest.mark.parametrize(
    "header",
    [
        "Cookie", "Origin", "Content-Type", "Accept-Encoding", "If-None-Match", "Authorization", "User-Agent",
        "X-Forwarded-For",
    ],
)  # fmt: skip
def test_no_header_makes_the_server_fail(keeper, header):
    for value in ("\xff\xfe", "=" * 4000, "broodshelf_session=\xe9", 'W/"', "bytes=a-b"):
        for path in ("/", "/api/me", "/healthz", "/metrics", "/manifest.webmanifest"):
            assert keeper.client.get(path, headers={header: value}).status_code in SEEN | {200, 304, 503}


def test_an_error_of_the_database_carries_no_parameters_into_the_log(app):
    """PostgreSQL quotes the row in its own message as well, so the log takes no messages of errors at all."""
    secret = "the hash of a token"
    row = {"code_hash": secret, "created_ms": 0, "expires_ms": 0}
    with app.app_context(), pytest.raises(SQLAlchemyError) as caught, writing() as connection:
        for _ in range(2):
            connection.execute(insert(claim_codes).values(row))

    assert secret not in str(caught.value).partition("[SQL")[2]
    assert secret not in told_without_words(caught.value)
    assert "IntegrityError" in told_without_words(caught.value)


def test_days_that_an_older_server_took_make_no_address_fail(app, keeper, clock):
    """It held days against a pattern only: no calendar has a 31st of February."""
    made = keeper.op("colony", {"name": "Amber"})
    keeper.sync(made)
    lot, ended = uuid7(1), uuid7(2)
    with app.app_context(), writing() as connection:
        ledger = Ledger(connection, keeper.me["household_id"])
        odd = {"got_on": "2026-02-31", "hold_until": "2026-02-30", "use_by": "9999-02-31"}
        food = {"food_code": "cricket", "origin": "wild_insect", "amount": 6, "unit": "piece"}
        ledger.put(lot, "lot", {**food, **odd}, now_ms=clock())
        dates = {"starts_on": "2026-04-31", "ends_on": "2026-06-31"}
        ledger.put(ended, "pass", {"name": "G", "colony_ids": [made["id"]], **dates}, now_ms=clock())
        ledger.flush()
    keeper.sync(keeper.op("colony", {"queens": 1}, made["id"]))

    assert keeper.get("/api/larder").status_code == 200
    assert keeper.get(f"/api/passes/{ended}").json["state"] == "ended"
    code = keeper.post(f"/api/passes/{ended}/link").json["code"]
    assert keeper.post("/api/passes/open", {"code": code, "device": keeper.device()}).status_code == 410


@pytest.mark.parametrize(
    ("leave_on", "return_on"),
    [
        ("9999-12-30", "9999-12-31"),
        ("0001-01-01", "0001-01-02"),
        ("2026-02-30", "2026-03-02"),
        ("2026-05-02", "2100-12-31"),
    ],
)
def test_a_holiday_lies_in_the_calendar_and_has_an_end(keeper, leave_on, return_on):
    assert keeper.post("/api/holiday", {"leave_on": leave_on, "return_on": return_on}).status_code == 400
