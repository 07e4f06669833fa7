"""Every address, every verb, every role, every thing that can be named: ``addresses.toml`` is what must come out."""

from __future__ import annotations

import pytest
from tests.guard.matrix import addresses_of, addresses_of_table, cells, rows, wrong_answers

ANSWERED_BY_ANOTHER_RULE = {("GET", "/api/passes/open"), ("HEAD", "/api/passes/open")}
"""As ``/api/passes/<pass_id>`` of a pass named "open": no id."""
VERBS = ("GET", "HEAD", "POST", "PUT", "PATCH", "DELETE")


def test_the_table_names_every_address_and_no_other(houses):
    assert addresses_of(houses.app) == addresses_of_table()


@pytest.mark.parametrize("address", rows())
def test_every_role_gets_what_the_table_says(houses, address):
    assert list(wrong_answers(houses, cells(row_only=address))) == []


def test_a_verb_that_an_address_does_not_have_is_refused_for_everybody(houses):
    known = addresses_of_table()
    for rule in sorted({rule for _, rule in known}):
        for verb in VERBS:
            if (verb if verb != "HEAD" else "GET", rule) in known or (verb, rule) in ANSWERED_BY_ANOTHER_RULE:
                continue
            for role in ("nobody", "keeper", "stand_in"):
                path = rule.replace("<", "").replace(">", "").replace("path:", "")
                answer = houses.call(houses.visitors[role], verb, path, {})
                assert (verb, rule, role, answer.status) == (verb, rule, role, 405)
    assert not houses.changed()
