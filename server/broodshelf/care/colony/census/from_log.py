"""From what a plan knows of a colony to the facts that its census goes by."""

from __future__ import annotations

import datetime as dt
from bisect import bisect_left
from collections.abc import Iterator, Sequence
from typing import Final

from ....model.facts import Event, Logged, tells
from ....model.gauges import DAY_MS
from ....model.kinds.log import Boost, Check, Count, Feeding
from ...catalogue import Species
from ..dossier import Dossier
from ..history import day_number, day_of_number
from ..life_stage import founding_mode
from ..season import SHORTEST_REST_DAYS, Season, slow_spells
from ..season_words import usual_end
from .facts import BROOD, EVER, Facts, Seen, Spell, looks_back_to
from .groups import life_group
from .remembered import Lru
from .warmth import warmth_of

WEEK: Final = 7
TAKEN: Final = frozenset({"all", "some"})
_SEEN_IN: Final = frozenset({"count", "check", "feeding", "boost", "move"})
"""The kinds of logs that tell of brood and workers; a feeding says of which need its check is."""
_counts: Lru[tuple[int, Count, tuple[Seen, ...]]] = Lru(20_000)
OFFERS_DAYS: Final = 28
"""Insects that were offered longer ago say nothing of today's larvae (common practice, no source); taken by blocks of
as many days, so that the first of them stays the same for weeks."""


def facts_of(colony: Dossier, season: Season, today: dt.date) -> Facts:
    """Return the facts of a colony on a day of the household's zone."""
    state, species = colony.state, colony.species
    day = day_number(today)
    offset_ms = state.utc_offset_min * 60_000
    group = life_group(species.genus)
    offers: dict[int, str] = {}
    seen = tuple(
        _seen(
            _told_lately(state.events, day, offset_ms),
            offset_ms,
            (day - OFFERS_DAYS) // OFFERS_DAYS * OFFERS_DAYS,
            offers,
        )
    )
    if state.stage == "founding":
        seen = tuple(_with_no_workers(seen))
    known_days = [seen[0].day] if seen else [day]
    known_days += [_day(state.acquired_on)] if state.acquired_on and not seen else []
    rests = tuple(_rests(season, species, day))
    mean_c = colony.climate.mean_c
    return Facts(
        group,
        known_day=min(day, *known_days),
        warmth=warmth_of(colony, rests, group, day),
        founding=founding_mode(state, species),
        founded_day=_day(state.founded_on) if state.founded_on and _day(state.founded_on) <= day else None,
        stage=state.stage,
        warmth_sd_c=round(min(2.0, max(0.5, (mean_c.high - mean_c.low) / 2 / 1.5)), 1),
        queens=max(
            1, next((c.queens for c in reversed(colony.history.counts) if c.queens), state.queens or 1)
        ),
        rests=rests,
        slow=tuple(
            (day_number(begin), day_number(end))
            for begin, end in slow_spells(species, today, state.latitude_sign, _own_rest(season, rests))
        ),
        seen=seen,
        offers=offers,
    )


def _told_lately(events: Sequence[Event], day: int, offset_ms: int) -> Sequence[Event]:
    """Return the log as far back as it still tells something; all of it where nobody counted workers since."""
    since_ms = looks_back_to(day) * DAY_MS - offset_ms
    recent = events[bisect_left(events, since_ms, key=lambda event: event.happened_ms) :]
    return recent if any(map(_some_workers, recent)) else events


def _some_workers(event: Event) -> bool:
    return tells(event, Count) and any(seen.what == "workers" and seen.any for seen in _counted(event, 0))


