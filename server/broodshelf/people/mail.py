"""Where people get mail: a keeper sets an address, and it counts once the code sent there was typed in.

The address is kept beside the records, not in them: it never syncs to a phone, and only keepers can read it.
"""

from __future__ import annotations

import re
from typing import Any, Final

from sqlalchemy import Connection, delete, insert, select, update

from ..errors import BadRequest, Gone, NotFound
from ..languages import told
from ..model.gauges import HOUR_MS
from ..records.home.ending import note_ended
from ..records.store import lock, read_record
from .secrets import hash_code, new_code
from .tables import mail_addresses

CODE_LASTS_MS: Final = HOUR_MS
_ADDRESS: Final = re.compile(
    r"[A-Za-z0-9.!#$%&'*+/=?^_`{|}~-]{1,64}@(?:[A-Za-z0-9](?:[A-Za-z0-9-]{0,61}[A-Za-z0-9])?\.)+[A-Za-z][A-Za-z0-9-]+"
)
"""What HTML's e-mail field takes, with a dot in the host: one plain mailbox, no name, no line break."""
LONGEST: Final = 254


def ask(connection: Connection, household_id: str, person_id: str, address: str, now_ms: int) -> str:
    """Remember a person's new address, unconfirmed, and return the code to send there."""
    lock(connection, household_id)
    _person(connection, household_id, person_id)
    if len(address) > LONGEST or not _ADDRESS.fullmatch(address):
        raise BadRequest(
            told("problem-no-mail-address"),
            fields={"address": "not an e-mail address"},
        )
    code = new_code()
    connection.execute(delete(mail_addresses).where(*_of(household_id, person_id)))
    connection.execute(
        insert(mail_addresses).values(
            household_id=household_id,
            person_id=person_id,
            address=address,
            code_hash=hash_code(code),
            asked_ms=now_ms,
        )
    )
    return code


def confirm(connection: Connection, household_id: str, person_id: str, code: str, now_ms: int) -> str:
    """Confirm an address by its code and return it. Raises ``BadRequest`` for another code, ``Gone`` if too late."""
    row = connection.execute(select(mail_addresses).where(*_of(household_id, person_id))).one_or_none()
    if row is None or row.code_hash is None:
        raise NotFound(told("problem-no-mail-code"))
    if not 0 <= now_ms - row.asked_ms <= CODE_LASTS_MS:
        raise Gone(told("problem-mail-code-over"), code="code_ended")
    if row.code_hash != hash_code(code):
        raise BadRequest(told("problem-mail-code-wrong"), code="wrong_code", fields={"code": "wrong"})
    connection.execute(
        update(mail_addresses)
        .where(*_of(household_id, person_id))
        .values(code_hash=None, confirmed_ms=now_ms)
    )
    return str(row.address)


def forget(connection: Connection, household_id: str, person_id: str, now_ms: int) -> None:
    """Forget a person's address. Nothing happens if there is none."""
    note_ended(connection, "mail", household_id, [person_id], now_ms)
    connection.execute(delete(mail_addresses).where(*_of(household_id, person_id)))


def unconfirm(connection: Connection, household_id: str, person_id: str) -> None:
    """Let an address count no more until a code is sent there and typed in anew: it takes no mail."""
    connection.execute(
        update(mail_addresses).where(*_of(household_id, person_id)).values(code_hash=None, confirmed_ms=None)
    )


def addresses(connection: Connection, household_id: str) -> list[dict[str, Any]]:
    """Return ``{person_id, address, confirmed, asked_ms}`` for everyone who has one; for keepers' eyes."""
    rows = connection.execute(
        select(mail_addresses)
        .where(mail_addresses.c.household_id == household_id)
        .order_by(mail_addresses.c.person_id)
    )
    return [
        {
            "person_id": row.person_id,
            "address": row.address,
            "confirmed": row.confirmed_ms is not None,
            "asked_ms": row.asked_ms,
        }
        for row in rows
    ]


def _person(connection: Connection, household_id: str, person_id: str) -> None:
    record = read_record(connection, household_id, person_id)
    if record is None or record.kind != "person" or record.gone:
        raise NotFound(told("problem-no-person-yet"))


def _of(household_id: str, person_id: str) -> tuple[Any, Any]:
    return mail_addresses.c.household_id == household_id, mail_addresses.c.person_id == person_id
