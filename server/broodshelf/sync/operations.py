"""Applying one operation: may it be, is it whole, and how it changes its record.

The guard, the validation and the merge all follow from the registry (model/kinds).
"""

from __future__ import annotations

import json
from typing import Any, Final

from ..care.plan.risk import may_be_risky
from ..model.kinds import KINDS, read, required_fields
from ..model.kinds.log import Feeding
from ..records.merge import Asked, Merged, merge
from ..records.schemas import check_fields
from ..records.store import Record, Revision
from . import offers
from .batch import Batch, Change, Outcome
from .envelope import Operation, Past
from .repeats import is_repeat
from .who_may_write import Refused, guard, refused_because

LARGEST_SET_BYTES: Final = 32_768
"""No record that passes its checks is larger; a rejected one says so if it is."""
HOUSE_WIDE: Final = frozenset({"household", "place", "vessel", "lot", "rule", "tasting", "climate"})
"""Kinds whose change can alter the plan of colonies that the record does not name."""


class Deferred(Exception):  # noqa: N818
    """The operation waits for a record that is not here yet: its id, or ``itself``."""

    def __init__(self, missing: str) -> None:
        self.missing = missing


def apply(batch: Batch, op: Operation) -> dict[str, Any]:
    """Apply one operation to the ledger and return its answer. Raises ``Refused`` or ``Deferred``.

    The outcome of the batch gets the colonies whose plans change by it.
    """
    change = _read(batch, op)
    guard(batch, change)
    purged = batch.outcome.purged
    if op.adopt and op.id in purged:
        return _applied(op, 0)
    past = offers.past_of(batch.ledger, op, batch.now_ms) if op.adopt else None
    if past is not None:
        return _take_offer(batch, change, past)
    if op.adopt and change.record is not None:
        return _applied(op, change.record.rev)
    if op.id in purged:
        raise Refused("purged")
    if change.record is None:
        _require_whole(change, batch.outcome.awaited)
    _require_parents(batch, change)
    return _store(batch, change)


def _read(batch: Batch, op: Operation) -> Change:
    """Return what an operation would change. Raises ``Refused`` for a kind or a field that cannot be."""
    kind = KINDS.get(op.kind)
    if kind is None:
        raise Refused("unknown_kind", kind=op.kind)
    if kind.group == "derived":
        raise Refused("not_allowed")
    values, error = check_fields(op.kind, op.set)
    if error is not None:
        if len(json.dumps(op.set, ensure_ascii=False)) > LARGEST_SET_BYTES:
            raise Refused("too_large", bytes=LARGEST_SET_BYTES)
        raise Refused(error.code, field=error.field, why=error.why, reason=error.wanted, **(error.args or {}))
    record = batch.ledger.get(op.id)
    if record is not None and record.kind != op.kind:
        raise Refused("kind_differs", kind=record.kind)
    return Change(op, kind, values, record)


def _take_offer(batch: Batch, change: Change, past: Past) -> dict[str, Any]:
    author = offers.unknown_author(batch.ledger, past, change.op, batch.outcome.purged)
    if author is not None:
        raise Deferred(author)
    record = change.record
    if record is None:
        _require_whole(change, batch.outcome.awaited)
        _require_parents(batch, change)
        record = offers.insert_past(batch, change, past)
    else:
        batch.outcome.touched |= _colonies(record)
        if not offers.merge_offer(batch, change, past, record):
            return _applied(change.op, record.rev)
    _note(batch.outcome, record)
    return _applied(change.op, record.rev)


def _require_whole(change: Change, awaited: set[str]) -> None:
    """A record that is not here needs all that makes one; a lone change waits for the record itself.

    A record that the phone saw (``base_rev``) and that was not purged went with a restore: some phone offers it.
    Only what names its colony or place and lacks something else was meant to make a record and never can.
    """
    op, kind, values = change.op, change.kind, change.values
    if (op.base_rev > 0 and not op.adopt) or op.id in awaited:
        raise Deferred("itself")
    missing = required_fields(kind) - values.keys()
    if not missing and (op.adopt or not values.keys() <= {"gone"}):
        return
    meant_whole = any(kind.fields[name].required and kind.fields[name].refers_to for name in values)
    if missing and (op.adopt or meant_whole):
        raise Refused("missing_field", field=min(missing))
    raise Deferred("itself")


