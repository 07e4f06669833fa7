"""What happens again and again when people are let in: a colony, a pass, a guest, a second keeper."""

from __future__ import annotations

from typing import Any

from tests.nudges.support import BrowserKeys
from tests.web.conftest import Browser

KEY_ID_LENGTH = 16


def apply(
    phone: Browser, kind: str, values: dict[str, Any], record_id: str | None = None, **more: Any
) -> str:
    """Sync one operation that has to be applied; return the record's id."""
    op = {**phone.op(kind, values, record_id), **more}
    answer = phone.sync(op).json["answers"][0]
    assert answer["verdict"] == "applied", answer
    return str(op["id"])


def verdict(phone: Browser, kind: str, values: dict[str, Any], record_id: str | None = None, **more: Any):
    """Sync one operation and return its answer."""
    return phone.sync({**phone.op(kind, values, record_id), **more}).json["answers"][0]


def make_pass(keeper: Browser, colony_ids: list[str], ends: str = "2026-05-03") -> tuple[str, dict[str, Any]]:
    """Make a pass from 1 May on and its link."""
    values = {"name": "Grandpa", "colony_ids": colony_ids, "starts_on": "2026-05-01", "ends_on": ends}
    pass_id = apply(keeper, "pass", values)
    return pass_id, keeper.post(f"/api/passes/{pass_id}/link").json


def open_pass(guest: Browser, link: dict[str, Any], device: dict[str, str] | None = None) -> Browser:
    """Open a pass with a phone."""
    answer = guest.post("/api/passes/open", {"code": link["code"], "device": device or guest.device()})
    assert answer.status_code == 200, answer.text
    guest.me = answer.json
    return guest


def let_in(keeper: Browser, phone: Browser, **who: str) -> Browser:
    """Let a phone in as a known person (``person_id``) or a new keeper (``person_name``)."""
    asked = phone.post("/api/pairings", {"device": phone.device()}).json
    assert keeper.post("/api/pairings/approve", {"code": asked["code"], **who}).status_code == 200
    collect = {name: asked[name] for name in ("pairing_id", "collect_secret")}
    phone.me = phone.post("/api/pairings/collect", collect).json
    return phone


def subscription(phone: Browser, endpoint: str, keys: BrowserKeys) -> dict[str, Any]:
    """The body with which a phone says where it listens."""
    key_id = phone.me["vapid_public_key"][:KEY_ID_LENGTH]
    return {"endpoint": endpoint, "keys": keys.as_json, "key_id": key_id}


def listen(phone: Browser, endpoint: str, keys: BrowserKeys | None = None):
    """Say where a phone listens; return the answer."""
    body = subscription(phone, endpoint, keys or BrowserKeys())
    return phone.client.put("/api/push/subscription", json=body, headers={"Sec-Fetch-Site": "same-origin"})
