"""Numbers, days and lists as a language writes them (CLDR, by Babel). The same in ``pwa/words/``, by shared vectors."""

from __future__ import annotations

import datetime as dt
import math
import re
from collections.abc import Iterable
from functools import lru_cache
from typing import Final

from babel import Locale
from babel.dates import format_skeleton
from babel.lists import format_list
from fluent.runtime.types import FluentNumber, fluent_number

from .pseudo import PSEUDO
from .tags import Tag, read_tag

ISO_DAY: Final = re.compile(r"\d{4}-\d\d-\d\d")
LONGEST_FRACTION: Final = 9
GROUPED_FROM_FIVE_DIGITS: Final = frozenset({"es", "pl", "pt_PT"})
"""Where CLDR's ``minimumGroupingDigits`` is 2; Babel does not know it."""


@lru_cache(maxsize=64)  # tests.bench.burst, which words each nudge
def locale_of(tag: str) -> Locale:
    """Return Babel's locale of a tag; its language alone where it knows no such region."""
    its = read_tag(tag)
    language = "en" if its.folder == PSEUDO else its.folder
    known = [*_with_region(its), language]
    return Locale.negotiate([its.language.replace("-", "_"), language], known) or Locale("en")


def _with_region(its: Tag) -> list[str]:
    try:
        return [str(Locale.parse(its.language, sep="-"))] if its.region else []
    except ValueError:
        return []


def rounded(value: float) -> tuple[float, int]:
    """Return a figure as it is shown, and with how many places at most.

    Two; what is smaller than 0.1 keeps two digits, or it would read as none. Halves go up.
    """
    places = 2
    if value != 0 and abs(value) < 0.1:
        places = min(LONGEST_FRACTION, 1 - math.floor(math.log10(abs(value))))
    shown = math.floor(value * 10**places + 0.5) / 10**places
    return (int(shown) if shown == int(shown) else shown), places


def number(value: float, tag: str) -> FluentNumber:
    """Return a figure for a message: rounded first, so that the plural form fits what is shown."""
    shown, places = rounded(value) if math.isfinite(value) else (0, 0)
    grouping = abs(shown) >= 10_000 or str(locale_of(tag)) not in GROUPED_FROM_FIVE_DIGITS
    made = fluent_number(shown, maximumFractionDigits=places, useGrouping=grouping)
    assert isinstance(made, FluentNumber)  # noqa: S101  it is none only for a missing argument
    return made


def number_in_words(value: float, tag: str) -> str:
    """Return a figure as text."""
    return number(value, tag).format(locale_of(tag))


def day(iso_day: str, tag: str) -> str:
    """Return a day near today, with its weekday, e.g. ``Fri, May 1``; what is no day stays as it is."""
    try:
        return format_skeleton("MMMEd", dt.date.fromisoformat(iso_day), locale=locale_of(tag))
    except ValueError:
        return iso_day


def in_list(parts: Iterable[str], tag: str) -> str:
    """Return texts as a list, e.g. ``sugar, water, and protein``."""
    return format_list([*parts], locale=locale_of(tag))
