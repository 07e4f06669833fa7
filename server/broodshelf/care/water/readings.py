"""From the log to water readings, and the rules for what a log can hold.

* A refill, a new tube and a move into fresh water fill the reservoir; each begins a new run.
* A reading in mm is a point; full, three quarters, half, quarter and empty are ranges around their share.
  Less than 1 mm means empty. If both are given, mm counts.
* Out of order: entries are put in order of when they happened. Two in the same minute: the later entry
  counts, as a correction; a filling always counts.
* More mm than the tube is long, negative or not a number: left out, and said so. More than the full reservoir but
  within the tube: full, and where nobody entered how long the full reservoir is, that is its length. Mm where nothing
  tells that length: left out, and said so; from two readings on the longest counts as full. Said until the next good
  reading.
* The same coarse reading again and again says no more than its first and its last.
* The latest ``MOST_ENTRIES`` entries count: a tube is used for months, and its loss changes with the seasons.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from operator import attrgetter
from typing import Final, Literal, NamedTuple

from ...model.facts import Event, only, tells
from ...model.gauges import EMPTY_BELOW_MM, READINGS
from ...model.kinds.log import Move, Water
from ...model.kinds.plan import Reason
from ...model.kinds.words import WaterAction
from ...model.tasks import reason
from .vessel_sizes import WaterSizes

MOST_ENTRIES: Final = 16
MINUTE_MS: Final = 60_000
HALF_STEP: Final = 0.125
FILLS: Final[dict[WaterAction, Literal["refill", "new_tube"]]] = {
    "refill": "refill",
    "hydrate": "refill",
    "new_tube": "new_tube",
}
_HAPPENED: Final = attrgetter("happened_ms")


class Reading(NamedTuple):
    """A level as a share of the full reservoir, known to lie in ``low..high`` (equal: measured), or a filling."""

    at_ms: int
    share: float
    low: float
    high: float
    fill: Literal["", "refill", "new_tube"]
    event_id: str
    dried_ms: float | None = None
    """The instant on a clock that goes as fast as the air dries; None: as on every other clock."""

    @property
    def clock_ms(self) -> float:
        """The instant by which the loss is reckoned."""
        return self.at_ms if self.dried_ms is None else self.dried_ms

    @property
    def measured(self) -> bool:
        """Say whether it is a point in mm."""
        return self.low == self.high


def readings_of(events: Iterable[Event], sizes: WaterSizes) -> tuple[tuple[Reading, ...], tuple[Reason, ...]]:
    """Return the readings in order, and why later entries than the last good one were left out. Never raises."""
    entries = [event for event in events if event.kind == "water" or event.kind == "move"]
    entries.sort(key=_HAPPENED)
    left_out: dict[str, Reason] = {}
    found = []
    for event in entries[-MOST_ENTRIES:]:
        reading = _reading(event, sizes, left_out)
        if reading is not None:
            found.append(reading)
            left_out.clear()
    return tuple(_thinned(found)), tuple(left_out.values())


def lengths_read(events: Iterable[Event]) -> tuple[float, ...]:
    """Return the mm of the latest entries, sound or not."""
    entries = sorted(only(Water, events), key=_HAPPENED)
    found = (entry.said.level_mm for entry in entries[-MOST_ENTRIES:])
    return tuple(float(mm) for mm in found if mm is not None)


def _reading(event: Event, sizes: WaterSizes, left_out: dict[str, Reason]) -> Reading | None:
    at_ms = event.happened_ms
    if tells(event, Move):
        fill = event.said.fresh_reservoir and event.moved
        return Reading(at_ms, 1.0, 1.0, 1.0, "new_tube", event.id) if fill else None
    if not tells(event, Water):
        return None
    said = event.said
    filled = FILLS.get(said.action)
    if filled is not None:
        return Reading(at_ms, 1.0, 1.0, 1.0, filled, event.id)
    mm = said.level_mm
    if mm is not None:
        reading = _measured(float(mm), event, sizes, left_out)
        if reading is not None:
            return reading
    share = READINGS.get(said.reading or "")
    return None if share is None else coarse(share, at_ms, event.id)


def coarse(share: float, at_ms: int, event_id: str) -> Reading:
    """Return a reading by eye: an eighth of the reservoir to either side; 'full' and 'empty' are open ended."""
    low = -math.inf if share == 0 else share - HALF_STEP
    high = math.inf if share == 1 else share + HALF_STEP
    return Reading(at_ms, share, low, high, "", event_id)


def _measured(mm: float, event: Event, sizes: WaterSizes, left_out: dict[str, Reason]) -> Reading | None:
    if not math.isfinite(mm) or mm < 0 or (sizes.tube_mm is not None and mm > sizes.tube_mm):
        left_out["impossible"] = reason("water_left_out", at_ms=event.happened_ms)
        return None
    if sizes.reservoir_mm is None:
        left_out["length"] = reason("water_length_unknown")
        return None
    if mm < EMPTY_BELOW_MM:
        return Reading(event.happened_ms, 0.0, -math.inf, EMPTY_BELOW_MM / sizes.reservoir_mm, "", event.id)
    share = min(1.0, mm / sizes.reservoir_mm)
    return Reading(event.happened_ms, share, share, share, "", event.id)


def _thinned(found: Sequence[Reading]) -> list[Reading]:
    kept: list[Reading] = []
    for reading in found:
        if kept and not reading.fill and not kept[-1].fill:
            last = kept[-1]
            corrects = reading.at_ms // MINUTE_MS == last.at_ms // MINUTE_MS
            repeats = (
                len(kept) > 1
                and not reading.measured
                and not kept[-2].fill
                and reading.low == last.low == kept[-2].low
                and reading.high == last.high == kept[-2].high
            )
            if corrects or repeats:
                kept.pop()
        kept.append(reading)
    return kept
