"""What a key or a code means stands beside it: nobody takes its text apart again, in either language."""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator
from pathlib import Path

TOP = Path(__file__).parents[2]
SERVER = sorted(p for p in (TOP / "server/broodshelf").rglob("*.py") if "versions" not in p.parts)
PHONE = sorted(p for p in (TOP / "pwa").rglob("*.js") if "vendor" not in p.parts)
TAKES_APART = {
    "split", "rsplit", "partition", "rpartition", "startswith", "endswith", "removeprefix", "removesuffix", "find",
}  # fmt: skip
NAMES = "key|code|field|food|need|kind"
IN_PYTHON = re.compile(rf"(?:^|_)(?:{NAMES}|slot)$")
ON_THE_PHONE = re.compile(
    # a key or a slot is not even searched; of the others there are lists of the same name
    r"(?:\w\??\.key|\btask_key|\bslot)\b(?:\)|\?)*\.(?:includes|indexOf|match|replace)\("
    rf"|(?:\b|_|[a-z](?=[A-Z]))(?:{NAMES}|{NAMES.title()}|slot)\b(?:\)|\?)*\.(?:split|startsWith|endsWith|slice)\("
)


def test_no_key_and_no_slot_is_taken_apart():
    found = [
        f"{path.relative_to(TOP)}:{line}" for path in SERVER for line in taken_apart(path.read_text("utf-8"))
    ]
    found += [
        f"{path.relative_to(TOP)}: {match[0]}"
        for path in PHONE
        for match in ON_THE_PHONE.finditer(path.read_text("utf-8"))
    ]

    assert found == []


def test_the_walk_finds_what_it_is_for():
    for line in (
        'row.task_key.split(":")',
        'str(task.key).partition(":")',
        'when.slot.startswith("later:")',
        'food_code.endswith("_water")',
        "field[:-2]",
        "lot.kind[1:]",
    ):
        assert list(taken_apart(line)) == [1], line
    for line in (
        "item.key.split('/').pop()",
        "String(task.key).startsWith('fault:')",
        "task.key.includes('fault:')",
        "food.endsWith('water')",
        "field.endsWith('_on')",
        "dot.key.slice(1)",
        "needCode.startsWith('x')",
        "set?.food_code?.split('_')",
    ):
        assert ON_THE_PHONE.search(line), line


def test_what_only_sounds_alike_is_left_alone():
    for line in ("event.keys.slice(1)", "monkey.split(',')", "foods.slice(0, 3)", "event.key === 'Enter'"):
        assert not ON_THE_PHONE.search(line), line
    assert list(taken_apart("monkey.split(','); codes[1:]; code in codes")) == []


def taken_apart(source: str) -> Iterator[int]:
    """Yield the lines that take a key or a slot apart."""
    for node in ast.walk(ast.parse(source)):
        if (
            isinstance(node, ast.Call)
            and isinstance(node.func, ast.Attribute)
            and node.func.attr in TAKES_APART
        ):
            of = node.func.value
            if isinstance(of, ast.Call) and of.args:
                of = of.args[0]
            if IN_PYTHON.search(_called(of)):
                yield node.lineno
        sliced = isinstance(node, ast.Subscript) and isinstance(node.slice, ast.Slice)
        if sliced and IN_PYTHON.search(_called(node.value)):
            yield node.lineno


def _called(node: ast.AST) -> str:
    """Return the name by which something is called, or nothing."""
    return str(getattr(node, "attr", getattr(node, "id", "")))
