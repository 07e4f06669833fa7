"""What has ended, or was used once, still works: passes, calendars, codes, pairings."""

from __future__ import annotations

import dataclasses
from typing import Any

import pytest
from sqlalchemy import select, update
from tests.guard.mutants.mutant import Mutant, at

from broodshelf.feed import tokens
from broodshelf.people import households, pairing, passes
from broodshelf.records.store import read_record
from broodshelf.web import access, feed


def pass_that_ended_long_ago_accepted(patch: pytest.MonkeyPatch) -> None:
    patch.setattr(passes, "GRACE_MS", 10 * 365 * 86_400_000)


def _read_as_if_not_taken_back(connection: Any, household_id: str, record_id: str) -> Any:
    record = read_record(connection, household_id, record_id)
    if record is not None:
        record.values.pop("revoked_at_ms", None)
    return record


def pass_that_was_taken_back_accepted(patch: pytest.MonkeyPatch) -> None:
    patch.setattr(passes, "read_record", _read_as_if_not_taken_back)


def calendar_of_a_pass_taken_back_made(patch: pytest.MonkeyPatch) -> None:
    patch.setattr(tokens, "read_record", _read_as_if_not_taken_back)


def ended_pass_opened(patch: pytest.MonkeyPatch) -> None:
    real = passes._window
    patch.setattr(passes, "_window", lambda *a: dataclasses.replace(real(*a), state="active", ends_ms=10**14))


def calendar_address_never_ends(patch: pytest.MonkeyPatch) -> None:
    real = tokens.find_feed
    patch.setattr(feed.tokens, "find_feed", lambda connection, token, _now_ms: real(connection, token, 0))


def claim_code_works_twice(patch: pytest.MonkeyPatch) -> None:
    def careless(connection: Any, code: str, _now_ms: int) -> Any:
        table = households.claim_codes
        known = table.c.code_hash == households.hash_code(code)
        connection.execute(update(table).where(known).values(used_ms=None))
        row = connection.execute(select(table).where(known)).one_or_none()
        if row is None:
            raise households.Gone(code="claim_code_ended")
        return row

    patch.setattr(households, "_good", careless)


def approved_pairing_approved_again(patch: pytest.MonkeyPatch) -> None:
    def careless(connection: Any, code: str, _now_ms: int, **_: bool) -> Any:
        table = pairing.pairings
        return connection.execute(select(table).where(table.c.code_hash == pairing.hash_code(code))).first()

    patch.setattr(pairing, "_open", careless)


def pairing_secret_not_looked_at(patch: pytest.MonkeyPatch) -> None:
    def careless(connection: Any, pairing_id: str, _secret: str, _now_ms: int) -> Any:
        table = pairing.pairings
        row = connection.execute(select(table).where(table.c.id == pairing_id)).one()
        if row.person_id is None:
            return None
        return pairing.Collected(row.device_id, row.device_name, row.household_id, row.person_id)

    patch.setattr(access.pairing, "collect", careless)


MUTANTS = (
    Mutant("pass that ended long ago accepted", pass_that_ended_long_ago_accepted, at("GET /api/me")),
    Mutant("pass that was taken back accepted", pass_that_was_taken_back_accepted, at("GET /api/me")),
    Mutant("calendar of a pass taken back made", calendar_of_a_pass_taken_back_made, at("POST /api/feeds")),
    Mutant("ended pass opened", ended_pass_opened, at("POST /api/passes/open")),
    Mutant("calendar address never ends", calendar_address_never_ends, at("GET /feed")),
    Mutant("claim code works twice", claim_code_works_twice, at("POST /api/claim")),
    Mutant("approved pairing approved again", approved_pairing_approved_again, at("/api/pairings/approve")),
    Mutant("pairing secret not looked at", pairing_secret_not_looked_at, at("/api/pairings/collect")),
)
