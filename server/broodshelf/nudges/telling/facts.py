"""What the log and earlier nudges say about what is due, and what of it decides who hears."""

from __future__ import annotations

import json
from collections import defaultdict
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from typing import Final

from sqlalchemy import Connection, and_, func, select

from ...model import kinds
from ...model.gauges import DAY_MS
from ...model.kinds.plan import PlannedTask
from ...model.tasks import FOR_STAND_IN
from ...records.quick.many_rows import are_among
from ...records.tables import records
from ...rounds.occurrence_states import Occurrence
from ...rounds.tables import occurrences
from ..tables import nudge_items, nudges
from .audience import Matter
from .due import Due
from .house import House

LATELY_MS: Final = 60 * DAY_MS
"""How far back the keeper who usually sees to a colony is looked for."""


@dataclass(frozen=True, slots=True)
class _Named:
    """What a message says of a colony."""

    name: str


@dataclass(frozen=True, slots=True)
class _ToDo:
    """What a message says of a plan."""

    colony_id: str
    tasks: list[PlannedTask]


@dataclass(frozen=True, slots=True)
class Facts:
    """What the log and earlier nudges say about due occurrences, by household and id.

    ``names`` and ``tasks``: what each colony is called, and what its plan says is to be done there.
    """

    names: dict[tuple[str, str], str] = field(default_factory=dict)
    tasks: dict[tuple[str, str], list[PlannedTask]] = field(default_factory=dict)
    authors: dict[tuple[str, str], str | None] = field(default_factory=dict)
    usual: dict[tuple[str, str], str] = field(default_factory=dict)
    told: dict[tuple[str, str], set[str]] = field(default_factory=lambda: defaultdict(set))

    def matter(self, household_id: str, row: Occurrence) -> Matter:
        """Return what decides who hears of an occurrence."""
        fault_id = fault_id_of(row)
        return Matter(
            row.subject_id,
            urgent=row.urgent,
            follows=row.follows,
            usual=self.usual.get((household_id, row.subject_id)),
            flagger=self.authors.get((household_id, fault_id)) if fault_id is not None else None,
            told=frozenset(self.told[household_id, row.id] if row.steps else ()),
            keepers_only=row.task_what not in FOR_STAND_IN,
        )


def read_facts(connection: Connection, due: Due, houses: Mapping[str, House], now_ms: int) -> Facts:
    """Return what is known about these occurrences: colonies, plans and faults, usual keepers, who heard already."""
    facts = Facts()
    keys = [(household_id, row.id) for household_id, found in due.items() for row in found]
    r, o = records.c, occurrences.c
    query = select(r.household_id, r.id, r.kind, r.person_id, r.fields)
    subjects = (
        select(o.household_id, o.subject_id)
        .where(are_among(connection, (o.household_id, o.id), keys))
        .distinct()
        .subquery()
    )
    s = subjects.c
    about = query.join(subjects, and_(r.household_id == s.household_id, r.colony_id == s.subject_id))
    found = list(connection.execute(about.where(r.kind.in_(("colony", "plan")))))
    faults = {
        (household_id, fault_id)
        for household_id, rows in due.items()
        for row in rows
        if (fault_id := fault_id_of(row))
    }
    if faults:
        found += connection.execute(
            query.where(are_among(connection, (r.household_id, r.id), sorted(faults)))
        )
    for household_id, record_id, kind, person_id, text in found:
        facts.authors[household_id, record_id] = person_id
        if kind == "colony":
            facts.names[household_id, record_id] = kinds.read(_Named, json.loads(text)).name
        elif kind == "plan":
            planned = kinds.read(_ToDo, json.loads(text))
            facts.tasks[household_id, planned.colony_id] = planned.tasks
    _add_usual_keepers(connection, facts, due, houses, now_ms)
    _add_told(connection, facts, [(h, row.id) for h, rows in due.items() for row in rows if row.steps])
    return facts


def _add_usual_keepers(
    connection: Connection, facts: Facts, due: Due, houses: Mapping[str, House], now_ms: int
) -> None:
    """Find who logged last for each colony; asked only where there is a choice."""
    keepers = {
        household_id: found
        for household_id in due
        if len(found := [p.id for p in houses[household_id].people if p.role == "keeper" and p.reachable]) > 1
    }
    if not keepers:
        return
    for row in connection.execute(
        select(records.c.household_id, records.c.colony_id, records.c.person_id)
        .where(
            records.c.household_id.in_(keepers),
            records.c.colony_id.in_(sorted({row.subject_id for i in keepers for row in due[i]})),
            records.c.gone.is_(False),
            records.c.happened_ms.between(now_ms - LATELY_MS, now_ms),
            records.c.person_id.in_(sorted(i for found in keepers.values() for i in found)),
        )
        .group_by(records.c.household_id, records.c.colony_id, records.c.person_id)
        .order_by(func.max(records.c.happened_ms))
    ):
        facts.usual[row.household_id, row.colony_id] = row.person_id


def _add_told(connection: Connection, facts: Facts, keys: Sequence[tuple[str, str]]) -> None:
    if not keys:
        return
    i, n = nudge_items.c, nudges.c
    for row in connection.execute(
        select(i.household_id, i.occurrence_id, n.person_id)
        .join(nudges, and_(n.household_id == i.household_id, n.id == i.nudge_id))
        .where(are_among(connection, (i.household_id, i.occurrence_id), keys))
    ):
        facts.told[row.household_id, row.occurrence_id].add(row.person_id)


def fault_id_of(row: Occurrence) -> str | None:
    """Return the id of the fault that an occurrence is about, or None."""
    return row.task_about if row.task_what == "fault" else None
