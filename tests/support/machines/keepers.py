"""Households whose keepers log through a proxy as phones do, while machines come and go."""

from __future__ import annotations

import datetime as dt
import hashlib
import io
import itertools
import json
import threading
import time
from dataclasses import dataclass, field
from typing import Any

from PIL import Image
from tests.nudges.support import BrowserKeys
from tests.support.households import Requester
from tests.support.machines.processes import Answer, ask
from tests.support.machines.push_service import PushService

from broodshelf.nudges.channels.push.hosts import PushHosts
from broodshelf.nudges.channels.push.subscriptions import subscribe
from broodshelf.people.devices import Owner, Phone, sign_in
from broodshelf.people.households import found_household
from broodshelf.records.database import writing
from broodshelf.records.ids import uuid7
from broodshelf.records.store import Ledger

PAUSE_S = 0.1
"""Between two rounds of a keeper: a hand that taps fast, and the machines keep the processor for what they do."""


def noon_zone() -> str:
    """Return a zone in which it is about noon, so that no quiet hours hold a nudge back."""
    ahead = 12 - dt.datetime.now(dt.UTC).hour
    return f"Etc/GMT{-ahead:+d}" if ahead else "UTC"


@dataclass
class Keeper:
    """A household whose keeper logs through the proxy, as a phone does: the same again until it is answered."""

    port: int
    name: str
    phone: Requester
    cookie: str
    logged: list[str] = field(default_factory=list)
    pictures: dict[str, bytes] = field(default_factory=dict)
    leaks: int = 0
    broken: str = ""
    failures: list[str] = field(default_factory=list)
    _stop: threading.Event = field(default_factory=threading.Event)
    _gone: threading.Event = field(default_factory=threading.Event)

    @property
    def headers(self) -> dict[str, str]:
        """What makes a request this phone's."""
        return {"Cookie": f"broodshelf_session={self.cookie}"}

    def run(self) -> None:
        """Log until told to stop; what is wrong stands in ``broken``."""
        try:
            self._log()
        except Exception as error:  # noqa: BLE001 - told by the test that waits for this phone
            self.broken = repr(error)[:1000]

    def _log(self) -> None:
        """Log until told to stop: feedings, a leak of a new colony now and then, a picture now and then."""
        for number in itertools.count():
            if self._stop.wait(PAUSE_S):
                return
            self.phone.now_ms = time.time_ns() // 1_000_000
            now = dt.datetime.fromtimestamp(self.phone.now_ms / 1000, dt.UTC).isoformat(
                timespec="milliseconds"
            )
            colony = self._write("colony", {"name": f"{self.name} {number}", "stage": "growing"})
            self._write("feeding", {"colony_id": colony, "need": "sugar", "happened_at": now})
            if number % 4 == 1:
                self._write("fault", {"colony_id": colony, "fault": "leak", "happened_at": now})
                self.leaks += 1
            picture = _picture(self.name, number) if number % 3 == 0 else b""
            if picture:
                named = {
                    "colony_id": colony,
                    "happened_at": now,
                    "sha256": hashlib.sha256(picture).hexdigest(),
                }
                photo = self._write("photo", named)
            self._sync()
            if picture:
                self._until_taken("PUT", f"/api/photos/{photo}", picture, "image/jpeg")
                self.pictures[photo] = picture

    def stop(self) -> None:
        """Log nothing more once the present round is done."""
        self._stop.set()

    def give_up(self) -> None:
        """Ask no more, whatever is still to be answered."""
        self._stop.set()
        self._gone.set()

    def _write(self, kind: str, values: dict[str, Any]) -> str:
        record_id = str(self.phone.write(kind, values)["id"])
        self.logged.append(record_id)
        return record_id

    def _sync(self) -> None:
        while self.phone.waiting:
            body = json.dumps(self.phone.request()).encode()
            answer = self._until_taken("POST", "/api/sync", body, "application/json")
            self.phone.take(json.loads(answer))

    def _until_taken(self, method: str, path: str, body: bytes, kind: str) -> bytes:
        while True:
            try:
                answer = ask(self.port, method, path, body, **self.headers, **{"Content-Type": kind})
            except OSError as error:
                self.failures.append(type(error).__name__)
            else:
                if answer.status == 200:
                    return answer.body
                assert answer.status in (502, 503), answer  # never signed out, never refused
                if not _looks_at_other_pictures(answer):
                    self.failures.append(f"{answer.status} {answer.body[:200]!r}")
            if self._gone.wait(0.05):
                raise RuntimeError("the test is over")


def _looks_at_other_pictures(answer: Answer) -> bool:
    """Whether a server is there and says that it is busy with other pictures, as a slow machine may be at any time."""
    return answer.status == 503 and b'"busy"' in answer.body


def _picture(name: str, number: int) -> bytes:
    body = io.BytesIO()
    shade = int.from_bytes(hashlib.sha256(f"{name}{number}".encode()).digest()[:3])
    Image.new("RGB", (64, 48), (shade >> 16, shade >> 8 & 255, shade & 255)).save(body, "JPEG")
    return body.getvalue()


def new_keeper(port: int, name: str, service: PushService, key_id: str, listeners: int) -> Keeper:
    """Found a household with a keeper who logs and others who listen. Needs an application context."""
    now_ms = time.time_ns() // 1_000_000
    keys = BrowserKeys()
    with writing() as connection:
        household_id, person_id = found_household(connection, name, "Shelf", noon_zone(), now_ms)
        phone = Requester(household_id, now_ms, person_id=person_id)
        session = sign_in(
            connection, Phone(phone.device_id, "a phone"), Owner(household_id, person_id), now_ms
        )
        for number in range(listeners):
            other = Requester(household_id, now_ms, person_id=uuid7(now_ms))
            ledger = Ledger(connection, household_id)
            ledger.put(other.person_id, "person", {"name": f"k{number}", "role": "keeper"}, now_ms=now_ms)
            ledger.flush()
            sign_in(
                connection, Phone(other.device_id, "a phone"), Owner(household_id, other.person_id), now_ms
            )
            endpoint = service.url(f"/{name}/{number}")
            body = {"endpoint": endpoint, "keys": keys.as_json, "key_id": key_id}
            subscribe(connection, other.actor, body, PushHosts(loopback=True), key_id, now_ms)
    return Keeper(port, name, phone, session.token)
