"""Reading and writing records inside a caller's transaction, under the household's lock.

``rev`` numbers are only given out by a ``Ledger``, which exists only while the household row is locked, so a
reader's cursor can never miss a row.
"""

from __future__ import annotations

import json
from collections.abc import Iterable, Iterator, Mapping
from contextlib import contextmanager
from dataclasses import dataclass, field
from typing import Any

from sqlalchemy import Connection, Row, select

from ..errors import NotFound
from ..languages import told
from ..model.kinds import KINDS, Part, read
from .ids import made_ms_of
from .merge import Stamp
from .quick.many_rows import insert_rows, is_among, some
from .quick.row_texts import compact_json, stamps_text
from .quick.statements import LOCKED, MUTABLE, NUMBERED, OF_KINDS, OF_KINDS_THERE, ONE, UPDATE, these
from .recent import topic_of
from .tables import households, records, revisions
from .types import happened_ms


@dataclass(slots=True)
class Record:
    """A record as it stands. ``values`` are its fields by name; instants in ms since 1970 UTC."""

    id: str
    kind: str
    rev: int
    gone: bool
    colony_id: str | None
    happened_ms: int | None
    made_ms: int
    person_id: str | None
    device_id: str | None
    values: dict[str, Any]
    stamps: dict[str, Stamp] = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class Revision:
    """One line of history: what was asked, what stood there before, what did not win."""

    record_id: str
    op_id: str | None
    person_id: str | None
    device_id: str | None
    at_ms: int
    asked: Mapping[str, Any]
    before: Mapping[str, Any]
    lost: Mapping[str, Any]


def lock_idle(connection: Connection, household_ids: Iterable[str]) -> list[str]:
    """Lock those of these households that nobody else holds; return them in the order of their ids."""
    among = is_among(connection, households.c.id, household_ids)
    query = select(households.c.id).where(among).order_by(households.c.id)
    return list(connection.scalars(query.with_for_update(skip_locked=True)).all())


def lock(connection: Connection, household_id: str) -> Row[Any, Any, Any, Any]:
    """Lock a household's row and return it: whoever locks it, too, waits until this transaction has ended.

    What looks before it writes locks first, so that of two requests at once the second sees what the first one left.
    Raises ``NotFound``.
    """
    row = connection.execute(LOCKED, {"household_id": household_id}).one_or_none()
    if row is None:
        raise NotFound(told("problem-no-household"))
    return row


