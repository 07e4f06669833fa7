"""A task's key is made of two parts that stand beside it: nobody takes the text apart again, in either language."""

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
ON_THE_PHONE = re.compile(
    r"(?:\w\??\.key|\btask_key|\bslot)\b(?:\)|\?)*\.(?:split|startsWith|endsWith|includes|indexOf|slice|match|replace)\("
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
    for line in ('row.task_key.split(":")', 'str(task.key).partition(":")', 'when.slot.startswith("later:")'):
        assert list(taken_apart(line)) == [1], line
    for line in (
        "item.key.split('/').pop()",
        "String(task.key).startsWith('fault:')",
        "task.key.includes('fault:')",
    ):
        assert ON_THE_PHONE.search(line), line


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
            name = f".{of.attr}" if isinstance(of, ast.Attribute) else getattr(of, "id", "")
            if name in (".key", ".task_key", ".slot", "task_key", "slot"):
                yield node.lineno
