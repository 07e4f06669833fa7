"""Answering operations: a verdict for each, and no operation that stops another.

All of a request are tried together; when something unforeseen comes of it, each by itself.
"""

from __future__ import annotations

import json
from collections.abc import Sequence
from functools import cache
from typing import Any, Final

from sqlalchemy import Select, bindparam, select

from ..logs import say_failure
from ..model.gauges import DAY_MS
from ..model.kinds import KINDS
from ..people.actor import Actor
from ..people.tables import devices
from ..records.database import is_about_one_row
from ..records.merge import corrected_ms
from ..records.purge import purged_among
from ..records.quick.many_rows import insert_rows, is_among_some, some
from ..records.store import Ledger
from ..records.tables import operations as operations_table
from ..records.types import is_uuid
from .batch import Batch, Outcome
from .envelope import MOST_OPERATIONS, Operation
from .operations import Deferred, apply
from .quick_texts import answer_text
from .who_may_write import Refused

PATIENCE_MS: Final = 30 * DAY_MS
"""How long an operation may wait for its parent: as long as phones keep what they could offer after a restore."""


def answer_operations(
    ledger: Ledger, actor: Actor, operations: Sequence[Operation], now_ms: int, *, epoch_known: bool
) -> Outcome:
    """Apply what can be applied and write it; return a verdict for every operation.

    ``epoch_known``: the phone already works under the present epoch, so what it could offer after a restore
    has been on its way. All are tried together; when something unforeseen comes of it, each by itself, so that
    only the one that it comes of is refused.
    """
    try:
        with ledger.savepoint():
            together = Batch.begin(ledger, actor, operations, now_ms)
            return _answer_all(together, operations, epoch_known=epoch_known, each_alone=False)
    except Exception as error:
        if not is_about_one_row(error):
            raise
        say_failure("operations are answered one by one", error, household_id=ledger.household_id)
    one_by_one = Batch.begin(ledger, actor, operations, now_ms)
    return _answer_all(one_by_one, operations, epoch_known=epoch_known, each_alone=True)


def _answer_all(
    batch: Batch, operations: Sequence[Operation], *, epoch_known: bool, each_alone: bool
) -> Outcome:
    ledger, outcome = batch.ledger, batch.outcome
    before = _earlier_answers(ledger, [op.op_id for op in operations])
    mentioned = _mentioned_ids(operations)
    ledger.load(mentioned)
    if ledger.purged_rev:
        lacking = [record_id for record_id in mentioned if ledger.get(record_id) is None]
        outcome.purged = purged_among(ledger.connection, ledger.household_id, lacking)
    fresh: list[dict[str, Any]] = []
    waiting: list[tuple[int, Operation]] = []
    for op in operations:
        answer = before.get(op.op_id)
        if answer is None:
            decide = _verdict_alone if each_alone else _verdict
            answer = decide(batch, op)
            if answer["verdict"] == "deferred":
                waiting.append((len(outcome.answers), op))
                outcome.awaited.add(op.id)
            else:
                fresh.append(answer)
                before[op.op_id] = answer
        outcome.answers.append(answer)
    if epoch_known and not fresh and len(operations) < MOST_OPERATIONS:
        # nothing else is on its way from this phone, no parent either
        for place, op in waiting:
            if corrected_ms(op.made_at, op.skew_ms, batch.now_ms) < batch.now_ms - PATIENCE_MS:
                answer = _rejected(op, "parent_missing", **outcome.answers[place]["args"])
                outcome.answers[place] = answer
                fresh.append(answer)
    _name_rivals(ledger, outcome.answers)
    _remember(batch, fresh)
    ledger.flush()
    return outcome


def _remember(batch: Batch, fresh: Sequence[dict[str, Any]]) -> None:
    insert_rows(
        batch.ledger.connection,
        operations_table,
        [
            {
                "household_id": batch.ledger.household_id,
                "op_id": answer["op_id"],
                "device_id": batch.actor.device_id,
                "verdict": answer["verdict"],
                "received_ms": batch.now_ms,
                "answer": answer_text(answer),
            }
            for answer in fresh
        ],
    )


def _verdict(batch: Batch, op: Operation) -> dict[str, Any]:
    try:
        return apply(batch, op)
    except Refused as refusal:
        return _rejected(op, refusal.code, **refusal.args_)
    except Deferred as wait:
        return {"op_id": op.op_id, "verdict": "deferred", "args": {"missing": wait.missing}}


def _verdict_alone(batch: Batch, op: Operation) -> dict[str, Any]:
    """Decide and write one operation by itself; what is unforeseen refuses it and leaves nothing behind."""
    try:
        with batch.ledger.savepoint():
            return _verdict(batch, op)
    except Exception as error:
        if not is_about_one_row(error):
            raise
        say_failure(
            "operation failed", error, op_id=op.op_id, kind=op.kind if op.kind in KINDS else "unknown"
        )
        return _rejected(op, "failed")


def _rejected(op: Operation, code: str, **args: Any) -> dict[str, Any]:
    return {"op_id": op.op_id, "verdict": "rejected", "code": code, "args": args}


def _name_rivals(ledger: Ledger, answers: Sequence[dict[str, Any]]) -> None:
    """Say who the other one was: stamps know the device, people know each other by name."""
    met = [conflict for answer in answers for conflict in answer.get("conflicts", ()) if "device" in conflict]
    if not met:
        return
    rows = ledger.connection.execute(
        select(devices.c.id, devices.c.person_id).where(
            devices.c.household_id == ledger.household_id, devices.c.id.in_({c["device"] for c in met})
        )
    )
    person_of = {row.id: row.person_id for row in rows}
    for conflict in met:
        conflict["by"] = person_of.get(conflict.pop("device"))


def _earlier_answers(ledger: Ledger, op_ids: Sequence[str]) -> dict[str, dict[str, Any]]:
    asked = {"household_id": ledger.household_id, **some(ledger.connection, op_ids)}
    rows = ledger.connection.execute(_answers(ledger.connection.dialect.name), asked)
    return {row.op_id: json.loads(row.answer) for row in rows}


@cache  # made once: tests.bench.sync_cost, a twentieth of one log
def _answers(dialect: str) -> Select[Any]:
    o = operations_table.c
    here = o.household_id == bindparam("household_id")
    return select(o.op_id, o.answer).where(here, is_among_some(dialect, o.op_id))


def _mentioned_ids(operations: Sequence[Operation]) -> list[str]:
    ids = [op.id for op in operations]
    ids += [op.past.by for op in operations if op.past is not None and op.past.by is not None]
    for op in operations:
        if op.kind in KINDS:
            specs = KINDS[op.kind].fields
            ids += [v for k, v in op.set.items() if k in specs and specs[k].refers_to and is_uuid(v)]
    return ids
