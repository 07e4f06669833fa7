"""Committed mutants of the guard: named faults, each of which the matrix must find.

A mutant is put in with ``monkeypatch``; ``look`` is the part of the matrix that has to turn red, so that a run of
all of them stays short. Without a mutant the same parts are green: the tests of the matrix itself.
"""

from __future__ import annotations

import dataclasses
import json
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from typing import Any

import pytest
from flask import request
from sqlalchemy import select, true, update
from tests.guard.field_matrix import wrong_reads, wrong_writes
from tests.guard.matrix import cells, wrong_answers
from tests.support.two_houses import TwoHouses

from broodshelf.feed import tokens
from broodshelf.model.kinds import HOUSE, KEEPER, KINDS
from broodshelf.people import devices, households, pairing, passes
from broodshelf.people import mail as addresses
from broodshelf.people.tables import devices as devices_table
from broodshelf.people.tables import mail_addresses
from broodshelf.records.store import Ledger, read_record
from broodshelf.records.tables import households as households_table
from broodshelf.records.tables import records
from broodshelf.sync import exchange, operations
from broodshelf.sync import feed as delivery
from broodshelf.sync.scope import Scope
from broodshelf.web import access, feed, guard, headers, parts, photos, sync_routes

Look = Callable[[TwoHouses], Iterable[str]]


@dataclass(frozen=True)
class Mutant:
    """A fault, how it is put in, and where the matrix has to see it."""

    name: str
    apply: Callable[[pytest.MonkeyPatch], None]
    look: Look


def at(address: str) -> Look:
    return lambda houses: wrong_answers(houses, cells(address))


def writes(role: str, only: str = "") -> Look:
    return lambda houses: wrong_writes(houses, role, only)


def reads(role: str) -> Look:
    return lambda houses: wrong_reads(houses, role)


# -- who is asking ------------------------------------------------------------------------------------


def keeper_not_asked_for_at_the_larder(patch: pytest.MonkeyPatch) -> None:
    real = parts.keeper
    patch.setattr(parts, "keeper", lambda: parts.actor() if request.path == "/api/larder" else real())


def keeper_not_asked_for_when_a_link_is_made(patch: pytest.MonkeyPatch) -> None:
    real = parts.keeper
    patch.setattr(parts, "keeper", lambda: parts.actor() if request.path.endswith("/link") else real())


def nobody_may_reckon(patch: pytest.MonkeyPatch) -> None:
    real = parts.actor
    patch.setattr(parts, "actor", lambda **named: None if request.path == "/api/reckon" else real(**named))


def requests_from_other_sites_taken(patch: pytest.MonkeyPatch) -> None:
    patch.setattr(headers, "SAFE_METHODS", frozenset({"GET", "HEAD", "OPTIONS", "POST"}))


def removed_phone_let_in(patch: pytest.MonkeyPatch) -> None:
    def careless(connection: Any, token: str | None, now_ms: int) -> Any:
        try:
            return devices.actor_of(connection, token, now_ms)
        except devices.SignedOut as error:
            if error.problem_code != "device_revoked":
                raise
        row = connection.execute(
            select(devices_table).where(devices_table.c.token_hash == devices.hash_token(token or ""))
        ).one()
        return devices.Actor(row.household_id, row.person_id, row.id, row.role, None)

    patch.setattr(parts, "actor_of", careless)


def old_session_let_in(patch: pytest.MonkeyPatch) -> None:
    patch.setattr(devices, "IDLE_MS", devices.ABSOLUTE_MS)


def signing_out_forgets_nothing(patch: pytest.MonkeyPatch) -> None:
    """The session of somebody who left is taken for the keeper's."""
    real = parts.actor_of

    def careless(connection: Any, token: str | None, now_ms: int) -> Any:
        try:
            return real(connection, token, now_ms)
        except devices.SignedOut as error:
            if error.problem_code != "signed_out" or not token:
                raise
        row = connection.execute(
            select(devices_table).where(
                devices_table.c.role == "keeper", devices_table.c.revoked_ms.is_(None)
            )
        ).first()
        return devices.Actor(row.household_id, row.person_id, row.id, row.role, None)

    patch.setattr(parts, "actor_of", careless)


