"""The statements of ``store``, made once: making one takes about as long as having PostgreSQL answer it.

``python -m tests.bench.many_homes`` (the processor of a log) pays for it.
"""

from __future__ import annotations

from functools import cache
from typing import Any

from sqlalchemy import Select, and_, bindparam, select, update

from ..tables import households, records
from .many_rows import is_among_some

LOCKED = (
    select(households.c.rev, households.c.epoch, households.c.purged_rev, households.c.created_ms)
    .where(households.c.id == bindparam("household_id"))
    .with_for_update()
)
NUMBERED = update(households).where(households.c.id == bindparam("household")).values(rev=bindparam("now"))
ONE = select(records).where(
    records.c.household_id == bindparam("household_id"), records.c.id == bindparam("record_id")
)


@cache
def these(dialect: str) -> Select[Any]:
    """The records of a household with ``some`` ids."""
    here = records.c.household_id == bindparam("household_id")
    return select(records).where(here, is_among_some(dialect, records.c.id))


MUTABLE = ("rev", "gone", "colony_id", "happened_ms", "topic", "task_key", "fields", "stamps")
UPDATE = (
    update(records)
    .where(and_(records.c.household_id == bindparam("b_household_id"), records.c.id == bindparam("b_id")))
    .values({name: bindparam(f"b_{name}") for name in MUTABLE})
)


OF_KINDS = (
    select(records)
    .where(
        records.c.household_id == bindparam("household_id"),
        records.c.kind.in_(bindparam("kinds", expanding=True)),
    )
    .order_by(records.c.kind, records.c.id)  # as its index has them
)
OF_KINDS_THERE = OF_KINDS.where(records.c.gone.is_(False))
