"""Every loop that could go on for ever says here why it does not: one that spins holds a lock for all households."""

from __future__ import annotations

import ast
from collections.abc import Iterator
from pathlib import Path

SERVER = Path(__file__).parents[2] / "server" / "broodshelf"
ENDS = {
    "logs.py": "what led to an error is a finite chain; each is told once",
    "feed/moves.py": "names that are taken are finitely many",
    "nudges/sending/lanes.py": "ends when there is nothing more to send, or the process does",
    "nudges/nudger.py": "a household is looked at once a tick",
    "nudges/ticking.py": "ends with the process; waits between two turns",
    "people/devices.py": "names that are taken are finitely many",
    "records/data_folder.py": "names that are taken are finitely many",
    "records/draw_anew.py": "ends with its input",
    "rounds/wall_clock.py": "halves a stretch of time until it is a second",
    "sensing/mqtt.py": "end with the listener; wait for messages, or between two looks",
    "records/home/alone.py": "ends with the process; waits between two turns",
    "records/home/taking_over.py": "files of a folder are finitely many",
    "people/settling.py": "ends with the process; waits between two looks",
    "commands/workers.py": "ends when it is told to stop; hears what was said and no more",
    "records/schemas.py": "goes down the messages of one field",
}
"""Modules with a ``while`` or an endless iterator, and what ends it."""
ENDLESS = {"count", "cycle", "repeat"}


def test_every_loop_without_a_bound_of_its_own_is_known_and_has_a_reason_to_end():
    found = {
        path.relative_to(SERVER).as_posix()
        for path in SERVER.rglob("*.py")
        if "versions" not in path.parts and any(endless(ast.parse(path.read_text("utf-8"))))
    }

    assert sorted(found - ENDS.keys()) == [], "say in ENDS what ends it, or give it a bound"
    assert sorted(ENDS.keys() - found) == [], "it has no such loop any more"


def test_the_walk_finds_loops_and_endless_iterators():
    for code in (
        "while True:\n    pass",
        "while rows := read():\n    pass",
        "next(n for n in count(1))",
        "itertools.cycle(x)",
    ):
        assert list(endless(ast.parse(code))) == [1], code
    for code in ("for n in range(3): pass", "text.count('a')", "func.count()"):
        assert list(endless(ast.parse(code))) == [], code


def endless(tree: ast.AST) -> Iterator[int]:
    """Yield the lines of loops that no range bounds."""
    for node in ast.walk(tree):
        if isinstance(node, ast.While):
            yield node.lineno
        elif isinstance(node, ast.Call):
            made = node.func
            by_name = isinstance(made, ast.Name) and made.id in ENDLESS
            of_module = ast.unparse(made) in {f"itertools.{name}" for name in ENDLESS}
            if by_name or of_module:
                yield node.lineno
