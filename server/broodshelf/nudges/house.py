"""Who lives in a household, which of them can be reached, and what decides who hears of a due occurrence."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass
from typing import Final

from sqlalchemy import Connection, func, select

from ..people.tables import devices
from ..records.store import Ledger, read_kind
from ..records.tables import records
from ..rounds.occurrences import Occurrence
from ..rounds.recompute import care_clock
from ..rounds.wall_clock import CareClock
from .audience import Matter, PassDates, Person
from .tables import nudge_items, nudges, subscriptions

HOUR_MS: Final = 3_600_000
PATIENCE_HOURS: Final = 6.0
"""For a household that has not said how long it waits before a nudge is repeated."""
LATELY_MS: Final = 60 * 24 * HOUR_MS
"""How far back the keeper who usually sees to a colony is looked for."""


@dataclass(frozen=True, slots=True)
class House:
    """Who lives here and how they can be reached: subscriptions by person."""

    clock: CareClock
    today: str
    patience_ms: int
    people: list[Person]
    passes: list[PassDates]
    phones: Mapping[str, list[str]]


def read_house(ledger: Ledger, key_ids: Collection[str], now_ms: int) -> House:
    """Return who lives here; reachable are those with a mailbox, or a phone that was not revoked, under these keys."""
    connection, household_id = ledger.connection, ledger.household_id
    household = ledger.get(household_id)
    patience = household.values.get("patience_hours") if household is not None else None
    phones: dict[str, list[str]] = defaultdict(list)
    for row in connection.execute(
        select(subscriptions.c.person_id, subscriptions.c.id)
        .outerjoin(devices, devices.c.id == subscriptions.c.device_id)
        .where(
            subscriptions.c.household_id == household_id,
            subscriptions.c.key_id.in_(key_ids),
            devices.c.revoked_ms.is_(None),
        )
        .order_by(subscriptions.c.id)
    ):
        phones[row.person_id].append(row.id)
    people = [
        Person(r.id, r.values["role"], r.id in phones, r.values.get("pass_id"))
        for r in read_kind(connection, household_id, "person")
    ]
    passes = [
        PassDates(
            r.id,
            frozenset(r.values.get("colony_ids") or ()),
            r.values["starts_on"],
            r.values["ends_on"],
        )
        for r in read_kind(connection, household_id, "pass")
        if not r.values.get("revoked_at_ms")
    ]
    clock = care_clock(ledger)
    patience_ms = round((patience or PATIENCE_HOURS) * HOUR_MS)
    return House(clock, clock.local_date(now_ms).isoformat(), patience_ms, people, passes, phones)


def matters_of(ledger: Ledger, due: Sequence[Occurrence], house: House, now_ms: int) -> dict[str, Matter]:
    """Return, by occurrence, what decides who hears of it."""
    usual = _usual_keepers(ledger, {row.subject_id for row in due}, house, now_ms)
    faults = [fault_id_of(row) for row in due]
    ledger.load(i for i in faults if i is not None)
    told = _told_before(ledger.connection, [row.id for row in due if row.steps])
    made = {}
    for row, fault_id in zip(due, faults, strict=True):
        fault = ledger.get(fault_id) if fault_id is not None else None
        made[row.id] = Matter(
            row.subject_id,
            urgent=row.urgent,
            follows=row.follows,
            usual=usual.get(row.subject_id),
            flagger=fault.person_id if fault is not None else None,
            told=frozenset(told[row.id]),
        )
    return made


def _usual_keepers(ledger: Ledger, colony_ids: set[str], house: House, now_ms: int) -> dict[str, str]:
    """Return who logged last for each colony; asked only where there is a choice."""
    keepers = [p.id for p in house.people if p.role == "keeper" and p.reachable]
    if len(keepers) < 2:
        return {}
    found: dict[str, str] = {}
    for row in ledger.connection.execute(
        select(records.c.colony_id, records.c.person_id, func.max(records.c.happened_ms).label("last_ms"))
        .where(
            records.c.household_id == ledger.household_id,
            records.c.colony_id.in_(sorted(colony_ids)),
            records.c.gone.is_(False),
            records.c.happened_ms.between(now_ms - LATELY_MS, now_ms),
            records.c.person_id.in_(keepers),
        )
        .group_by(records.c.colony_id, records.c.person_id)
        .order_by(func.max(records.c.happened_ms))
    ):
        found[row.colony_id] = row.person_id
    return found


def _told_before(connection: Connection, occurrence_ids: Sequence[str]) -> dict[str, set[str]]:
    found: dict[str, set[str]] = defaultdict(set)
    if occurrence_ids:
        for row in connection.execute(
            select(nudge_items.c.occurrence_id, nudges.c.person_id)
            .join(nudges, nudges.c.id == nudge_items.c.nudge_id)
            .where(nudge_items.c.occurrence_id.in_(occurrence_ids))
        ):
            found[row.occurrence_id].add(row.person_id)
    return found


def fault_id_of(row: Occurrence) -> str | None:
    """Return the id of the fault that an occurrence is about, or None."""
    kind, _, fault_id = row.task_key.partition(":")
    return fault_id if kind == "fault" else None
