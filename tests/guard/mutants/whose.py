"""What belongs to another household, or lies outside the pass, is shown or changed."""

from __future__ import annotations

import dataclasses
from typing import Any

import pytest
from sqlalchemy import select, update
from tests.guard.mutants.mutant import Mutant, at

from broodshelf.feed import tokens
from broodshelf.people import devices, pairing, passes
from broodshelf.people import mail as addresses
from broodshelf.people.tables import devices as devices_table
from broodshelf.people.tables import mail_addresses
from broodshelf.records.store import Ledger, read_record
from broodshelf.records.tables import households as households_table
from broodshelf.records.tables import records
from broodshelf.sync import exchange
from broodshelf.web import access, parts, photos, sync_routes


def _household_of(connection: Any, record_id: str, own: str) -> str:
    found = connection.execute(select(records.c.household_id).where(records.c.id == record_id)).scalar()
    return str(found or own)


def history_of_any_household(patch: pytest.MonkeyPatch) -> None:
    real = sync_routes.read_history

    def careless(connection: Any, household_id: str, record_id: str) -> Any:
        return real(connection, _household_of(connection, record_id, household_id), record_id)

    patch.setattr(sync_routes, "read_history", careless)


def what_is_gone_of_any_household(patch: pytest.MonkeyPatch) -> None:
    real = sync_routes.read_gone

    def careless(connection: Any, _household_id: str, most: int) -> Any:
        everybody = connection.execute(select(households_table.c.id)).scalars().all()
        return [row for household_id in everybody for row in real(connection, household_id, most)]

    patch.setattr(sync_routes, "read_gone", careless)


def phone_of_any_household_removed(patch: pytest.MonkeyPatch) -> None:
    def careless(connection: Any, _household_id: str, device_id: str, now_ms: int) -> None:
        known = devices_table.c.id == device_id
        if connection.execute(update(devices_table).where(known).values(revoked_ms=now_ms)).rowcount != 1:
            raise devices.NotFound

    patch.setattr(access.devices, "revoke_device", careless)


def phones_of_every_household_listed(patch: pytest.MonkeyPatch) -> None:
    real = devices.list_devices

    def careless(connection: Any, actor: Any) -> Any:
        everybody = connection.execute(select(households_table.c.id)).scalars().all()
        return [
            phone
            for household_id in everybody
            for phone in real(connection, dataclasses.replace(actor, household_id=household_id))
        ]

    patch.setattr(access.devices, "list_devices", careless)


def link_for_a_pass_of_any_household(patch: pytest.MonkeyPatch) -> None:
    real = passes.make_link

    def careless(connection: Any, household_id: str, pass_id: str, now_ms: int) -> Any:
        return real(connection, _household_of(connection, pass_id, household_id), pass_id, now_ms)

    patch.setattr(passes, "make_link", careless)


def pass_of_any_household_taken_back(patch: pytest.MonkeyPatch) -> None:
    real = passes.end_pass

    def careless(ledger: Any, pass_id: str, now_ms: int) -> Any:
        whose = _household_of(ledger.connection, pass_id, ledger.household_id)
        other = Ledger(ledger.connection, whose)
        ended = real(other, pass_id, now_ms)
        other.flush()
        return ended if whose == ledger.household_id else set()

    patch.setattr(passes, "end_pass", careless)


def phone_of_somebody_else_taken_over(patch: pytest.MonkeyPatch) -> None:
    real = devices.sign_in

    def careless(connection: Any, phone: Any, owner: Any, now_ms: int) -> Any:
        taken = {**dataclasses.asdict(owner), "revoked_ms": None}
        connection.execute(update(devices_table).where(devices_table.c.id == phone.id).values(**taken))
        return real(connection, phone, owner, now_ms)

    patch.setattr(devices, "sign_in", careless)


def pass_that_ended_still_opens_everything(patch: pytest.MonkeyPatch) -> None:
    real = parts.actor
    patch.setattr(parts, "actor", lambda **_: real(after_the_pass=True))


