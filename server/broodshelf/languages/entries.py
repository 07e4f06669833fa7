"""The messages of a language as they are written: read once, each as the text of its own entry.

Only what is said is ever parsed (``bundles``): a whole language takes a third of a second, a sentence none.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping
from functools import lru_cache
from pathlib import Path
from typing import Final

from .phone_parts import SERVER_ONLY

HERE: Final = Path(__file__).parent
SOURCE: Final = "en"
"""The folder that has every message."""
_ENTRY: Final = re.compile(r"^(-?[a-zA-Z][\w-]*)[ ]*=.*(?:\n(?![a-zA-Z#-]).*)*", re.M)
"""An entry begins a line with its id; what is indented, empty or begins with a bracket goes on with it (Fluent 1.0)."""


@lru_cache(maxsize=64)  # files are read once: tests.bench.burst, which words each nudge
def entries_of(folder: str, *, for_phone: bool = False) -> Mapping[str, str]:
    """Return the entries of a folder, by id, without comments. ``for_phone``: without what only the server says."""
    found: dict[str, str] = {}
    for subject, entries in subjects_of(folder).items():
        if not (for_phone and subject in SERVER_ONLY):
            found |= entries
    return found


@lru_cache(maxsize=64)  # as above: tests.bench.burst
def subjects_of(folder: str) -> Mapping[str, Mapping[str, str]]:
    """Return the entries of a folder, by id, under the subject that they speak of: the name of their file."""
    return {path.stem: split(path.read_text(encoding="utf-8")) for path in _files(folder)}


def split(text: str) -> dict[str, str]:
    """Return the entries of one resource, by id."""
    return {match[1]: match[0].rstrip() for match in _ENTRY.finditer(text)}


def folders() -> tuple[str, ...]:
    """Return the tags of the languages that have a folder, in order."""
    return tuple(sorted(path.name for path in HERE.iterdir() if any(path.glob("*.ftl"))))


def _files(folder: str) -> Iterable[Path]:
    return sorted((HERE / folder).glob("*.ftl"))
