"""The phone's words: one file a subject, each word said somewhere, and none said that is not there.

A word that nobody says is fetched by every phone for nothing; one that is missing is an empty place on a screen.
"""

from __future__ import annotations

import json
import re
import subprocess
from functools import cache
from pathlib import Path

PWA = Path(__file__).parents[2] / "pwa"
LIST = """
const walk = (words, path) => (words && typeof words === 'object' && !Array.isArray(words)
  ? Object.entries(words).flatMap(([key, value]) => walk(value, [...path, key])) : [path]);
for (const file of process.argv.slice(1)) console.log(JSON.stringify(walk({ ...await import(file) }, [])));
"""
PATH = re.compile(r"(?<![\w'])(?<![\w)\]?]\.)[a-zA-Z]\w*(?:\??\.[a-zA-Z]\w*)*\[?")
SHORT_NAME = re.compile(r"^const (\w+) = (\w+(?:\.\w+)+);$", re.M)
SUBJECT = re.compile(r"^export const (\w+Text) = \{", re.M)
OF_ALL_SUBJECTS = "counted.js"
MOST_LINES = 120
"""Of one subject: more are two."""


def test_every_word_is_said_somewhere():
    said = {path for module in modules() for path in said_in(module.read_text())}
    words = listed_words()

    assert len(words) > 700
    assert [".".join(word) for word in words if not is_said(word, said)] == []


def test_no_word_is_said_that_is_not_there():
    """What is said ends at a word, at a section that a code picks from, or goes on with what a text can do."""
    there = {tuple(word[:n]) for word in listed_words() for n in range(1, len(word) + 1)}
    words = {tuple(word) for word in listed_words()}
    subjects = {path[0] for path in there if path[0].endswith("Text")}
    said = {path for module in modules() for path in said_in(module.read_text()) if path[0] in subjects}

    assert len(said) > 600
    assert (
        sorted(
            ".".join(path)
            for path in said
            if path not in there and not any(path[:n] in words for n in range(2, len(path)))
        )
        == []
    )


def test_each_subject_has_a_file_of_its_own_and_no_more_lines_than_one_reads():
    files = {path.name: path.read_text() for path in text_files()}

    assert {name: len(SUBJECT.findall(text)) for name, text in files.items()} == {
        name: 0 if name == OF_ALL_SUBJECTS else 1 for name in files
    }
    assert {name: n for name, text in files.items() if (n := text.count("\n")) > MOST_LINES} == {}


def test_a_word_counts_as_said_by_itself_by_its_section_or_by_a_short_name():
    said = said_in(
        "const r = planText.rhythm;\nsay(r.title, diaryText.empty, eventText.kinds[kind], inputs[name], m?.past,"
        " { ...eventText.water });"
    )

    assert is_said(["planText", "rhythm", "title"], said)
    assert is_said(["eventText", "kinds", "water"], said)
    assert is_said(["eventText", "water", "refill"], said)
    assert is_said(["inputs", "ml"], said)
    assert is_said(["m", "past", "title"], said)
    assert not is_said(["planText", "rhythm", "days"], said)
    assert not is_said(["diaryText", "void"], said)
    assert not is_said(["kinds", "water"], said)


def text_files() -> list[Path]:
    return sorted((PWA / "text/en").glob("*.js"))


def modules() -> list[Path]:
    """The phone's own modules that may say words."""
    return [path for path in PWA.rglob("*.js") if not {"vendor", "text"} & set(path.parts)]


@cache
def listed_words() -> list[list[str]]:
    """Return the path of each word: the name of its export, its sections, its own name."""
    files = [path.as_uri() for path in text_files() if path.name != OF_ALL_SUBJECTS]
    command = ["node", "--input-type=module", "--eval", LIST, *files]
    listed = subprocess.run(command, check=True, capture_output=True, text=True, timeout=60).stdout
    return [word for line in listed.splitlines() for word in json.loads(line)]


def said_in(code: str) -> set[tuple[str, ...]]:
    """Return the dotted paths in a module, short names in full; a single name only where a code picks from it."""
    full = dict(SHORT_NAME.findall(code))
    found = set()
    for match in PATH.finditer(SHORT_NAME.sub("", code)):
        first, *others = match[0].rstrip("[").replace("?", "").split(".")
        path = (*full.get(first, first).split("."), *others)
        if len(path) > 1 or match[0].endswith("["):
            found.add(path)
    return found


def is_said(word: list[str], said: set[tuple[str, ...]]) -> bool:
    """Return whether a word is used, as it is or with what follows it, or a section around it as a whole."""
    path = tuple(word)
    return any(path[:n] in said for n in range(1, len(path) + 1)) or any(s[: len(path)] == path for s in said)
