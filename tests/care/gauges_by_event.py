"""What an event does to a gauge: the reference for ``applyEvent`` of ``pwa/care/gauges.js``.

The phone shows at once what a log did; the server makes a new plan instead, so only tests need it in Python.
"""

from __future__ import annotations

from dataclasses import replace

from broodshelf.model.facts import Event, tells
from broodshelf.model.gauges import EMPTY_BELOW_MM, FILLS, READINGS, Gauge, level_at
from broodshelf.model.kinds.log import Check, Feeding, Later, Move, Water


def apply_event(gauge: Gauge, event: Event) -> Gauge:
    """Return the gauge after an event. What happened before ``as_of_ms`` is in the gauge already."""
    if event.happened_ms < gauge.as_of_ms:
        return gauge
    level = _level_after(gauge, event, level_at(gauge, event.happened_ms))
    return gauge if level is None else replace(gauge, level=level, as_of_ms=event.happened_ms)


def _level_after(gauge: Gauge, event: Event, level: float) -> float | None:
    if tells(event, Feeding) and event.said.need == gauge.need:
        gain = gauge.capacity if gauge.gain_per_portion is None else gauge.gain_per_portion
        return min(gauge.capacity, level + gain)
    if tells(event, Water) and gauge.need == "water":
        if event.said.action in FILLS:
            return gauge.capacity
        share = _share_read(gauge, event.said)
        return None if share is None else share * gauge.capacity
    if tells(event, Move) and event.moved:
        filled = gauge.need == "room" or (gauge.need == "water" and event.said.fresh_reservoir)
        return gauge.capacity if filled else None
    if gauge.need == "glance" and not tells(event, Later):
        return gauge.capacity
    if tells(event, Check) and gauge.need == event.said.need == "barrier":
        return gauge.capacity
    return None


def _share_read(gauge: Gauge, said: Water) -> float | None:
    """Return the share of the full reservoir that was read; mm count before the reading by eye."""
    if said.level_mm is not None and gauge.full_mm:
        return 0.0 if said.level_mm < EMPTY_BELOW_MM else min(1.0, said.level_mm / gauge.full_mm)
    return None if said.reading is None else READINGS[said.reading]
