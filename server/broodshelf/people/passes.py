"""Passes: what lets a stand-in look after some colonies for some days, without an account."""

from __future__ import annotations

import datetime as dt
import zoneinfo
from collections.abc import Iterable
from dataclasses import dataclass
from typing import Any

from sqlalchemy import Connection, delete, func, insert, select

from ..errors import Gone, NotAllowed, NotFound, SignedOut
from ..languages import told
from ..model import kinds
from ..model.gauges import DAY_MS
from ..records.home.ending import note_ended
from ..records.quick.many_rows import is_among
from ..records.store import Ledger, Record, lock, read_record
from ..records.types import readable_day
from ..records.zones import read_zone
from .actor import PassState, PassWindow
from .households import add_person
from .put_offs import shorten_put_offs
from .secrets import hash_code, hash_token, new_code, new_token
from .tables import devices, feed_tokens, pass_secrets

MOST_DEVICES = 2
"""How many phones a pass admits: the stand-in's and a spare."""

GRACE_MS = 7 * DAY_MS
"""How long after its end a pass still takes what was logged inside its dates, offline."""


@dataclass(frozen=True, slots=True)
class PassLink:
    """Shown once: the secret goes behind the ``#`` of a link, the code is for typing."""

    secret: str
    code: str
    name: str
    """Of the pass."""


def window_of(connection: Connection, household_id: str, pass_id: str, now_ms: int) -> PassWindow:
    """Return a pass's colonies and dates. Raises ``SignedOut`` when it was revoked or ended long ago."""
    record = read_record(connection, household_id, pass_id)
    if record is None or _taken_back(record):
        raise SignedOut(
            told("problem-pass-taken-back-here"),
            code="pass_revoked",
        )
    window = _window(connection, household_id, record, now_ms)
    if now_ms > window.ends_ms + GRACE_MS:
        raise SignedOut(told("problem-pass-ended", on=window.ends_on), code="pass_ended")
    return window


def ended_passes(connection: Connection, household_ids: Iterable[str], now_ms: int) -> dict[str, list[str]]:
    """Return, by household, the passes whose phones are still known and that were taken back or are over for good."""
    d = devices.c
    rows = connection.execute(
        select(d.household_id, d.pass_id)
        .where(is_among(connection, d.household_id, household_ids), d.pass_id.is_not(None))
        .distinct()
    ).all()
    found: dict[str, list[str]] = {}
    for row in rows:
        record = read_record(connection, row.household_id, row.pass_id)
        if record is None or record.kind != "pass":
            continue
        if (
            _taken_back(record)
            or now_ms > _window(connection, row.household_id, record, now_ms).ends_ms + GRACE_MS
        ):
            found.setdefault(row.household_id, []).append(record.id)
    return found


def _window(connection: Connection, household_id: str, record: Record, now_ms: int) -> PassWindow:
    zone = read_zone(connection, household_id)
    its = kinds.read(kinds.Pass, record.values)
    starts_ms, ends_ms = _midnight_ms(its.starts_on, zone), _midnight_ms(its.ends_on, zone, days=1)
    state: PassState = "not_yet" if now_ms < starts_ms else "active" if now_ms < ends_ms else "ended"
    return PassWindow(
        record.id, frozenset(its.colony_ids or ()), its.starts_on, its.ends_on, starts_ms, ends_ms, state
    )


def _taken_back(record: Record) -> bool:
    return record.gone or kinds.read(kinds.Pass, record.values).revoked_at_ms is not None


def _midnight_ms(day: str, zone: zoneinfo.ZoneInfo, days: int = 0) -> int:
    read = readable_day(day)
    if read is None:
        return 0  # an older server took days that no calendar has; such a pass has ended
    midnight = dt.datetime.combine(dt.date.fromisoformat(read) + dt.timedelta(days=days), dt.time(), zone)
    return round(midnight.timestamp() * 1000)


def make_link(connection: Connection, household_id: str, pass_id: str, now_ms: int) -> PassLink:
    """Make a new link and code for a pass; the old ones stop working, phones already admitted stay."""
    lock(connection, household_id)
    record = read_record(connection, household_id, pass_id)
    if record is None or record.kind != "pass":
        raise NotFound(told("problem-no-pass-yet"))
    if _taken_back(record):
        raise NotAllowed(told("problem-pass-taken-back"), code="pass_revoked")
    link = PassLink(new_token(), new_code(), kinds.read(kinds.Pass, record.values).name)
    replaced = connection.scalars(select(pass_secrets.c.secret_hash).where(*_of(household_id, pass_id))).all()
    note_ended(connection, "link", household_id, replaced, now_ms)
    connection.execute(delete(pass_secrets).where(*_of(household_id, pass_id)))
    connection.execute(
        insert(pass_secrets).values(
            pass_id=pass_id,
            household_id=household_id,
            secret_hash=hash_token(link.secret),
            code_hash=hash_code(link.code),
            made_ms=now_ms,
        )
    )
    return link


