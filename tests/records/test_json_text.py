"""JSON from outside is read strictly, and says in words why not."""

from __future__ import annotations

import json

import pytest
from hypothesis import given
from hypothesis import strategies as st

from broodshelf.records.json_text import is_whole_text, mended, read_json

TEXT = st.text(st.characters(blacklist_categories=("Cs",), blacklist_characters="\0"))
NAME = st.text(st.characters(codec="ascii", min_codepoint=32))
PLAIN = st.none() | st.booleans() | st.integers(-(10**20), 10**20) | TEXT
VALUES = st.recursive(
    PLAIN | st.floats(allow_nan=False, allow_infinity=False),
    lambda inner: st.lists(inner, max_size=3) | st.dictionaries(NAME, inner, max_size=3),
    max_leaves=12,
)


@given(VALUES, st.booleans())
def test_what_is_well_formed_is_read_as_python_reads_it(value, escaped):
    assert read_json(json.dumps(value, ensure_ascii=escaped).encode()) == value


@pytest.mark.parametrize(
    ("raw", "why"),
    [
        (b'{"a": 1, "a": 2}', "twice"),
        (b"[NaN]", "NaN"),
        (b"[1e999]", "too large"),
        (b"[" + b"9" * 400 + b"]", "too large"),
        (b"[-" + b"9" * 5000 + b"]", "too large"),
        (b"[" * 22 + b"]" * 22, "too deeply"),
        (b"[" * 200_000, "too deeply"),
        (b'["\\ud83d"]', "half a character"),
        (b'{"\\ud83d": 1}', "half a character"),
        (b'["a\\u0000b"]', "NUL"),
        (b'[["\\ud83d"]]', "half a character"),
        (b'["\xed\xa0\xbd"]', "not UTF-8"),
        ('["x"]'.encode("utf-16"), "not UTF-8"),
        (b'["\xff"]', "not UTF-8"),
        (b"", "Expecting value"),
    ],
)
def test_what_is_refused_says_why(raw, why):
    with pytest.raises(ValueError, match=why):
        read_json(raw)


def test_a_whole_emoji_in_escapes_is_no_half_character():
    assert read_json(b'["\\ud83d\\udc1c"]') == ["\N{ANT}"]


def test_half_characters_may_be_left_to_whoever_mends_them():
    assert read_json(b'["\\ud83d", "\\u0000"]', whole_texts=False) == ["\ud83d", "\0"]


@pytest.mark.parametrize(
    ("text", "whole"), [("", True), ("a\nb\u200b", True), ("\ud800", False), ("a\0", False)]
)
def test_whole_texts(text, whole):
    assert is_whole_text(text) == whole


def test_half_characters_are_mended_wherever_they_stand_and_nothing_else_changes():
    assert mended({"a\ud800": ["cut \ud83d", "\0", 1, None]}) == {"a\ufffd": ["cut \ufffd", "\0", 1, None]}
    assert mended("\N{ANT} é") == "\N{ANT} é"
