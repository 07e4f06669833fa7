"""One bundle of messages a language, which takes a message in when it is first said."""

from __future__ import annotations

import re
from collections.abc import Mapping
from functools import lru_cache
from threading import Lock
from typing import Any, Final

from fluent.runtime import FluentBundle, FluentResource
from fluent.runtime.types import FluentNone

from .entries import SOURCE, entries_of
from .numbers import locale_of
from .pseudo import PSEUDO, pseudo_entries
from .tags import read_tag
from .units import functions

_REFERENCE: Final = re.compile(r"\{\s*(-?[a-z][\w-]*)")
"""A message or a term that an entry speaks of; a parameter begins with ``$``, a function with a capital."""
_PARAMETER: Final = re.compile(r"\$([a-zA-Z][\w-]*)")
MISSING: Final = "?"
"""What an argument that is missing shows as."""


class Speaker:
    """Says messages of one language; what it lacks, and everything that no folder has, in English. Thread-safe."""

    def __init__(self, tag: str) -> None:
        self._entries = entries_in(read_tag(tag).folder)
        locale = str(locale_of(tag)).replace("_", "-")
        self._bundle = FluentBundle([locale], functions=functions(tag), use_isolating=False)
        self._taken: set[str] = set()
        self._lock = Lock()

    def knows(self, message_id: str) -> bool:
        """Whether there is such a message."""
        return message_id in self._entries

    def say(self, message_id: str, args: Mapping[str, Any], attribute: str | None = None) -> str:
        """Return a message, or an attribute of it, as text. Raises ``KeyError`` for one that there is not."""
        self._take(message_id)
        message = self._bundle.get_message(message_id)
        pattern = message.value if attribute is None else message.attributes[attribute]
        if pattern is None:
            raise KeyError(message_id)
        asked = dict.fromkeys(_PARAMETER.findall(self._entries[message_id]), MISSING)
        text, _ = self._bundle.format_pattern(pattern, {**asked, **args})
        return text.format(locale_of("en")) if isinstance(text, FluentNone) else text

    def _take(self, message_id: str) -> None:
        if message_id in self._taken:
            return
        text = self._entries[message_id]
        for other in _REFERENCE.findall(text):
            self._take(other)
        with self._lock:
            if message_id not in self._taken:
                self._bundle.add_resource(FluentResource(text))
                self._taken.add(message_id)


@lru_cache(maxsize=16)  # tests.bench.burst, which words each nudge
def entries_in(folder: str, *, for_phone: bool = False) -> Mapping[str, str]:
    """Return the entries of a language, by id, with those of English where it has none."""
    english = entries_of(SOURCE, for_phone=for_phone)
    if folder == PSEUDO:
        return pseudo_entries(english)
    own = entries_of(folder, for_phone=for_phone)
    return {name: own.get(name, text) for name, text in english.items()}


@lru_cache(maxsize=64)  # tests.bench.burst: a bundle is put together once and not for each nudge
def speaker(tag: str) -> Speaker:
    """Return who says the messages of a tag of ``language_of``."""
    return Speaker(tag)
