"""Every reason that the server gives by name has a message, and is given what the message asks for.

That holds for English here, and for the other languages by ``test_folders.py``, which holds them to the same messages
and parameters. Codes that are put together, or come from a table, are met by the tests of care.
"""

from __future__ import annotations

import ast
from collections.abc import Iterator
from dataclasses import dataclass

import pytest
from tests.languages.resources import SOURCE, read

from broodshelf.languages.entries import HERE
from broodshelf.languages.saying import message_id

SECTIONS = ("reason", "notice", "caution", "travel")
"""Where the words of a reason stand: it depends on what it is shown as."""
GIVEN_BY = {"reason": (), "_reason": (), "about_fault": ("fault",)}
"""What makes a reason, and the arguments that it names itself."""
RECKONED = {"at_ms": ("days", "hours")}
"""What whoever says a reason makes of an argument: how long ago it was."""


@dataclass(frozen=True)
class Given:
    """A reason as a module gives it. ``args`` None: they come from a mapping, which nobody can read here."""

    where: str
    code: str
    args: frozenset[str] | None


def test_every_reason_that_is_named_has_its_message_and_its_arguments():
    there = [
        given for path in sorted(HERE.parent.rglob("*.py")) for given in given_in(path.read_text(), path.name)
    ]

    assert len(there) > 150
    assert [given for given in there if not is_worded(given)] == []


@pytest.mark.parametrize(
    "line",
    [
        "reason('nobody_wrote_this')",
        "reason('rest_over' if long else 'nobody_wrote_this', days=3)",
        "reason('rest_over')",  # its days are missing
        "reason('rest_over', day=3)",
        "about_fault('nobody_wrote_this', 'leak')",
        "code = 'rest_over' if long else 'nobody_wrote_this'; reason(code, days=3)",
    ],
)
def test_a_reason_without_words_or_without_what_they_ask_for_would_be_found(line):
    assert not all(is_worded(given) for given in given_in(f"def why():\n {line}", "a module"))


def test_a_reason_with_all_that_it_needs_is_worded():
    lines = """def why():
        reason('rest_over', days=3)
        reason('mould_look', at_ms=at_ms)
        about_fault('mend_before', fault)
    """

    assert [is_worded(given) for given in given_in(lines, "a module")] == [True, True, True]


def is_worded(given: Given) -> bool:
    """Say whether there is a message for it that asks for nothing else than it is given."""
    messages = (read(SOURCE).get(message_id(section, given.code)) for section in SECTIONS)
    return any(
        message is not None and (given.args is None or message.parameters <= given.args)
        for message in messages
    )


def given_in(source: str, where: str) -> Iterator[Given]:
    """Yield the reasons whose codes stand in the functions of a module, also those that a condition chooses."""
    for function in ast.walk(ast.parse(source)):
        if not isinstance(function, ast.FunctionDef):
            continue
        named = _named(function)
        for node in ast.walk(function):
            if isinstance(node, ast.Call) and getattr(node.func, "id", "") in GIVEN_BY and node.args:
                for code in _codes(node.args[0], named):
                    yield Given(f"{where}:{node.lineno}", code, _args(node))


Named = dict[str, list[ast.expr]]
"""What a function puts under a name."""


def _named(function: ast.FunctionDef) -> Named:
    found: Named = {}
    for node in ast.walk(function):
        if isinstance(node, ast.Assign):
            for target in node.targets:
                found.setdefault(ast.unparse(target), []).append(node.value)
    return found


def _codes(node: ast.expr, named: Named) -> Iterator[str]:
    if isinstance(node, ast.Constant):
        yield str(node.value)
    elif isinstance(node, ast.IfExp):
        yield from _codes(node.body, named)
        yield from _codes(node.orelse, named)
    elif isinstance(node, ast.Name):
        for value in named.get(node.id, ()):
            yield from _codes(value, {})


def _args(call: ast.Call) -> frozenset[str] | None:
    names = [each.arg for each in call.keywords]
    given = [name for name in names if name is not None]
    if len(given) < len(names):
        return None
    reckoned = (more for name in given for more in RECKONED.get(name, ()))
    return frozenset([*given, *reckoned, *GIVEN_BY[getattr(call.func, "id", "")]])
