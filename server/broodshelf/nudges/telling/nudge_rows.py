"""Writing down what is told: nudges, what each says, and a message to every phone and mailbox that is to carry it."""

from __future__ import annotations

import secrets
from collections.abc import Mapping

from sqlalchemy import Connection, func, select

from ...model.kinds.plan import PlannedTask
from ...model.tasks import fault_of
from ...records.ids import uuid7
from ...records.quick.many_rows import are_among, insert_rows
from ...rounds.occurrence_states import LATE_MS, Occurrence
from ..messages import Item
from ..tables import deliveries, nudge_items, nudges
from .facts import Facts, fault_id_of
from .house import House

Heard = dict[tuple[str, str, bool], list[Occurrence]]
"""What each person hears: by household, person and whether it is urgent."""


def write_nudges(
    connection: Connection, heard: Heard, houses: Mapping[str, House], facts: Facts, now_ms: int
) -> None:
    """Write one nudge for each person and urgency in ``heard``, with its items and messages."""
    if not heard:
        return
    steps = _steps_so_far(connection, heard, houses)
    told, items, messages = [], [], []
    for (household_id, person_id, urgent), rows in heard.items():
        standing_in = {person.id for person in houses[household_id].people if person.role == "stand_in"}
        latest = max(rows, key=lambda row: row.at_ms)
        key = (household_id, person_id, latest.local_date, latest.slot)
        steps[key] = steps.get(key, 0) + 1
        nudge_id = uuid7(now_ms)
        told.append(
            {
                "id": nudge_id,
                "household_id": household_id,
                "person_id": person_id,
                "local_date": latest.local_date,
                "slot": latest.slot,
                "step": steps[key],
                "urgent": urgent,
                "made_ms": now_ms,
            }
        )
        items += [
            {
                "household_id": household_id,
                "nudge_id": nudge_id,
                "occurrence_id": row.id,
                "position": n,
                "item": _item(household_id, row, facts, stand_in=person_id in standing_in),
            }
            for n, row in enumerate(rows)
        ]
        messages += [
            {
                "household_id": household_id,
                "id": secrets.token_urlsafe(32),
                "nudge_id": nudge_id,
                "subscription_id": subscription_id,
                "host": host,
                "state": "waiting",
                "wake_ms": now_ms,
                "made_ms": now_ms,
                "due_ms": max(row.wake_ms or now_ms for row in rows),
                "useless_ms": now_ms + LATE_MS,
            }
            for subscription_id, host in houses[household_id].phones[person_id]
        ]
    insert_rows(connection, nudges, told)
    insert_rows(connection, nudge_items, items)
    insert_rows(connection, deliveries, messages)


def _steps_so_far(
    connection: Connection, heard: Heard, houses: Mapping[str, House]
) -> dict[tuple[str, str, str, str], int]:
    """Return the last step of each person's nudges of these rounds."""
    dates = {houses[household_id].today for household_id, _, _ in heard}
    dates |= {row.local_date for rows in heard.values() for row in rows}
    n = nudges.c
    rows = connection.execute(
        select(n.household_id, n.person_id, n.local_date, n.slot, func.max(n.step).label("step"))
        .where(
            are_among(
                connection,
                (n.household_id, n.person_id),
                sorted({(household_id, person_id) for household_id, person_id, _ in heard}),
            ),
            nudges.c.local_date.in_(sorted(dates)),
        )
        .group_by(n.household_id, n.person_id, n.local_date, n.slot)
    )
    return {(row.household_id, row.person_id, row.local_date, row.slot): row.step for row in rows}


def _item(household_id: str, row: Occurrence, facts: Facts, *, stand_in: bool) -> str:
    """Return what the message says of an occurrence, from the colony's plan as it stands, as JSON.

    ``stand_in``: it goes to one, who sees and logs what the plan says for them.
    """
    tasks = facts.tasks.get((household_id, row.subject_id), [])
    task = next((each for each in tasks if each["key"] == str(row.task)), None)
    instead = task.get("stand_in") if task is not None and stand_in else None
    seen: PlannedTask | None = task if task is None or instead is None else {**task, **instead}
    reasons = [] if task is None else task["reasons"]
    item = Item(
        occurrence_id=row.id,
        colony_id=row.subject_id,
        colony=facts.names.get((household_id, row.subject_id), ""),
        need=row.need,
        task_key=str(row.task),
        what=row.task_what,
        fault=fault_of(reasons[0]) if reasons and fault_id_of(row) is not None else None,
        portion=None if seen is None else seen["portion"],
        suggested=None if seen is None else seen["suggested"],
    )
    return item.as_json()
