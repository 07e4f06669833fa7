"""Making a database agree with what was ended (``records.ended``): at start, and so after every restore."""

from __future__ import annotations

from collections.abc import Callable, Collection
from typing import Final

from sqlalchemy import Connection, delete, insert, select, update

from ..records.ended import Revocation, Revocations, What, erased_among, still_ended
from ..records.home.port import Endings
from ..records.purge import purged_among
from ..records.quick.many_rows import is_among
from ..records.store import Ledger, read_kind, read_record
from ..records.tables import households, purged, records, revisions
from ..records.whole import erase
from .leaving import end_people
from .passes import end_pass
from .secrets import hash_token, new_token
from .tables import claim_codes, devices, feed_tokens, mail_addresses, pairings, pass_secrets, sensor_tokens

Unsubscribe = Callable[[Connection, Collection[tuple[str, str]]], None]
"""Ends where these phones, by household and id, listen, and the mailboxes that are nobody's any more."""


def mend_revocations(connection: Connection, revocations: Revocations) -> int:
    """Where the file is damaged, write it anew from what can be read and what the database knows; return the damage.

    Nothing that was revoked comes back by it, except in a database that was restored from before a line that is lost.
    """
    damaged = revocations.unreadable()
    if damaged:
        try:
            read = revocations.read()
        except OSError:
            read = []
        revocations.write_anew([*read, *_revoked_in(connection)])
    return damaged


def _revoked_in(connection: Connection) -> list[Revocation]:
    rows = connection.execute(
        select(devices.c.household_id, devices.c.id, devices.c.revoked_ms).where(
            devices.c.revoked_ms.is_not(None)
        )
    )
    found = [Revocation("device", row.household_id, row.id, row.revoked_ms) for row in rows]
    for household_id in connection.scalars(select(households.c.id)).all():
        passes = read_kind(connection, household_id, "pass", gone=True)
        found += [
            Revocation("pass", household_id, each.id, at_ms)
            for each in passes
            if (at_ms := each.values.get("revoked_at_ms"))
        ]
    return found


def apply_revocations(
    connection: Connection, revocations: Revocations, endings: Endings, unsubscribe: Unsubscribe
) -> int:
    """Make the database agree with what was noted as ended; return how many entries it had forgotten.

    ``revocations``: the file of this machine, which is mended first.
    """
    mend_revocations(connection, revocations)
    endings.agree(connection)
    noted = endings.all_of(connection)
    forgotten = _erased(connection, erased_among(noted))
    signed_out: list[tuple[str, str]] = []
    for what in dict.fromkeys(ending.what for ending in noted):
        endings_of = still_ended(what, noted)
        if what == "session":
            signed_out = _sign_out(connection, endings_of)
            forgotten += len(signed_out)
        elif what in _APPLY:
            forgotten += _APPLY[what](connection, endings_of)
    unsubscribe(connection, signed_out)
    return forgotten


def _erased(connection: Connection, erased: frozenset[str]) -> int:
    """Erase again the households that were erased, wherever a restored database has them."""
    here = set(connection.scalars(households.select().with_only_columns(households.c.id)))
    again = sorted(erased & here)
    for household_id in again:
        erase(connection, household_id)
    return len(again)


def _devices(connection: Connection, endings: list[Revocation]) -> int:
    d = devices.c
    return sum(
        connection.execute(
            update(devices)
            .where(d.household_id == e.household_id, d.id == e.id, d.revoked_ms.is_(None))
            .values(revoked_ms=e.at_ms)
        ).rowcount
        for e in endings
    )


def _passes(connection: Connection, endings: list[Revocation]) -> int:
    forgotten = 0
    for e in endings:
        record = read_record(connection, e.household_id, e.id)
        if record is not None and not record.values.get("revoked_at_ms"):
            ledger = Ledger(connection, e.household_id)
            end_pass(ledger, e.id, e.at_ms)
            ledger.flush()
            forgotten += 1
    return forgotten


