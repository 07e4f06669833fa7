"""What a phone fetches of a language: a file a part (``phone_parts``), each message on its own, no comments."""

from __future__ import annotations

import re
from typing import Final

from .bundles import entries_in
from .entries import SOURCE, subjects_of
from .phone_parts import PARTS, part_of
from .tags import languages

_NAMED: Final = re.compile(r"^((?:-?| *\.)[a-zA-Z][\w-]*) *= *", re.M)
"""The beginning of a message, a term or an attribute."""
_SPACES: Final = re.compile(r"(?<=\{) +| +(?=\})|^ +(?=[\[*}.])|^ +(?= )", re.M)
"""Beside a brace, before a variant and an attribute; a line that goes on needs one."""


def phones_file(tag: str, part: str) -> bytes:
    """Return a part of a language, or of the pseudo-language, as one Fluent resource in UTF-8.

    What the language lacks is in it in English. Each message begins with its id and ``=``, without the spaces that
    Fluent leaves to the writer.
    """
    entries = entries_in(tag, for_phone=True)
    subjects = subjects_of(SOURCE).items()
    ids = [each for subject, there in subjects if part_of(subject) == part for each in there]
    return "".join(f"{spared(entries[each])}\n" for each in ids if each in entries).encode()


def spared(entry: str) -> str:
    """Return an entry in fewer bytes that says the same."""
    return _SPACES.sub("", _NAMED.sub(r"\1=", entry))


def phones_files() -> dict[str, bytes]:
    """Return all parts of all languages by the names that they are served under."""
    return {name: phones_file(tag, part) for tag in languages() for part, name in names_of(tag).items()}


def names_of(tag: str) -> dict[str, str]:
    """Return the names of a language's files among those of a build, by part."""
    return {part: f"words/{tag}/{part}.ftl" for part in PARTS}
