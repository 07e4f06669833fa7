"""Who lives in a household, which of them can be reached, and what decides who hears of a due occurrence.

Read for many households at once: at a common hour the rounds of all of them come due together.
"""

from __future__ import annotations

import json
from collections import defaultdict
from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any, Final, get_args

from sqlalchemy import Connection, and_, func, select

from ..care.plan.stand_in import is_for_stand_in
from ..people.tables import devices
from ..records.many_rows import are_among
from ..records.tables import records
from ..rounds.occurrences import Occurrence
from ..rounds.tables import occurrences
from ..rounds.wall_clock import CareClock
from .audience import Matter, PassDates, Person, PersonRole
from .tables import nudge_items, nudges, subscriptions

HOUR_MS: Final = 3_600_000
PATIENCE_HOURS: Final = 6.0
"""For a household that has not said how long it waits before a nudge is repeated."""
LATELY_MS: Final = 60 * 24 * HOUR_MS
"""How far back the keeper who usually sees to a colony is looked for."""

Due = Mapping[str, list[Occurrence]]
"""What is due, by household."""


@dataclass(frozen=True, slots=True)
class House:
    """Who lives here and how they can be reached: subscriptions by person, each with its push host."""

    clock: CareClock
    today: str
    patience_ms: int
    people: list[Person]
    passes: list[PassDates]
    phones: Mapping[str, list[tuple[str, str]]]


@dataclass(frozen=True, slots=True)
class Facts:
    """What the log and earlier nudges say about due occurrences, by household and id."""

    values: dict[tuple[str, str], dict[str, Any]] = field(default_factory=dict)
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
            keepers_only=not is_for_stand_in(row.task_key),
        )


def read_houses(
    connection: Connection, household_ids: Collection[str], key_ids: Collection[str], now_ms: int
) -> dict[str, House]:
    """Return who lives there; reachable are those with a mailbox, or a phone that was not revoked, under these keys.

    A person is known by household and id: the same id in another household is somebody else.
    """
    phones: dict[str, dict[str, list[tuple[str, str]]]] = defaultdict(lambda: defaultdict(list))
    s, d = subscriptions.c, devices.c
    for row in connection.execute(
        select(s.household_id, s.person_id, s.id, s.host)
        .outerjoin(devices, and_(d.household_id == s.household_id, d.id == s.device_id))
        .where(
            subscriptions.c.household_id.in_(household_ids),
            subscriptions.c.key_id.in_(key_ids),
            devices.c.revoked_ms.is_(None),
        )
        .order_by(subscriptions.c.id)
    ):
        phones[row.household_id][row.person_id].append((row.id, row.host))
    found: dict[str, dict[str, list[tuple[str, dict[str, Any]]]]] = defaultdict(lambda: defaultdict(list))
    for record in connection.execute(
        select(records.c.household_id, records.c.kind, records.c.id, records.c.fields)
        .where(
            records.c.household_id.in_(household_ids),
            records.c.kind.in_(("household", "person", "pass")),
            records.c.gone.is_(False),
        )
        .order_by(records.c.id)
    ):
        found[record.household_id][record.kind].append((record.id, json.loads(record.fields)))
    return {h: _house(h, found[h], phones[h], now_ms) for h in household_ids}


def _house(
    household_id: str,
    found: Mapping[str, list[tuple[str, dict[str, Any]]]],
    phones: Mapping[str, list[tuple[str, str]]],
    now_ms: int,
) -> House:
    household: dict[str, Any] = next((v for id_, v in found["household"] if id_ == household_id), {})
    clock = CareClock.of(household)
    return House(
        clock,
        clock.local_date(now_ms).isoformat(),
        round((household.get("patience_hours") or PATIENCE_HOURS) * HOUR_MS),
        [
            Person(id_, v["role"], id_ in phones, v.get("pass_id"))
            for id_, v in found["person"]
            if v.get("role") in get_args(PersonRole)  # whoever has none is nobody to tell anything
        ],
        [
            PassDates(id_, frozenset(v.get("colony_ids") or ()), v["starts_on"], v["ends_on"])
            for id_, v in found["pass"]
            if v.get("starts_on") and v.get("ends_on") and not v.get("revoked_at_ms")
        ],
        phones,
    )


def read_facts(connection: Connection, due: Due, houses: Mapping[str, House], now_ms: int) -> Facts:
    """Return what is known about these occurrences: colonies, plans and faults, usual keepers, who heard already."""
    facts = Facts()
    keys = [(household_id, row.id) for household_id, found in due.items() for row in found]
    r, o = records.c, occurrences.c
    query = select(r.household_id, r.id, r.person_id, r.fields)
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
    for household_id, record_id, person_id, text in found:
        facts.values[household_id, record_id] = json.loads(text)
        facts.authors[household_id, record_id] = person_id
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
    kind, _, fault_id = row.task_key.partition(":")
    return fault_id if kind == "fault" else None
