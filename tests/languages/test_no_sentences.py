"""In the rooms that speak to people no sentence stands in the code: each is a message, for every language."""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator
from pathlib import Path

SERVER = Path(__file__).parents[2] / "server/broodshelf"
ROOMS = (
    "care",
    "commands",
    "feed",
    "keeping",
    "nudges",
    "people",
    "records",
    "sensing",
    "sync",
    "web",
    "cli.py",
    "doctor",
    "errors.py",
    "settings.py",
)
ALLOWED = {
    "care/colony/census/groups.py": "sources, which stay as they are published",
    "care/colony/census/outlook.py": "a mistake of the program",
    "care/feeding/prey.py": "a mistake of the program",
    "care/feeding/sugar_water.py": "a mistake of the program, or of who calls it over HTTP",
    "care/feeding/tasting.py": "a mistake of the program",
    "care/plan/larder.py": "a mistake of the program",
    "care/feeding/learning.py": "the name of a quantity out of range, for the log",
    "commands/household_sheet.py": "the style of a printed page",
    "nudges/channels/push/subscriptions.py": "what is wrong with a field, for whoever writes a client",
    "nudges/outcomes/measures.py": "what a metric is, for the tool that gathers it",
    "people/journal.py": "a mistake of the program",
    "people/mail.py": "what is wrong with a field, for whoever writes a client",
    "records/json_text.py": "where a JSON text is broken, for whoever wrote the program that made it",
    "records/schemas.py": "what is wrong with a field, for whoever writes a client; phones say it by its code",
    "records/types.py": "what is wrong with a field, for whoever writes a client; phones say it by its code",
    "sensing/payload.py": "what is wrong with a field, for whoever writes a client",
    "sync/envelope.py": "what is wrong with a field, for whoever writes a client",
    "web/access.py": "what is wrong with a field, for whoever writes a client",
    "web/bodies.py": "what is sent, for the table of addresses",
    "web/guard.py": "who may call, for the table of addresses",
    "web/join.py": "a mistake of the program",
    "web/passes.py": "what is wrong with a field, for whoever writes a client",
    "web/sensors.py": "what is wrong with a field, for whoever writes a client",
    "web/shell.py": "an installation without its files, before anything can be said",
}
TO_THE_LOG = {"say_failure", "log", "set_aside", "Thread"}
"""And the names of threads, for whoever looks at a process."""
WORD = re.compile(r"[A-Za-z]{2,}")
SENTENCE = re.compile(r"[a-z]{2,} [a-z]{2,} ")


def sentences_of(source: str) -> Iterator[tuple[int, str]]:
    """Yield what reads like a sentence: not docstrings, not what goes to the log."""
    tree = ast.parse(source)
    silent = {id(node.value) for node in ast.walk(tree) if isinstance(node, ast.Expr)}
    logs = "from ..logs import say\n" in source or "from ...logs import say\n" in source
    for node in ast.walk(tree):
        if isinstance(node, ast.Call):
            name = getattr(node.func, "id", getattr(node.func, "attr", ""))
            if name in TO_THE_LOG or (name == "say" and (logs or "logs import say" in source)):
                silent |= {id(each) for each in ast.walk(node)}
    for node in ast.walk(tree):
        told = isinstance(node, ast.Constant) and isinstance(node.value, str) and id(node) not in silent
        if told and len(WORD.findall(node.value)) >= 4 and SENTENCE.search(node.value):
            yield node.lineno, node.value


def modules() -> Iterator[Path]:
    for room in ROOMS:
        where = SERVER / room
        yield from sorted(where.rglob("*.py")) if where.is_dir() else [where]


def test_what_is_said_to_people_is_a_message():
    found = [
        f"{path.relative_to(SERVER)}:{line} {text[:60]}"
        for path in modules()
        if path.relative_to(SERVER).as_posix() not in ALLOWED
        for line, text in sentences_of(path.read_text(encoding="utf-8"))
    ]

    assert found == []


def test_what_is_allowed_is_still_needed():
    assert not [
        name for name in ALLOWED if not list(sentences_of((SERVER / name).read_text(encoding="utf-8")))
    ]


def test_a_sentence_is_found_where_it_stands():
    said = 'print("There is nothing to be seen here")\n'
    silent = '"""A docstring that is a sentence."""\nlog("it did not go very well")\n'

    assert [text for _, text in sentences_of(silent + said)] == ["There is nothing to be seen here"]
