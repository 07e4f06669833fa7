"""Patterns that judge look at the whole text: in Python ``$`` lets a line break through, and ``match`` any tail."""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator
from pathlib import Path

TOP = Path(__file__).parents[2]
SERVER = sorted((TOP / "server" / "broodshelf").rglob("*.py"))
PHONE = sorted(p for p in (TOP / "pwa").rglob("*.js") if "vendor" not in p.parts)
READS_BEGINNINGS = {
    "rounds/latitude.py": "of each line of zone.tab, which is ours, the latitude stands first"
}
"""Where ``match`` is meant: what follows is somebody else's to read."""
JUDGED_BY_MARSHMALLOW = "Regexp"
PATTERN_OF_THE_PHONE = re.compile(
    r"(?<![\w)\]<])/((?:[^/\\\n\[]|\\.|\[(?:[^\]\\\n]|\\.)*\])+)/([a-z]*)(?=[.,;)\s\]])"
)


def test_no_pattern_of_the_server_ends_in_a_dollar_or_is_only_held_against_the_beginning():
    faults = [f"{path.relative_to(TOP)}:{line} {why}" for path in SERVER for line, why in faults_in(path)]

    assert faults == []


def test_the_walk_finds_each_form_of_the_fault(tmp_path):
    file = tmp_path / "wrong.py"
    file.write_text(
        'import re\nA = re.compile(r"^[0-9]+$")\nA.match(x)\nre.match("a", x)\nvalidate.Regexp("a")\n'
        'B = re.compile("a|b$", re.S)\nC = re.compile(\n    "^x"\n    "[$]$"\n)\n'
    )

    assert [line for line, _ in faults_in(file)] == [2, 3, 4, 5, 6, 7]
    file.write_text(
        'import re\nA = re.compile(r"(?m)^//[^\\n]*$")\nB = re.compile(r"a\\$")\nA.fullmatch(x)\n'
    )
    assert list(faults_in(file)) == []


def test_no_pattern_of_the_phone_that_ends_in_a_dollar_reads_line_by_line():
    """In JavaScript ``$`` means the very end, unless the flag ``m`` makes it the end of any line."""
    found = [
        (path.name, match[1])
        for path in PHONE
        for match in PATTERN_OF_THE_PHONE.finditer(path.read_text("utf-8"))
        if match[1].endswith("$") and not match[1].endswith("\\$")
    ]
    by_lines = [
        (path.name, match[0])
        for path in PHONE
        for match in PATTERN_OF_THE_PHONE.finditer(path.read_text("utf-8"))
        if "m" in match[2] and "$" in match[1]
    ]

    assert len(found) >= 2
    assert by_lines == []


def faults_in(path: Path) -> Iterator[tuple[int, str]]:
    """Yield the line and the fault of every pattern that does not judge the whole text."""
    excused = any(str(path).endswith(name) for name in READS_BEGINNINGS)
    found = set()
    for node in ast.walk(ast.parse(path.read_text("utf-8"))):
        if not isinstance(node, ast.Call) or not isinstance(node.func, ast.Attribute):
            continue
        if node.func.attr == "match" and not excused:
            found.add((node.lineno, "match() looks at the beginning only: use fullmatch()"))
        elif node.func.attr == JUDGED_BY_MARSHMALLOW:
            found.add((node.lineno, "validate.Regexp looks at the beginning only: use records.types.Whole"))
        elif isinstance(node.func.value, ast.Name) and node.func.value.id == "re" and node.args:
            pattern = node.args[0]
            text = pattern.value if isinstance(pattern, ast.Constant) else None
            if isinstance(text, str) and ends_in_dollar(text) and not reads_lines(node, text):
                found.add((node.lineno, "'$' also matches before a line break: use fullmatch() or \\Z"))
    yield from sorted(found)


def ends_in_dollar(pattern: str) -> bool:
    return pattern.endswith("$") and not pattern.endswith("\\$")


def reads_lines(call: ast.Call, pattern: str) -> bool:
    """Say whether the pattern is meant for single lines of a text."""
    flags = {
        node.attr
        for arg in [*call.args[1:], *call.keywords]
        for node in ast.walk(arg)
        if isinstance(node, ast.Attribute)
    }
    return pattern.startswith("(?m)") or bool(flags & {"M", "MULTILINE"})
