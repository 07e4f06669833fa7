"""The phone's types of messages, written from the English ones by ``python -m tests.support.message_types``.

The file is for people and for the type checker; phones do not get it.
"""

from __future__ import annotations

from collections.abc import Iterator
from functools import cache
from pathlib import Path
from typing import Any, Final

from fluent.syntax import FluentParser, ast
from fluent.syntax.visitor import Visitor

from broodshelf.languages.bundles import entries_in
from broodshelf.languages.entries import SOURCE

PATH: Final = Path(__file__).parents[2] / "pwa" / "messages.d.ts"
HEAD: Final = """\
// What the app can say, and what each message is told: the messages of server/broodshelf/languages/en.
// Written by `python -m tests.support.message_types`; a test fails when it is stale.
"""
NUMBERS: Final = ("NUMBER", "DEGREES", "DEGREES_APART", "VOLUME")
"""Functions of messages that take a number."""
MOST: Final = 120
"""Characters of a line, as everywhere."""
PLURALS: Final = {"zero", "one", "two", "few", "many", "other"}


class Told(Visitor):
    """What a message is told: the type of each parameter, by its name."""

    def __init__(self) -> None:
        self.types: dict[str, str] = {}

    def visit_SelectExpression(self, node: Any) -> None:
        """A choice by number or plural form is told a number, any other one of its codes."""
        if isinstance(node.selector, ast.VariableReference):
            keys = [variant.key for variant in node.variants]
            names = {key.name for key in keys if isinstance(key, ast.Identifier)}
            numbers = {key.value for key in keys if isinstance(key, ast.NumberLiteral)}
            counted = bool(numbers) or names <= PLURALS - {"many"} or {"one", "other"} <= names
            self._note(node.selector.id.name, "number" if counted else "string")
        self.generic_visit(node)

    def visit_FunctionReference(self, node: Any) -> None:
        """What goes through a function of numbers is one."""
        for given in node.arguments.positional:
            if isinstance(given, ast.VariableReference) and node.id.name in NUMBERS:
                self._note(given.id.name, "number")
        self.generic_visit(node)

    def visit_VariableReference(self, node: Any) -> None:
        """What only stands in the words may be either."""
        self._note(node.id.name, "")

    def _note(self, name: str, type_: str) -> None:
        self.types[name] = self.types.get(name, "") or type_


@cache
def told() -> dict[str, dict[str, str]]:
    """Return what each message is told, by its path: its id, or that with the name of an attribute."""
    found: dict[str, dict[str, str]] = {}
    for entry in FluentParser().parse("\n".join(entries_in(SOURCE, for_phone=True).values())).body:
        assert isinstance(entry, ast.Message | ast.Term), f"cannot be read: {entry.to_json()}"
        if isinstance(entry, ast.Term):
            continue
        parts = {
            entry.id.name: entry.value,
            **{f"{entry.id.name}.{a.id.name}": a.value for a in entry.attributes},
        }
        for path, pattern in parts.items():
            if pattern is not None:
                visitor = Told()
                visitor.visit(pattern)
                found[path] = dict(sorted(visitor.types.items()))
    return found


def groups() -> list[str]:
    """Return what ids begin with, to a hyphen: what codes may follow."""
    ids = {path.partition(".")[0] for path in told()}
    return sorted({each[:at] for each in ids for at, letter in enumerate(each) if letter == "-"})


def message_types() -> str:
    """Return the file as it has to be."""
    return HEAD + "".join(f"\n{block}\n" for block in _blocks())


def _blocks() -> Iterator[str]:
    lines = [_line(path, types) for path, types in sorted(told().items())]
    yield "\n".join(
        [
            "/** What each message is told; null where it is told nothing. */",
            "export interface Messages {",
            *lines,
            "}",
        ]
    )
    yield (
        "/** What the ids of some messages begin with. */\nexport type Group =\n"
        + "\n".join(f"  | '{group}'" for group in groups())
        + ";"
    )


def _line(path: str, types: dict[str, str]) -> str:
    """Return what a message is told, each on a line of its own where one would be too long."""
    each = [f"{name}: {type_ or 'string | number'}" for name, type_ in types.items()]
    line = f"  '{path}': {{ {'; '.join(each)} }};" if each else f"  '{path}': null;"
    if len(line) <= MOST:
        return line
    return "\n".join([f"  '{path}': {{", *(f"    {one};" for one in each), "  };"])


if __name__ == "__main__":
    PATH.write_text(message_types(), "utf-8")
