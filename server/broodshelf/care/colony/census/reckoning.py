"""From the facts to the ensemble as it stands after the last observation, and how it goes on from there.

Days are taken in steps of a fixed row (``step_days`` of the group, counted from 1970), so that the same facts give the
same steps whenever they are asked. What was reckoned up to an observation is remembered by the facts up to it: a new
one costs its own update and the way ahead, however long the log.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Final, NamedTuple

from ..counted_workers import PART_SEEN
from .ensemble import UNKNOWN_FOUNDED_DAYS, Ensemble, founding, growing
from .facts import Facts, Seen, Spell
from .observing import Moved, learn
from .pace import Lived, Pace, pace
from .remembered import APART_DAYS, COLONIES, LATEST, Lru, Point, Track
from .spread import Column, column_of

FOUNDED_LATELY_DAYS: Final = 400
"""A colony that was founded longer before its first look with workers is reckoned from that look."""
MOST_FIRST: Final = 1.5
"""So many times the usual most of a first brood is none (common practice, no source)."""
STAGE_WORKERS: Final = {"nanitics": (8.0, 0.7), "growing": (60.0, 1.0), "mature": (500.0, 1.3)}
UNKNOWN_WORKERS: Final = (20.0, 1.3)
WORD_WORKERS: Final = {"few": (8.0, 0.7), "some": (35.0, 0.7), "many": (200.0, 1.0)}
"""The middle, and the deviation of its logarithm, for what the keeper says of stage or size (common practice)."""
BEFORE_FIRST_COUNT_SD: Final = 0.8
"""The first count is taken in like any other; before it the colony is held to be of about that size."""
UNSETTLED_DAYS: Final = 5
"""After a move little is laid for so long (common practice, no source)."""
COLUMN_DAYS: Final = 7
KEPT: Final = 40
"""Columns of the past that are kept for the drawing, and how far they are apart at least."""


class Start(NamedTuple):
    """Where the reckoning of a colony begins: ``kind`` ``founded``, ``founding`` or ``workers``.

    ``in_days``: from the day of the row to the flight itself.
    """

    day: int
    kind: str
    workers: float = 0.0
    deviation: float = 0.0
    in_days: int = 0


class Reckoned(NamedTuple):
    """The ensemble on a day of the row of steps, what moved it, and how it came there.

    ``seen_day``: of the last observation, which lies within half a step of ``day``.
    """

    day: int
    seen_day: int
    ensemble: Ensemble
    moved: tuple[Moved, ...] = ()
    past: tuple[Column, ...] = ()


_tracks: Lru[Track[Reckoned]] = Lru(COLONIES)


def reckon(facts: Facts) -> Reckoned:
    """Return the ensemble after the last observation, from the latest day that is remembered and still holds."""
    start = start_of(facts)
    seen, number = facts.seen, len(facts.seen)
    key = (facts.group, start, facts.queens, facts.warmth_sd_c, seen[:1])
    track = _tracks.get(key)
    if track is None:
        track = Track()
        _tracks.put(key, track)
    for point in reversed(track.points):
        known = len(point.seen)
        if (
            known <= number
            and point.seen == seen[:known]
            and point.rests_on == _rests_on(facts, start, known)
        ):
            found = point.reckoned
            break
    else:
        found, known = _begin(facts, start), 0
    for taken in range(known + 1, number + 1):
        found = _take_in(facts, found, taken - 1)
        if taken > number - LATEST or seen[taken - 1].day // APART_DAYS != seen[taken].day // APART_DAYS:
            track.put(Point(seen[:taken], _rests_on(facts, start, taken), found))
    return found


def start_of(facts: Facts) -> Start:
    """Return from where a colony is reckoned: its founding where that was lately, else its first count."""
    days = facts.group.step_days
    first = next((seen for seen in facts.seen if seen.what == "workers" and seen.any), None)
    until = first.day if first is not None else facts.known_day
    founded = facts.founded_day
    founds = facts.founding is not None and _first_brood(facts, first)
    if founds and founded is not None and until - founded <= FOUNDED_LATELY_DAYS:
        return Start(founded // days * days, "founded", in_days=founded % days)
    empty = any(seen.what == "workers" and not seen.any for seen in facts.seen[:3])
    if founds and (facts.stage == "founding" or (first is None and empty)):
        return Start(on_row(facts.known_day - round(UNKNOWN_FOUNDED_DAYS), days), "founding")
    if first is None:
        return Start(
            on_row(facts.known_day, days), "workers", *STAGE_WORKERS.get(facts.stage or "", UNKNOWN_WORKERS)
        )
    if first.number is not None:
        return Start(on_row(first.day, days), "workers", first.number, BEFORE_FIRST_COUNT_SD)
    if first.low is not None and first.high is not None:
        return Start(on_row(first.day, days), "workers", (first.low + first.high) / 2, BEFORE_FIRST_COUNT_SD)
    if first.low is not None:
        return Start(on_row(first.day, days), "workers", first.low * PART_SEEN, UNKNOWN_WORKERS[1])
    return Start(on_row(first.day, days), "workers", *WORD_WORKERS[str(first.word)])


def paces(
    facts: Facts, first_day: int, last_day: int, seen: Sequence[Seen] | None = None
) -> Iterator[tuple[int, Pace]]:
    """Yield each step from a day of the row on, until ``last_day`` is reached: the day after it, and its pace.

    ``seen``: the observations that may unsettle the colony on this way, all unless said otherwise.
    """
    days = facts.group.step_days
    later = [entry for entry in facts.warmth if entry.day > first_day]
    now = next((entry for entry in reversed(facts.warmth) if entry.day <= first_day), facts.warmth[0])
    known = facts.seen if seen is None else seen
    moves = [
        each.day for each in known if each.what == "moved" and each.day >= first_day - 2 * UNSETTLED_DAYS
    ]
    unsettled = tuple((moved, moved + UNSETTLED_DAYS) for moved in moves)
    for day in range(first_day, last_day, days):
        if later and later[0].day <= day:
            now = next(entry for entry in reversed(later) if entry.day <= day)
            later = [entry for entry in later if entry.day > day]
        lived = Lived(_in(facts.slow, day), _in(facts.rests, day), _in(unsettled, day))
        yield day + days, pace(facts.group, now.day_c, now.night_c, days, lived)


def on_row(day: int, step_days: int) -> int:
    """Return the day of the row that is nearest."""
    return (day + step_days // 2) // step_days * step_days


def _first_brood(facts: Facts, first: Seen | None) -> bool:
    """Say whether the first workers that were counted may be those of a first brood; more of them had others before."""
    if first is None or first.word == "few":
        return True
    number = next((end for end in (first.number, first.high, first.low) if end is not None), None)
    return number is not None and number <= MOST_FIRST * facts.group.first_brood[1]


def _in(spells: tuple[Spell, ...], day: int) -> bool:
    return any(first <= day < end for first, end in spells)


def _rests_on(facts: Facts, start: Start, number: int) -> tuple[object, ...]:
    """Return what the ensemble after so many observations rests on besides them."""
    days = facts.group.step_days
    # what was seen before the first count is taken in by the colonies that begin with that count
    last = start.day + days
    if number:
        # the row of steps may lead a day or two past the observation
        last = max(last, facts.seen[number - 1].day, on_row(facts.seen[number - 1].day, days))
    return (
        tuple([entry for entry in facts.warmth if entry.day <= last]) or facts.warmth[:1],
        tuple([spell for spell in facts.slow if spell[0] <= last]),
        tuple([(first, min(end, last)) for first, end in facts.rests if first <= last]),
    )


def _begin(facts: Facts, start: Start) -> Reckoned:
    if start.kind != "workers":
        return Reckoned(start.day, start.day, founding(facts, start.in_days, known=start.kind == "founded"))
    days = facts.group.step_days
    (_, here), *_ = paces(facts, start.day, start.day + days, ())
    return Reckoned(start.day, start.day, growing(facts, here, days, start.workers, start.deviation))


def _take_in(facts: Facts, before: Reckoned, number: int) -> Reckoned:
    """Return the ensemble on the day of the observation with this number, taught by it; later ones say nothing yet."""
    seen = facts.seen[number]
    ensemble = before.ensemble.copy()
    day, past = before.day, list(before.past)
    target = on_row(seen.day, facts.group.step_days)
    for after, here in paces(facts, day, target, facts.seen[: number + 1]):
        ensemble.step(here)
        day = after
        if not past or day - past[-1][0] >= COLUMN_DAYS:
            past.append(column_of(day, ensemble.colonies))
    moved = learn(ensemble, seen)
    gone = before.moved if moved is None else (*before.moved[-(KEPT - 1) :], moved)
    ensemble.colonies.pack()
    if ensemble.founders is not None:
        ensemble.founders.colonies.pack()
    return Reckoned(day, seen.day, ensemble, gone, tuple(past[-KEPT:]))
