"""From what a plan knows of a colony to the facts that its census goes by."""

from __future__ import annotations

import datetime as dt
from bisect import bisect_left
from collections.abc import Iterator, Mapping, Sequence
from statistics import fmean
from typing import Any, Final

from ....model.facts import ColonyState, Event
from ....model.gauges import DAY_MS
from ...catalogue import Species
from ..climate import DAY_HOURS, DROP_C, HIGHEST_C, LOWEST_C, USUAL, Climate
from ..history import EPOCH_DAY, History
from ..life_stage import founding_mode
from ..season import Season, slow_spells
from .facts import BROOD, Facts, Seen, Spell, Warmth, looks_back_to
from .groups import LifeGroup, life_group
from .remembered import Lru

EVER: Final = 100_000
"""A day that nobody lives to see: a rest without an end."""
WEEK: Final = 7
REST_C: Final = 7.0
"""Where the species' own temperature of rest is not known (common practice, no source)."""
TAKEN: Final = frozenset({"all", "some"})
_counts: Lru[tuple[int, Mapping[str, Any], tuple[Seen, ...]]] = Lru(20_000)
GRAIN_C: Final = 0.5
"""Warmth is told in such steps: less would change nothing but the cost."""


def facts_of(
    state: ColonyState, species: Species, history: History, climate: Climate, season: Season, today: dt.date
) -> Facts:
    """Return the facts of a colony on a day of the household's zone."""
    day = today.toordinal() - EPOCH_DAY
    offset_ms = state.utc_offset_min * 60_000
    group = life_group(species.genus)
    seen = tuple(_seen(_told_lately(state.events, day, offset_ms), offset_ms))
    known_days = [seen[0].day] if seen else [day]
    known_days += [_day(state.acquired_on)] if state.acquired_on and not seen else []
    rests = tuple(_rests(season, day))
    mean_c = climate.mean_c
    return Facts(
        group,
        known_day=min(day, *known_days),
        warmth=_warmth(state, species, climate, rests, group, day),
        founding=founding_mode(state, species),
        founded_day=_day(state.founded_on) if state.founded_on and _day(state.founded_on) <= day else None,
        stage=state.stage,
        warmth_sd_c=round(min(2.0, max(0.5, (mean_c.high - mean_c.low) / 2 / 1.5)), 1),
        queens=max(1, next((c.queens for c in reversed(history.counts) if c.queens), state.queens or 1)),
        rests=rests,
        slow=tuple(
            (begin.toordinal() - EPOCH_DAY, end.toordinal() - EPOCH_DAY)
            for begin, end in slow_spells(species, today, state.latitude_sign, season.rested)
        ),
        seen=seen,
    )


def _told_lately(events: Sequence[Event], day: int, offset_ms: int) -> Sequence[Event]:
    """Return the log as far back as it still tells something; all of it where nobody counted workers since."""
    since_ms = looks_back_to(day) * DAY_MS - offset_ms
    recent = events[bisect_left(events, since_ms, key=lambda event: event.happened_ms) :]
    return recent if any(map(_some_workers, recent)) else events


def _some_workers(event: Event) -> bool:
    return event.kind == "count" and any(seen.what == "workers" and seen.any for seen in _counted(event, 0))


def _seen(events: Sequence[Event], offset_ms: int) -> Iterator[Seen]:
    """Yield what was seen and done, insects that were offered once a week."""
    week, taken, refused, last = -1, 0, 0, ""
    for event in events:
        kind, values = event.kind, event.values
        if kind not in ("count", "check", "boost", "move"):
            continue
        day = (event.happened_ms + offset_ms) // DAY_MS
        if week >= 0 and day // WEEK != week:
            yield from _offered(week, taken, refused, last)
            week, taken, refused = -1, 0, 0
        if kind == "count":
            yield from _count(event, day)
        elif kind == "boost":
            if values.get("brood") in BROOD:
                yield Seen(day, "added", number=values.get("number"), word=values["brood"], event_id=event.id)
        elif event.moved:
            yield Seen(day, "moved", event_id=event.id)
        elif values.get("need") == "protein" and values.get("outcome"):
            week, last = day // WEEK, event.id
            taken += values["outcome"] in TAKEN
            refused += values["outcome"] == "ignored"
    if week >= 0:
        yield from _offered(week, taken, refused, last)


def _offered(week: int, taken: int, refused: int, event_id: str) -> Iterator[Seen]:
    if taken or refused:
        word = "refused" if refused > taken else "taken"
        yield Seen(week * WEEK, "protein", word=word, event_id=event_id)


