"""What must hold in a household's world after everything has come to rest (tests/support/world.py).

Read from the tables and the phones' disks; nothing here asks the code under test.
"""

from __future__ import annotations

import json
from abc import ABC, abstractmethod
from collections import defaultdict
from dataclasses import dataclass
from typing import Any

from sqlalchemy import select
from tests.support.house import House
from tests.support.stored_phone import StoredPhone

from broodshelf.records.database import reading
from broodshelf.records.tables import operations, records, revisions


@dataclass(frozen=True)
class Acknowledged:
    """An operation that a phone was told is applied: told when, under which epoch, with which conflicts."""

    phone: int
    op: dict[str, Any]
    at_ms: int
    epoch: str


class MustHold(ABC):
    """The checks of a world. What it remembers of its run is filled in by its steps."""

    house: House
    household_id: str
    phones: list[StoredPhone]
    revoked: set[int]
    acknowledged: dict[str, Acknowledged]
    rejected: dict[str, tuple[int, dict[str, Any]]]
    restored_to_ms: list[int]
    purged: set[str]
    mended: set[str]

    @abstractmethod
    def settle(self) -> None:
        """Let everything come to rest."""

    def check(self) -> None:
        """Let everything come to rest, then look."""
        self.settle()
        live = [(who, phone) for who, phone in enumerate(self.phones) if who not in self.revoked]
        with reading() as connection:
            mine = records.c.household_id == self.household_id
            rows = {row.id: row for row in connection.execute(select(records).where(mine))}
            trail = connection.execute(
                select(revisions)
                .where(revisions.c.household_id == self.household_id)
                .order_by(revisions.c.rev)
            ).all()
            stored = dict(
                connection.execute(
                    select(operations.c.op_id, operations.c.verdict).where(
                        operations.c.household_id == self.household_id
                    )
                ).all()
            )
        there = {row.id: json.loads(row.fields) for row in rows.values() if not row.gone}
        for who, phone in live:
            held = {row_id: row["set"] for row_id, row in phone.rows.items()}
            assert held == there, f"phone {who} differs: {difference(held, there)}"
            left = [entry for entry in phone.outbox.values() if entry["state"] == "waiting"]
            assert not left, f"phone {who} still waits with {left}"
        for who in self.revoked:
            status, _ = self.house.send(self.phones[who].device_id, b"{}")
            assert status == 401, f"phone {who} was revoked and is let in"
        self.check_nothing_lost(rows, trail, stored)
        self.check_nothing_rises(rows, trail)
        self.check_conflicts_have_a_trace(trail, dict(live))

    def excused(self, told: Acknowledged) -> bool:
        """A revoked phone cannot give back what a restore took; the oldest restored backup says from when."""
        return told.phone in self.revoked and any(told.at_ms >= at_ms for at_ms in self.restored_to_ms)

    def check_nothing_lost(self, rows: Any, trail: Any, stored: Any) -> None:
        """Every acknowledged operation is stored once, and what it asked for stands or is in the history."""
        of_op: dict[str, list[Any]] = {}
        said: dict[str, list[dict[str, Any]]] = {}
        for line in trail:
            said.setdefault(line.record_id, []).extend(map(json.loads, (line.asked, line.before, line.lost)))
            if line.op_id:
                of_op.setdefault(line.op_id, []).append(line)
        for op_id, told in self.acknowledged.items():
            assert len(of_op.get(op_id, ())) <= 1, f"{told.op} is in the history more than once"
            if self.excused(told):
                continue
            refused = self.phones[told.phone].outbox.get(op_id, {}).get("state") == "rejected"
            assert stored.get(op_id) == "applied" or refused, f"{told.op} was acknowledged and is not stored"
            if refused:
                continue  # acknowledged before a restore, refused after it: the phone shows it with its values
            record = rows.get(told.op["id"])
            if record is None:
                assert told.op["id"] in self.purged, f"the record of {told.op} is not there"
                continue
            if record.id in self.purged or told.op["adopt"]:
                continue  # its history went with it; a copy offered after a restore yields to what is there
            seen = [json.loads(record.fields), *said.get(record.id, ())]
            for name, value in told.op["set"].items():
                assert any(name in each and each[name] == value for each in seen), (
                    f"{name} of {told.op} left no trace"
                )
        for op_id, (who, op) in self.rejected.items():
            entry = self.phones[who].outbox.get(op_id)
            answered = (
                who in self.revoked or op_id in self.acknowledged or (entry and entry["state"] == "rejected")
            )
            assert answered, f"{op} was rejected and the phone does not show it"
            if who in self.revoked:
                continue  # nobody can send it again once its parent has come
            if entry and entry["state"] == "rejected" and entry["answer"]["code"] == "parent_missing":
                missing = entry["answer"]["args"]["missing"]
                missing = op["id"] if missing == "itself" else missing
                assert missing not in rows, f"{op} was refused for lack of {missing}, which is there"

    def check_nothing_rises(self, rows: Any, trail: Any) -> None:
        """A record that was deleted lives only if its history says who wanted it back."""
        for record_id in self.purged & rows.keys() - self.mended:
            raise AssertionError(f"record {record_id} was purged and is back")
        for op_id, told in self.acknowledged.items():
            record = rows.get(told.op["id"])
            if told.op["set"].get("gone") is not True or self.excused(told) or record is None or record.gone:
                continue
            if record.id in self.mended:
                continue
            lines = [line for line in trail if line.record_id == record.id]
            deletion = next((line.rev for line in lines if line.op_id == op_id), 0)
            wanted = any(
                line.rev >= deletion
                and ("gone" in json.loads(line.lost) or json.loads(line.asked).get("gone") is False)
                for line in lines
            )
            assert wanted, f"record {record.id} is back from the dead after {told.op}"

    def check_conflicts_have_a_trace(self, trail: Any, live: dict[int, StoredPhone]) -> None:
        """Walk through the history: who overwrote what without having seen it must have left it in ``lost``.

        An edit that met a deletion and a deletion that met an edit, unseen by each other, are conflicts too.
        """
        last: dict[str, dict[str, tuple[int, str | None, Any]]] = defaultdict(dict)
        for line in trail:
            asked, lost = json.loads(line.asked), json.loads(line.lost)
            fields = last[line.record_id]
            told = self.acknowledged.get(line.op_id or "")
            if told is not None and told.op["base_epoch"] == told.epoch:
                unseen = {
                    name: value
                    for name, (rev, device, value) in fields.items()
                    if rev > told.op["base_rev"] and device != line.device_id
                }
                for name in unseen.keys() & asked.keys():
                    assert unseen[name] == asked[name] or name in lost, (
                        f"{told.op} met {unseen[name]!r} in {name} without a trace"
                    )
                if "gone" not in asked and unseen.get("gone"):
                    assert "gone" in lost, f"{told.op} met a deletion without a trace"
                stood = not fields.get("gone", (0, None, False))[2]
                if asked.get("gone") is True and stood and unseen:
                    assert "gone" in lost, f"deletion {told.op} met an edit without a trace"
            if lost and told is not None and told.phone in live and not self.excused(told):
                assert line.op_id in live[told.phone].conflicts, f"phone {told.phone} was not told of {lost}"
            for name, value in asked.items():
                if name not in lost or lost[name] != value:  # else it did not win: what stood stands
                    fields[name] = (line.rev, line.device_id, value)
            if lost.get("gone") and "gone" not in asked:
                fields["gone"] = (line.rev, line.device_id, False)  # the edit was later: the record lives


def difference(held: dict[str, Any], there: dict[str, Any]) -> str:
    """Name the first few records in which a phone and the server differ."""
    names = [i for i in sorted(held.keys() | there.keys()) if held.get(i) != there.get(i)]
    return "; ".join(f"{i}: phone {held.get(i)}, server {there.get(i)}" for i in names[:3])
