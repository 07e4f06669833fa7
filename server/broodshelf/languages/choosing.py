"""Which language: of a person, of a request, of a terminal. A tag such as ``en-US`` has the words of folder ``en``."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from typing import Final

from .entries import SOURCE
from .tags import DEGREES, VOLUMES, is_known, read_tag

ENGLISH: Final = SOURCE


def language_of(tag: str | None) -> str:
    """Return the tag as ``language`` or ``language-REGION``, with units, if there is a folder for it, else English."""
    return str(read_tag(tag))


def with_units(tag: str | None, degrees: str | None, volumes: str | None) -> str | None:
    """Return a tag that says in which units as well; None where nobody said anything.

    ``degrees``: ``c`` or ``f``, ``volumes``: ``ml`` or ``floz``, as a person has them; else those of the region.
    """
    its = replace(
        read_tag(tag),
        degrees=degrees if degrees in DEGREES else None,
        volumes=volumes if volumes in VOLUMES else None,
    )
    return str(its) if its.degrees or its.volumes else tag


def in_units_of(tag: str | None, other: str | None) -> str | None:
    """Return a tag with the units of another one."""
    units = read_tag(other)
    return with_units(tag, units.degrees, units.volumes)


def of_accepted(wanted: str | None) -> str:
    """Return the language for an ``Accept-Language`` header: the best that there is, else English."""
    return best_of_accepted(wanted) or ENGLISH


def best_of_accepted(wanted: str | None) -> str | None:
    """Return the best language that a header asks for (RFC 9110, section 12.5.4) and that there is."""
    best, best_quality = None, 0.0
    for part in (wanted or "").split(","):
        tag, _, quality = part.strip().partition(";q=")
        weight = _quality(quality)
        if is_known(tag) and weight > best_quality:
            best, best_quality = read_tag(tag).language, weight
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
