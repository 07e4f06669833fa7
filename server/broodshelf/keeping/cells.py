"""A field's value as a cell of a table, and back. The registry's field types decide how a cell reads."""

from __future__ import annotations

import json
import re
import unicodedata
from typing import Any, Final

from ..languages import Unfit, told
from ..model.kinds import FieldSpec, forms
from ..records.json_text import read_json

_NUMBER: Final = re.compile(r"[+-]?[0-9]{1,20}(\.[0-9]{1,20})?([eE][+-]?[0-9]{1,3})?")
_SIGNS: Final = frozenset("=+-@")
_MINUS: Final = "\u2212"
_UNSEEN: Final = frozenset({"Cc", "Cf", "Zs", "Zl", "Zp"})
"""Categories of characters that a spreadsheet may pass over or strip: controls, formats, every kind of space."""
YES: Final = frozenset({"true", "yes", "x", "1"})
NO: Final = frozenset({"false", "no", "0"})


def write_cell(value: object) -> str:
    """Return a value as the text of a cell; lists and tables as JSON, nothing as an empty cell."""
    if value is None:
        return ""
    if isinstance(value, str):
        return f"'{value}" if _needs_apostrophe(value) else value
    return json.dumps(value, ensure_ascii=False)


def read_cell(text: str, spec: FieldSpec) -> Any:
    """Return the value of a cell of an export. Raises ``ValueError`` in words; the schema checks the rest."""
    if isinstance(spec.form, forms.TEXTS):
        return text[1:] if text.startswith("'") and _needs_apostrophe(text[1:]) else text
    if isinstance(spec.form, forms.Flag):
        return read_flag(text)
    if isinstance(spec.form, forms.NUMBERS):
        return read_number(text)
    try:
        return read_json(text.encode("utf-8", "replace"), whole_texts=False)
    except ValueError:
        raise Unfit(told("import-not-json", text=text)) from None


def _needs_apostrophe(text: str) -> bool:
    """Say whether a spreadsheet could run this text as a formula: its first visible character is a formula's sign.

    Signs of full or small width count as well (some programs take them for the narrow ones), and so does whatever
    begins with a tab, a line break or another control. A text that begins with an apostrophe needs a second one.
    """
    if text.startswith("'") or (text and unicodedata.category(text[0]) == "Cc"):
        return True
    first = next((c for c in text if unicodedata.category(c) not in _UNSEEN), "")
    return first == _MINUS or unicodedata.normalize("NFKC", first)[:1] in _SIGNS


def read_number(text: str) -> int | float:
    """Return a number written with a decimal point. Raises ``ValueError`` in words."""
    if not _NUMBER.fullmatch(text):
        raise Unfit(told("import-not-a-number", text=text))
    return int(text) if text.lstrip("+-").isdigit() else float(text)


def read_flag(text: str) -> bool:
    """Return yes or no. Raises ``ValueError`` in words."""
    word = text.strip().casefold()
    if word not in YES | NO:
        raise Unfit(told("import-not-yes-no", text=text))
    return word in YES
