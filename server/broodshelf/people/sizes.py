"""How large households are: what the operator's list shows and a household's share is counted by.

Records count as long as they are not gone; plans do not, because the server makes them. Bytes are those of the texts
in the database (records, their history, answers to operations) and of the pictures; indexes and pages come on top.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from sqlalchemy import Column, ColumnElement, Connection, Integer, case, cast, func, select
from sqlalchemy import literal_column as sql

from ..model.gauges import DAY_MS
from ..records.history import DERIVED
from ..records.photo_files import PhotoFiles
from ..records.quick.many_rows import is_among
from ..records.tables import households, operations, records, revisions

YEAR_MS = 365 * DAY_MS
SAMPLE = 50
"""Households that a year's cost is reckoned from."""


@dataclass(frozen=True, slots=True)
class Size:
    """Records and pictures that are not gone, and the bytes of all that is kept."""

    records: int = 0
    pictures: int = 0
    size_bytes: int = 0


def measure(connection: Connection, photos: PhotoFiles, household_ids: Iterable[str]) -> Mapping[str, Size]:
    """Return the size of each of these households, all of their rows having been read."""
    wanted = list(household_ids)
    found = {household_id: Size(size_bytes=photos.size_bytes(household_id)) for household_id in wanted}
    r, v, o = records.c, revisions.c, operations.c
    there = r.gone.is_(False) & r.kind.not_in(DERIVED)
    counts = connection.execute(
        select(
            r.household_id,
            _number(there),
            _number(there & (r.kind == "photo")),
            _bytes(r.fields, r.stamps),
        )
        .where(is_among(connection, r.household_id, wanted))
        .group_by(r.household_id)
    )
    for household_id, number, pictures, size_bytes in counts:
        had = found[household_id]
        found[household_id] = Size(number, pictures, had.size_bytes + size_bytes)
    for owner, texts in ((v.household_id, (v.asked, v.before, v.lost)), (o.household_id, (o.answer,))):
        rows = connection.execute(
            select(owner, _bytes(*texts)).where(is_among(connection, owner, wanted)).group_by(owner)
        )
        for household_id, size_bytes in rows:
            had = found[household_id]
            found[household_id] = Size(had.records, had.pictures, had.size_bytes + size_bytes)
    return found


@dataclass(frozen=True, slots=True)
class YearsCost:
    """What came within a year: operations, of how many households, and what one of them takes in the database, in KiB.

    ``looked_at``: of how many households that was reckoned, ``of`` how many.
    Counted are the texts of records, of their history and of the answers; indexes and the rest of each row come on top.
    """

    operations: int
    households: int
    kib_a_household: int
    looked_at: int
    of: int


def cost_of_a_year(connection: Connection, now_ms: int, most: int = SAMPLE) -> YearsCost:
    """Reckon what a year costs by what was received in the last one.

    Of more than ``most`` households only so many are looked at, spread evenly over the ids, which are in the order of
    their beginning.
    """
    since_ms = now_ms - YEAR_MS
    r, v, o = records.c, revisions.c, operations.c
    every = connection.scalars(select(households.c.id).order_by(households.c.id)).all()
    some = [every[n * len(every) // most] for n in range(most)] if len(every) > most else every
    number, owners, answers = connection.execute(
        select(func.count(), func.count(o.household_id.distinct()), _bytes(o.answer)).where(
            is_among(connection, o.household_id, some), o.received_ms >= since_ms
        )
    ).one()
    lines = connection.scalar(
        select(_bytes(v.asked, v.before, v.lost)).where(
            is_among(connection, v.household_id, some), v.at_ms >= since_ms
        )
    )
    made = connection.scalar(
        select(_bytes(r.fields, r.stamps)).where(
            is_among(connection, r.household_id, some), r.made_ms >= since_ms, r.kind.not_in(DERIVED)
        )
    )
    total = int(answers) + int(lines or 0) + int(made or 0)
    kib = -(-total // (1024 * max(int(owners), 1)))
    times = len(every) / max(len(some), 1)
    return YearsCost(round(number * times), round(owners * times), kib, len(some), len(every))


def _number(condition: ColumnElement[bool]) -> ColumnElement[int]:
    return cast(func.coalesce(func.sum(case((condition, 1), else_=0)), 0), Integer)


def _bytes(*texts: Column[str]) -> ColumnElement[int]:
    together: ColumnElement[int] = sql("0", Integer)
    for text in texts:
        together = together + func.length(text)
    return func.coalesce(func.sum(together), 0)
