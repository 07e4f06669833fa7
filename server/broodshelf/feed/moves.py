"""Which event of a calendar a round is, and how often it moved. Pure.

A calendar knows an event by its UID and takes a change by its SEQUENCE (RFC 5545, sections 3.8.4.7 and 3.8.7.4).
So a round that moves, because the household changed its care hours or its zone, stays the same event: the feed
remembers what it last said of each round.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from typing import Final

from ..model.gauges import DAY_MS
from ..model.tasks import is_care_hour
from .render import Round

KEPT_MS: Final = 8 * DAY_MS
"""A feed looks back seven days."""


@dataclass(frozen=True, slots=True)
class Known:
    """What a feed last said of a round. ``moved_ms``: when it was seen to have moved, None for never."""

    key: str
    local_date: str
    slot: str
    at_ms: int
    sequence: int = 0
    moved_ms: int | None = None


def follow(known: Iterable[Known], rounds: Sequence[Round], now_ms: int) -> tuple[list[Round], list[Known]]:
    """Return the rounds as the same events as before, and what is now known, in order of time.

    A round is known by its date and slot. Of a date, rounds that vanished and rounds that appeared are taken for
    each other in order of time, urgent ones and wishes aside: those have slots of their own. What vanished for
    good is kept for a while, so that a round that comes back does not count its moves from the start.
    """
    before = {(was.local_date, was.slot): was for was in sorted(known, key=_order)}
    present = {(each.local_date, each.slot) for each in rounds}
    vanished = {place: was for place, was in before.items() if place not in present}
    used = {was.key for was in before.values()}
    followed, remembered = [], []
    for each in rounds:
        was = before.get((each.local_date, each.slot)) or _take(vanished, each)
        is_now = _now(was, each, used, now_ms)
        used.add(is_now.key)
        remembered.append(is_now)
        followed.append(replace(each, key=is_now.key, sequence=is_now.sequence, moved_ms=is_now.moved_ms))
    remembered += [was for was in vanished.values() if was.at_ms > now_ms - KEPT_MS]
    return followed, sorted(remembered, key=_order)


def _take(vanished: dict[tuple[str, str], Known], each: Round) -> Known | None:
    """Take the first round of the same date that vanished, if this one can be it."""
    if not is_care_hour(each.slot):
        return None
    place = next(
        (p for p, was in vanished.items() if p[0] == each.local_date and is_care_hour(was.slot)), None
    )
    return vanished.pop(place) if place is not None else None


def _now(was: Known | None, each: Round, used: set[str], now_ms: int) -> Known:
    if was is None:
        key, number = each.key, 1
        while key in used:  # its name belongs to a round that moved away
            number += 1
            key = f"{each.key}#{number}"
        return Known(key, each.local_date, each.slot, each.at_ms)
    if was.at_ms == each.at_ms:
        return replace(was, slot=each.slot)
    return replace(was, slot=each.slot, at_ms=each.at_ms, sequence=was.sequence + 1, moved_ms=now_ms)


def _order(known: Known) -> tuple[int, str, str]:
    return known.at_ms, known.local_date, known.slot
