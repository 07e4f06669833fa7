"""JSON from outside, read strictly: what two readers could understand differently, or no database can hold, is refused.

Python's own reader takes doubled keys, NaN, numbers of any length, half characters and any nesting.
"""

from __future__ import annotations

import json
import math
import re
from typing import Any, Final

DEEPEST: Final = 20
MOST_DIGITS: Final = 30
"""Of a whole number; the largest that any field takes has 16."""
_ODD_ESCAPE: Final = re.compile(rb"\\u(?:[dD][89a-fA-F]|0000)")
"""Only by an escape can JSON in UTF-8 hold half a character (a lone surrogate) or the character NUL."""


def read_json(raw: bytes, *, whole_texts: bool = True) -> Any:
    """Return the value of a JSON text in UTF-8. Raises ``ValueError`` in words.

    ``whole_texts``: also refuse texts with half characters or NUL; without it whoever asks mends them.
    """
    try:
        value = json.loads(
            raw.decode("utf-8"),
            object_pairs_hook=_no_doubles,
            parse_constant=_no_constant,
            parse_float=_finite,
            parse_int=_not_too_long,
        )
    except RecursionError:
        raise ValueError("it is nested too deeply") from None
    except UnicodeDecodeError as error:
        raise ValueError(f"it is not UTF-8 from byte {error.start} on") from None
    _check(value, whole_texts and _ODD_ESCAPE.search(raw) is not None)
    return value


def _no_doubles(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
    found = dict(pairs)
    if len(found) != len(pairs):
        raise ValueError("a key stands twice in one object")
    return found


def _no_constant(name: str) -> Any:
    raise ValueError(f"{name} is not a number that JSON knows")


def _finite(literal: str) -> float:
    value = float(literal)
    if not math.isfinite(value):
        raise ValueError("a number is too large")
    return value


def _not_too_long(literal: str) -> int:
    if len(literal) > MOST_DIGITS:
        raise ValueError("a number is too large")
    return int(literal)


def _check(value: Any, texts: bool, depth: int = 0) -> None:
    if depth > DEEPEST:
        raise ValueError("it is nested too deeply")
    children = value.values() if isinstance(value, dict) else value if isinstance(value, list) else ()
    if texts and isinstance(value, dict):
        children = [*children, *value]
    for child in children:
        if isinstance(child, (dict, list)):
            _check(child, texts, depth + 1)
        elif texts and isinstance(child, str) and not is_whole_text(child):
            raise ValueError("a text holds half a character or the character NUL")


def is_whole_text(text: str) -> bool:
    """Say whether a text can be stored and sent as it is: no half characters, no NUL."""
    return text.isprintable() or ("\0" not in text and not any("\ud800" <= c <= "\udfff" for c in text))


def mended(value: Any) -> Any:
    """Put U+FFFD in the place of half a character (a lone surrogate), which no database or answer can hold.

    A field with a length limit can cut an emoji in two; that must not stop a phone's whole queue.
    """
    if isinstance(value, str):
        if value.isascii():
            return value
        return value.encode("utf-16", "surrogatepass").decode("utf-16", "replace")
    if isinstance(value, dict):
        return {mended(name): mended(inner) for name, inner in value.items()}
    if isinstance(value, list):
        return [mended(inner) for inner in value]
    return value
