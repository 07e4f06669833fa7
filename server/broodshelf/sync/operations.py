"""Applying one operation: may it be, is it whole, and how it changes its record.

The guard, the validation and the merge all follow from the registry (model/kinds).
"""

from __future__ import annotations

import json
from dataclasses import dataclass, field
from typing import Any, Final

from ..care.plan.risk import may_be_risky
from ..model.kinds import KINDS, Kind, required_fields
from ..people.actor import Actor
from ..records.merge import Merged, corrected_ms, merge
from ..records.schemas import check_fields
from ..records.store import Ledger, Record, Revision
from . import offers
from .envelope import Operation, Past
from .guard import Refused, guard
from .repeats import Answered, is_repeat

LARGEST_SET_BYTES: Final = 32_768
"""No record that passes its checks is larger; a rejected one says so if it is."""
HOUSE_WIDE: Final = frozenset({"household", "place", "vessel", "lot", "rule", "tasting", "climate"})
"""Kinds whose change can alter the plan of colonies that the record does not name."""


@dataclass(slots=True)
class Outcome:
    """The answers in the order of the operations, and which colonies' plans have to be made again."""

    answers: list[dict[str, Any]] = field(default_factory=list)
    touched: set[str] = field(default_factory=set)
    touches_all: bool = False
    awaited: set[str] = field(default_factory=set)
    """Records that an earlier operation of the same request would have made, had its parent been here."""
    purged: frozenset[str] = frozenset()
    """Which of the mentioned records were purged: they stay gone."""
    passes: set[str] = field(default_factory=set)
    """Passes that changed: what was put off under them may end earlier now."""
    left: set[str] = field(default_factory=set)
    """People who were deleted: what they came in by ends with them (``people.leaving``)."""
    back: set[str] = field(default_factory=set)
    """People who were deleted once and are there again."""


class Deferred(Exception):  # noqa: N818
    """The operation waits for a record that is not here yet: its id, or ``itself``."""

    def __init__(self, missing: str) -> None:
        self.missing = missing


def apply(
    ledger: Ledger, actor: Actor, op: Operation, now_ms: int, answered: Answered, outcome: Outcome
) -> dict[str, Any]:
    """Apply one operation to the ledger and return its answer. Raises ``Refused`` or ``Deferred``.

    ``answered``: the logs that answered each task; ``outcome`` gets the colonies whose plans change by it.
    """
    kind = KINDS.get(op.kind)
    if kind is None:
        raise Refused("unknown_kind", kind=op.kind)
    if kind.group == "derived":
        raise Refused("not_allowed")
    values, error = check_fields(op.kind, op.set)
    if error is not None:
        if len(json.dumps(op.set, ensure_ascii=False)) > LARGEST_SET_BYTES:
            raise Refused("too_large", bytes=LARGEST_SET_BYTES)
        raise Refused(error.code, field=error.field, why=error.why)
    record = ledger.get(op.id)
    if record is not None and record.kind != op.kind:
        raise Refused("kind_differs", kind=record.kind)
    guard(ledger, actor, kind, op, values, record, now_ms)
    if op.adopt and op.id in outcome.purged:
        return _applied(op, 0)
    past = offers.past_of(ledger, op, now_ms) if op.adopt else None
    if past is not None:
        return _take_offer(ledger, actor, kind, op, values, record, now_ms, past, outcome)
    if op.adopt and record is not None:
        return _applied(op, record.rev)
    if op.id in outcome.purged:
        raise Refused("purged")
    if record is None:
        _require_whole(kind, op, values, outcome.awaited)
    _require_parents(ledger, kind, values, outcome.purged)
    return _store(ledger, actor, kind, op, values, record, now_ms, answered, outcome)


def _take_offer(
    ledger: Ledger,
    actor: Actor,
    kind: Kind,
    op: Operation,
    values: dict[str, Any],
    record: Record | None,
    now_ms: int,
    past: Past,
    outcome: Outcome,
) -> dict[str, Any]:
    author = offers.unknown_author(ledger, past, op, outcome.purged)
    if author is not None:
        raise Deferred(author)
    if record is None:
        _require_whole(kind, op, values, outcome.awaited)
        _require_parents(ledger, kind, values, outcome.purged)
        record = offers.insert_past(ledger, actor, op, values, past)
    else:
        outcome.touched |= _colonies(record)
        if not offers.merge_offer(ledger, actor, kind, op, values, past, record, now_ms):
            return _applied(op, record.rev)
    _note(outcome, record)
    return _applied(op, record.rev)


