"""Every kind, field and verb of sync, for every role and whoever's record: ``fields.toml`` is what must come out."""

from __future__ import annotations

import pytest
from tests.guard.field_matrix import READERS, WRITERS, fields_of_table, wrong_reads, wrong_writes

from broodshelf.model.kinds import KINDS


def test_the_table_names_every_kind_and_field_and_no_other():
    assert {(kind, name) for kind, spec in KINDS.items() for name in spec.fields} == fields_of_table()


@pytest.mark.parametrize("role", WRITERS)
def test_every_operation_gets_the_verdict_that_the_table_says(houses, role):
    assert list(wrong_writes(houses, role)) == []


@pytest.mark.parametrize("role", READERS)
def test_every_role_sees_the_rows_that_the_table_says(houses, role):
    assert wrong_reads(houses, role) == []
