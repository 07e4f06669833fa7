"""The matrix can fail: each committed mutant turns it red, and so does whatever its tables do not name."""

from __future__ import annotations

import dataclasses

import pytest
from flask import Flask
from tests.guard.field_matrix import fields_of_table
from tests.guard.matrix import addresses_of, addresses_of_table
from tests.guard.mutants import MUTANTS

from broodshelf.model.kinds import KINDS

pytestmark = pytest.mark.long


@pytest.mark.parametrize("mutant", MUTANTS, ids=lambda mutant: mutant.name)
def test_the_matrix_finds(mutant, houses, monkeypatch):
    mutant.apply(monkeypatch)
    try:
        assert next(iter(mutant.look(houses)), None), (
            f"the matrix stayed green with the mutant {mutant.name!r}"
        )
    finally:
        monkeypatch.undo()
        houses.reset()


def test_the_matrix_finds_an_address_that_nobody_stated():
    app = Flask("other", static_folder=None)
    app.add_url_rule("/api/secrets", view_func=lambda: "", methods=["GET"])

    assert addresses_of(app) - addresses_of_table() == {("GET", "/api/secrets")}


def test_the_matrix_finds_a_kind_and_a_field_that_nobody_stated(monkeypatch):
    monkeypatch.setitem(KINDS, "diary", dataclasses.replace(KINDS["note"], name="diary"))
    monkeypatch.setitem(KINDS["note"].fields, "mood", KINDS["note"].fields["text"])

    found = {(kind, name) for kind, spec in KINDS.items() for name in spec.fields} - fields_of_table()
    assert {("diary", "text"), ("note", "mood")} <= found
