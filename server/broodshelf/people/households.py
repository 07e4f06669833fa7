"""Claiming a household with the one-time code that the server prints, and the way back into one."""

from __future__ import annotations

from dataclasses import asdict, dataclass
from typing import Any

from sqlalchemy import Connection, Row, delete, func, insert, select, update

from ..errors import BadRequest, Gone
from ..languages import told
from ..model.gauges import DAY_MS
from ..model.kinds import Person
from ..records.home.ending import note_ended
from ..records.ids import uuid7
from ..records.store import Ledger, read_record
from ..records.tables import households
from .secrets import hash_code, new_code
from .tables import claim_codes

CLAIM_LASTS_MS = DAY_MS
INVITATION_KEPT_MS = 90 * CLAIM_LASTS_MS
"""How long an invitation that is over is kept, so that it can be counted as used or expired."""
STARTING_HOUSEHOLD = {
    "care_hours": ["08:00", "18:30"],
    "quiet_from": "21:30",
    "quiet_to": "07:30",
    "patience_hours": 6.0,
}


def count_households(connection: Connection) -> int:
    """Return how many households the server keeps."""
    return connection.execute(select(func.count()).select_from(households)).scalar_one()


def make_claim_code(
    connection: Connection, now_ms: int, household_id: str | None = None, person_id: str | None = None
) -> str:
    """Make a one-time code for a new household or, with ids, for a person's way back. Lasts 24 hours."""
    code = new_code()
    connection.execute(
        insert(claim_codes).values(
            code_hash=hash_code(code),
            for_household=household_id,
            person_id=person_id,
            created_ms=now_ms,
            expires_ms=now_ms + CLAIM_LASTS_MS,
        )
    )
    return code


def whose(connection: Connection, code: str, now_ms: int) -> str | None:
    """Return the name of the person whom a code lets back in, None for a code of a new household.

    Raises ``Gone`` for a code that is not good; the code is not used up.
    """
    row = _good(connection, code, now_ms)
    if row.for_household is None or row.person_id is None:
        return None
    person = read_record(connection, row.for_household, row.person_id)
    return None if person is None else str(person.values["name"])


@dataclass(frozen=True, slots=True)
class Founding:
    """What whoever claims says of a new household; all of it is needed for one, nothing for the way back.

    ``language``: the phone's, if this server has it.
    """

    person_name: str | None = None
    household_name: str | None = None
    zone: str | None = None
    language: str | None = None


def claim(
    connection: Connection, code: str, founding: Founding, now_ms: int, *, invited: bool = True
) -> tuple[str, str]:
    """Use a code up; return ``(household_id, person_id)``. ``invited``: whether invitations open anything now.

    Raises ``BadRequest`` where a new household lacks something, ``Gone`` for a code that is not good.
    """
    row = _good(connection, code, now_ms)
    if row.number is not None and not invited:
        raise Gone(told("problem-signup-closed"), code="claim_code_ended")
    used = connection.execute(
        update(claim_codes)
        .where(claim_codes.c.code_hash == row.code_hash, claim_codes.c.used_ms.is_(None))
        .values(used_ms=now_ms)
    )
    if used.rowcount != 1:
        raise Gone(told("problem-code-used-now"), code="claim_code_ended")
    if row.for_household is not None and row.person_id is not None:
        note_ended(connection, "claim", row.for_household, [row.code_hash], now_ms)
        return row.for_household, row.person_id
    household_id, person_id = found(connection, founding, now_ms)
    connection.execute(
        update(claim_codes).where(claim_codes.c.code_hash == row.code_hash).values(founded=household_id)
    )
    note_ended(connection, "claim", household_id, [row.code_hash], now_ms)
    return household_id, person_id


def found(connection: Connection, founding: Founding, now_ms: int) -> tuple[str, str]:
    """Make the household that somebody says; return ``(household_id, person_id)``.

    Raises ``BadRequest`` naming what was not said.
    """
    person_name, household_name, zone = founding.person_name, founding.household_name, founding.zone
    if person_name is None or household_name is None or zone is None:
        raise BadRequest(
            told("problem-founding-incomplete"),
            fields={
                name: "missing"
                for name, value in asdict(founding).items()
                if value is None and name != "language"
            },
        )
    return found_household(connection, person_name, household_name, zone, now_ms, founding.language)


def _good(connection: Connection, code: str, now_ms: int) -> Row[Any]:
    row = connection.execute(
        select(claim_codes).where(claim_codes.c.code_hash == hash_code(code))
    ).one_or_none()
    if row is None or row.used_ms is not None or row.expires_ms < now_ms or _left(connection, row):
        raise Gone(
            told("problem-claim-code-ended"),
            code="claim_code_ended",
        )
    return row


def _left(connection: Connection, row: Row[Any]) -> bool:
    """Say whether a code is for a person who was deleted meanwhile."""
    if row.for_household is None or row.person_id is None:
        return False
    person = read_record(connection, row.for_household, row.person_id)
    return person is None or person.gone or person.values.get("role") != "keeper"


def forget_old_codes(connection: Connection, now_ms: int) -> None:
    """Delete claim codes that ended a day ago, used or not, and invitations that ended long ago."""
    c = claim_codes.c
    over = c.number.is_(None) & (c.expires_ms < now_ms - CLAIM_LASTS_MS)
    connection.execute(delete(claim_codes).where(over | (c.expires_ms < now_ms - INVITATION_KEPT_MS)))


def found_household(
    connection: Connection,
    person_name: str,
    household_name: str,
    zone: str,
    now_ms: int,
    language: str | None = None,
) -> tuple[str, str]:
    """Make a household with its first keeper; return both ids."""
    household_id, person_id = uuid7(now_ms), uuid7(now_ms)
    connection.execute(
        insert(households).values(
            id=household_id, rev=0, epoch=uuid7(now_ms), purged_rev=0, created_ms=now_ms
        )
    )
    ledger = Ledger(connection, household_id)
    values = {"name": household_name, "zone": zone, **STARTING_HOUSEHOLD}
    ledger.put(household_id, "household", values, now_ms=now_ms, person_id=person_id)
    first = Person(name=person_name, role="keeper", language=language)
    add_person(ledger, first, now_ms, person_id=person_id)
    ledger.flush()
    return household_id, person_id


def add_person(ledger: Ledger, person: Person, now_ms: int, *, person_id: str | None = None) -> str:
    """Add a person to a household (the caller flushes) and return the id."""
    person_id = person_id or uuid7(now_ms)
    values = {field: value for field, value in asdict(person).items() if value}
    ledger.put(person_id, "person", values, now_ms=now_ms, person_id=person_id)
    return person_id
