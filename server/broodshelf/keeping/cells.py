"""A field's value as a cell of a table, and back. The registry's field types decide how a cell reads."""

from __future__ import annotations

import json
import re
from typing import Any, Final

from marshmallow import fields

from ..records.kinds import FieldSpec

_NUMBER: Final = re.compile(r"[+-]?\d{1,20}(\.\d{1,20})?([eE][+-]?\d{1,3})?")
_FORMULA: Final = ("=", "+", "-", "@", "\t", "\r", "'")
"""A text that begins so is written behind an apostrophe: a spreadsheet would run it as a formula."""
YES: Final = frozenset({"true", "yes", "x", "1"})
NO: Final = frozenset({"false", "no", "0"})


def write_cell(value: object) -> str:
    """Return a value as the text of a cell; lists and tables as JSON, nothing as an empty cell."""
    if value is None:
        return ""
    if isinstance(value, str):
        return f"'{value}" if value.startswith(_FORMULA) else value
    return json.dumps(value, ensure_ascii=False)


def read_cell(text: str, spec: FieldSpec) -> Any:
    """Return the value of a cell of an export. Raises ``ValueError`` in words; the schema checks the rest."""
    field = spec.make()
    if isinstance(field, fields.String):
        return text[1:] if text.startswith("'") and text[1:].startswith(_FORMULA) else text
    if isinstance(field, fields.Boolean):
        return read_flag(text)
    if isinstance(field, fields.Number):
        return read_number(text)
    try:
        return json.loads(text)
    except ValueError:
        raise ValueError(f"{text!r} is not JSON, e.g. [1, 2]") from None


def read_number(text: str) -> int | float:
    """Return a number written with a decimal point. Raises ``ValueError`` in words."""
    if not _NUMBER.fullmatch(text):
        raise ValueError(f"{text!r} is not a number")
    return int(text) if text.lstrip("+-").isdigit() else float(text)


def read_flag(text: str) -> bool:
    """Return yes or no. Raises ``ValueError`` in words."""
    word = text.strip().casefold()
    if word not in YES | NO:
        raise ValueError(f"{text!r} is neither yes nor no")
    return word in YES
