"""Which occurrences are due, of many households at once."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Collection, Mapping

from sqlalchemy import Connection, select

from ...records.quick.many_rows import is_among
from ...rounds.occurrence_rows import COLUMNS, as_occurrence
from ...rounds.occurrence_states import Occurrence
from ...rounds.tables import occurrences

Due = Mapping[str, list[Occurrence]]
"""What is due, by household."""


def due_households(connection: Connection, now_ms: int, most: int) -> list[str]:
    """Return the households of the ``most`` occurrences that have waited longest, in that order."""
    query = (
        select(occurrences.c.household_id)
        .where(occurrences.c.wake_ms <= now_ms)
        .order_by(occurrences.c.wake_ms)
        .limit(most)
    )
    return list(dict.fromkeys(connection.scalars(query).all()))


def read_due(connection: Connection, household_ids: Collection[str], now_ms: int) -> Due:
    """Return what is due in these households, the most urgent first."""
    o = occurrences.c
    query = (
        select(o.household_id, *COLUMNS)
        .where(is_among(connection, o.household_id, household_ids), o.wake_ms <= now_ms)
        .order_by(o.urgent.desc(), o.at_ms, o.due_ms, o.id)
    )
    found: dict[str, list[Occurrence]] = defaultdict(list)
    for household_id, *values in connection.execute(query).all():
        found[household_id].append(as_occurrence(values))
    return found