def _require_whole(kind: Kind, op: Operation, values: dict[str, Any], awaited: set[str]) -> None:
    """A record that is not here needs all that makes one; a lone change waits for the record itself.

    A record that the phone saw (``base_rev``) and that was not purged went with a restore: some phone offers it.
    Only what names its colony or place and lacks something else was meant to make a record and never can.
    """
    if (op.base_rev > 0 and not op.adopt) or op.id in awaited:
        raise Deferred("itself")
    missing = required_fields(kind) - values.keys()
    if not missing and (op.adopt or not values.keys() <= {"gone"}):
        return
    meant_whole = any(kind.fields[name].required and kind.fields[name].refers_to for name in values)
    if missing and (op.adopt or meant_whole):
        raise Refused("missing_field", field=min(missing))
    raise Deferred("itself")


def _require_parents(ledger: Ledger, kind: Kind, values: dict[str, Any], purged: frozenset[str]) -> None:
    for name, value in values.items():
        target = kind.fields[name].refers_to
        if target is None or value is None:
            continue
        parent = ledger.get(value)
        if parent is None and value in purged:
            raise Refused("parent_missing", missing=value)
        if parent is None:
            raise Deferred(value)
        if parent.kind != target:
            raise Refused("bad_value", field=name, why=f"Names a {parent.kind}, not a {target}.")


def _store(
    ledger: Ledger,
    actor: Actor,
    kind: Kind,
    op: Operation,
    values: dict[str, Any],
    record: Record | None,
    now_ms: int,
    answered: Answered,
    outcome: Outcome,
) -> dict[str, Any]:
    made = corrected_ms(op.made_at, op.skew_ms, now_ms)
    if record is None:
        record = Record(op.id, op.kind, 0, False, None, None, made, actor.person_id, actor.device_id, {})
        merged = Merged(made, wins=dict(values))
        if kind.group == "event" and is_repeat(ledger, op, values, answered):
            merged.wins["possible_repeat"] = True
    else:
        base = op.base_rev if op.base_epoch == ledger.epoch else None
        merged = merge(
            record.values,
            record.stamps,
            values,
            base_rev=base,
            made_ms=made,
            device_id=actor.device_id,
            said_ms=op.made_at + op.skew_ms,
        )
        outcome.touched |= _colonies(record)
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
        return _applied(op, record.rev)
    record.values.update(merged.wins)
    record.stamps.update(dict.fromkeys(merged.wins, (ledger.rev + 1, merged.made_ms, actor.device_id)))
    revision = Revision(op.id, op.op_id, actor.person_id, actor.device_id, now_ms, values, before, beaten)
    answer = {**_applied(op, ledger.write(record, revision)), "conflicts": conflicts}
    if merged.made_ms != op.made_at + op.skew_ms:
        answer["made_ms"] = merged.made_ms  # what the phone sends again after a restore is of this time
    _note(outcome, record)
    return answer


def _applied(op: Operation, rev: int) -> dict[str, Any]:
    return {"op_id": op.op_id, "verdict": "applied", "rev": rev, "conflicts": []}


def _note(outcome: Outcome, record: Record) -> None:
    """Note what follows from a record that changed."""
    if record.kind == "pass":
        outcome.passes.add(record.id)
    if record.kind == "person" and record.gone:
        outcome.left.add(record.id)
    if record.kind == "person" and record.values.get("gone") is False:
        outcome.back.add(record.id)
    outcome.touched |= _colonies(record)
    # what was given despite a refusal concerns all that got the same lot
    refused = record.kind == "feeding" and may_be_risky(record.values)
    outcome.touches_all = outcome.touches_all or record.kind in HOUSE_WIDE or refused


_ABSENT: Final = object()


def _colonies(record: Record) -> set[str]:
    found = {record.id} if record.kind == "colony" else {record.values.get("colony_id")}
    return {colony for colony in found if colony}
