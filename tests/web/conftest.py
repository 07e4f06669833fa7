"""The whole app in one process, and browsers reduced to their HTTP."""

from __future__ import annotations

import itertools
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import pytest
from flask import Flask
from tests.support.households import NOON_MS
from tests.support.templates import Templates

from broodshelf.app import create_app
from broodshelf.people.households import make_claim_code
from broodshelf.records.database import db, writing
from broodshelf.records.ids import uuid7
from broodshelf.settings import from_environment

URL = "http://127.0.0.1:8080"


@dataclass
class Clock:
    now_ms: int = NOON_MS

    def __call__(self) -> int:
        return self.now_ms


@pytest.fixture
def clock() -> Clock:
    return Clock()


@pytest.fixture
def app(tmp_path: Path, clock: Clock, templates: Templates):
    templates.of_an_app("sqlite", tmp_path)
    made = create_app(from_environment({"BROODSHELF_DATA": str(tmp_path)}), clock)
    yield made
    with made.app_context():
        db.engine.dispose()


class Browser:
    """A cookie jar with manners: same-origin headers, JSON in and out."""

    def __init__(self, app: Flask, clock: Clock, address: str = "127.0.0.1") -> None:
        self.app, self.clock = app, clock
        self.client = app.test_client()
        self.me: dict[str, Any] = {}
        self.address = address
        self.numbers = itertools.count(1)

    def post(self, path: str, body: Any = None, **headers: str):
        return self.client.post(
            path,
            json={} if body is None else body,
            headers={"Sec-Fetch-Site": "same-origin", **headers},
            environ_base={"REMOTE_ADDR": self.address},
        )

    def get(self, path: str, **headers: str):
        return self.client.get(path, headers=headers)

    def device(self) -> dict[str, str]:
        return {"id": uuid7(self.clock.now_ms), "name": "a phone"}

    def claim(self, name: str = "Mira") -> Browser:
        with self.app.app_context(), writing() as connection:
            code = make_claim_code(connection, self.clock.now_ms)
        answer = self.post(
            "/api/claim",
            {
                "code": code,
                "device": self.device(),
                "person_name": name,
                "household_name": "Shelf",
                "zone": "Europe/Vienna",
            },
        )
        assert answer.status_code == 200, answer.text
        self.me = answer.json
        return self

    def sync(self, *ops: dict[str, Any]):
        body = {"device": self.me["device_id"], "epoch": None, "cursor": None, "schema": 1, "ops": list(ops)}
        return self.post("/api/sync", body)

    def op(self, kind: str, values: dict[str, Any], record_id: str | None = None) -> dict[str, Any]:
        now = self.clock.now_ms
        return {
            "op_id": uuid7(now), "kind": kind, "id": record_id or uuid7(now), "set": values, "made_at": now,
            "skew_ms": 0, "base_rev": 0, "base_epoch": self.me["epoch"], "n": next(self.numbers),
        }  # fmt: skip


@pytest.fixture
def browser(app: Flask, clock: Clock):
    """Make browsers: ``browser()`` is a new one, signed in nowhere."""
    return lambda address="127.0.0.1": Browser(app, clock, address)


@pytest.fixture
def keeper(browser) -> Browser:
    return browser().claim()
