"""The yearly clock of temperate species: they slow down from late summer even when they are kept warm.

Which species have one is in the catalogue; most temperate and all boreal ants have a true winter diapause,
tropical ones none (Lopatina 2018, doi 10.5772/intechopen.75388, abstract). The dates are common practice, no source.
"""

from __future__ import annotations

import datetime as dt
from typing import Final

from ..catalogue import Species
from .winter_rest import rest_days_between

LATE_SUMMER: Final = {1: (8, 15), -1: (2, 15)}
"""Month and day from which the clock slows a colony, north and south of the equator."""
SLOW_DAYS: Final = 196
"""From mid August to the end of February: 28 weeks."""


def slowed(species: Species, day: dt.date, latitude_sign: int) -> bool:
    """Say whether the clock of a species holds it back on a day."""
    if not species.yearly_clock:
        return False
    return any(begin <= day < end for begin, end in _spells(day.year, day.year, latitude_sign))


def still_days_between(first: dt.date, last: dt.date, species: Species, latitude_sign: int) -> int:
    """Return how many days of ``first..last`` a colony may well pass without eggs: slowed, or in its rest."""
    if not species.yearly_clock:
        return rest_days_between(first, last, species, latitude_sign)
    return sum(
        max(0, (min(end, last + dt.timedelta(days=1)) - max(begin, first)).days)
        for begin, end in _spells(first.year, last.year, latitude_sign)
    )


def _spells(first_year: int, last_year: int, latitude_sign: int) -> list[tuple[dt.date, dt.date]]:
    month, dom = LATE_SUMMER[1 if latitude_sign >= 0 else -1]
    begins = (dt.date(year, month, dom) for year in range(first_year - 1, last_year + 1))
    return [(begin, begin + dt.timedelta(days=SLOW_DAYS)) for begin in begins]
