"""Invitations: one-time codes for households of their own, many at once, good for days, and counted.

An invitation is a claim code (``people.households``) with a number and about 77 bits, because it lies on paper for
days and many are open at a time.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from sqlalchemy import Connection, case, func, insert, select, update

from ..model.gauges import DAY_MS
from ..records.home.ending import note_ended
from .secrets import hash_code, new_code
from .tables import claim_codes

CODE_LENGTH: Final = 16
LASTS_DAYS: Final = 14
MOST_DAYS: Final = 365
MOST_AT_ONCE: Final = 500
NO_HOUSEHOLD: Final = "00000000-0000-0000-0000-000000000000"
"""Whose an invitation is that was taken back: nobody's yet."""


@dataclass(frozen=True, slots=True)
class Invitation:
    """One that was just made; its code is told once and kept as a hash only."""

    number: int
    code: str
    expires_ms: int


@dataclass(frozen=True, slots=True)
class Tally:
    """How many invitations are open, were used, and ended unused, of those that are still remembered."""

    open: int
    used: int
    expired: int


def invite(connection: Connection, count: int, days: int, now_ms: int) -> list[Invitation]:
    """Make invitations that are good for so many days, numbered on from those that are known."""
    last = connection.scalar(select(func.max(claim_codes.c.number))) or 0
    expires_ms = now_ms + days * DAY_MS
    made = [Invitation(last + n, new_code(CODE_LENGTH), expires_ms) for n in range(1, count + 1)]
    connection.execute(
        insert(claim_codes),
        [
            {
                "code_hash": hash_code(each.code),
                "number": each.number,
                "created_ms": now_ms,
                "expires_ms": expires_ms,
            }
            for each in made
        ],
    )
    return made


def tally(connection: Connection, now_ms: int) -> Tally:
    """Count the invitations that are remembered."""
    c = claim_codes.c
    state = case((c.used_ms.is_not(None), "used"), (c.expires_ms < now_ms, "expired"), else_="open")
    rows = connection.execute(select(state, func.count()).where(c.number.is_not(None)).group_by(state))
    found = {str(name): int(count) for name, count in rows}
    return Tally(found.get("open", 0), found.get("used", 0), found.get("expired", 0))


def take_back(connection: Connection, now_ms: int) -> int:
    """End every invitation that is open, also in a database that is put back later; return how many."""
    c = claim_codes.c
    mine = (c.number.is_not(None), c.used_ms.is_(None), c.expires_ms >= now_ms)
    hashes = connection.scalars(select(c.code_hash).where(*mine)).all()
    note_ended(connection, "claim", NO_HOUSEHOLD, hashes, now_ms)
    connection.execute(update(claim_codes).where(*mine).values(expires_ms=now_ms - 1))
    return len(hashes)
