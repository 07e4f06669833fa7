"""Rows and fields reach those who may not see them, or not those who may."""

from __future__ import annotations

import dataclasses
import json
from typing import Any

import pytest
from sqlalchemy import select, true
from tests.guard.mutants.mutant import Mutant, reads

from broodshelf.records.store import Ledger
from broodshelf.records.tables import households as households_table
from broodshelf.sync import exchange
from broodshelf.sync import feed as delivery
from broodshelf.sync.scope import Scope


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

    def careless(ledger: Any, *rest: Any) -> Any:
        page = real(ledger, *rest)
        others = households_table.c.id != ledger.household_id
        for other in ledger.connection.execute(select(households_table.c.id).where(others)).scalars():
            page.rows.extend(real(Ledger(ledger.connection, other), *rest).rows)
        return page

    patch.setattr(exchange, "read_page", careless)


def a_field_is_hidden_from_stand_ins(patch: pytest.MonkeyPatch) -> None:
    real = delivery.row_text

    def careless(row: Any, shown: str, more: str = "") -> str:
        if row.kind == "colony" and not more:
            fields = {name: value for name, value in json.loads(shown).items() if name != "vessel_id"}
            return real(row, json.dumps(fields), more)
        return real(row, shown, more)

    patch.setattr(delivery, "row_text", careless)


MUTANTS = (
    Mutant("stand-ins see everything", stand_ins_see_everything, reads("stand_in")),
    Mutant("ended pass still shows rows", ended_pass_still_shows_rows, reads("former_stand_in")),
    Mutant("rows of the other household sent", rows_of_the_other_household_sent, reads("keeper")),
    Mutant("a field is hidden from stand-ins", a_field_is_hidden_from_stand_ins, reads("stand_in")),
)
