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
"""The pages of a reset: each row as it came last, None for one of which no more is known than that it is gone."""
Row = dict[str, Any]
DERIVED = ("plan", "place_day")
FIRST = (
    "household", "person", "place", "vessel", "colony", "lot", "tasting", "pass", "rule", "feeding",
)  # fmt: skip
"""What others name is offered before what names it."""


class StoredPhone:
    """Everything in ``rows``, ``gone``, ``outbox``, ``journal``, ``conflicts`` and ``meta`` is on the disk."""

    def __init__(self, device_id: str, new_id: Callable[[], str], clock: Callable[[], int]) -> None:
        self.device_id = device_id
        self.new_id = new_id
        self.server_clock = clock
        self.clock_ahead_ms = 0
        self.schema = 1
        self.page = 1000
        self.rows: dict[str, Row] = {}
        self.gone: dict[str, Row] = {}
        self.outbox: dict[str, dict[str, Any]] = {}
        self.journal: dict[str, dict[str, Any]] = {}
        self.conflicts: dict[str, list[Any]] = {}
        self.meta: dict[str, Any] = {}

    def now_ms(self) -> int:
        """What this phone's clock says."""
        return self.server_clock() + self.clock_ahead_ms

    def enter(self, person_id: str, role: str = "keeper") -> None:
        """Sign in as a person."""
        self.meta["me"] = {"person_id": person_id, "role": role}

    def write(self, kind: str, values: dict[str, Any], record_id: str | None = None) -> str:
        """Queue one operation; return its record's id. Outbox entry and ``n`` in one step.

        It is made later than those before it by the server's clock as well, whatever this phone's was set to.
        """
        record_id = record_id or self.new_id()
        n = self.meta.get("n", 0) + 1
        skew_ms = self.meta.get("skew_ms", 0)
        made_at = max(self.now_ms(), self.meta.get("last_made_ms", 0) + 1 - skew_ms)
        op = {
            "op_id": self.new_id(),
            "kind": kind,
            "id": record_id,
            "set": values,
            "made_at": made_at,
            "skew_ms": skew_ms,
            "base_rev": self.rows.get(record_id, {}).get("rev", 0),
            "base_epoch": self.meta.get("epoch"),
            "n": n,
            "adopt": False,
        }
        self.meta["n"] = n
        self.meta["last_made_ms"] = made_at + skew_ms
        self.outbox[op["op_id"]] = {"op": op, "state": "waiting", "n": n}
        return record_id

    def mend(self, op_id: str, values: dict[str, Any]) -> list[str]:
        """Put a mended operation in the place of a rejected one, and send again with it what lacked its record."""
        record_id = self.outbox[op_id]["op"]["id"]
        orphans = [each for each, entry in self.outbox.items() if each != op_id and lacks(entry, record_id)]
        for each in (op_id, *orphans):
            entry = self.outbox.pop(each)
            op = {**entry["op"], "op_id": self.new_id()}
            if each == op_id:
                op["set"] = values
            self.outbox[op["op_id"]] = {"op": op, "state": "waiting", "n": entry["n"]}
        return [op_id, *orphans]

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
            if answer["reset"]:
                refill = {} if refill is None or answer["first"] else refill
                refill.update((row["id"], row) for row in answer["rows"])
                refill.update((row["id"], row if "set" in row else None) for row in answer["gone"])
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

    def give_back(self, refill: Refill | None) -> None:
        """Queue in front of what waits all that a restored server lacks, before the rows are replaced."""
        if refill is not None and self.meta.get("me", {}).get("role") == "keeper":
            self.offer(refill)
        self.requeue_journal()

    def offer(self, refill: Refill) -> None:
        """Offer the records that the server lacks, or has as they were before, with their past."""
        mine = [*self.rows.values(), *self.gone.values()]
        offered = [
            row for row in mine if row["kind"] not in DERIVED and is_news(row, refill.get(row["id"], LACKS))
        ]
        offered.sort(key=lambda row: FIRST.index(row["kind"]) if row["kind"] in FIRST else len(FIRST))
        n = self.meta.get("n", 0)
        for place, row in enumerate(offered):
            op = {
                "op_id": self.new_id(),
                "kind": row["kind"],
                "id": row["id"],
                "set": row["set"],
                "made_at": self.now_ms(),
                "skew_ms": self.meta.get("skew_ms", 0),
                "base_rev": 0,
                "base_epoch": self.meta["epoch"],
                "n": n + place + 1,
                "adopt": True,
                "by": row["by"],
                "made_ms": row["made_ms"],
                "device": row["device"],
                "stamps": row.get("stamps", {}),
            }
            self.outbox[op["op_id"]] = {"op": op, "state": "waiting", "n": place - len(offered)}
        self.meta["n"] = n + len(offered)

    def requeue_journal(self) -> None:
        """Put back what was acknowledged in the 30 days before the last contact; what waits was made after it."""
        since = self.meta.get("last_sync_ms", self.now_ms()) - JOURNAL_MS
        again = {op_id: entry["op"] for op_id, entry in self.journal.items() if entry["at_ms"] > since}
        floor = max(map(made_ms, again.values()), default=0)
        for op in self.waiting():
            if floor and not op["adopt"]:
                if made_ms(op) <= floor:
                    op["made_at"] = floor + 1 - op["skew_ms"]
                floor = max(floor, made_ms(op))
        for op_id, op in again.items():
            self.outbox[op_id] = {"op": op, "state": "waiting", "n": op["n"]}

    def take(
        self, answer: Answer, refill: Refill | None, held: Held, sent_ms: int
    ) -> Generator[str, None, bool]:
        """Store an answer in one step: verdicts, rows and cursor together; say whether it was the next one.

        Rows and cursor are left alone if another tab has stored a later answer since this one was asked for, and the
        verdicts too if that one came from a server restored meanwhile.
        """
        following = self.held() == held
        epoch = self.meta.get("epoch")
        if following or answer["epoch"] == epoch:
            self.take_verdicts(answer)
        if following:
            if epoch and answer["epoch"] != epoch and not (answer["reset"] and answer["more"]):
                self.give_back(refill if answer["reset"] else None)
            self.take_rows(answer, refill)
            self.take_cursor(answer)
        if (
            self.meta.get("epoch") == answer["epoch"]
        ):  # else a restore is still to be answered with the journal
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
            op = entry["op"]
            if "made_ms" in verdict:  # what is sent again is of the time for which the server took it
                op = {**op, "made_at": verdict["made_ms"], "skew_ms": 0}
                self.meta["last_made_ms"] = max(self.meta.get("last_made_ms", 0), verdict["made_ms"])
            self.journal[op_id] = {"op": op, "at_ms": self.now_ms()}
            if verdict["conflicts"]:
                self.conflicts[op_id] = verdict["conflicts"]
            del self.outbox[op_id]
        if self.meta.get("last_made_ms", 0) > answer["server_time"]:  # its clock ran ahead
            waits = [made_ms(op) for op in self.waiting() if not op["adopt"]]
            self.meta["last_made_ms"] = max(answer["server_time"], *waits, 0)

    def take_rows(self, answer: Answer, refill: Refill | None) -> None:
        if answer["reset"]:
            if refill is not None and not answer["more"]:
                known = {row_id: row for row_id, row in refill.items() if row is not None}
                self.rows = {row_id: row for row_id, row in known.items() if not row["set"].get("gone")}
                self.gone = {row_id: row for row_id, row in known.items() if row["set"].get("gone")}
            return
        for row in answer["rows"]:
            self.rows[row["id"]] = row
            self.gone.pop(row["id"], None)
        for row in answer["gone"]:
            self.rows.pop(row["id"], None)
            if "set" in row:
                self.gone[row["id"]] = row

    def take_cursor(self, answer: Answer) -> None:
        if not (answer["reset"] and answer["more"]):
            self.meta["cursor"], self.meta["epoch"] = answer["cursor"], answer["epoch"]


