"""What a phone fetches: one file a language with all that the phone may say, each message on its own, no comments."""

from __future__ import annotations

import re
from typing import Final

from .bundles import entries_in
from .choosing import languages

_NAMED: Final = re.compile(r"^((?:-?| *\.)[a-zA-Z][\w-]*) *= *", re.M)
"""The beginning of a message, a term or an attribute."""
_SPACES: Final = re.compile(r"(?<=\{) +| +(?=\})|^ +(?=[\[*}.])|^ +(?= )", re.M)
"""Beside a brace, before a variant and an attribute; a line that goes on needs one."""


def phones_file(tag: str) -> bytes:
    """Return the messages of a language, or of the pseudo-language, as one Fluent resource in UTF-8.

    What the language lacks is in it in English. Each begins with its id and ``=``, without the spaces that Fluent
    leaves to the writer.
    """
    entries = entries_in(tag, for_phone=True)
    return "".join(f"{spared(text)}\n" for text in entries.values()).encode()


def spared(entry: str) -> str:
    """Return an entry in fewer bytes that says the same."""
    return _SPACES.sub("", _NAMED.sub(r"\1=", entry))


def phones_files() -> dict[str, bytes]:
    """Return the file of each language by the name that it is served under."""
    return {name_of(tag): phones_file(tag) for tag in languages()}


def name_of(tag: str) -> str:
    """Return the name of a language's file among those of a build."""
    return f"words/{tag}.ftl"