def metrics_shown_to_the_internet(patch: pytest.MonkeyPatch) -> None:
    patch.setattr(guard, "_from_this_machine", lambda: True)


# -- passes -------------------------------------------------------------------------------------------


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
    def careless(connection: Any, code: str, _now_ms: int) -> Any:
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


# -- whose it is --------------------------------------------------------------------------------------


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

    def careless(connection: Any, *, device_id: str, **rest: Any) -> Any:
        taken = {
            name: rest[name] for name in ("household_id", "person_id", "role", "pass_id") if name in rest
        }
        connection.execute(
            update(devices_table).where(devices_table.c.id == device_id).values(revoked_ms=None, **taken)
        )
        return real(connection, device_id=device_id, **rest)

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


# -- what may be written ------------------------------------------------------------------------------


def _widen(patch: pytest.MonkeyPatch, kind: str, name: str, writers: Any) -> None:
    wider = dataclasses.replace(KINDS[kind].fields[name], writers=writers)
    patch.setitem(KINDS[kind].fields, name, wider)  # type: ignore[arg-type]


def stand_ins_confirm(patch: pytest.MonkeyPatch) -> None:
    _widen(patch, "feeding", "confirmed", HOUSE)


def stand_ins_count(patch: pytest.MonkeyPatch) -> None:
    for name in KINDS["count"].fields:
        _widen(patch, "count", name, HOUSE)


def keepers_set_roles(patch: pytest.MonkeyPatch) -> None:
    _widen(patch, "person", "role", KEEPER)


def keepers_undo_taking_a_pass_back(patch: pytest.MonkeyPatch) -> None:
    _widen(patch, "pass", "revoked_at_ms", KEEPER)


def keepers_can_no_longer_rename(patch: pytest.MonkeyPatch) -> None:
    _widen(patch, "colony", "name", frozenset({"server"}))


def plans_taken_from_phones(patch: pytest.MonkeyPatch) -> None:
    patch.setitem(KINDS, "plan", dataclasses.replace(KINDS["plan"], group="register"))  # type: ignore[arg-type]
    for name in KINDS["plan"].fields:
        _widen(patch, "plan", name, KEEPER)


def _guard_for(patch: pytest.MonkeyPatch, change: Callable[[Any, Any], Any]) -> None:
    real = operations.guard

    def careless(batch: Any, asked: Any) -> None:
        real(dataclasses.replace(batch, actor=change(batch.actor, asked.record)), asked)

    patch.setattr(operations, "guard", careless)


def dates_of_the_pass_not_looked_at(patch: pytest.MonkeyPatch) -> None:
    def always(actor: Any, _record: Any) -> Any:
        if actor.window is None:
            return actor
        return dataclasses.replace(
            actor, window=dataclasses.replace(actor.window, starts_ms=0, ends_ms=10**14)
        )

    _guard_for(patch, always)


def colonies_of_the_pass_not_looked_at(patch: pytest.MonkeyPatch) -> None:
    def every(actor: Any, _record: Any) -> Any:
        if actor.window is None:
            return actor
        return dataclasses.replace(actor, window=dataclasses.replace(actor.window, colony_ids=_Everything()))

    _guard_for(patch, every)


class _Everything(frozenset[str]):
    def __contains__(self, _: object) -> bool:
        return True


def stand_ins_amend_what_keepers_logged(patch: pytest.MonkeyPatch) -> None:
    def author(actor: Any, record: Any) -> Any:
        if actor.window is None or record is None:
            return actor
        return dataclasses.replace(actor, person_id=record.person_id)

    _guard_for(patch, author)


# -- what is seen -------------------------------------------------------------------------------------


def stand_ins_see_everything(patch: pytest.MonkeyPatch) -> None:
    patch.setattr(exchange, "scope_of", lambda _connection, _actor: Scope("all", true()))


def ended_pass_still_shows_rows(patch: pytest.MonkeyPatch) -> None:
    real = exchange._page

    def careless(connection: Any, actor: Any, asked: Any, ledger: Any) -> Any:
        if actor.window is not None:
            actor = dataclasses.replace(actor, window=dataclasses.replace(actor.window, state="active"))
        return real(connection, actor, asked, ledger)

    patch.setattr(exchange, "_page", careless)


