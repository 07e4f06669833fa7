"""Every route: who may call it, from where, and what it answers to nonsense."""

from __future__ import annotations

import json
import re

import pytest
from tests.support.households import HAPPENED

OPEN = {
    "/",
    "/worker.js",
    "/manifest.webmanifest",
    "/static/<build>/<path:name>",
    "/healthz",
    "/readyz",
    "/feed/<token>.ics",
    "/metrics",
    "/api/whoami",
    "/api/readings",  # a sensor's, by its token: tests/web/test_sensors.py
}
FOR_ALL = {
    "/api/push/ack", "/api/claim", "/api/claim/look", "/api/pairings", "/api/pairings/collect",
    "/api/passes/open",
}  # fmt: skip
FOR_SESSIONS = {
    "/api/me", "/api/logout", "/api/sync", "/api/push/subscription", "/api/push/test", "/api/push/health",
    "/api/photos/<record_id>",
    "/api/reckon",
    "/api/reckon/<code>",
}  # fmt: skip
ID = "019dd000-0000-7000-8000-000000000001"


def api_routes(app):
    for rule in app.url_map.iter_rules():
        if rule.rule not in OPEN:
            for method in sorted(rule.methods - {"HEAD", "OPTIONS"}):
                yield (
                    method,
                    rule.rule,
                    re.sub(r"<\w+_id>", ID, rule.rule).replace("<code>", "prey"),
                )


def call(browser, method, path, **options):
    headers = {"Sec-Fetch-Site": "same-origin", **options.pop("headers", {})}
    return browser.client.open(path, method=method, headers=headers, **options)


def test_every_route_but_those_for_all_needs_a_session(app, browser):
    stranger = browser()
    for method, rule, path in api_routes(app):
        status = call(stranger, method, path, json={} if method != "GET" else None).status_code
        assert (rule, status) == (rule, 400 if rule in FOR_ALL else 401)


def test_a_stand_in_may_call_only_what_a_stand_in_needs(app, browser, keeper):
    colony = keeper.op("colony", {"name": "Amber"})
    made = keeper.op(
        "pass",
        {"name": "G", "colony_ids": [colony["id"]], "starts_on": "2026-05-01", "ends_on": "2026-05-02"},
    )
    keeper.sync(colony, made)
    link = keeper.post(f"/api/passes/{made['id']}/link").json
    guest = browser()
    guest.me = guest.post("/api/passes/open", {"code": link["code"], "device": guest.device()}).json
    for method, rule, path in api_routes(app):
        if rule not in FOR_ALL | FOR_SESSIONS:
            assert (rule, call(guest, method, path, json={} if method != "GET" else None).status_code) == (
                rule,
                403,
            )


def test_another_households_ids_are_unknown(app, browser, keeper):
    other = browser().claim("Ada")
    colony = keeper.op("colony", {"name": "Amber"})
    keeper.sync(colony)
    seen = {row["id"] for row in other.sync().json["rows"]}
    feeding = other.op("feeding", {"colony_id": colony["id"], "happened_at": HAPPENED, "need": "sugar"})

    assert colony["id"] not in seen
    assert other.sync(feeding).json["answers"][0]["verdict"] == "deferred"
    assert other.get(f"/api/records/{colony['id']}/history").status_code == 404
    assert other.post(f"/api/devices/{keeper.me['device_id']}/revoke").status_code == 404
    assert other.post(f"/api/passes/{colony['id']}/link").status_code == 404
    assert keeper.get("/api/me").status_code == 200


@pytest.mark.parametrize(
    "headers",
    [
        {"Sec-Fetch-Site": "cross-site"},
        {"Sec-Fetch-Site": "same-site"},
        {"Sec-Fetch-Site": "none"},
        {"Sec-Fetch-Site": "same-origin", "Origin": "https://elsewhere.example.org"},
        {"Origin": "https://elsewhere.example.org"},
        {},
    ],
    ids=str,
)
def test_nothing_changes_by_a_request_from_elsewhere(app, keeper, headers):
    for method, _rule, path in api_routes(app):
        if method != "GET":
            answer = keeper.client.open(path, method=method, json={}, headers=headers)
            assert (answer.status_code, answer.json["code"]) == (403, "foreign_origin")