def person_of_any_household_let_in(patch: pytest.MonkeyPatch) -> None:
    def careless(connection: Any, household_id: str, record_id: str) -> Any:
        return read_record(connection, _household_of(connection, record_id, household_id), record_id)

    patch.setattr(pairing, "read_record", careless)


def mail_of_every_household_shown(patch: pytest.MonkeyPatch) -> None:
    real = addresses.addresses

    def careless(connection: Any, _household_id: str) -> Any:
        everybody = connection.execute(select(households_table.c.id)).scalars().all()
        return [row for household_id in everybody for row in real(connection, household_id)]

    patch.setattr(addresses, "addresses", careless)


def mail_of_any_household_forgotten(patch: pytest.MonkeyPatch) -> None:
    def careless(connection: Any, _household_id: str, person_id: str, _now_ms: int) -> None:
        connection.execute(mail_addresses.delete().where(mail_addresses.c.person_id == person_id))

    patch.setattr(addresses, "forget", careless)


def calendar_of_any_household_ended(patch: pytest.MonkeyPatch) -> None:
    def careless(connection: Any, _household_id: str, pass_id: str | None, _now_ms: int) -> None:
        connection.execute(
            tokens.feed_tokens.delete().where(tokens.feed_tokens.c.pass_id.is_not_distinct_from(pass_id))
        )

    patch.setattr(tokens, "revoke_feed", careless)


def picture_outside_the_pass_shown(patch: pytest.MonkeyPatch) -> None:
    real = photos._sha256_of
    patch.setattr(photos, "_sha256_of", lambda actor, *a: real(dataclasses.replace(actor, window=None), *a))


def picture_of_a_deleted_record_shown(patch: pytest.MonkeyPatch) -> None:
    def careless(connection: Any, household_id: str, record_id: str) -> Any:
        record = read_record(connection, household_id, record_id)
        return None if record is None else dataclasses.replace(record, gone=False)

    patch.setattr(photos, "read_record", careless)


def request_of_another_phone_taken(patch: pytest.MonkeyPatch) -> None:
    real = exchange.exchange

    def careless(connection: Any, actor: Any, body: Any, *rest: Any) -> Any:
        return real(connection, actor, {**body, "device": actor.device_id}, *rest)

    patch.setattr(sync_routes, "exchange", careless)


MUTANTS = (
    Mutant("history of any household", history_of_any_household, at("/history")),
    Mutant("what is gone of any household", what_is_gone_of_any_household, at("/api/records/gone")),
    Mutant("phone of any household removed", phone_of_any_household_removed, at("/api/devices")),
    Mutant("phones of every household listed", phones_of_every_household_listed, at("GET /api/devices")),
    Mutant("link for a pass of any household", link_for_a_pass_of_any_household, at("/link")),
    Mutant("pass of any household taken back", pass_of_any_household_taken_back, at("/revoke")),
    Mutant(
        "phone of somebody else taken over",
        phone_of_somebody_else_taken_over,
        at("POST /api/passes/open with a phone that is let in"),
    ),
    Mutant(
        "pass that ended still opens everything",
        pass_that_ended_still_opens_everything,
        at("GET /api/photos"),
    ),
    Mutant("person of any household let in", person_of_any_household_let_in, at("/api/pairings/approve as")),
    Mutant("mail of every household shown", mail_of_every_household_shown, at("GET /api/mail")),
    Mutant("mail of any household forgotten", mail_of_any_household_forgotten, at("DELETE /api/mail")),
    Mutant("calendar of any household ended", calendar_of_any_household_ended, at("/api/feeds/revoke")),
    Mutant("picture outside the pass shown", picture_outside_the_pass_shown, at("GET /api/photos")),
    Mutant("picture of a deleted record shown", picture_of_a_deleted_record_shown, at("GET /api/photos")),
    Mutant("request of another phone taken", request_of_another_phone_taken, at("/api/sync as")),
)