def _require_parents(batch: Batch, change: Change) -> None:
    for name, value in change.values.items():
        target = change.kind.fields[name].refers_to
        if target is None or value is None:
            continue
        parent = batch.ledger.get(value)
        if parent is None and value in batch.outcome.purged:
            raise Refused("parent_missing", missing=value)
        if parent is None:
            raise Deferred(value)
        if parent.kind != target:
            raise refused_because("bad_value", name, "other_kind", names=parent.kind, wanted=target)


def _store(batch: Batch, change: Change) -> dict[str, Any]:
    ledger, actor, op = batch.ledger, batch.actor, change.op
    merged = _merged(batch, change)
    record = change.record or _new_record(batch, change)
    if change.record is not None:
        batch.outcome.touched |= _colonies(record)
    before = {name: record.values.get(name) for name in merged.wins}
    beaten = {m.field: m.mine if m.winner == "theirs" else m.theirs for m in merged.meetings} | merged.past
    changed = any(record.values.get(k, _ABSENT) != v for k, v in merged.wins.items())
    conflicts = [
        {
            "field": m.field,
            "winner": m.winner,
            "mine": m.mine,
            "theirs": m.theirs,
            "device": m.device_id,
            "at_ms": m.at_ms,
        }
        for m in merged.meetings
    ]
    # the same again, but later: what else comes back after a restore is measured by it
    later = op.base_epoch != ledger.epoch and bool(merged.wins)
    if not changed and not conflicts and not merged.past and not later and record.rev:
        return _applied(op, record.rev) | _taken_for(op, change.made_ms(batch.now_ms))
    record.values.update(merged.wins)
    record.stamps.update(dict.fromkeys(merged.wins, (ledger.rev + 1, merged.made_ms, actor.device_id)))
    revision = Revision(
        op.id, op.op_id, actor.person_id, actor.device_id, batch.now_ms, change.values, before, beaten
    )
    applied = _applied(op, ledger.write(record, revision))
    _note(batch.outcome, record)
    return applied | {"conflicts": conflicts} | _taken_for(op, merged.made_ms)


def _taken_for(op: Operation, made_ms: int) -> dict[str, Any]:
    """Return what a verdict says of the time for which it was taken: what is sent again after a restore is of it."""
    return {} if made_ms == op.made_at + op.skew_ms else {"made_ms": made_ms}


def _merged(batch: Batch, change: Change) -> Merged:
    """Return what wins over what stands; of a new record everything."""
    op, record, made_ms = change.op, change.record, change.made_ms(batch.now_ms)
    if record is not None:
        asked = Asked(
            fields=change.values,
            base_rev=op.base_rev if op.base_epoch == batch.ledger.epoch else None,
            made_ms=made_ms,
            device_id=batch.actor.device_id,
            said_ms=op.made_at + op.skew_ms,
        )
        return merge(record.values, record.stamps, asked)
    merged = Merged(made_ms, wins=dict(change.values))
    if change.kind.group == "event" and is_repeat(batch.ledger, op, change.values, batch.answered):
        merged.wins["possible_repeat"] = True
    return merged


def _new_record(batch: Batch, change: Change) -> Record:
    op, actor, made_ms = change.op, batch.actor, change.made_ms(batch.now_ms)
    return Record(op.id, op.kind, 0, False, None, None, made_ms, actor.person_id, actor.device_id, {})


def _applied(op: Operation, rev: int) -> dict[str, Any]:
    return {"op_id": op.op_id, "verdict": "applied", "rev": rev, "conflicts": []}


def _note(outcome: Outcome, record: Record) -> None:
    """Note what follows from a record that changed."""
    if record.kind == "pass":
        outcome.passes.add(record.id)
    if record.kind == "person":
        outcome.note_person(record.id, gone=record.values.get("gone"))
    outcome.touched |= _colonies(record)
    # what was given despite a refusal concerns all that got the same lot
    refused = record.kind == "feeding" and may_be_risky(read(Feeding, record.values))
    outcome.touches_all = outcome.touches_all or record.kind in HOUSE_WIDE or refused


_ABSENT: Final = object()


def _colonies(record: Record) -> set[str]:
    found = {record.id} if record.kind == "colony" else {record.values.get("colony_id")}
    return {colony for colony in found if colony}
