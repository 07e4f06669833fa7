"""The phone says what the server says: its room of words against the same vectors, and its types of messages."""

from __future__ import annotations

import json
from pathlib import Path

from tests.support import message_types
from tests.support.node_tests import run_node_tests

from broodshelf.languages import languages
from broodshelf.languages.calculating import why_refused
from broodshelf.languages.phone_parts import PARTS
from broodshelf.languages.phones_file import phones_file
from broodshelf.model.quantities import OutOfRange


def test_the_phone_passes_the_same_vectors(tmp_path):
    messages = {tag: "".join(phones_file(tag, part).decode() for part in PARTS) for tag in languages()}
    (tmp_path / "messages.json").write_text(json.dumps(messages))

    hot = OutOfRange("warmth", 54.4, "°C", 0, 50)
    refusals = {tag: why_refused("growth", hot).in_language(tag) for tag in languages()}

    run_node_tests(
        Path(__file__).with_name("run_words.mjs"),
        MESSAGES=str(tmp_path / "messages.json"),
        REFUSALS=json.dumps(refusals),
    )


def test_the_phones_types_are_those_of_the_english_messages():
    """What is misspelt, or told something else, is then found by the type checker."""
    assert message_types.PATH.read_text("utf-8") == message_types.message_types(), (
        "pwa/messages.d.ts is stale; run python -m tests.support.message_types"
    )


def test_a_choice_by_plural_is_told_a_number_and_one_by_codes_a_code():
    told = message_types.told()

    assert told["round-due-since"] == {"days": "number"}
    assert told["brood-ask-by"] == {"brood": "string", "day": ""}
    assert told["brood-warm"] == {"mean_c": "number"}
    assert told["round-title"] == {}
    assert told["need-sugar.inside"] == {}
    assert "event-kind" in message_types.groups()