def rows_of_the_other_household_sent(patch: pytest.MonkeyPatch) -> None:
    real = exchange.read_page

    def careless(connection: Any, household_id: str, *rest: Any, **named: Any) -> Any:
        page = real(connection, household_id, *rest, **named)
        others = households_table.c.id != household_id
        for other in connection.execute(select(households_table.c.id).where(others)).scalars():
            page.rows.extend(real(connection, other, *rest, **named).rows)
        return page

    patch.setattr(exchange, "read_page", careless)


def a_field_is_hidden_from_stand_ins(patch: pytest.MonkeyPatch) -> None:
    real = delivery._text

    def careless(row: Any, shown: str, more: str = "") -> str:
        if row.kind == "colony" and not more:
            fields = {name: value for name, value in json.loads(shown).items() if name != "vessel_id"}
            return real(row, json.dumps(fields), more)
        return real(row, shown, more)

    patch.setattr(delivery, "_text", careless)


MUTANTS = (
    Mutant("keeper not asked for at the larder", keeper_not_asked_for_at_the_larder, at("GET /api/larder")),
    Mutant(
        "keeper not asked for when a link is made",
        keeper_not_asked_for_when_a_link_is_made,
        at("POST /api/passes/<pass_id>/link"),
    ),
    Mutant("nobody may reckon", nobody_may_reckon, at("GET /api/reckon")),
    Mutant("requests from other sites taken", requests_from_other_sites_taken, at("POST /api/qr")),
    Mutant("removed phone let in", removed_phone_let_in, at("GET /api/me")),
    Mutant("old session let in", old_session_let_in, at("GET /api/me")),
    Mutant("signing out forgets nothing", signing_out_forgets_nothing, at("GET /api/me")),
    Mutant("metrics shown to the internet", metrics_shown_to_the_internet, at("GET /metrics")),
    Mutant("pass that ended long ago accepted", pass_that_ended_long_ago_accepted, at("GET /api/me")),
    Mutant("pass that was taken back accepted", pass_that_was_taken_back_accepted, at("GET /api/me")),
    Mutant("calendar of a pass taken back made", calendar_of_a_pass_taken_back_made, at("POST /api/feeds")),
    Mutant("ended pass opened", ended_pass_opened, at("POST /api/passes/open")),
    Mutant("calendar address never ends", calendar_address_never_ends, at("GET /feed")),
    Mutant("claim code works twice", claim_code_works_twice, at("POST /api/claim")),
    Mutant("approved pairing approved again", approved_pairing_approved_again, at("/api/pairings/approve")),
    Mutant("pairing secret not looked at", pairing_secret_not_looked_at, at("/api/pairings/collect")),
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
    Mutant("stand-ins confirm", stand_ins_confirm, writes("stand_in", "feeding")),
    Mutant("stand-ins count", stand_ins_count, writes("stand_in", "count")),
    Mutant("keepers set roles", keepers_set_roles, writes("keeper", "person")),
    Mutant("keepers undo taking a pass back", keepers_undo_taking_a_pass_back, writes("keeper", "pass")),
    Mutant("keepers can no longer rename", keepers_can_no_longer_rename, writes("keeper", "colony.name")),
    Mutant("plans taken from phones", plans_taken_from_phones, writes("keeper", "plan")),
    Mutant("dates of the pass not looked at", dates_of_the_pass_not_looked_at, writes("stand_in", "note")),
    Mutant(
        "colonies of the pass not looked at", colonies_of_the_pass_not_looked_at, writes("stand_in", "note")
    ),
    Mutant(
        "stand-ins amend what keepers logged",
        stand_ins_amend_what_keepers_logged,
        writes("stand_in", "feeding.remark"),
    ),
    Mutant("stand-ins see everything", stand_ins_see_everything, reads("stand_in")),
    Mutant("ended pass still shows rows", ended_pass_still_shows_rows, reads("former_stand_in")),
    Mutant("rows of the other household sent", rows_of_the_other_household_sent, reads("keeper")),
    Mutant("a field is hidden from stand-ins", a_field_is_hidden_from_stand_ins, reads("stand_in")),
)
