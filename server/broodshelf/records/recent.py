"""The bounded read: of a colony's log the newest events of each topic, however long the log has become.

A *topic* is what an event of its kind is about: the need of a feeding or check, whether a fault is open. It
stands in a column of its own, so that each topic's newest events are one walk along an index. A plan needs no
more: what was fed twice a week may not push the last feeding of another need out of sight.
"""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping
from operator import itemgetter
from typing import Any, Final, NamedTuple

from sqlalchemy import Connection, bindparam, select

from ..model.facts import Event, Logged
from ..model.kinds import KINDS
from ..model.needs import FOOD_NEEDS, NEEDS
from .quick.newest import Topic, newest_of_each
from .tables import records

MOST: Final = 40
"""How many events of a topic a plan looks at: four months of a feeding every third day."""
MOST_OF: Final[Mapping[str, int]] = {"count": 400}
"""Counts are few and small, and the census looks back over a year of them: a count a day, with some to spare."""
OPEN: Final = "open"


class Entry(NamedTuple):
    """An event as it is stored: its fields by name, which nobody has read yet."""

    id: str
    kind: str
    happened_ms: int
    values: Mapping[str, Any]


_IN_ORDER: Final = itemgetter(2, 0)
_TOPICS: Final[Mapping[str, tuple[str, ...]]] = {
    "feeding": FOOD_NEEDS,
    "check": ("", *NEEDS),
    "fault": ("", OPEN),
}

_WANTED: Final = tuple(
    Topic(kind.name, topic, MOST_OF.get(kind.name, MOST))
    for kind in KINDS.values()
    if kind.group == "event" and kind.scope == "colony"
    for topic in _TOPICS.get(kind.name, ("",))
)


def topic_of(kind: str, values: Mapping[str, Any]) -> str:
    """Return the topic of a record; empty for a kind that has only one."""
    if kind == "fault":
        return "" if values.get("resolved_at") else OPEN
    return values.get("need") or "" if kind in _TOPICS else ""


def read_recent(
    connection: Connection, household_id: str, colony_ids: Iterable[str], since_ms: int
) -> dict[str, list[Entry]]:
    """Return, by colony, the newest events of each topic and the first event of all since ``since_ms``.

    ``MOST`` of a topic, or as many as ``MOST_OF`` says for its kind, in the order in which they happened. The first
    event says since when the colony is looked after.
    """
    found = {}
    for colony_id in colony_ids:
        asked = {"household_id": household_id, "colony_id": colony_id, "since_ms": since_ms}
        found[colony_id] = _ordered(
            *connection.execute(newest_of_each(connection.dialect.name, _WANTED), asked).one()
        )
    return found


def _ordered(newest: str | None, oldest: str | None) -> list[Entry]:
    # not strictly: an older server took ids that end in a line break
    events = {row[0]: row for row in json.loads(f"[{newest or ''}]", strict=False)}
    firsts = json.loads(f"[{oldest or ''}]", strict=False)
    if firsts:
        first = min(firsts, key=_IN_ORDER)
        events[first[0]] = first
    return [Entry(*row) for row in sorted(events.values(), key=_IN_ORDER)]


def read_kind_since(connection: Connection, household_id: str, kind: str, since_ms: int) -> list[Event]:
    """Return the events of a kind since an instant, in the order in which they happened."""
    asked = {"household_id": household_id, "kind": kind, "since_ms": since_ms}
    rows = connection.execute(_KIND_SINCE, asked)
    return [Logged(row.id, row.kind, row.happened_ms, json.loads(row.fields)) for row in rows]


_KIND_SINCE: Final = (
    select(records.c.id, records.c.kind, records.c.happened_ms, records.c.fields)
    .where(
        records.c.household_id == bindparam("household_id"),
        records.c.kind == bindparam("kind"),
        records.c.gone.is_(False),
        records.c.happened_ms >= bindparam("since_ms"),
    )
    .order_by(records.c.happened_ms, records.c.id)
)