def _sign_out(connection: Connection, endings: list[Revocation]) -> list[tuple[str, str]]:
    """Return which phones these sessions were of, by household and id; they may sign in again."""
    d = devices.c
    among = is_among(connection, d.token_hash, [e.id for e in endings])
    phones = [(row.household_id, row.id) for row in connection.execute(select(devices).where(among))]
    for household_id, device_id in phones:  # a hash of nothing that anybody holds
        connection.execute(
            update(devices)
            .where(d.household_id == household_id, d.id == device_id)
            .values(token_hash=hash_token(new_token()))
        )
    return phones


def _links(connection: Connection, endings: list[Revocation]) -> int:
    among = is_among(connection, pass_secrets.c.secret_hash, [e.id for e in endings])
    return connection.execute(delete(pass_secrets).where(among)).rowcount


def _feeds(connection: Connection, endings: list[Revocation]) -> int:
    among = is_among(connection, feed_tokens.c.token_hash, [e.id for e in endings])
    return connection.execute(delete(feed_tokens).where(among)).rowcount


def _sensors(connection: Connection, endings: list[Revocation]) -> int:
    among = is_among(connection, sensor_tokens.c.token_hash, [e.id for e in endings])
    return connection.execute(delete(sensor_tokens).where(among)).rowcount


def _pairings(connection: Connection, endings: list[Revocation]) -> int:
    among = is_among(connection, pairings.c.id, [e.id for e in endings])
    return connection.execute(delete(pairings).where(among, pairings.c.collected_ms.is_(None))).rowcount


def _claims(connection: Connection, endings: list[Revocation]) -> int:
    among = is_among(connection, claim_codes.c.code_hash, [e.id for e in endings])
    return connection.execute(delete(claim_codes).where(among, claim_codes.c.used_ms.is_(None))).rowcount


def _mail(connection: Connection, endings: list[Revocation]) -> int:
    m = mail_addresses.c
    return sum(
        connection.execute(
            delete(mail_addresses).where(
                m.household_id == e.household_id, m.person_id == e.id, m.asked_ms <= e.at_ms
            )
        ).rowcount
        for e in endings
    )


def _people(connection: Connection, endings: list[Revocation]) -> int:
    forgotten = 0
    for e in endings:
        record = read_record(connection, e.household_id, e.id)
        if record is None or record.gone or record.kind != "person":
            continue
        ledger = Ledger(connection, e.household_id)
        ledger.put(e.id, "person", {"gone": True}, now_ms=e.at_ms)
        end_people(ledger, [e.id], e.at_ms)
        ledger.flush()
        forgotten += 1
    return forgotten


def _records(connection: Connection, endings: list[Revocation]) -> int:
    """Purge again, by their ids, the records that a restored database still has or does not know to be purged."""
    by_household: dict[str, list[str]] = {}
    for e in endings:
        by_household.setdefault(e.household_id, []).append(e.id)
    known = set(connection.scalars(households.select().with_only_columns(households.c.id)))
    forgotten = 0
    for household_id in by_household.keys() & known:
        ids = set(by_household[household_id])
        fresh = sorted(ids - purged_among(connection, household_id, ids))
        if not fresh:
            continue
        ledger = Ledger(connection, household_id)
        connection.execute(insert(purged), [{"household_id": household_id, "record_id": i} for i in fresh])
        for table, column in ((records, records.c.id), (revisions, revisions.c.record_id)):
            among = is_among(connection, column, fresh)
            connection.execute(delete(table).where(table.c.household_id == household_id, among))
        connection.execute(
            update(households).where(households.c.id == household_id).values(purged_rev=ledger.rev)
        )
        forgotten += len(fresh)
    return forgotten


_APPLY: Final[dict[What, Callable[[Connection, list[Revocation]], int]]] = {
    "device": _devices,
    "pass": _passes,
    "link": _links,
    "feed": _feeds,
    "sensor": _sensors,
    "pairing": _pairings,
    "claim": _claims,
    "mail": _mail,
    "person": _people,
    "record": _records,
}