def find_pass(
    connection: Connection, now_ms: int, *, secret: str | None = None, code: str | None = None
) -> tuple[str, Record, PassWindow]:
    """Return ``(household_id, pass record, window)`` for a secret or code. Raises ``Gone`` when not good."""
    hashed = (
        pass_secrets.c.secret_hash == hash_token(secret)
        if secret
        else pass_secrets.c.code_hash == hash_code(code or "")
    )
    row = connection.execute(select(pass_secrets).where(hashed)).one_or_none()
    record = read_record(connection, row.household_id, row.pass_id) if row is not None else None
    if row is None or record is None or _taken_back(record):
        raise Gone(told("problem-pass-unknown"), code="pass_revoked")
    window = _window(connection, row.household_id, record, now_ms)
    if window.state == "ended":
        raise Gone(told("problem-pass-ended", on=window.ends_on), code="pass_ended")
    return row.household_id, record, window


def admit(
    connection: Connection, household_id: str, record: Record, now_ms: int, language: str | None = None
) -> str:
    """Make the stand-in that a phone signs in as and return the person's id. Raises beyond the cap.

    ``language``: the phone's; it counts where the keeper chose none for the pass.
    """
    ledger = Ledger(connection, household_id)
    admitted = connection.execute(
        select(func.count())
        .select_from(devices)
        .where(
            devices.c.household_id == household_id,
            devices.c.pass_id == record.id,
            devices.c.revoked_ms.is_(None),
        )
    ).scalar_one()
    if admitted >= MOST_DEVICES:
        raise NotAllowed(
            told("problem-pass-full", n=MOST_DEVICES),
            code="pass_full",
        )
    its = kinds.read(kinds.Pass, record.values)
    own = None if its.language else language
    guest = kinds.Person(name=its.name, role="stand_in", pass_id=record.id, language=own)
    person_id = add_person(ledger, guest, now_ms)
    ledger.flush()
    return person_id


def end_pass(ledger: Ledger, pass_id: str, now_ms: int) -> set[str] | None:
    """End a pass with its link, code, calendar and what its stand-ins put off; the caller flushes the ledger.

    Returns the colonies whose plans have to be made again, None where there is no such pass.
    """
    record = ledger.get(pass_id)
    if record is None or record.kind != "pass":
        return None
    if kinds.read(kinds.Pass, record.values).revoked_at_ms is None:
        ledger.put(pass_id, "pass", {"revoked_at_ms": now_ms}, now_ms=now_ms)
    for table in (pass_secrets, feed_tokens):
        ledger.connection.execute(
            delete(table).where(table.c.household_id == ledger.household_id, table.c.pass_id == pass_id)
        )
    return shorten_put_offs(ledger, pass_id, now_ms, now_ms)


def hold_to_dates(ledger: Ledger, pass_id: str, now_ms: int) -> set[str]:
    """After a change of a pass: what was put off under it ends with it. Returns the colonies concerned."""
    record = ledger.get(pass_id)
    if record is None or record.kind != "pass":
        return set()
    ends_ms = (
        now_ms
        if _taken_back(record)
        else _window(ledger.connection, ledger.household_id, record, now_ms).ends_ms
    )
    return shorten_put_offs(ledger, pass_id, ends_ms, now_ms)


def pass_status(connection: Connection, household_id: str, pass_id: str, now_ms: int) -> dict[str, Any]:
    """Return a pass's state, when its link was made, and the phones that opened it."""
    record = read_record(connection, household_id, pass_id)
    if record is None or record.kind != "pass":
        raise NotFound(told("problem-no-pass"))
    state = "revoked" if _taken_back(record) else _window(connection, household_id, record, now_ms).state
    made = connection.execute(
        select(pass_secrets.c.made_ms).where(*_of(household_id, pass_id))
    ).scalar_one_or_none()
    phones = connection.execute(
        select(devices).where(
            devices.c.household_id == household_id,
            devices.c.pass_id == pass_id,
            devices.c.revoked_ms.is_(None),
        )
    ).all()
    return {
        "state": state,
        "link_made_ms": made,
        "devices": [{"id": d.id, "name": d.name, "last_seen_ms": d.last_seen_ms} for d in phones],
        "last_used_ms": max((d.last_seen_ms for d in phones), default=None),
    }


def _of(household_id: str, pass_id: str) -> tuple[Any, Any]:
    return pass_secrets.c.household_id == household_id, pass_secrets.c.pass_id == pass_id
