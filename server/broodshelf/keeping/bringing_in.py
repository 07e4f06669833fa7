"""Entries into a household, through the operations of sync: validated, numbered, with history and plans.

Insert if absent: a record that is there already, gone or not, stays as it is. The caller owns the transaction
and rolls it back for a dry run.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, field
from itertools import groupby
from typing import Any, Final

from sqlalchemy import Connection, insert

from ..errors import CannotKeep
from ..languages import Told, told
from ..languages.saying import knows, message_id
from ..model.kinds import KINDS, required_fields
from ..people.actor import Actor
from ..records.ids import uuid7
from ..records.store import Ledger, read_kind
from ..records.tables import households
from ..sync.answering import answer_operations
from ..sync.envelope import Operation
from ..sync.exchange import Recompute
from ..sync.scope import known_colonies
from .entries import EXPORTED, BadRow, Entry, Export

BATCH: Final = 5_000
"""So many operations at once: each batch reads the log once to find what two people answered."""


@dataclass(slots=True)
class Report:
    """What an import did or, in a dry run, would do: counts by kind, and the rows that cannot be taken."""

    added: Counter[str] = field(default_factory=Counter)
    present: Counter[str] = field(default_factory=Counter)
    bad: list[BadRow] = field(default_factory=list)


def bring_in(
    connection: Connection, household_id: str, entries: Iterable[Entry], now_ms: int, recompute: Recompute
) -> Report:
    """Add what the household lacks. ``by`` of an entry stays; without one the first keeper is named."""
    ledger = Ledger(connection, household_id)
    report = Report()
    importer = first_keeper(connection, household_id)
    device_id = uuid7(now_ms)
    touched: set[str] = set()
    touches_all = False
    for by, batch in _batches(_fitting(household_id, entries, report)):
        ledger.load(entry.id for entry in batch)
        absent = {entry.id for entry in batch if ledger.get(entry.id) is None}
        actor = Actor(household_id, by or importer, device_id, "keeper")
        asked = [_operation(entry, number, now_ms) for number, entry in enumerate(batch)]
        outcome = answer_operations(ledger, actor, asked, now_ms, epoch_known=False)
        ledger.flush()
        touched |= outcome.touched
        touches_all = touches_all or outcome.touches_all
        for entry, answer in zip(batch, outcome.answers, strict=True):
            if answer["verdict"] != "applied":
                report.bad.append(BadRow(entry.where, _why(entry, answer)))
            else:
                (report.added if entry.id in absent else report.present)[entry.kind] += 1
    if touches_all:
        touched |= known_colonies(connection, household_id)
    if touched:
        recompute(ledger, touched, now_ms)
        ledger.flush()
    return report


def make_household(connection: Connection, export: Export, now_ms: int) -> str:
    """Make the household of an export on a server that has none; return its id.

    Raises ``CannotKeep`` when the export lacks the household's own record or a keeper to sign in.
    """
    if not any(e.kind == "household" and e.id == export.household_id for e in export.entries):
        raise CannotKeep(told("import-no-household-row"))
    if not any(e.kind == "person" and e.values.get("role") == "keeper" for e in export.entries):
        raise CannotKeep(told("import-no-keeper"))
    connection.execute(
        insert(households).values(
            id=export.household_id, rev=0, epoch=uuid7(now_ms), purged_rev=0, created_ms=now_ms
        )
    )
    return export.household_id


def first_keeper(connection: Connection, household_id: str) -> str:
    """Return the id of the household's first keeper, or an empty text while it has nobody."""
    people = read_kind(connection, household_id, "person")
    return next((person.id for person in people if person.values.get("role") == "keeper"), "")


def _fitting(household_id: str, entries: Iterable[Entry], report: Report) -> list[Entry]:
    """Leave out another household's settings and what stands twice; parents come before what names them."""
    fitting: dict[str, Entry] = {}
    for entry in entries:
        if entry.kind == "household" and entry.id != household_id:
            report.present["household"] += 1  # this shelf has settings of its own
        elif entry.id in fitting:
            report.bad.append(BadRow(entry.where, told("import-same-id", where=fitting[entry.id].where)))
        else:
            fitting[entry.id] = entry
    return sorted(fitting.values(), key=lambda e: (EXPORTED.index(e.kind), e.by or ""))


def _batches(entries: Sequence[Entry]) -> Iterator[tuple[str | None, list[Entry]]]:
    for by, group in groupby(entries, key=lambda entry: entry.by):
        run = list(group)
        for start in range(0, len(run), BATCH):
            yield by, run[start : start + BATCH]


def _operation(entry: Entry, number: int, now_ms: int) -> Operation:
    made_ms = now_ms if entry.made_ms is None else entry.made_ms
    return Operation(
        uuid7(now_ms), entry.kind, entry.id, dict(entry.values),
        made_at=made_ms, skew_ms=0, base_rev=0, base_epoch=None, n=number, adopt=True,
    )  # fmt: skip


def _why(entry: Entry, answer: dict[str, Any]) -> Told:
    """Say in words what the operation was refused for."""
    args = answer["args"]
    missing = sorted(required_fields(KINDS[entry.kind]) - entry.values.keys())
    if missing and (args.get("missing") == "itself" or answer.get("code") == "missing_field"):
        return told("import-lacks", fields=missing)
    if answer["verdict"] == "deferred":
        return told("import-names-missing", missing=args["missing"])
    if answer["code"] == "kind_differs":
        return told("import-id-taken", kind=args["kind"])
    if answer["code"] == "too_large":
        return told("import-too-large", bytes=args["bytes"])
    reason = message_id("refused", args.get("reason", ""))
    why = told(reason, **args) if knows(reason) else args.get("why", answer["code"])
    return told("import-field", field=args.get("field", entry.kind), why=why)
