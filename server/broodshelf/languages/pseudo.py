"""A language that nobody speaks, made from English: accented, longer and mirrored, so that tests see what breaks.

Every vowel stands twice, which makes a text about 40 % longer: as much as German or Polish need for short labels
(common practice, no source). Each text stands between an override to right-to-left and its end (Unicode UAX 9), so
what was glued from pieces or not translated at all stands out.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from fluent.syntax import FluentParser, FluentSerializer, ast
from fluent.syntax.visitor import Visitor

PSEUDO: Final = "en-XB"
"""No country has this code: it is for private use (ISO 3166-1)."""
OVERRIDE: Final = "\u202e"
ENDED: Final = "\u202c"
_ACCENTED: Final = str.maketrans(
    "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ",
    "áƀçďéƒĝĥíĵķļɱñóþʠŕšťúṽŵẋýžÁƁÇĎÉƑĜĤÍĴĶĻṀÑÓÞɊŔŠŤÚṼŴẊÝŽ",
)
_VOWELS: Final = frozenset("aeiouAEIOU")


def in_pseudo(text: str) -> str:
    """Return an English text as the pseudo-language has it."""
    if not text.strip():
        return text
    longer = "".join(char * 2 if char in _VOWELS else char for char in text)
    return f"{OVERRIDE}{longer.translate(_ACCENTED)}{ENDED}"


def pseudo_entries(entries: Mapping[str, str]) -> dict[str, str]:
    """Return English entries in the pseudo-language, by id."""
    parser, serializer = FluentParser(with_spans=False), FluentSerializer()
    made: dict[str, str] = {}
    for name, text in entries.items():
        entry = parser.parse_entry(text)
        _Mirror().visit(entry)
        made[name] = serializer.serialize_entry(entry).rstrip()
    return made


class _Mirror(Visitor):
    def visit_TextElement(self, node: ast.TextElement) -> None:  # noqa: N802 - the library's name
        node.value = in_pseudo(node.value)