class Ledger:
    """The household's row, locked: gives out revisions and gathers what will be written by ``flush``.

    Many writes of one request become three statements, whatever their number.
    """

    def __init__(self, connection: Connection, household_id: str) -> None:
        row = lock(connection, household_id)
        self.connection = connection
        self.household_id = household_id
        self.rev: int = row.rev
        self.epoch: str = row.epoch
        self.purged_rev: int = row.purged_rev
        self.restored = made_ms_of(row.epoch) != row.created_ms
        """Whether the household was ever put back to an earlier state: its first epoch begins with itself."""
        self._first_rev = row.rev
        self._known: dict[str, Record | None] = {}
        self._new: dict[str, Record] = {}
        self._changed: dict[str, Record] = {}
        self._history: list[dict[str, Any]] = []
        self._texts: dict[str, str] = {}

    def load(self, ids: Iterable[str]) -> None:
        """Read the records with these ids, so that ``get`` answers without a query each."""
        missing = [i for i in dict.fromkeys(ids) if i not in self._known]
        if not missing:
            return
        self._known.update(dict.fromkeys(missing))
        asked = {"household_id": self.household_id, **some(self.connection, missing)}
        for row in self.connection.execute(these(self.connection.dialect.name), asked):
            self._known[row.id] = _record(row)

    def get(self, record_id: str) -> Record | None:
        """Return a record as this transaction has it, or None."""
        if record_id not in self._known:
            self.load([record_id])
        return self._known[record_id]

    def write(self, record: Record, revision: Revision | None = None) -> int:
        """Number ``record`` with the next revision, remember it for ``flush`` and return the revision."""
        self.rev += 1
        if self.get(record.id) is None or record.id in self._new:
            self._new[record.id] = record
        else:
            self._changed[record.id] = record
        record.rev = self.rev
        record.gone = bool(record.values.get("gone"))
        record.colony_id = _colony_of(record)
        happened = record.values.get("happened_at")
        record.happened_ms = happened_ms(happened) if happened else None
        self._known[record.id] = record
        self._texts.pop(record.id, None)
        if revision is not None:
            asked = compact_json(revision.asked)
            if revision.asked == record.values:
                self._texts[record.id] = asked  # most records are whole at once: one text for both tables
            self._history.append(
                {
                    "household_id": self.household_id,
                    "rev": self.rev,
                    "part": 0,
                    "record_id": revision.record_id,
                    "op_id": revision.op_id,
                    "person_id": revision.person_id,
                    "device_id": revision.device_id,
                    "at_ms": revision.at_ms,
                    "asked": asked,
                    "before": compact_json(revision.before),
                    "lost": compact_json(revision.lost) if revision.lost else "{}",
                }
            )
        return self.rev

    def flush(self) -> None:
        """Write what was gathered and the household's new revision."""
        self._write_rows()
        if self.rev != self._first_rev:
            self.connection.execute(NUMBERED, {"household": self.household_id, "now": self.rev})
        self._first_rev = self.rev

    def _write_rows(self) -> None:
        insert_rows(self.connection, records, [self._row(r) for r in self._new.values()])
        if self._changed:
            self.connection.execute(UPDATE, [_bound(self._row(r)) for r in self._changed.values()])
        insert_rows(self.connection, revisions, self._history)
        self._new, self._changed, self._history, self._texts = {}, {}, [], {}

    @contextmanager
    def savepoint(self) -> Iterator[None]:
        """Write what happens inside by itself: when it raises, nothing of it stands and the ledger is as before.

        The household's new revision is left to ``flush``.
        """
        self._write_rows()
        rev = self.rev
        try:
            with self.connection.begin_nested():
                yield
                self._write_rows()
        except BaseException:
            self.rev = rev
            self._known, self._new, self._changed, self._history, self._texts = {}, {}, {}, [], {}
            raise

    def put(
        self,
        record_id: str,
        kind: str,
        values: Mapping[str, Any],
        *,
        now_ms: int,
        person_id: str | None = None,
        device_id: str | None = None,
    ) -> Record:
        """Create or change a record on the server's own account; write nothing when nothing differs.

        Derived kinds leave no history: they can be computed again from the log.
        """
        record = self.get(record_id)
        before = dict(record.values) if record else {}
        changed = {k: v for k, v in values.items() if record is None or before.get(k) != v}
        if record is not None and not changed:
            return record
        if record is None:
            record = Record(record_id, kind, 0, False, None, None, now_ms, person_id, device_id, {})
        record.values.update(changed)
        record.stamps.update(dict.fromkeys(changed, (self.rev + 1, now_ms, device_id)))
        if KINDS[kind].group == "derived":
            record.stamps = {}
            self.write(record)
        else:
            previous = {k: before.get(k) for k in changed}
            self.write(record, Revision(record_id, None, person_id, device_id, now_ms, changed, previous, {}))
        return record

    def _row(self, record: Record) -> dict[str, Any]:
        return {
            "household_id": self.household_id,
            "id": record.id,
            "kind": record.kind,
            "rev": record.rev,
            "gone": record.gone,
            "colony_id": record.colony_id,
            "happened_ms": record.happened_ms,
            "topic": topic_of(record.kind, record.values),
            "task_key": indexed_task_key(record.values),
            "made_ms": record.made_ms,
            "person_id": record.person_id,
            "device_id": record.device_id,
            "fields": self._texts.get(record.id) or compact_json(record.values),
            "stamps": stamps_text(record.stamps),
        }


def indexed_task_key(values: Mapping[str, Any]) -> str | None:
    """Return the task key as its column takes it; none of ours holds the NUL that PostgreSQL refuses."""
    key = values.get("task_key")
    return key if isinstance(key, str) and "\0" not in key else None


def _bound(row: Mapping[str, Any]) -> dict[str, Any]:
    return {f"b_{name}": row[name] for name in ("household_id", "id", *MUTABLE)}


def read_all(part: type[Part], records_: Iterable[Record]) -> dict[str, Part]:
    """Return what these records hold by id, as one of the dataclasses that describe their kind."""
    return {record.id: read(part, record.values) for record in records_}


def read_kind(connection: Connection, household_id: str, kind: str, *, gone: bool = False) -> list[Record]:
    """Return the records of one kind in the order of their ids (for UUIDv7: of their making)."""
    return read_kinds(connection, household_id, (kind,), gone=gone)[kind]


def read_kinds(
    connection: Connection, household_id: str, kinds: Iterable[str], *, gone: bool = False
) -> dict[str, list[Record]]:
    """Return the records of several kinds by kind, each in the order of their ids, in one read."""
    found: dict[str, list[Record]] = {kind: [] for kind in kinds}
    asked = {"household_id": household_id, "kinds": list(found)}
    for row in connection.execute(OF_KINDS if gone else OF_KINDS_THERE, asked):
        found[row.kind].append(_record(row))
    return found


def read_record(connection: Connection, household_id: str, record_id: str) -> Record | None:
    """Return one record, gone or not, or None."""
    asked = {"household_id": household_id, "record_id": record_id}
    row = connection.execute(ONE, asked).one_or_none()
    return _record(row) if row is not None else None


def _record(row: Row[Any]) -> Record:
    """Read a row. Not strictly: an older server took ids that end in a line break, which then stands in the stamps."""
    return Record(
        row.id, row.kind, row.rev, row.gone, row.colony_id, row.happened_ms, row.made_ms,
        row.person_id, row.device_id, json.loads(row.fields),
        {name: tuple(stamp) for name, stamp in json.loads(row.stamps, strict=False).items()},
    )  # fmt: skip


def _colony_of(record: Record) -> str | None:
    return record.id if record.kind == "colony" else record.values.get("colony_id")
