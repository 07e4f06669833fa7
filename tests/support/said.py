"""English as the tests of the care core ask for it: the words of a code, and which codes of a section have words."""

from __future__ import annotations

from collections.abc import Mapping
from functools import lru_cache
from typing import Any, Final

from broodshelf import languages
from broodshelf.languages.entries import SOURCE, entries_of

SECTIONS: Final = (
    "need", "todo", "food", "vessel", "fault", "origin", "origin_why", "reason", "notice", "caution", "form", "size",
    "travel", "reckon", "reckon_formula", "reckon_source", "reckon_limits", "reckoned",
)  # fmt: skip
NO_BREAK: Final = "\u00a0"


def say(section: str, code: str, args: Mapping[str, Any] | None = None) -> str:
    """Return the words for a code, with plain spaces."""
    return languages.say_code(SOURCE, section, code, args).replace(NO_BREAK, " ")


def say_portion(portion: Mapping[str, Any]) -> str:
    """Return a portion in words, with plain spaces."""
    return languages.say_portion(SOURCE, portion).replace(NO_BREAK, " ")


@lru_cache(maxsize=1)
def words() -> Mapping[str, Mapping[str, str]]:
    """Return the message of each code, by section, as it is written."""
    found: dict[str, dict[str, str]] = {section: {} for section in SECTIONS}
    longest_first = sorted(SECTIONS, key=len, reverse=True)
    for name, text in entries_of(SOURCE).items():
        begins = next((s for s in longest_first if name.startswith(s.replace("_", "-") + "-")), None)
        if begins is not None:
            code = name[len(begins) + 1 :].replace("-", "_")
            found[begins][code] = text.partition("=")[2].strip()
    return found
