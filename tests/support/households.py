"""A household on a throw-away database, and model phones that make load for it without HTTP.

What a phone does is proven with the app itself (tests/support/world); a model phone only sends and listens.
"""

from __future__ import annotations

import json
from dataclasses import dataclass, field
from typing import Any

from sqlalchemy import Connection, insert

from broodshelf.people.actor import Actor, PassWindow
from broodshelf.people.devices import Owner, Phone, sign_in
from broodshelf.records.database import metadata, writing
from broodshelf.records.ids import uuid7
from broodshelf.records.store import Ledger
from broodshelf.records.tables import households
from broodshelf.sync.exchange import exchange

NOON_MS = 1_777_636_800_000  # 2026-05-01T12:00:00Z
HAPPENED = "2026-05-01T12:00:00.000+00:00"


def no_plans(_ledger: Ledger, _colonies: set[str], _now_ms: int) -> None:
    """Stand in for the plans where a test is about sync alone."""


def make_household(connection: Connection, now_ms: int = NOON_MS) -> str:
    """Insert an empty household and return its id."""
    household_id = uuid7(now_ms)
    connection.execute(
        insert(households).values(
            id=household_id, rev=0, epoch=uuid7(now_ms), purged_rev=0, created_ms=now_ms
        )
    )
    return household_id


def make_tables(engine: Any) -> None:
    """Create every table of the rooms imported so far."""
    metadata.create_all(engine)


@dataclass
class ModelPhone:
    """A phone reduced to its rules: an outbox, rows, a cursor. ``skew_ms`` is how far its clock is behind."""

    household_id: str
    now_ms: int = NOON_MS
    role: str = "keeper"
    window: PassWindow | None = None
    clock_ahead_ms: int = 0
    device_id: str = ""
    person_id: str = ""
    epoch: str | None = None
    cursor: str | None = None
    outbox: list[dict[str, Any]] = field(default_factory=list)
    rows: dict[str, dict[str, Any]] = field(default_factory=dict)
    verdicts: dict[str, dict[str, Any]] = field(default_factory=dict)
    refill: dict[str, dict[str, Any]] | None = None

    def __post_init__(self) -> None:
        self.device_id = self.device_id or uuid7(self.now_ms)
        self.person_id = self.person_id or uuid7(self.now_ms)

    @property
    def actor(self) -> Actor:
        return Actor(self.household_id, self.person_id, self.device_id, self.role, self.window)  # type: ignore[arg-type]

    def write(
        self, kind: str, values: dict[str, Any], record_id: str | None = None, **more: Any
    ) -> dict[str, Any]:
        """Queue an operation as a phone would and return it."""
        record_id = record_id or uuid7(self.now_ms)
        op = {
            "op_id": uuid7(self.now_ms),
            "kind": kind,
            "id": record_id,
            "set": values,
            "made_at": self.now_ms + self.clock_ahead_ms,
            "skew_ms": -self.clock_ahead_ms,
            "base_rev": self.rows.get(record_id, {}).get("rev", 0),
            "base_epoch": self.epoch,
            "n": len(self.outbox),
            **more,
        }
        self.outbox.append(op)
        return op

    def request(self, limit: int = 1000) -> dict[str, Any]:
        return {
            "device": self.device_id,
            "epoch": self.epoch,
            "cursor": self.cursor,
            "schema": 1,
            "device_time": self.now_ms + self.clock_ahead_ms,
            "ops": self.outbox[:500],
            "limit": limit,
        }

    def sync(
        self, *, lose_answer: bool = False, limit: int = 1000, recompute: Any = no_plans
    ) -> dict[str, Any]:
        """Make round trips until nothing is left; with ``lose_answer`` the server's word never arrives."""
        while True:
            with writing() as connection:
                answer = json.loads(
                    exchange(connection, self.actor, self.request(limit), self.now_ms, recompute).text
                )
            if lose_answer:
                return answer
            self.take(answer)
            settled = any(a["verdict"] != "deferred" for a in answer["answers"])
            if not answer["more"] and not (self.outbox and settled):
                return answer

    def take(self, answer: dict[str, Any]) -> None:
        """Store an answer by the rules of docs/sync.md, "On the phone"."""
        done = {a["op_id"]: a for a in answer["answers"] if a["verdict"] != "deferred"}
        self.verdicts.update(done)
        self.outbox = [op for op in self.outbox if op["op_id"] not in done]
        if answer["reset"]:
            self.refill = {} if self.refill is None or answer["first"] else self.refill
        target = self.refill if self.refill is not None else self.rows
        target.update({row["id"]: row for row in answer["rows"]})
        for row in answer["gone"]:
            target.pop(row["id"], None)
        if self.refill is not None and not answer["more"]:
            self.rows, self.refill = self.refill, None
        self.epoch, self.cursor = answer["epoch"], answer["cursor"]

    def values(self) -> dict[str, dict[str, Any]]:
        """What a person would see: fields by record id."""
        return {row_id: row["set"] for row_id, row in self.rows.items()}


def colony(phone: ModelPhone, name: str = "Amber") -> str:
    """Write a colony on a phone and return its id."""
    return str(phone.write("colony", {"name": name})["id"])


def feeding(phone: ModelPhone, colony_id: str, **values: Any) -> dict[str, Any]:
    """Log protein for a colony on a phone and return the operation."""
    fed = {"colony_id": colony_id, "happened_at": HAPPENED, "need": "protein", **values}
    return phone.write("feeding", fed)


def sign_in_as(phone: ModelPhone) -> None:
    """Give the phone its row among the household's devices."""
    with writing() as connection:
        owner = Owner(phone.household_id, phone.person_id)
        sign_in(connection, Phone(phone.device_id, "a phone"), owner, NOON_MS)