NONSENSE = [
    b"", b"[]", b"null", b"{", b'"x"', b"\xff\xfe", b'{"a":1,"a":2}', b'{"a":NaN}', b'{"a":1e999}',
    b'{"code":7,"device":[]}', b'{"device":{"id":1}}', b'{"ops":"x","device":"y","schema":null}',
    b'{"a":' + b"[" * 5000 + b"]" * 5000 + b"}", b'{"pairing_id":"\\u0000","collect_secret":[]}',
]  # fmt: skip


@pytest.mark.parametrize("body", NONSENSE, ids=lambda body: repr(body[:24]))
def test_nonsense_is_a_problem_that_says_so_and_never_a_500(app, keeper, body):
    for method, rule, path in api_routes(app):
        if method == "GET":
            continue
        answer = call(keeper, method, path, data=body, content_type="application/json")
        assert 400 <= answer.status_code < 500, (rule, body, answer.text)
        assert answer.content_type == "application/problem+json"
        assert answer.json["detail"]


@pytest.mark.parametrize(
    "media_type", ["text/plain", "application/x-www-form-urlencoded", "multipart/form-data"]
)
def test_other_media_types_are_refused(app, keeper, media_type):
    for method, rule, path in api_routes(app):
        if method != "GET":
            assert (rule, call(keeper, method, path, data="{}", content_type=media_type).status_code) == (
                rule,
                415,
            )


def test_a_huge_body_is_refused_before_it_is_read(keeper):
    huge = json.dumps({"device": "x" * 1_100_000})

    assert call(keeper, "POST", "/api/sync", data=huge, content_type="application/json").status_code == 413
    assert call(keeper, "POST", "/api/claim", data=huge, content_type="application/json").status_code == 413


def test_every_answer_carries_the_security_headers(app, keeper):
    answers = [
        keeper.get(path) for path in ("/", "/worker.js", "/api/me", "/nowhere", "/api/nowhere", "/static/x/y")
    ]
    answers.append(keeper.client.post("/api/sync"))
    for answer in answers:
        assert "default-src 'none'" in answer.headers["Content-Security-Policy"]
        assert answer.headers["X-Content-Type-Options"] == "nosniff"
        assert answer.headers["Referrer-Policy"] == "no-referrer"
        assert answer.headers["Cross-Origin-Opener-Policy"] == "same-origin"
        if answer.status_code >= 400:
            assert answer.content_type == "application/problem+json"


def test_an_unforeseen_error_tells_a_reference_and_nothing_else(app, keeper, monkeypatch):
    def broken(*_args: object) -> str:
        raise RuntimeError("the secret recipe")

    monkeypatch.setattr("broodshelf.web.sync_routes.exchange", broken)
    answer = keeper.sync()

    assert answer.status_code == 500
    assert answer.json["reference"] in answer.json["detail"]
    assert "secret" not in answer.text


def test_a_plan_that_fails_does_not_lose_the_log(keeper, monkeypatch):
    def broken(*_args: object) -> None:
        raise ZeroDivisionError

    monkeypatch.setattr("broodshelf.rounds.recompute.make_plan", broken)
    colony = keeper.op("colony", {"name": "Amber"})

    assert keeper.sync(colony).json["answers"][0]["verdict"] == "applied"
    assert colony["id"] in {row["id"] for row in keeper.sync().json["rows"]}


def test_log_lines_carry_no_secrets(app, browser, keeper, caplog):
    with caplog.at_level("INFO", logger="broodshelf"):
        new = browser()
        asked = new.post("/api/pairings", {"device": new.device()}).json
        keeper.post("/api/pairings/look", {"code": asked["code"]})
        keeper.get("/api/devices")
    lines = " ".join(f"{record.getMessage()} {getattr(record, 'values', '')}" for record in caplog.records)

    assert "/api/pairings/look" in lines
    assert asked["code"] not in lines
    assert asked["collect_secret"] not in lines
    assert keeper.client.get_cookie("broodshelf_session").value not in lines


def test_who_one_is_can_be_asked_by_everybody_and_tells_only_of_oneself(browser, keeper):
    stranger = browser()
    ended = browser().claim("Ada")
    ended.post("/api/logout")

    assert call(stranger, "GET", "/api/whoami").json == {"me": None}
    assert call(ended, "GET", "/api/whoami").json == {"me": None}
    assert call(keeper, "GET", "/api/whoami").json["me"]["device_id"] == keeper.me["device_id"]
