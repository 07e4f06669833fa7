"""Whoever is asking is taken for somebody else, or is not asked for."""

from __future__ import annotations

from typing import Any

import pytest
from flask import request
from sqlalchemy import select
from tests.guard.mutants.mutant import Mutant, at

from broodshelf.people import devices
from broodshelf.people.tables import devices as devices_table
from broodshelf.web import guard, headers, parts


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


def _visit_of(row: Any) -> devices.Visit:
    actor = devices.Actor(row.household_id, row.person_id, row.id, row.role, None)
    return devices.Visit(actor, seen_lately=True)


def removed_phone_let_in(patch: pytest.MonkeyPatch) -> None:
    real = parts.visit_of

    def careless(connection: Any, token: str | None, now_ms: int) -> Any:
        try:
            return real(connection, token, now_ms)
        except devices.SignedOut as error:
            if error.problem_code != "device_revoked":
                raise
        row = connection.execute(
            select(devices_table).where(devices_table.c.token_hash == devices.hash_token(token or ""))
        ).one()
        return _visit_of(row)

    patch.setattr(parts, "visit_of", careless)


def old_session_let_in(patch: pytest.MonkeyPatch) -> None:
    patch.setattr(devices, "IDLE_MS", devices.ABSOLUTE_MS)


def signing_out_forgets_nothing(patch: pytest.MonkeyPatch) -> None:
    """The session of somebody who left is taken for the keeper's."""
    real = parts.visit_of

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
        return _visit_of(row)

    patch.setattr(parts, "visit_of", careless)


def metrics_shown_to_the_internet(patch: pytest.MonkeyPatch) -> None:
    patch.setattr(guard, "_from_this_machine", lambda: True)


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
)
