"""When a warmed solution is cool enough to offer: Newton's law of cooling.

T(t) = T_room + (T_start - T_room) exp(-k t), with t in minutes and k per minute. Holds for a liquid in still air
of one temperature; a lid, a cold plate or a draught changes k. The number is a help to plan with: what decides is
a thermometer, or the inside of the wrist.
"""

from __future__ import annotations

import math
from typing import Final

from ...model.quantities import Estimate, OutOfRange, within

SAFE_TO_OFFER_C: Final = 30.0
"""Lukewarm at most (common practice, no source)."""

VESSELS_PER_MIN: Final[dict[str, Estimate]] = {
    "drop": Estimate(0.15, 0.22, 0.35),
    "small_glass": Estimate(0.03, 0.05, 0.08),
    "cup": Estimate(0.018, 0.03, 0.08),
    "jar": Estimate(0.013, 0.02, 0.033),
    "pan": Estimate(0.009, 0.014, 0.022),
}
"""k of open vessels, per minute: a drop; 20, 100, 250 mL; 1 L. Own estimate, h A / (m c) with h = 10 to 25 W/m²K
(from memory) and the area of such a vessel; the cup reaches up to the textbook coffee cups of about 0.08."""


def cooled_to_c(start_c: float, room_c: float, minutes: float, k_per_min: float) -> float:
    """Return the temperature after so many minutes, °C (-10..110 °C, 0..10,000 min, k 0..10 per min)."""
    _temperature("start", start_c)
    _temperature("room", room_c)
    within("time", minutes, "min", 0, 10_000)
    within("k", k_per_min, "1/min", 0, 10)
    return room_c + (start_c - room_c) * math.exp(-k_per_min * minutes)


def k_from_two_readings(start_c: float, later_c: float, room_c: float, minutes: float) -> float:
    """Return k per minute of the keeper's own vessel from two thermometer readings so many minutes apart."""
    _temperature("room", room_c)
    _temperature("first reading", start_c)
    within("time", minutes, "min", 0.1, 10_000)
    if not room_c < later_c < start_c:
        raise OutOfRange("second reading", later_c, "°C", room_c, start_c)
    return math.log((start_c - room_c) / (later_c - room_c)) / minutes


def minutes_until(
    start_c: float, room_c: float, k_per_min: Estimate | float, target_c: float = SAFE_TO_OFFER_C
) -> Estimate:
    """Return how many minutes until the target is reached: at best, usually, and at worst.

    ``OutOfRange`` when the room is within 0.5 °C of the target or above it: then it never gets there.
    """
    _temperature("start", start_c)
    _temperature("target", target_c)
    within("room", room_c, "°C", -10, target_c - 0.5)
    if start_c <= target_c:
        return Estimate.exactly(0)
    k = k_per_min if isinstance(k_per_min, Estimate) else Estimate.exactly(k_per_min)
    within("k", k.low, "1/min", 1e-4, 10)
    time_constants = math.log((start_c - room_c) / (target_c - room_c))
    return Estimate(time_constants / k.high, time_constants / k.best, time_constants / k.low)


def _temperature(name: str, value_c: float) -> float:
    return within(name, value_c, "°C", -10, 110)
