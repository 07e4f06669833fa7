"""The change feed: rows after a cursor, in the order of their revisions, in pages.

Keepers' phones get what they need to give a record back after a restore, gone records included.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from sqlalchemy import Integer, bindparam, func, select

from ..records.store import Ledger
from ..records.tables import records
from .quick_texts import ID_LENGTH, row_text, whole_row_text
from .scope import Scope


@dataclass(frozen=True, slots=True)
class Page:
    """One page: rows and gone rows as JSON texts, the cursor behind them, and whether there is more.

    ``reset``: a page of everything anew; ``first``: the first one of that, so what was gathered before is void.
    """

    rows: list[str]
    gone: list[str]
    cursor: str
    more: bool
    reset: bool
    first: bool


@dataclass(frozen=True, slots=True)
class Cursor:
    """What a phone has: all up to ``rev`` of a scope. ``refill``: it pages through a reset, begun when the household
    had purged up to that revision; a purge meanwhile could forget a row that an earlier page still held."""

    rev: int
    scope: str
    refill: int | None = None

    def text(self) -> str:
        """Return the opaque text that travels."""
        return f"{self.rev}.{self.scope}{'' if self.refill is None else f'.{self.refill}'}"

    @classmethod
    def read(cls, text: str | None) -> Cursor | None:
        """Parse a cursor; None for no cursor or one that is not ours (the phone then gets everything)."""
        parts = (text or "").split(".")
        numbers = [parts[0], *parts[2:]]
        if len(parts) not in (2, 3) or not all(n.isascii() and n.isdigit() for n in numbers):
            return None
        return cls(int(parts[0]), parts[1], int(parts[2]) if len(parts) == 3 else None)


@dataclass(frozen=True, slots=True)
class Wanted:
    """What a phone asks for: up to ``limit`` rows after its cursor, which is void where it has to ``start_over``."""

    cursor: Cursor | None
    limit: int
    start_over: bool = False


def read_page(ledger: Ledger, scope: Scope, wanted: Wanted) -> Page:
    """Return the page after the cursor; from the start, marked ``reset``, when the cursor cannot be used.

    What the ledger holds must be flushed: rows are read as they are stored.
    """
    cursor, limit = wanted.cursor, wanted.limit
    usable = cursor is not None and not wanted.start_over and _leads_on(cursor, scope, ledger)
    after = cursor.rev if cursor is not None and usable else 0
    reset = not usable or (cursor is not None and cursor.refill is not None)
    query = _ROWS if scope.whole else _ROWS.where(scope.where)
    asked = {"household_id": ledger.household_id, "after": after, "most": limit + 1}
    found = ledger.connection.execute(query, asked).all()
    more = len(found) > limit
    rows: list[str] = []
    gone: list[str] = []
    last = after
    for row in found[:limit]:
        last = row.rev
        if scope.whole:
            (gone if row.gone else rows).append(whole_row_text(row))
        elif row.gone:
            gone.append(f'{{"id":"{row.id}","kind":"{row.kind}","rev":{row.rev}}}')
        else:
            rows.append(row_text(row, row.fields))
    end = last if more else ledger.rev
    behind = Cursor(end, scope.version, ledger.purged_rev if more and reset else None)
    return Page(rows, gone, behind.text(), more, reset, first=not usable)


def _leads_on(cursor: Cursor, scope: Scope, ledger: Ledger) -> bool:
    """Say whether what comes after a cursor is all that its phone lacks."""
    if cursor.scope != scope.version or cursor.rev > ledger.rev:
        return False
    if cursor.refill is not None:
        return cursor.refill == ledger.purged_rev
    return cursor.rev >= ledger.purged_rev


_C: Final = records.c
_ADDRESSABLE: Final = func.length(_C.id) == ID_LENGTH
"""Leave out what an older server took under an id that is none: no operation can name it, so no phone holds it."""
_ROWS: Final = (
    select(_C.id, _C.kind, _C.rev, _C.gone, _C.person_id, _C.made_ms, _C.fields, _C.device_id, _C.stamps)
    .where(_C.household_id == bindparam("household_id"), _C.rev > bindparam("after"), _ADDRESSABLE)
    .order_by(_C.rev)
    .limit(bindparam("most", type_=Integer))
)
