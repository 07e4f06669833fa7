"""Who lives in a household, and which of them can be reached.

Read for many households at once: at a common hour the rounds of all of them come due together.
"""

from __future__ import annotations

import json
from collections import defaultdict
from collections.abc import Collection, Iterable, Iterator, Mapping
from dataclasses import dataclass
from typing import Any, Final

from sqlalchemy import Connection, and_, select

from ...model import kinds
from ...model.gauges import HOUR_MS
from ...people.tables import devices
from ...records.tables import records
from ...rounds.wall_clock import CareClock
from ..tables import subscriptions
from .audience import PassDates, Person

PATIENCE_HOURS: Final = 6.0
"""For a household that has not said how long it waits before a nudge is repeated."""


@dataclass(frozen=True, slots=True)
class House:
    """Who lives here and how they can be reached: subscriptions by person, each with its push host."""

    clock: CareClock
    today: str
    patience_ms: int
    people: list[Person]
    passes: list[PassDates]
    phones: Mapping[str, list[tuple[str, str]]]


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
    values = next((v for id_, v in found["household"] if id_ == household_id), None)
    household = None if values is None else kinds.read(kinds.Household, values)
    clock = CareClock.of(household)
    return House(
        clock,
        clock.local_date(now_ms).isoformat(),
        round(((household and household.patience_hours) or PATIENCE_HOURS) * HOUR_MS),
        [
            Person(id_, said.role, id_ in phones, said.pass_id)
            for id_, said in _read(kinds.Person, found["person"])
            if said.role is not None  # whoever has none is nobody to tell anything
        ],
        [
            PassDates(id_, frozenset(said.colony_ids), said.starts_on, said.ends_on)
            for id_, said in _read(kinds.Pass, found["pass"])
            if said.revoked_at_ms is None
        ],
        phones,
    )


def _read(
    part: type[kinds.Part], rows: Iterable[tuple[str, dict[str, Any]]]
) -> Iterator[tuple[str, kinds.Part]]:
    return ((id_, kinds.read(part, values)) for id_, values in rows)