def _count(event: Event, day: int) -> tuple[Seen, ...]:
    """Return what a count says; the same count always as the same objects, which are compared at once."""
    kept = _counts.get(event.id)
    if kept is None or kept[0] != day or kept[1] != event.values:
        kept = day, event.values, tuple(_counted(event, day))
        _counts.put(event.id, kept)
    return kept[2]


def _counted(event: Event, day: int) -> Iterator[Seen]:
    values = event.values
    number, low, high = values.get("workers"), values.get("workers_low"), values.get("workers_high")
    word = values.get("workers_coarse")
    if number is not None:
        yield Seen(day, "workers", number=float(number), event_id=event.id)
    elif low is not None and high is not None:
        yield Seen(day, "workers", low=float(low), high=float(high), event_id=event.id)
    elif word is not None:
        yield Seen(day, "workers", word=word, event_id=event.id)
    if values.get("males_only"):
        return  # what hatches of such brood are no workers
    for stage in BROOD:
        if values.get(stage) is not None:
            yield Seen(day, stage, word=values[stage], event_id=event.id)


def _rests(season: Season, day: int) -> Iterator[Spell]:
    if season.rested is not None:
        begin, end = season.rested
        yield begin.toordinal() - EPOCH_DAY, end.toordinal() - EPOCH_DAY
    if season.resting and season.began_on is not None:
        began = season.began_on.toordinal() - EPOCH_DAY
        yield began, EVER if season.ends_on is None else max(day + 1, season.ends_on.toordinal() - EPOCH_DAY)


def _warmth(
    state: ColonyState, species: Species, climate: Climate, rests: Sequence[Spell], group: LifeGroup, day: int
) -> tuple[Warmth, ...]:
    """Return how warm it was: the place's settings, weeks with readings as they were read, rests as rests are kept.

    Of a colony that rests the place says nothing about the time before: then it is taken to have been kept well.
    """
    resting = any(first <= day < end for first, end in rests)
    usual_day, usual_night, _ = USUAL.get(state.place.place_type or "room", USUAL["room"])
    day_c = usual_day if state.place.day_temp_c is None else state.place.day_temp_c
    night_c = state.place.night_temp_c
    if night_c is None:
        night_c = usual_night if state.place.day_temp_c is None else day_c - DROP_C
    if resting:
        day_c = night_c = group.usual_c
    entries = {0: (day_c, night_c)}
    for week, read_c in _read(state).items():
        entries[week * WEEK] = read_c[0] or day_c, read_c[1] or night_c
        entries.setdefault((week + 1) * WEEK, (day_c, night_c))
    now = day // WEEK * WEEK
    if not resting:
        entries[now] = climate.day_c.best, climate.night_c.best
    rest_c = REST_C if species.rest is None else (species.rest.low_c + species.rest.high_c) / 2
    awake = sorted(entries.items())
    for first, end in rests:
        after = next((c for at, c in reversed(awake) if at <= end), (day_c, night_c))
        entries = {at: c for at, c in entries.items() if not first <= at < end}
        entries[first] = (
            (climate.day_c.best, climate.night_c.best) if resting and end > day else (rest_c, rest_c)
        )
        if end < EVER:
            entries[end] = after
    told: list[Warmth] = []
    for at, (by_day, by_night) in sorted(entries.items()):
        entry = Warmth(at, _grain(by_day), _grain(by_night))
        if not told or entry[1:] != told[-1][1:]:
            told.append(entry)
    return tuple(told)


def _read(state: ColonyState) -> dict[int, tuple[float | None, float | None]]:
    """Return by week what was read: the mean of the day half and of the night half, None where nobody read it."""
    halves: dict[int, tuple[list[float], list[float]]] = {}
    for event in state.climate_readings:
        temp_c = event.values.get("temperature_c")
        if temp_c is None or not LOWEST_C <= temp_c <= HIGHEST_C:
            continue
        minute = event.happened_ms // 60_000 + state.utc_offset_min
        week = halves.setdefault(minute // 1440 // WEEK, ([], []))
        week[0 if minute // 60 % 24 in DAY_HOURS else 1].append(float(temp_c))
    return {
        week: (fmean(days) if days else None, fmean(nights) if nights else None)
        for week, (days, nights) in halves.items()
    }


def _grain(temp_c: float) -> float:
    return round(temp_c / GRAIN_C) * GRAIN_C


def _day(iso: str) -> int:
    return dt.date.fromisoformat(iso).toordinal() - EPOCH_DAY
