"""Where a colony stands in its year: does it rest, did it rest, and what may be expected while nobody counts?

The one owner of these questions. Which species have a clock is in the catalogue; most temperate and all boreal ants
have a true winter diapause, tropical ones none (Lopatina 2018, doi 10.5772/intechopen.75388, abstract). The dates
are common practice, no source. A colony's own finished rest starts its year and goes before the calendar.
"""

from __future__ import annotations

import datetime as dt
from collections.abc import Iterable
from dataclasses import dataclass
from typing import Final

from ...model.facts import ColonyState
from ..catalogue import Species
from .climate import Climate
from .day_length import shortest_day_near
from .history import local_day
from .winter_rest import MONTH_DAYS, RAMP_DAYS, rest_spells

LATE_SUMMER: Final = {1: (8, 15), -1: (2, 15)}
"""Month and day from which the clock slows a colony, north and south of the equator."""
SLOW_DAYS: Final = 196
"""From mid August to the end of February: 28 weeks."""
ACTIVE_DAYS: Final = 365 - SLOW_DAYS
"""So long after its own rest a colony is at the earliest slowed again."""
SHORTEST_REST_DAYS: Final = 21
"""A shorter one is no rest: Myrmica rubra larvae restart only after 3 weeks of cold (Pearson & Raybould 1997)."""
KEPT_WARM_C: Final = 15.0
"""Above it no colony rests, whatever its species; one with a yearly clock slows down all the same."""
WARMER_C: Final = 2.0
"""So much above its usual range a rest is not believed: the spread of a place's setting."""

Span = tuple[dt.date, dt.date]
"""The first day, and the first day after it."""


@dataclass(frozen=True, slots=True)
class Season:
    """Where a colony stands in its year.

    ``resting``: it rests, and nothing is fed. ``marked``: the keeper set it to resting, believed or not.
    ``misfit``: the reason code for which a rest that was marked is not believed. ``over_days``: how long ago a rest
    that goes on was to end; ``ends_on``: when it is to. ``rested``: its last finished rest. ``slow``: by its clock few
    larvae are to be expected and little is eaten. ``mean_c``: the temperature at which it is kept; ``kept_warm``: too
    warm for a rest. ``still``: spells in which it may well pass without eggs.
    """

    resting: bool
    marked: bool
    misfit: str | None
    over_days: int | None
    ends_on: dt.date | None
    began_on: dt.date | None
    rested: Span | None
    slow: bool
    mean_c: float
    kept_warm: bool
    still: tuple[Span, ...]

    def still_days(self, first: dt.date, last: dt.date) -> int:
        """Return how many days of ``first..last`` (both included) the colony may well pass without eggs."""
        return sum(
            1
            for ordinal in range(first.toordinal(), last.toordinal() + 1)
            if any(begin.toordinal() <= ordinal < end.toordinal() for begin, end in self.still)
        )


def season_of(state: ColonyState, species: Species, climate: Climate, day: dt.date) -> Season:
    """Return where a colony stands in its year on a day of the household's zone."""
    began = _date(state.resting_since)
    marked = state.condition == "resting" and (
        began is None or began <= day
    )  # a rest that is planned is none yet
    if marked and began is None:
        began = _date(state.condition_since)
    misfit = _misfit(state, species, climate, began, day) if marked else None
    until = _date(state.condition_until)
    rested = None if marked else _finished_rest(state, day)
    slowed = slow_spells(species, day, state.latitude_sign, rested)
    still = slowed if species.yearly_clock else rest_spells(species, day, state.latitude_sign)
    return Season(
        resting=marked and misfit is None,
        marked=marked,
        misfit=misfit,
        over_days=(day - until).days if marked and until is not None and until <= day else None,
        ends_on=until if marked else None,
        began_on=began if marked else None,
        rested=rested,
        slow=any(begin <= day < end for begin, end in slowed),
        mean_c=climate.mean_c.best,
        kept_warm=climate.mean_c.best > warmest_rest_c(species),
        still=(*still, rested) if rested is not None else still,
    )


def warmest_rest_c(species: Species) -> float:
    """Return the mean temperature above which no colony of the species is at rest."""
    if species.rest is None:
        return KEPT_WARM_C
    usual_c = species.rest.high_c
    if species.rest.summer and species.temp_c is not None:
        usual_c = species.temp_c[1]
    return max(KEPT_WARM_C, usual_c + WARMER_C)


def _misfit(
    state: ColonyState, species: Species, climate: Climate, began: dt.date | None, day: dt.date
) -> str | None:
    """Return why a rest that was marked is not believed. In the days of its ramp it may still be warm."""
    if species.code is not None and species.rest is None:
        return "rest_not_for_species"
    said_where = climate.basis != "common_practice" or state.place.place_type is not None
    if not said_where or (began is not None and (day - began).days <= RAMP_DAYS):
        return None
    return "rest_too_warm" if climate.mean_c.best > warmest_rest_c(species) else None


def _finished_rest(state: ColonyState, day: dt.date) -> Span | None:
    """Return the last rest that was begun and ended; None without one, or where it was too short to be one.

    Its end is the earliest of what is known: the day that was set, the day on which the condition changed; else the
    first feeding after it began; else it is taken for the shortest there is.
    """
    began = _date(state.resting_since)
    if began is None or began > day:
        return None
    told = (_date(state.condition_until), _date(state.condition_since))
    ends = [end for end in told if end is not None and began < end <= day]
    if not ends:
        fed = (local_day(e.happened_ms, state.utc_offset_min) for e in state.events if e.kind == "feeding")
        ends = [next((fed_on for fed_on in fed if fed_on > began), began + dt.timedelta(SHORTEST_REST_DAYS))]
    end = min(ends)
    return (began, end) if (end - began).days >= SHORTEST_REST_DAYS and end <= day else None


def slow_spells(species: Species, day: dt.date, latitude_sign: int, rested: Span | None) -> tuple[Span, ...]:
    """Return the spells of the years around a day in which the clock slows the species."""
    if not species.yearly_clock:
        return ()
    spells = tuple(_by_the_calendar(species, range(day.year - 2, day.year + 2), latitude_sign))
    return spells if rested is None else tuple(_own_year(spells, rested[1]))


def _by_the_calendar(species: Species, years: range, latitude_sign: int) -> Iterable[Span]:
    if species.rest is not None and species.rest.summer:
        half = dt.timedelta(days=round((species.rest.low_months + species.rest.high_months) * MONTH_DAYS / 4))
        for year in years:
            longest = shortest_day_near(dt.date(year, 6 if latitude_sign >= 0 else 12, 21), -latitude_sign)
            yield longest - half, longest + half
        return
    month, dom = LATE_SUMMER[1 if latitude_sign >= 0 else -1]
    for year in years:
        begin = dt.date(year, month, dom)
        yield begin, begin + dt.timedelta(days=SLOW_DAYS)


def _own_year(spells: Iterable[Span], woke: dt.date) -> Iterable[Span]:
    """Cut spells by the day on which the colony woke: it ends the one it fell in and puts off the next."""
    soonest = woke + dt.timedelta(days=ACTIVE_DAYS)
    for begin, end in spells:
        if begin < woke:
            yield begin, min(end, woke)
        elif max(begin, soonest) < end:
            yield max(begin, soonest), end


def _date(day: str | None) -> dt.date | None:
    return None if day is None else dt.date.fromisoformat(day)
