"""What phones offer after a restore: whole records with their past. Nothing is stamped as of now.

An offer says who made the record, when and on which device, and when each field was set again. Only keepers offer, only
what is of an earlier epoch of a household that was restored counts as the past, and no time lies ahead of the server's:
what else a phone claims is taken as a record of its own, if the household has none of that id.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from ..records.home.ending import ended_ms
from ..records.ids import made_ms_of
from ..records.merge import Made, corrected_ms, merge_past
from ..records.store import Ledger, Record, Revision
from .batch import Batch, Change
from .envelope import Operation, Past


def past_of(ledger: Ledger, op: Operation, now_ms: int) -> Past | None:
    """Return the past that an offer may claim, with no time ahead of now; None if it has none to claim.

    An app that knows no such facts offered the record as of its making, which the id tells.
    """
    if not ledger.restored or op.base_epoch in (None, ledger.epoch):
        return None
    if op.past is None:
        made = min(made_ms_of(op.id), corrected_ms(op.made_at, op.skew_ms, now_ms))
        return Past(None, made, None, {})
    stamps = {name: (min(at_ms, now_ms), device) for name, (at_ms, device) in op.past.stamps.items()}
    return Past(op.past.by, min(op.past.made_ms, now_ms), op.past.device, stamps)


def unknown_author(ledger: Ledger, past: Past, op: Operation, purged: frozenset[str]) -> str | None:
    """Return the id of an author whom the household does not know (yet), or None."""
    if past.by is None or past.by in purged or (op.kind == "person" and op.id == past.by):
        return None
    author = ledger.get(past.by)
    return None if author is not None and author.kind == "person" else past.by


def insert_past(batch: Batch, change: Change, past: Past) -> Record:
    """Make the record that was lost as it was: its author, its making, the times of its fields."""
    ledger, actor, op, values = batch.ledger, batch.actor, change.op, change.values
    author = past.by or actor.person_id
    made = _made(values, past)
    values = {**values, **_ended(ledger, op, made)}
    record = Record(op.id, op.kind, 0, False, None, None, past.made_ms, author, past.device, dict(values))
    record.stamps = {name: (ledger.rev + 1, *made[name]) for name in values}
    at_ms = max(at_ms for at_ms, _device in made.values())
    before = dict.fromkeys(values)
    revision = Revision(op.id, op.op_id, author, past.device, at_ms, dict(values), before, {})
    ledger.write(record, revision)
    return record


def _ended(ledger: Ledger, op: Operation, made: dict[str, Made]) -> dict[str, Any]:
    """Return what an older copy of a pass or a person does not say: that it was ended. Adds when to ``made``."""
    connection, household_id = ledger.connection, ledger.household_id
    if op.kind == "pass":
        at_ms, field, value = ended_ms(connection, "pass", household_id, op.id), "revoked_at_ms", None
    elif op.kind == "person":
        at_ms, field, value = ended_ms(connection, "person", household_id, op.id), "gone", True
    else:
        return {}
    if at_ms is None:
        return {}
    made[field] = (at_ms, None)
    return {field: at_ms if value is None else value}


def merge_offer(batch: Batch, change: Change, past: Past, record: Record) -> bool:
    """Take from an offered record what was set later than what stands (``record``); say whether anything changed.

    Fields that only the server writes stay as they are: a phone's copy may be older than what ended meanwhile.
    """
    ledger, actor, op = batch.ledger, batch.actor, change.op
    offered = {
        name: value for name, value in change.values.items() if "keeper" in change.kind.fields[name].writers
    }
    made = _made(offered, past)
    wins = merge_past(record.values, record.stamps, offered, made)
    if not wins:
        return False
    before = {name: record.values.get(name) for name in wins}
    changed = any(name not in record.values or before[name] != value for name, value in wins.items())
    latest = max(made.values(), key=lambda stamp: stamp[0])
    record.values.update(wins)
    record.stamps.update({name: (ledger.rev + 1, *made.get(name, latest)) for name in wins})
    revision = Revision(op.id, op.op_id, actor.person_id, actor.device_id, batch.now_ms, wins, before, {})
    ledger.write(record, revision if changed else None)
    return changed


def _made(values: Mapping[str, Any], past: Past) -> dict[str, Made]:
    first = (past.made_ms, past.device)
    return {name: past.stamps.get(name, first) for name in values}
