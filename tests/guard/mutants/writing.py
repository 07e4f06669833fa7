"""Fields are written by those who may not, or not by those who may."""

from __future__ import annotations

import dataclasses
from collections.abc import Callable
from typing import Any

import pytest
from tests.guard.mutants.mutant import Mutant, writes

from broodshelf.model.kinds import HOUSE, KEEPER, KINDS
from broodshelf.sync import operations


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


MUTANTS = (
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
)
