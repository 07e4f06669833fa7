"""The phone's types of records, its lists of words and its rules follow from what the server says."""

from __future__ import annotations

import pytest
from tests.support import phone_rules, phone_types


def test_the_phones_types_are_those_of_the_registry():
    stale = "pwa/kinds.d.ts is stale; run: python -m tests.support.phone_types"
    assert phone_types.PATH.read_text("utf-8") == phone_types.phone_types(), stale


@pytest.mark.parametrize("file", ["codes.js", "rules.js"])
def test_the_phones_words_and_rules_are_those_of_the_server(file):
    stale = f"pwa/care/{file} is stale; run: python -m tests.support.phone_rules"
    assert (phone_rules.CARE / file).read_text("utf-8") == phone_rules.phone_rules()[file], stale
