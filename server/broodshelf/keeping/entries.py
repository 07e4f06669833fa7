"""An export: every record of a household by kind, in an order in which nothing names what comes later.

Left out: plans (computed again from the log), the history of changes, devices, links and keys (a backup has
them), and links to records that were deleted so long ago that the server forgot them.
"""

from __future__ import annotations

import datetime as dt
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any, Final

from sqlalchemy import Connection

from ..languages import Told, Unfit, told
from ..model.kinds import KINDS, required_fields
from ..records.store import Record, read_kind

FORMAT: Final = 1
EXPORTED: Final = tuple(name for name, kind in KINDS.items() if kind.group != "derived")
"""The kinds of an export; each refers only to kinds before it."""

_EPOCH: Final = dt.datetime(1970, 1, 1, tzinfo=dt.UTC)


@dataclass(frozen=True, slots=True)
class Entry:
    """One record. ``where`` tells a person where it stood; without ``made_ms`` it counts as made now."""

    where: str
    kind: str
    id: str
    made_ms: int | None
    by: str | None
    values: Mapping[str, Any]


@dataclass(frozen=True, slots=True)
class BadRow:
    """A row that cannot be brought in, and why."""

    where: str
    why: Told


@dataclass(frozen=True, slots=True)
class Export:
    """A household's records as they stand, gone ones included, each kind in the order of its ids."""

    household_id: str
    entries: tuple[Entry, ...]


def gather(connection: Connection, household_id: str) -> Export:
    """Read everything that belongs into an export."""
    entries: list[Entry] = []
    kind_of: dict[str, str] = {}
    for kind in EXPORTED:
        for record in read_kind(connection, household_id, kind, gone=True):
            values = _values(record, kind_of)
            if required_fields(KINDS[kind]) <= values.keys():
                kind_of[record.id] = kind
                entries.append(Entry("", kind, record.id, record.made_ms, record.person_id, values))
    return Export(household_id, tuple(entries))


def _values(record: Record, kind_of: Mapping[str, str]) -> dict[str, Any]:
    """Return the fields that say something, in the registry's order, without links into nothing."""
    values = {}
    for name, spec in KINDS[record.kind].fields.items():
        value = record.values.get(name)
        if value is None or (value == "" and not spec.required):
            continue
        if spec.refers_to is None or kind_of.get(value) == spec.refers_to:
            values[name] = value
    return values


def instant_text(at_ms: int) -> str:
    """Write an instant as ISO 8601 in UTC with milliseconds."""
    return (_EPOCH + dt.timedelta(milliseconds=at_ms)).isoformat(timespec="milliseconds")


def instant_ms(text: str) -> int:
    """Read an ISO 8601 instant with its offset; raise ``ValueError`` in words."""
    try:
        instant = dt.datetime.fromisoformat(text)
    except ValueError:
        raise Unfit(told("import-no-instant", text=text)) from None
    if instant.tzinfo is None:
        raise Unfit(told("import-no-offset", text=text))
    return (instant - _EPOCH) // dt.timedelta(milliseconds=1)
