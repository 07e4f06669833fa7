"""Where phones met: the history is walked through, and each field's stamp is reckoned anew beside the server's."""

from __future__ import annotations

import json
from bisect import bisect_right
from collections import defaultdict
from collections.abc import Iterable, Mapping
from typing import Any, NamedTuple

from tests.support.world.excuses import Excuses
from tests.support.world.state import Acknowledged


class Setting(NamedTuple):
    """How a field was set last: with which revision, on which device, to what, and when that counts as made."""

    rev: int
    device: str | None
    value: Any
    made_ms: int


NEVER = Setting(0, None, None, -1)
Fields = dict[str, Setting]


class Meetings(Excuses):
    """Who overwrote what without having seen it must have left it in ``lost``, and its phone must have been told."""

    def check_conflicts_have_a_trace(self, trail: Iterable[Any]) -> None:
        """Walk through the history, ``trail``.

        An edit that met a deletion and a deletion that met an edit, unseen by each other, are conflicts too.
        """
        last: dict[str, Fields] = defaultdict(dict)
        conflicts = [phone.conflicts for phone in self.phones]
        for line in trail:
            fields, op = last[line.record_id], self.operation_of(line)
            if op is not None and self.knew_its_base(op, line):
                check_the_unseen(op, line, fields)
            heard = self.told.get((line.op_id or "", line.rev))
            if heard is not None and self.waited_for_it(heard) and met(op, line, fields):
                assert line.op_id in conflicts[heard.phone], (
                    f"phone {heard.phone} was not told of {json.loads(line.lost)}"
                )
            self.set_fields(op, line, fields)

    def waited_for_it(self, heard: Acknowledged) -> bool:
        """Say whether a phone that is in use waited for this answer.

        What has left its journal a tab may still send that was frozen before, and nobody waits for the answer.
        """
        return heard.phone not in self.revoked and not self.too_old_to_send_again(heard)

    def operation_of(self, line: Any) -> dict[str, Any] | None:
        """Return the operation that a line of the history tells of, as it was sent; None for the server's own."""
        heard = self.told.get((line.op_id or "", line.rev))
        return heard.op if heard is not None else self.asked.get(line.op_id or "")

    def knew_its_base(self, op: Mapping[str, Any], line: Any) -> bool:
        """Say whether an operation was made under the epoch in which this line was written."""
        begun = bisect_right(self.epochs, (line.rev,)) - 1
        return bool(not op["adopt"] and op["base_epoch"] == self.epochs[begun][1])

    def set_fields(self, op: dict[str, Any] | None, line: Any, fields: Fields) -> None:
        """Set what a line of the history sets. What takes the place of a value counts as made after it."""
        asked, lost = json.loads(line.asked), json.loads(line.lost)
        known = op is None or self.knew_its_base(op, line)
        wins = {}
        for name, value in asked.items():
            device, made_ms = set_by(op, line, name)
            stood = fields.get(name, NEVER)
            if not known and stood.value == value and made_ms <= stood.made_ms:
                continue  # sent again after a restore, it is no later than the same value that stands
            if name not in lost or lost[name] != value:  # else it did not win: what stood stands
                wins[name] = Setting(line.rev, device, value, made_ms)
        if lost.get("gone") and "gone" not in asked:  # the edit was later: the record lives
            wins["gone"] = Setting(line.rev, line.device_id, False, set_by(op, line, "gone")[1])
        if op is None or not op["adopt"]:
            beaten = fields.keys() if asked.get("gone") is True else wins.keys() & fields.keys()
            after_ms = max((fields[name].made_ms + 1 for name in beaten), default=0)
            wins = {name: each._replace(made_ms=max(each.made_ms, after_ms)) for name, each in wins.items()}
        fields.update(wins)


def check_the_unseen(op: Mapping[str, Any], line: Any, fields: Fields) -> None:
    """Check that what an operation met, knowing less, is in ``lost``."""
    asked, lost = json.loads(line.asked), json.loads(line.lost)
    unseen = {
        name: each.value
        for name, each in fields.items()
        if each.rev > op["base_rev"] and each.device != line.device_id
    }
    for name in unseen.keys() & asked.keys():
        seen = unseen[name] == asked[name] or name in lost
        assert seen, f"{op} met {unseen[name]!r} in {name} without a trace"
    if "gone" not in asked and unseen.get("gone"):
        assert "gone" in lost, f"{op} met a deletion without a trace"
    stood = not fields.get("gone", NEVER).value
    if asked.get("gone") is True and stood and unseen:
        assert "gone" in lost, f"deletion {op} met an edit without a trace"


def met(op: Mapping[str, Any] | None, line: Any, fields: Fields) -> set[str]:
    """Return the fields of a line in which another phone was met; one never meets itself.

    A deletion that is sent again yields to the phone's own later change of any field.
    """
    asked, lost = json.loads(line.asked), json.loads(line.lost)
    found = {name for name in lost if fields.get(name, NEVER).device != line.device_id}
    if asked.get("gone") is True and op is not None:
        said_ms = op["made_at"] + op["skew_ms"]
        if any(each.device == line.device_id and each.made_ms > said_ms for each in fields.values()):
            found.discard("gone")
    return found


def set_by(op: Mapping[str, Any] | None, line: Any, name: str) -> tuple[str | None, int]:
    """Return by which device a line of the history sets a field, and when that was made, at the latest now."""
    if op is None:
        return line.device_id, line.at_ms
    if op["adopt"]:
        made_ms, device = op["stamps"].get(name, (op["made_ms"], op["device"]))
        return device, made_ms
    return line.device_id, min(op["made_at"] + op["skew_ms"], line.at_ms)
