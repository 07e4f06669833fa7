"""What must hold in a household's world after everything has come to rest.

Read from the tables and the phones' disks; nothing here asks the code under test.
"""

from __future__ import annotations

import json
from abc import ABC, abstractmethod
from collections import defaultdict
from collections.abc import Sequence
from typing import Any

from sqlalchemy import select
from tests.support.world.meetings import Meetings
from tests.support.world.state import Acknowledged

from broodshelf.records.database import reading
from broodshelf.records.tables import operations, records, revisions


class MustHold(Meetings, ABC):
    """The checks of a world."""

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
            due = there
            if who == self.stand_in:  # sees its colony only, and of other things less than there is
                due = {i: v for i, v in there.items() if v.get("colony_id") == self.colony_id}
                held = {i: v for i, v in held.items() if v.get("colony_id")}
            assert held == due, f"phone {who} differs: {difference(held, due)}"
            left = [entry for entry in phone.outbox.values() if entry["state"] == "waiting"]
            assert not left, f"phone {who} still waits with {left}"
        for who in self.revoked:
            status, _ = self.house.send(self.phones[who].device_id, b"{}")
            assert status == 401, f"phone {who} was revoked and is let in"
        self.check_nothing_forgotten()
        self.check_nothing_lost(rows, trail, stored)
        self.check_nothing_stale(rows)
        self.check_authors(rows)
        self.check_nothing_rises(rows, trail)
        self.check_conflicts_have_a_trace(trail)

    def check_nothing_forgotten(self) -> None:
        """Every operation that a person wrote has been answered, or is mended under a new name."""
        for who, phone in enumerate(self.phones):
            if who not in self.revoked:
                heard = self.acknowledged.keys() | self.rejected.keys() | self.replaced
                lost = [op_id for op_id in phone.disk()["written"] if op_id not in heard]
                assert not lost, f"phone {who} forgot {lost}, which the server never answered"

    def refused_whole(self) -> set[str]:
        """Return the records that a phone could not give back and shows, as of a purged colony."""
        entries = [entry for phone in self.phones for entry in phone.outbox.values()]
        return {
            entry["op"]["id"] for entry in entries if entry["op"]["adopt"] and entry["state"] == "rejected"
        }

    def unheard(self) -> list[dict[str, Any]]:
        """Return what waits on revoked phones: it may have arrived without their hearing of it."""
        return [entry["op"] for who in self.revoked for entry in self.phones[who].outbox.values()]

    def check_nothing_stale(self, rows: Any) -> None:
        """No value stands that an acknowledged change had taken the place of, knowing it, whatever came back."""
        changes: dict[tuple[str, str], list[Acknowledged]] = defaultdict(list)
        for told in self.acknowledged.values():
            if not told.op["adopt"]:
                for name in told.op["set"].keys() & {"name", "text", "gone"}:
                    changes[told.op["id"], name].append(told)
        unheard = {
            (op["id"], name, value)
            for op in self.unheard()
            for name, value in op["set"].items()
            if name in ("name", "text", "gone")
        }
        shown = self.refused_whole()
        for (record_id, name), all_told in changes.items():
            record = rows.get(record_id)
            if record is None or record_id in self.mended | shown:
                continue
            value = json.loads(record.fields).get(name)
            if (record_id, name, value) in unheard:
                continue
            if name == "gone" and value is not True:
                continue  # brought back by a change of another field: looked at by check_nothing_rises
            setters = [t for t in all_told if t.op["set"][name] == value]
            # what a revoked phone had set need not be there any more, but another phone may have given it back
            others = [u for u in all_told if u.op["set"][name] != value and not self.excused(u)]
            beaten = [t for t in setters if any(followed(t, u) for u in others)]
            assert not setters or len(beaten) < len(setters), (
                f"{name} of {record_id} is {value!r} again, which was changed after {beaten[0].op}"
            )

    def check_authors(self, rows: Any) -> None:
        """Who made a record stays its author, whoever gave it back."""
        for record_id, who in self.makers.items():
            record = rows.get(record_id)
            assert record is None or record.person_id == self.persons[who], (
                f"record {record_id} of {self.persons[who]} is said to be {record.person_id}'s"
            )
        for op_id, (who, op) in self.rejected.items():
            own = who == self.stand_in and self.makers.get(op["id"]) == who and who not in self.revoked
            own = own and op["kind"] in ("note", "feeding")
            entry = self.phones[who].outbox.get(op_id) if own else None
            refused = entry is not None and entry["answer"] and entry["answer"]["code"] == "not_allowed"
            assert not refused, f"a stand-in's {op} on a log of their own was refused"

    def check_nothing_lost(self, rows: Any, trail: Any, stored: Any) -> None:
        """Every acknowledged operation is stored once, and what it asked for stands or is in the history."""
        outboxes = [phone.outbox for phone in self.phones]
        of_op: dict[str, list[Any]] = {}
        said: dict[str, list[dict[str, Any]]] = {}
        for line in trail:
            said.setdefault(line.record_id, []).extend(map(json.loads, (line.asked, line.before, line.lost)))
            if line.op_id:
                of_op.setdefault(line.op_id, []).append(line)
        gone_for_good = self.purged | self.refused_whole()
        for op_id, told in self.acknowledged.items():
            assert len(of_op.get(op_id, ())) <= 1, f"{told.op} is in the history more than once"
            if self.excused(told):
                continue
            known = told.op["id"] in rows or told.op["id"] in gone_for_good
            assert known or told.phone == self.stand_in or op_id in outboxes[told.phone], (
                f"the record of {told.op} is not there"
            )
            refused = outboxes[told.phone].get(op_id, {}).get("state") == "rejected"
            kept = stored.get(op_id) == "applied" or refused or self.too_old_to_send_again(told)
            assert kept, f"{told.op} was acknowledged and is not stored"
            if refused:
                continue  # acknowledged before a restore, refused after it: the phone shows it with its values
            record = rows.get(told.op["id"])
            if record is None:
                lost = told.op["id"] not in gone_for_good and not self.held_by_nobody(told)
                assert not lost, f"the record of {told.op} is not there"
                continue
            if record.id in self.purged or told.op["adopt"]:
                continue  # its history went with it; a copy offered after a restore yields to what is there
            if self.too_old_to_send_again(told):
                continue  # what stands is checked for itself
            seen = [json.loads(record.fields), *said.get(record.id, ())]
            for name, value in told.op["set"].items():
                assert any(name in each and each[name] == value for each in seen), (
                    f"{name} of {told.op} left no trace"
                )
        for op_id, (who, op) in self.rejected.items():
            entry = outboxes[who].get(op_id)
            answered = (
                who in self.revoked or op_id in self.acknowledged or (entry and entry["state"] == "rejected")
            )
            assert answered, f"{op} was rejected and the phone does not show it"
            if who in self.revoked:
                continue  # nobody can send it again once its parent has come
            if entry and entry["state"] == "rejected" and entry["answer"]["code"] == "parent_missing":
                missing = entry["answer"]["args"]["missing"]
                missing = op["id"] if missing == "itself" else missing
                there = missing in rows and not rows[missing].gone
                assert not there, f"{op} was refused for lack of {missing}, which is there"

    def check_nothing_rises(self, rows: Any, trail: Any) -> None:
        """A record that was deleted lives only if its history says who wanted it back.

        Nobody did if the deletion was made in the knowledge of every other change.
        """
        unheard = {op["id"] for op in self.unheard()}
        for record_id in self.purged & rows.keys() - self.mended:
            raise AssertionError(f"record {record_id} was purged and is back")
        for op_id, told in self.acknowledged.items():
            record = rows.get(told.op["id"])
            deleted = told.op["set"].get("gone") is True and not told.op["adopt"]
            if not deleted or self.excused(told) or record is None or record.gone:
                continue
            if record.id in self.mended:
                continue
            histories = [trail]
            if self.too_old_to_send_again(told):  # neither it nor what brought the record back comes again
                histories += [back.deletions for back in self.restores]
            wanted = any(wanted_back(record.id, op_id, history) for history in histories)
            assert wanted, f"record {record.id} is back from the dead after {told.op}"
            unaware = record.id in unheard or any(
                other.op["id"] == record.id
                and other.op["set"].get("gone") is not True
                and not other.op["adopt"]
                and not followed(other, told)
                for other in self.acknowledged.values()
            )
            assert unaware, f"record {record.id} lives, though all its changes were known to {told.op}"


def wanted_back(record_id: str, deletion: str, history: Sequence[Any]) -> bool:
    """Say whether a history tells who wanted a record back that this operation had deleted."""
    lines = [line for line in history if line.record_id == record_id]
    since = next((line.rev for line in lines if line.op_id == deletion), 0)
    return any(
        line.rev >= since and ("gone" in json.loads(line.lost) or json.loads(line.asked).get("gone") is False)
        for line in lines
    )


def followed(earlier: Acknowledged, later: Acknowledged) -> bool:
    """Say whether a change was made in the knowledge of another: on its phone after it, or having its revision."""
    if later.phone == earlier.phone:
        return bool(later.op["n"] > earlier.op["n"])
    return bool(later.op["base_epoch"] == earlier.epoch and later.op["base_rev"] >= earlier.rev > 0)


def difference(held: dict[str, Any], there: dict[str, Any]) -> str:
    """Name the first few records in which a phone and the server differ."""
    names = [i for i in sorted(held.keys() | there.keys()) if held.get(i) != there.get(i)]
    return "; ".join(f"{i}: phone {held.get(i)}, server {there.get(i)}" for i in names[:3])
