"""Which language: of a person, of a request, of a terminal. A tag such as ``en-US`` has the words of folder ``en``.

The units that somebody chose stand in the tag as well, as the Unicode extension of BCP 47 has them (UTS 35, part 1,
"Key And Type Definitions"; from memory): ``en-US-u-ms-metric-mu-celsius``. ``mu`` is what temperatures are told in,
``ms`` is read for volumes alone.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from functools import lru_cache
from typing import Final

from .entries import SOURCE, folders
from .pseudo import PSEUDO

ENGLISH: Final = SOURCE
_TAG: Final = re.compile(r"([a-zA-Z]{2,3})(?:[-_][a-zA-Z]{4})?(?:[-_]([a-zA-Z]{2}))?(?:[.@-].*)?")
"""Language, script and region (BCP 47), or as a terminal names them: what follows says nothing that matters here."""
UNITS: Final[Mapping[str, Mapping[str, str]]] = {
    "ms": {"ml": "metric", "floz": "ussystem"},
    "mu": {"c": "celsius", "f": "fahrenhe"},
}
"""What a tag has for the units that a person may choose, by the key of the extension."""
_EXTENSION: Final = "-u"
_UNIT: Final = re.compile(r"-(ms|mu)-([a-z]+)")


@lru_cache(maxsize=1)  # the folders are listed once: tests.bench.burst
def languages() -> tuple[str, ...]:
    """Return the tags of all languages that there are."""
    return folders()


def language_of(tag: str | None) -> str:
    """Return the tag as ``language`` or ``language-REGION`` if there is a folder for it, else English.

    The region decides on units only, where the tag does not name them; what is no tag at all is English, too.
    """
    plain, extension, units = (tag or "").partition(f"{_EXTENSION}-")
    return _plain_language(plain) + (_units(dict(_UNIT.findall(f"-{units}"))) if extension else "")


def _plain_language(tag: str) -> str:
    if tag == PSEUDO:
        return PSEUDO
    found = _TAG.fullmatch(tag)
    if found is None or found[1].lower() not in languages():
        return ENGLISH
    return found[1].lower() + (f"-{found[2].upper()}" if found[2] else "")


def _units(chosen: Mapping[str, str]) -> str:
    known = "".join(
        f"-{key}-{chosen[key]}" for key, types in UNITS.items() if chosen.get(key) in types.values()
    )
    return f"{_EXTENSION}{known}" if known else ""


def with_units(tag: str | None, degrees: str | None, volumes: str | None) -> str | None:
    """Return a tag that says in which units as well; None where nobody said anything.

    ``degrees``: ``c`` or ``f``, ``volumes``: ``ml`` or ``floz``, as a person has them; None: those of the region.
    """
    chosen = {"ms": UNITS["ms"].get(volumes or "", ""), "mu": UNITS["mu"].get(degrees or "", "")}
    return (tag or ENGLISH) + units if (units := _units(chosen)) else tag


def in_units_of(tag: str | None, other: str | None) -> str | None:
    """Return a tag with the units of another one."""
    units = (other or "")[len(without_units(other or "")) :]
    return (tag or ENGLISH) + units if units else tag


def without_units(tag: str) -> str:
    """Return a tag of ``language_of`` as it names the language of a text."""
    return tag.partition(f"{_EXTENSION}-")[0]


def unit_of_tag(tag: str, key: str) -> str | None:
    """Return what a tag of ``language_of`` says by a key of ``UNITS``, if anything."""
    return dict(_UNIT.findall(tag)).get(key)


def folder_of(tag: str) -> str:
    """Return the folder that has the words of a tag of ``language_of``."""
    plain = without_units(tag)
    return plain if plain == PSEUDO else plain.partition("-")[0]


def region_of(tag: str) -> str | None:
    """Return the region of a tag of ``language_of``, if it names one."""
    plain = without_units(tag)
    return None if plain == PSEUDO else plain.partition("-")[2] or None


def of_accepted(wanted: str | None) -> str:
    """Return the language for an ``Accept-Language`` header: the best that there is, else English."""
    return best_of_accepted(wanted) or ENGLISH


def best_of_accepted(wanted: str | None) -> str | None:
    """Return the best language that a header asks for (RFC 9110, section 12.5.4) and that there is."""
    best, best_quality = None, 0.0
    for part in (wanted or "").split(","):
        tag, _, quality = part.strip().partition(";q=")
        found = _TAG.fullmatch(tag)
        weight = _quality(quality)
        known = tag == PSEUDO or (found is not None and found[1].lower() in languages())
        if known and weight > best_quality:
            best, best_quality = without_units(language_of(tag)), weight
    return best


def of_environment(environment: Mapping[str, str]) -> str:
    """Return the language of a terminal: the first set of LC_ALL, LC_MESSAGES and LANG (POSIX, section 8.2)."""
    names = ("LC_ALL", "LC_MESSAGES", "LANG")
    return language_of(next((environment[name] for name in names if environment.get(name)), None))


def _quality(text: str) -> float:
    try:
        return float(text) if text else 1.0
    except ValueError:
        return 0.0
