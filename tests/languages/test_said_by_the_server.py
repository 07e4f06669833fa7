"""What no phone says, the server says somewhere: no message is translated six times for nobody.

The phone's messages are held to the same by ``tests/architecture/test_words.py``.
"""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator
from functools import cache

import pytest
from tests.languages.resources import SOURCE

from broodshelf.languages.entries import HERE, subjects_of
from broodshelf.languages.phone_parts import SERVER_ONLY

WORD = re.compile(r"[a-z][a-z0-9]*(?:[-_.][a-z0-9]+)*")
"""An id of a message, perhaps with an attribute, or a code."""
BEGINS = re.compile(r"[a-z][a-z_-]+")
"""What an f-string begins with that gives an id, or a code."""
BY_CODE = {"message_id", "say_code"}
"""Functions that are given a section and a code."""
CODE = "(.+)"


def test_every_message_of_the_server_is_said_somewhere():
    there = [
        name for subject, entries in subjects_of(SOURCE).items() if subject in SERVER_ONLY for name in entries
    ]

    assert len(there) > 400
    assert [name for name in there if not is_said(name)] == []


@pytest.mark.parametrize(
    "name",
    [
        "problem-nobody-says-this",  # no code
        "nudge-new-phone-foot",  # a code, with an ending that no pattern has
        "doctor-about-sugar-water-twice",
        "command-input-usual-unit",  # in an order that is never put together
    ],
)
def test_a_message_that_nobody_says_would_be_found(name):
    assert not is_said(name)


def is_said(name: str) -> bool:
    """Say whether a module names it, or puts its id together from codes that modules name."""
    words, _ = said()
    return name in {each.partition(".")[0] for each in words} or _is_put_together(name)


def _is_put_together(name: str, *, of_written_codes: bool = False) -> bool:
    """Say whether it fits a pattern, with codes that are written somewhere or put together of such: not deeper."""
    words, patterns = said()
    codes = {each.replace("_", "-") for each in words}
    return any(
        all(
            part in codes or (not of_written_codes and _is_put_together(part, of_written_codes=True))
            for part in found.groups()
        )
        for found in (pattern.fullmatch(name) for pattern in patterns)
        if found is not None
    )


@cache
def said() -> tuple[frozenset[str], tuple[re.Pattern[str], ...]]:
    """Return every word that stands in the server's modules, and how ids are put together there."""
    words: set[str] = set()
    patterns: set[str] = set()
    for path in HERE.parent.rglob("*.py"):
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if isinstance(node, ast.Constant) and isinstance(node.value, str) and WORD.fullmatch(node.value):
                words.add(node.value)
            patterns.update(_patterns_of(node))
    return frozenset(words), tuple(map(re.compile, patterns))


def _patterns_of(node: ast.AST) -> Iterator[str]:
    """Yield how a node puts an id together: an f-string that begins with a word, or a section and a code."""
    if isinstance(node, ast.JoinedStr):
        first = node.values[0]
        if isinstance(first, ast.Constant) and BEGINS.fullmatch(str(first.value)):
            yield _pattern(node)
    if isinstance(node, ast.Call) and getattr(node.func, "id", "") in BY_CODE:
        for section, code in zip(node.args, node.args[1:], strict=False):
            if isinstance(section, ast.Constant) and isinstance(section.value, str):
                yield f"{_pattern(section)}-{_pattern(code)}"
    if isinstance(node, ast.AnnAssign) and getattr(node.target, "id", "") == "section" and node.value:
        yield f"{_pattern(node.value)}-{CODE}"


def _pattern(node: ast.expr) -> str:
    """Return a regular expression for what an expression gives; ``CODE`` for what is not written there."""
    if isinstance(node, ast.Constant):
        return re.escape(str(node.value).replace("_", "-"))
    if isinstance(node, ast.JoinedStr):
        return "".join(map(_pattern, node.values))
    if isinstance(node, ast.FormattedValue):
        return _pattern(node.value)
    if isinstance(node, ast.IfExp) and isinstance(node.body, ast.Constant):
        return f"(?:{_pattern(node.body)}|{_pattern(node.orelse)})"
    return CODE
