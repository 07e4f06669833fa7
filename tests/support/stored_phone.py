"""A phone as docs/sync.md tells it ("On the phone"), with its storage in single steps.

``drain`` is a generator: it stops wherever the real app waits for its storage or the network. Whoever drives it
may go on, let another tab run first, or drop it: then the app was killed there, and what is on the disk stays.
The same rules as ``pwa/sync/drain.js`` and ``pwa/database/store.js``.
"""

from __future__ import annotations

import json
from collections.abc import Callable, Generator, Iterator
from typing import Any

MOST_OPERATIONS = 500
JOURNAL_MS = 30 * 86_400_000

Answer = dict[str, Any]
Network = Callable[[bytes], Answer]
Held = tuple[str | None, str | None]
Refill = dict[str, dict[str, Any] | None]
"""The pages of a reset: each row as it came last, None for one that is gone."""


class StoredPhone:
    """Everything in ``rows``, ``outbox``, ``journal``, ``conflicts`` and ``meta`` is on the disk."""

    def __init__(self, device_id: str, new_id: Callable[[], str], clock: Callable[[], int]) -> None:
        self.device_id = device_id
        self.new_id = new_id
        self.server_clock = clock
        self.clock_ahead_ms = 0
        self.schema = 1
        self.page = 1000
        self.rows: dict[str, dict[str, Any]] = {}
        self.outbox: dict[str, dict[str, Any]] = {}
        self.journal: dict[str, dict[str, Any]] = {}
        self.conflicts: dict[str, list[Any]] = {}
        self.meta: dict[str, Any] = {}

    def now_ms(self) -> int:
        """What this phone's clock says."""
        return self.server_clock() + self.clock_ahead_ms

    def write(
        self, kind: str, values: dict[str, Any], record_id: str | None = None, *, adopt: bool = False
    ) -> str:
        """Queue one operation; return its record's id. Outbox entry and ``n`` in one step."""
        record_id = record_id or self.new_id()
        n = self.meta.get("n", 0) + 1
        op = {
            "op_id": self.new_id(),
            "kind": kind,
            "id": record_id,
            "set": values,
            "made_at": self.now_ms(),
            "skew_ms": self.meta.get("skew_ms", 0),
            "base_rev": self.rows.get(record_id, {}).get("rev", 0),
            "base_epoch": self.meta.get("epoch"),
            "n": n,
            "adopt": adopt,
        }
        self.meta["n"] = n
        self.outbox[op["op_id"]] = {"op": op, "state": "waiting", "n": n}
        return record_id

    def overlay(self) -> dict[str, dict[str, Any]]:
        """What its screens show: rows with the outbox over them."""
        seen = {row_id: {"kind": row["kind"], **row["set"]} for row_id, row in self.rows.items()}
        for entry in sorted(self.outbox.values(), key=lambda e: e["n"]):
            if entry["state"] == "waiting":
                op = entry["op"]
                seen[op["id"]] = {"kind": op["kind"], **seen.get(op["id"], {}), **op["set"]}
        return {row_id: values for row_id, values in seen.items() if not values.get("gone")}

    def waiting(self) -> list[dict[str, Any]]:
        """What is to be sent, oldest first."""
        entries = [entry for entry in self.outbox.values() if entry["state"] == "waiting"]
        return [entry["op"] for entry in sorted(entries, key=lambda e: e["n"])]

    def drain(self, network: Network) -> Iterator[str]:
        """Make round trips until both sides are even; stop before and after each thing that can fail."""
        held = epoch, cursor = self.held()
        refill: Refill | None = None
        deferred: set[str] = set()
        answered: set[str] = set()
        while True:
            ops = [op for op in self.waiting() if op["op_id"] not in deferred][:MOST_OPERATIONS]
            request = {
                "device": self.device_id, "epoch": epoch, "cursor": cursor, "schema": self.schema,
                "device_time": self.now_ms(), "ops": ops, "limit": self.page,
            }  # fmt: skip
            yield "sending"
            sent_ms = self.now_ms()
            answer = network(json.dumps(request).encode())
            yield "answered"
            restored = bool(epoch) and answer["epoch"] != epoch
            if answer["reset"]:
                refill = {} if refill is None or answer["first"] else refill
                refill.update((row["id"], row) for row in answer["rows"])
                refill.update((row["id"], None) for row in answer["gone"])
            if refill is not None and answer["reset"] and not answer["more"] and self.offer(answer, refill):
                yield "offered"
            if restored:
                self.requeue_journal()
                yield "journal queued"
            following = yield from self.take(answer, refill, held, sent_ms)
            verdicts = {a["op_id"] for a in answer["answers"]}
            news = not following or (answer["epoch"], answer["cursor"]) != (epoch, cursor)
            news = news or bool(verdicts - answered)
            answered |= verdicts
            epoch, cursor = answer["epoch"], answer["cursor"]
            if not following:  # another tab is ahead: go on from where it is
                held = epoch, cursor = self.held()
                refill = None
            elif not (answer["reset"] and answer["more"]):
                held = epoch, cursor
            deferred |= {a["op_id"] for a in answer["answers"] if a["verdict"] == "deferred"}
            left = any(op["op_id"] not in deferred for op in self.waiting())
            if not news or (following and not answer["more"] and not left):
                return

    def held(self) -> Held:
        """Up to where it holds what the server has: epoch and cursor."""
        return self.meta.get("epoch"), self.meta.get("cursor")

    def offer(self, answer: Answer, refill: Refill) -> bool:
        """After a restore, offer whole records that the server lacks."""
        if self.meta.get("epoch") in (None, answer["epoch"]):
            return False
        lacking = [row for row_id, row in self.rows.items() if row_id not in refill and row["kind"] != "plan"]
        for row in lacking:
            self.write(row["kind"], row["set"], row["id"], adopt=True)
        return bool(lacking)

    def requeue_journal(self) -> None:
        """Put back what was acknowledged in the 30 days before the last contact."""
        since = self.meta.get("last_sync_ms", self.now_ms()) - JOURNAL_MS
        for op_id, entry in self.journal.items():
            if entry["at_ms"] > since:
                self.outbox[op_id] = {"op": entry["op"], "state": "waiting", "n": entry["op"]["n"]}

    def take(
        self, answer: Answer, refill: Refill | None, held: Held, sent_ms: int
    ) -> Generator[str, None, bool]:
        """Store an answer in one step: verdicts, rows and cursor together; say whether it was the next one.

        Rows and cursor are left alone if another tab has stored a later answer since this one was asked for, and the
        verdicts too if that one came from a server restored meanwhile.
        """
        following = self.held() == held
        if following or answer["epoch"] == self.meta.get("epoch"):
            self.take_verdicts(answer)
        if following:
            self.take_rows(answer, refill)
            self.take_cursor(answer)
        before_ms = min(self.now_ms(), answer["server_time"]) - JOURNAL_MS
        self.journal = {op_id: e for op_id, e in self.journal.items() if e["at_ms"] >= before_ms}
        self.meta["last_sync_ms"] = sent_ms
        least, most = answer["server_time"] - self.now_ms(), answer["server_time"] - sent_ms
        self.meta["skew_ms"] = min(max(self.meta.get("skew_ms", 0), least), most)
        yield "stored"
        return following

    def take_verdicts(self, answer: Answer) -> None:
        for verdict in answer["answers"]:
            op_id = verdict["op_id"]
            entry = self.outbox.get(op_id)
            if entry is None or verdict["verdict"] == "deferred":
                continue
            if verdict["verdict"] == "rejected":
                self.outbox[op_id] = {**entry, "state": "rejected", "answer": verdict}
                continue
            self.journal[op_id] = {"op": entry["op"], "at_ms": self.now_ms()}
            if verdict["conflicts"]:
                self.conflicts[op_id] = verdict["conflicts"]
            del self.outbox[op_id]

    def take_rows(self, answer: Answer, refill: Refill | None) -> None:
        if answer["reset"]:
            if refill is not None and not answer["more"]:
                self.rows = {row_id: row for row_id, row in refill.items() if row is not None}
            return
        self.rows.update((row["id"], row) for row in answer["rows"])
        for row in answer["gone"]:
            self.rows.pop(row["id"], None)

    def take_cursor(self, answer: Answer) -> None:
        if not (answer["reset"] and answer["more"]):
            self.meta["cursor"], self.meta["epoch"] = answer["cursor"], answer["epoch"]
