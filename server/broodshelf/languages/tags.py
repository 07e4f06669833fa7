"""A tag taken apart, once: the language, the region, and the units that somebody chose.

Units stand in a tag as the Unicode extension of BCP 47 has them (UTS 35, part 1, "Key And Type Definitions"; from
memory): ``en-US-u-ms-metric-mu-celsius``. ``mu`` is what temperatures are told in, ``ms`` is read for volumes alone.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass
from functools import lru_cache
from typing import Final

from .entries import SOURCE, folders
from .pseudo import PSEUDO

VOLUMES: Final[Mapping[str, str]] = {"ml": "metric", "floz": "ussystem"}
DEGREES: Final[Mapping[str, str]] = {"c": "celsius", "f": "fahrenhe"}
"""What a tag has for the units that a person may choose."""
_LANGUAGE: Final = re.compile(r"([a-zA-Z]{2,3})(?:[-_][a-zA-Z]{4})?(?:[-_]([a-zA-Z]{2}))?(?:[.@-].*)?")
"""Language, script and region (BCP 47), or as a terminal names them: what follows says nothing that matters here."""
_UNIT: Final = re.compile(r"-(ms|mu)-([a-z]+)")


@dataclass(frozen=True, slots=True)
class Tag:
    """What a tag says that matters here; as text it is the tag again, in one spelling.

    ``volumes`` (``ml``, ``floz``) and ``degrees`` (``c``, ``f``) are as a person has them; None: those of the region.
    """

    folder: str
    region: str | None = None
    volumes: str | None = None
    degrees: str | None = None

    @property
    def language(self) -> str:
        """The tag as it names the language of a text, without units."""
        return f"{self.folder}-{self.region}" if self.region else self.folder

    def __str__(self) -> str:
        """Return ``language-REGION-u-ms-…-mu-…``, as much of it as there is."""
        volumes = f"-ms-{VOLUMES[self.volumes]}" if self.volumes else ""
        degrees = f"-mu-{DEGREES[self.degrees]}" if self.degrees else ""
        return self.language + (f"-u{volumes}{degrees}" if volumes or degrees else "")


def read_tag(text: str | None) -> Tag:
    """Return what a text says; English for what is no tag at all, or names a language that there is not.

    The region decides on units only, where the tag does not name them. Units that nobody may choose are left out.
    """
    plain, _, extension = (text or "").partition("-u-")
    folder, region = _known(plain) or (SOURCE, None)
    units = dict(_UNIT.findall(f"-{extension}"))
    return Tag(folder, region, _choice(VOLUMES, units.get("ms")), _choice(DEGREES, units.get("mu")))


def is_known(text: str) -> bool:
    """Return whether a text is a tag of a language that there is."""
    return _known(text) is not None


@lru_cache(maxsize=1)  # the folders are listed once: tests.bench.burst
def languages() -> tuple[str, ...]:
    """Return the tags of all languages that there are."""
    return folders()


def _known(plain: str) -> tuple[str, str | None] | None:
    if plain == PSEUDO:
        return PSEUDO, None
    found = _LANGUAGE.fullmatch(plain)
    if found is None or found[1].lower() not in languages():
        return None
    return found[1].lower(), found[2].upper() if found[2] else None


def _choice(types: Mapping[str, str], named: str | None) -> str | None:
    return next((choice for choice, kind in types.items() if kind == named), None)
