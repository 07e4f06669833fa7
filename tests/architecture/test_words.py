"""The phone's words: each of them is said somewhere. One that nobody says is fetched by every phone for nothing."""

from __future__ import annotations

import json
import re
import subprocess
from pathlib import Path

PWA = Path(__file__).parents[2] / "pwa"
LIST = """
const walk = (words, path) => (words && typeof words === 'object' && !Array.isArray(words)
  ? Object.entries(words).flatMap(([key, value]) => walk(value, [...path, key])) : [path]);
for (const file of process.argv.slice(1)) console.log(JSON.stringify(walk({ ...await import(file) }, [])));
"""
PATH = re.compile(r"(?<![\w.'])[a-zA-Z]\w*(?:\??\.[a-zA-Z]\w*)*\[?")
SHORT_NAME = re.compile(r"^const (\w+) = (\w+(?:\.\w+)+);$", re.M)


def test_every_word_is_said_somewhere():
    modules = [path for path in PWA.rglob("*.js") if not {"vendor", "text"} & set(path.parts)]
    said = {path for module in modules for path in said_in(module.read_text())}
    words = listed_words()

    assert len(words) > 700
    assert [".".join(word) for word in words if not is_said(word, said)] == []


def test_a_word_counts_as_said_by_itself_by_its_section_or_by_a_short_name():
    said = said_in("const r = m.rhythm;\nsay(r.title, m.diary.empty, t.kinds[kind], inputs[name], m?.past);")

    assert is_said(["m", "rhythm", "title"], said)
    assert is_said(["t", "kinds", "water"], said)
    assert is_said(["inputs", "ml"], said)
    assert is_said(["m", "past", "title"], said)
    assert not is_said(["m", "rhythm", "days"], said)
    assert not is_said(["m", "diary", "void"], said)
    assert not is_said(["kinds", "water"], said)


def listed_words() -> list[list[str]]:
    """Return the path of each word: the name of its export, its sections, its own name."""
    files = sorted(path.as_uri() for path in (PWA / "text").glob("*.js"))
    command = ["node", "--input-type=module", "--eval", LIST, *files]
    listed = subprocess.run(command, check=True, capture_output=True, text=True, timeout=60).stdout
    return [word for line in listed.splitlines() for word in json.loads(line) if word != ["count"]]


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
