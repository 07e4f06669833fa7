"""Two people who answered the same task: both logs stay, the second is marked and not counted until confirmed."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any, Final

from sqlalchemy import select

from ..people.actor import Actor
from ..records.many_rows import is_among
from ..records.store import Ledger, indexed_task_key
from ..records.tables import records
from .envelope import Operation

_ANSWERING: Final = ("feeding", "water")
"""Kinds with which two people can answer the same task."""


def answered_tasks(ledger: Ledger, operations: Sequence[Operation]) -> dict[str, str | None]:
    """Return, for the task keys of these operations, the device that already answered each task."""
    keys = {key for op in operations if (key := indexed_task_key(op.set))}
    if not keys:
        return {}
    c = records.c
    rows = ledger.connection.execute(
        select(c.rev, c.device_id, c.kind, c.colony_id, c.task_key).where(
            c.household_id == ledger.household_id,
            c.task_key.is_not(None),
            is_among(ledger.connection, c.task_key, keys),
            c.kind.in_(_ANSWERING),
            c.gone.is_(False),
        )
    ).all()
    # put in order here: asked for in the order of rev, SQLite would walk through all revs of the household
    latest_first = sorted(rows, key=lambda row: -row.rev)
    return {f"{row.colony_id}/{row.kind}/{row.task_key}": row.device_id for row in latest_first}


def is_repeat(op: Operation, values: dict[str, Any], actor: Actor, repeats: dict[str, str | None]) -> bool:
    """Two people who answered the same task: both logs stay, the second is marked and not counted."""
    key = values.get("task_key")
    if not key or op.kind not in _ANSWERING:
        return False
    name = f"{values.get('colony_id')}/{op.kind}/{key}"
    first = repeats.setdefault(name, actor.device_id)
    return first != actor.device_id
