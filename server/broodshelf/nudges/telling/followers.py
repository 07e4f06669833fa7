"""What was told or missed and not done comes again: the occurrences of the next local date."""

from __future__ import annotations

import datetime as dt
from collections.abc import Collection, Mapping

from sqlalchemy import Connection, and_, or_, select

from ...records.ids import uuid7
from ...records.quick.many_rows import are_among, insert_rows
from ...rounds.occurrence_rows import LOOK_BACK_DAYS, as_row
from ...rounds.occurrence_states import Occurrence, follower, has_follower
from ...rounds.tables import occurrences
from .due import Due
from .house import House


def add_followers(connection: Connection, changed: Due, houses: Mapping[str, House], now_ms: int) -> None:
    """Make the next date's occurrence of what was told for the first time or missed."""
    begun = [
        (household_id, row)
        for household_id, rows in changed.items()
        for row in rows
        if has_follower(row, now_ms)
    ]
    if not begun:
        return
    taken, waiting = _places(connection, begun, houses)
    made = []
    for household_id, row in begun:
        next_row = follower(row, houses[household_id].clock, now_ms)
        place, task = (
            (household_id, *next_row.place),
            (household_id, row.subject_id, row.task_what, row.task_about),
        )
        if place not in taken and task not in waiting:
            taken.add(place)
            waiting.add(task)
            made.append({**as_row(next_row), "household_id": household_id, "id": uuid7(now_ms)})
    insert_rows(connection, occurrences, made)


def _places(
    connection: Connection, begun: Collection[tuple[str, Occurrence]], houses: Mapping[str, House]
) -> tuple[set[tuple[str, ...]], set[tuple[str, ...]]]:
    """Return which places of these colonies are taken, and which of their tasks wait already."""
    o, told = occurrences.c, occurrences.alias("told")
    today = min(dt.date.fromisoformat(houses[household_id].today) for household_id, _ in begun)
    since = (today - dt.timedelta(days=LOOK_BACK_DAYS)).isoformat()
    taken: set[tuple[str, ...]] = set()
    waiting: set[tuple[str, ...]] = set()
    query = (
        select(o.household_id, o.subject_id, o.need, o.local_date, o.slot, o.task_what, o.task_about, o.state)
        .join(
            told,
            and_(
                o.household_id == told.c.household_id,
                o.subject_kind == "colony",
                o.subject_id == told.c.subject_id,
            ),
        )
        .where(
            are_among(connection, (told.c.household_id, told.c.id), [(h, row.id) for h, row in begun]),
            or_(o.state == "waiting", o.local_date >= since),
        )
    )
    for household_id, subject_id, need, local_date, slot, what, about, state in connection.execute(query):
        taken.add((household_id, subject_id, need, local_date, slot))
        if state == "waiting":
            waiting.add((household_id, subject_id, what, about))
    return taken, waiting