def _seen(
    events: Sequence[Event], offset_ms: int, offers_from: int, offers: dict[int, str]
) -> Iterator[Seen]:
    """Yield what was seen and done; insects that were offered from a day on once a week, its check into ``offers``."""
    week, taken, refused = -1, 0, 0
    need_of: dict[str | None, str] = {}
    for event in events:
        if event.kind not in _SEEN_IN:
            continue
        if tells(event, Feeding):
            need_of[event.id] = event.said.need
            continue
        day = (event.happened_ms + offset_ms) // DAY_MS
        if week >= 0 and day // WEEK != week:
            yield from _offered(week, taken, refused)
            week, taken, refused = -1, 0, 0
        if tells(event, Count):
            yield from _count(event, day)
        elif tells(event, Boost):
            if event.said.brood in BROOD:
                added = event.said
                yield Seen(day, "added", number=added.number, word=added.brood, event_id=event.id)
        elif event.moved:
            yield Seen(day, "moved", event_id=event.id)
        elif tells(event, Check) and day >= offers_from and event.said.outcome:
            if need_of.get(event.said.feeding_id, event.said.need) != "protein":
                continue
            week = day // WEEK
            offers[week * WEEK] = event.id
            taken += event.said.outcome in TAKEN
            refused += event.said.outcome == "ignored"
    if week >= 0:
        yield from _offered(week, taken, refused)


def _with_no_workers(seen: Sequence[Seen]) -> Iterator[Seen]:
    """Yield with each look at a founding's brood that it found no workers, until some are seen: nobody misses them."""
    told = {one.day for one in seen if one.what == "workers"}
    waits = True
    for one in seen:
        waits = waits and not (one.what == "workers" and one.any)
        if waits and one.what in BROOD and one.day not in told:
            told.add(one.day)
            yield Seen(one.day, "workers", word="none", event_id=one.event_id)
        yield one


def _offered(week: int, taken: int, refused: int) -> Iterator[Seen]:
    if taken or refused:
        yield Seen(week * WEEK, "protein", word="refused" if refused > taken else "taken")


def _count(event: Logged[Count], day: int) -> tuple[Seen, ...]:
    """Return what a count says; the same count always as the same objects, which are compared at once."""
    kept = _counts.get(event.id)
    if kept is None or kept[0] != day or kept[1] != event.said:
        kept = day, event.said, tuple(_counted(event, day))
        _counts.put(event.id, kept)
    return kept[2]


def _counted(event: Logged[Count], day: int) -> Iterator[Seen]:
    count = event.said
    number, low, high, word = count.workers, count.workers_low, count.workers_high, count.workers_coarse
    if low is not None and high:  # a count that knows how far it may be off
        yield Seen(day, "workers", low=float(low), high=float(high), event_id=event.id)
    elif number is not None:
        yield Seen(day, "workers", number=float(number), event_id=event.id)
    elif count.workers_at_least:
        yield Seen(day, "workers", low=float(count.workers_at_least), event_id=event.id)
    elif word is not None:
        yield Seen(day, "workers", word=word, event_id=event.id)
    if count.males_only:
        return  # what hatches of such brood are no workers
    for stage, seen in zip(BROOD, (count.eggs, count.larvae, count.pupae), strict=True):
        if seen is not None:
            yield Seen(day, stage, word=seen, event_id=event.id)


def _rests(season: Season, species: Species, day: int) -> Iterator[Spell]:
    """Yield its rests; one that goes on ends on the day that was set, else when it has rested as long as is usual."""
    if season.rested is not None:
        begin, end = season.rested
        yield day_number(begin), day_number(end)
    if season.resting and season.began_on is not None:
        usual = usual_end(season, species)
        if season.ends_on is not None:
            ends = day_number(season.ends_on)
        else:
            ends = EVER if usual is None else (day_number(usual[0]) + day_number(usual[1])) // 2
        yield day_number(season.began_on), max(day + 1, ends)


def _own_rest(season: Season, rests: Sequence[Spell]) -> tuple[dt.date, dt.date] | None:
    """Return the last rest that starts its year, the one that goes on among them."""
    if not season.resting or not rests or rests[-1][1] >= EVER:
        return season.rested
    begin, end = rests[-1]
    return (day_of_number(begin), day_of_number(end)) if end - begin >= SHORTEST_REST_DAYS else season.rested


def _day(iso: str) -> int:
    return day_number(dt.date.fromisoformat(iso))
