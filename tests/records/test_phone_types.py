"""The phone's types of records follow from the registry."""

from __future__ import annotations

from tests.support import phone_types


def test_the_phones_types_are_those_of_the_registry():
    stale = "pwa/kinds.d.ts is stale; run: python -m tests.support.phone_types"
    assert phone_types.PATH.read_text("utf-8") == phone_types.phone_types(), stale
