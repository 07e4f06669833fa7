"""A household on a throw-away database, and requests written by hand for it, without HTTP.

What a phone does is proven with the app itself (tests/support/world). A ``Requester`` stores no rows: tests look at
what the server answers.
"""

from __future__ import annotations

import json
from dataclasses import dataclass, field, replace
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
class Requester:
    """Makes the requests of one device, and keeps of the answers what its next request is made from.

    ``clock_ahead_ms`` is how far its clock is ahead of the server's. ``waiting`` are the operations without a verdict,
    ``verdicts`` what the server said of the others, by ``op_id``.
    """

    household_id: str
    now_ms: int = NOON_MS
    role: str = "keeper"
    window: PassWindow | None = None
    clock_ahead_ms: int = 0
    device_id: str = ""
    person_id: str = ""
    epoch: str | None = None
    cursor: str | None = None
    waiting: list[dict[str, Any]] = field(default_factory=list)
    verdicts: dict[str, dict[str, Any]] = field(default_factory=dict)

    def __post_init__(self) -> None:
        self.device_id = self.device_id or uuid7(self.now_ms)
        self.person_id = self.person_id or uuid7(self.now_ms)

    @property
    def actor(self) -> Actor:
        return Actor(self.household_id, self.person_id, self.device_id, self.role, self.window)  # type: ignore[arg-type]

    @property
    def heard_rev(self) -> int:
        """Up to which revision the last answer told everything."""
        return int(self.cursor.split(".")[0]) if self.cursor else 0

    def write(
        self, kind: str, values: dict[str, Any], record_id: str | None = None, **more: Any
    ) -> dict[str, Any]:
        """Add an operation to the next request and return it.

        Its base is all that was heard: no revision of the record lies between its own and that.
        """
        op = {
            "op_id": uuid7(self.now_ms),
            "kind": kind,
            "id": record_id or uuid7(self.now_ms),
            "set": values,
            "made_at": self.now_ms + self.clock_ahead_ms,
            "skew_ms": -self.clock_ahead_ms,
            "base_rev": self.heard_rev if record_id else 0,
            "base_epoch": self.epoch,
            "n": len(self.waiting),
            **more,
        }
        self.waiting.append(op)
        return op

    def request(self, limit: int = 1000) -> dict[str, Any]:
        return {
            "device": self.device_id,
            "epoch": self.epoch,
            "cursor": self.cursor,
            "schema": 1,
            "device_time": self.now_ms + self.clock_ahead_ms,
            "ops": self.waiting[:500],
            "limit": limit,
        }

    def ask(self, limit: int = 1000, recompute: Any = no_plans) -> dict[str, Any]:
        """Make one round trip and return the answer, of which nothing is kept."""
        with writing() as connection:
            answer = exchange(connection, self.actor, self.request(limit), self.now_ms, recompute)
        return dict(json.loads(answer.text))

    def sync(self, *, limit: int = 1000, recompute: Any = no_plans) -> dict[str, Any]:
        """Make round trips until nothing is left; return the last answer, with what all of them brought."""
        brought: dict[str, list[dict[str, Any]]] = {"answers": [], "rows": [], "gone": []}
        while True:
            answer = self.ask(limit, recompute)
            self.take(answer)
            for part, so_far in brought.items():
                so_far.extend(answer[part])
            settled = any(each["verdict"] != "deferred" for each in answer["answers"])
            if not answer["more"] and not (self.waiting and settled):
                return {**answer, **brought}

    def take(self, answer: dict[str, Any]) -> None:
        """Note what the next request is made from: the verdicts, the epoch and the cursor."""
        done = {each["op_id"]: each for each in answer["answers"] if each["verdict"] != "deferred"}
        self.verdicts.update(done)
        self.waiting = [op for op in self.waiting if op["op_id"] not in done]
        self.epoch, self.cursor = answer["epoch"], answer["cursor"]

    def rows(self, limit: int = 1000) -> dict[str, dict[str, Any]]:
        """Return, by id, every row that the server gives this device when it knows nothing and sends nothing."""
        anew = replace(self, epoch=None, cursor=None, waiting=[], verdicts={})
        return by_id(anew.sync(limit=limit)["rows"])

    def values(self) -> dict[str, dict[str, Any]]:
        """Return the fields of these rows, by id."""
        return {record_id: row["set"] for record_id, row in self.rows().items()}


def by_id(rows: list[dict[str, Any]]) -> dict[str, dict[str, Any]]:
    """Return the rows of answers by their id; of one that came twice, the later."""
    return {row["id"]: row for row in rows}


def colony(phone: Requester, name: str = "Amber") -> str:
    """Write a colony on a phone and return its id."""
    return str(phone.write("colony", {"name": name})["id"])


def feeding(phone: Requester, colony_id: str, **values: Any) -> dict[str, Any]:
    """Log protein for a colony on a phone and return the operation."""
    fed = {"colony_id": colony_id, "happened_at": HAPPENED, "need": "protein", **values}
    return phone.write("feeding", fed)


def sign_in_as(phone: Requester) -> None:
    """Give the phone its row among the household's devices."""
    with writing() as connection:
        owner = Owner(phone.household_id, phone.person_id)
        sign_in(connection, Phone(phone.device_id, "a phone"), owner, NOON_MS)
