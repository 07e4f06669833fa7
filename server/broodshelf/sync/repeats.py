"""One task that was answered twice: both logs stay, the second is marked and not counted until confirmed.

Records are compared, not phones: two tabs of one phone know as little of each other as two phones do. Who logs twice
in full knowledge of the first log answers two tasks, since a run of a gauge has the key of the log that it began with.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any, Final

from sqlalchemy import select

from ..records.quick.many_rows import is_among
from ..records.store import Ledger, indexed_task_key
from ..records.tables import records
from .envelope import Operation

_ANSWERING: Final = ("feeding", "water")
"""Kinds with which a task can be answered twice."""

Answered = dict[str, list[str]]
"""The ids of the logs that answered each task, by colony, kind and task key; some may be gone since."""


def answered_tasks(ledger: Ledger, operations: Sequence[Operation]) -> Answered:
    """Return, for the task keys of these operations, the logs that already answered each task."""
    keys = {key for op in operations if (key := indexed_task_key(op.set))}
    if not keys:
        return {}
    c = records.c
    rows = ledger.connection.execute(
        select(c.id, c.kind, c.colony_id, c.task_key).where(
            c.household_id == ledger.household_id,
            c.task_key.is_not(None),
            is_among(ledger.connection, c.task_key, keys),
            c.kind.in_(_ANSWERING),
            c.gone.is_(False),
        )
    ).all()
    found: Answered = {}
    for row in rows:
        found.setdefault(f"{row.colony_id}/{row.kind}/{row.task_key}", []).append(row.id)
    ledger.load(record_id for ids in found.values() for record_id in ids)
    return found


def is_repeat(ledger: Ledger, op: Operation, values: Mapping[str, Any], answered: Answered) -> bool:
    """Say whether another log that still stands answered the task of this new one; remember the new one.

    ``values``: the fields of a record that is not there yet. What was taken back, in the same request too, answers
    nothing.
    """
    key = values.get("task_key")
    if not key or op.kind not in _ANSWERING or _only_looks(values):
        return False
    ids = answered.setdefault(f"{values.get('colony_id')}/{op.kind}/{key}", [])
    repeats = not values.get("gone") and any(_stands(ledger, each) for each in ids if each != op.id)
    ids.append(op.id)
    return repeats


def _stands(ledger: Ledger, record_id: str) -> bool:
    record = ledger.get(record_id)
    return record is not None and not record.gone and not _only_looks(record.values)


def _only_looks(values: Mapping[str, Any]) -> bool:
    """Say whether a log only tells a level: nothing is given by it, so it neither repeats nor is repeated."""
    return values.get("action") == "read"