LACKS: Row = {}
"""What the server has of a record that it lacks."""


def is_news(mine: Row, theirs: Row | None) -> bool:
    """Say whether a phone holds of a record what a restored server lacks, or has as it was before."""
    if theirs is None:
        return False
    if theirs is LACKS:
        return True
    there, here = theirs["set"], mine["set"]
    if any(
        here[name] != there.get(name) and (name not in there or set_ms(mine, name) > set_ms(theirs, name))
        for name in here
    ):
        return True
    lives = there.get("gone") and not here.get("gone")
    return bool(lives and max(set_ms(mine, name) for name in here) > set_ms(theirs, "gone"))


def set_ms(row: Row, name: str) -> int:
    """When a field of a row was set last."""
    return int(row.get("stamps", {}).get(name, [row["made_ms"]])[0])


def made_ms(op: dict[str, Any]) -> int:
    """When an operation was made, by the server's clock as its phone knows it."""
    return int(op["made_at"] + op["skew_ms"])


def lacks(entry: dict[str, Any], record_id: str) -> bool:
    """Say whether an entry was refused because this record was not there."""
    if entry["state"] != "rejected" or entry["answer"]["code"] != "parent_missing":
        return False
    missing = entry["answer"]["args"]["missing"]
    return bool((entry["op"]["id"] if missing == "itself" else missing) == record_id)
