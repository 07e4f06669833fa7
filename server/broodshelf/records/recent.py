"""The bounded read: of a colony's log the newest events of each topic, however long the log has become.

A *topic* is what an event of its kind is about: the need of a feeding or check, whether a fault is open. It
stands in a column of its own, so that each topic's newest events are one walk along an index. A plan needs no
more: what was fed twice a week may not push the last feeding of another need out of sight.
"""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping
from functools import cache
from typing import Any, Final, NamedTuple

from sqlalchemy import CompoundSelect, Connection, Select, bindparam, literal, select, union_all

from .kinds import FOOD_NEEDS, KINDS, NEEDS
from .tables import records

MOST: Final = 40
"""How many events of a topic a plan looks at: four months of a feeding every third day."""
OPEN: Final = "open"
_TOPICS: Final[Mapping[str, tuple[str, ...]]] = {
    "feeding": FOOD_NEEDS,
    "check": ("", *NEEDS),
    "fault": ("", OPEN),
}


class Logged(NamedTuple):
    """One un-voided event as it stands. ``values`` are the record's fields by name."""

    id: str
    kind: str
    happened_ms: int
    values: dict[str, Any]


def topic_of(kind: str, values: Mapping[str, Any]) -> str:
    """Return the topic of a record; empty for a kind that has only one."""
    if kind == "fault":
        return "" if values.get("resolved_at") else OPEN
    return values.get("need") or "" if kind in _TOPICS else ""


def read_recent(
    connection: Connection, household_id: str, colony_ids: Iterable[str], since_ms: int
) -> dict[str, list[Logged]]:
    """Return, by colony, the newest ``MOST`` events of each topic and the first event of all since ``since_ms``.

    In the order in which they happened. The first event says since when the colony is looked after.
    """
    found = {}
    for colony_id in colony_ids:
        rows = connection.execute(
            _query(), {"household_id": household_id, "colony_id": colony_id, "since_ms": since_ms}
        ).all()
        newest = {
            row_id: (at_ms, row_id, kind, text) for row_id, kind, at_ms, text, oldest in rows if not oldest
        }
        first = min(((row[2], row[0], row[1], row[3]) for row in rows if row.oldest), default=None)
        if first is not None:
            newest[first[1]] = first
        ordered = sorted(newest.values())
        # one call of the parser for all rows costs a third of a call for each
        values = json.loads(f"[{','.join(text for *_, text in ordered)}]")
        found[colony_id] = [
            Logged(row_id, kind, at_ms, fields)
            for (at_ms, row_id, kind, _), fields in zip(ordered, values, strict=True)
        ]
    return found


def read_kind_since(connection: Connection, household_id: str, kind: str, since_ms: int) -> list[Logged]:
    """Return the events of a kind since an instant, in the order in which they happened."""
    c = records.c
    rows = connection.execute(
        select(c.id, c.kind, c.happened_ms, c.fields)
        .where(c.household_id == household_id, c.kind == kind, c.gone.is_(False), c.happened_ms >= since_ms)
        .order_by(c.happened_ms, c.id)
    )
    return [Logged(row.id, row.kind, row.happened_ms, json.loads(row.fields)) for row in rows]


@cache
def _query() -> CompoundSelect[Any]:
    parts: list[Select[Any]] = []
    for kind in KINDS.values():
        if kind.group == "event" and kind.scope == "colony":
            for topic in _TOPICS.get(kind.name, ("",)):
                parts += [_part(kind.name, topic, oldest=False), _part(kind.name, topic, oldest=True)]
    return union_all(*parts)


def _part(kind: str, topic: str, *, oldest: bool) -> Select[Any]:
    c = records.c
    order = c.happened_ms.asc() if oldest else c.happened_ms.desc()
    found = (
        select(c.id, c.kind, c.happened_ms, c.fields)
        .where(
            c.household_id == bindparam("household_id"),
            c.colony_id == bindparam("colony_id"),
            c.kind == kind,
            c.topic == topic,
            c.gone.is_(False),
            c.happened_ms >= bindparam("since_ms"),
        )
        .order_by(order)
        .limit(1 if oldest else MOST)
        .subquery()
    )
    return select(found, literal(oldest).label("oldest"))
