"""The messages of a language as fluent.syntax reads them, for the tests of the folders."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from functools import lru_cache

from fluent.syntax import FluentParser, FluentSerializer, ast
from fluent.syntax.visitor import Visitor

from broodshelf.languages.entries import HERE, folders

SOURCE = "en"
OTHERS = tuple(tag for tag in folders() if tag != SOURCE)
CATEGORIES = {"zero", "one", "two", "few", "many", "other"}
"""The names of plural forms (Unicode LDML, part 3); a choice with any other key is one by codes."""


@dataclass(frozen=True)
class Message:
    """A message of a folder: what it asks for, its attributes, and how its patterns are made.

    ``plurals``: of each choice by a plural form the forms that it has. ``written``: all of it but the comment, in the
    one form that fluent.syntax writes.
    """

    id: str
    file: str
    comment: str
    parameters: frozenset[str]
    attributes: frozenset[str]
    functions: frozenset[str]
    references: frozenset[str]
    plurals: tuple[frozenset[str], ...]
    selects_on: frozenset[str]
    written: str


class _Look(Visitor):
    def __init__(self) -> None:
        self.parameters: set[str] = set()
        self.functions: set[str] = set()
        self.references: set[str] = set()
        self.plurals: list[frozenset[str]] = []
        self.selects_on: set[str] = set()

    def visit_VariableReference(self, node: ast.VariableReference) -> None:
        self.parameters.add(node.id.name)

    def visit_FunctionReference(self, node: ast.FunctionReference) -> None:
        self.functions.add(node.id.name)
        self.generic_visit(node)

    def visit_MessageReference(self, node: ast.MessageReference) -> None:
        self.references.add(node.id.name)

    def visit_TermReference(self, node: ast.TermReference) -> None:
        self.references.add(f"-{node.id.name}")
        self.generic_visit(node)

    def visit_SelectExpression(self, node: ast.SelectExpression) -> None:
        keys = {v.key.name for v in node.variants if isinstance(v.key, ast.Identifier)}
        if keys <= CATEGORIES:
            self.plurals.append(frozenset(keys))
        if isinstance(node.selector, ast.VariableReference):
            self.selects_on.add(node.selector.id.name)
        self.generic_visit(node)


@lru_cache(maxsize=32)
def read(tag: str) -> dict[str, Message]:
    """Return the messages of a folder by id. Fails on what cannot be read and on an id that stands twice."""
    found: dict[str, Message] = {}
    writer = FluentSerializer()
    for file, entry in entries(tag):
        look = _Look()
        look.visit(entry)
        assert entry.id.name not in found, f"{tag}: {entry.id.name} is in {file} and in another file"
        name = f"-{entry.id.name}" if isinstance(entry, ast.Term) else entry.id.name
        comment, entry.comment = entry.comment, None
        found[name] = Message(
            name,
            file,
            comment.content if comment else "",
            frozenset(look.parameters),
            frozenset(each.id.name for each in entry.attributes),
            frozenset(look.functions),
            frozenset(look.references),
            tuple(look.plurals),
            frozenset(look.selects_on),
            writer.serialize_entry(entry),
        )
    return found


def entries(tag: str) -> Iterator[tuple[str, ast.Message | ast.Term]]:
    """Yield the entries of a folder with the name of their file."""
    for path in sorted((HERE / tag).glob("*.ftl")):
        for entry in FluentParser(with_spans=False).parse(path.read_text(encoding="utf-8")).body:
            assert not isinstance(entry, ast.Junk), f"{path.name} cannot be read: {entry.content[:80]!r}"
            if isinstance(entry, (ast.Message, ast.Term)):
                yield path.stem, entry
