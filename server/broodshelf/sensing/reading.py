"""One reading: from what a sensor sends to °C, percent and an instant, or to the word for why it is none. Pure.

What a sensor sends and cannot be (a cut wire, a chip that has just been switched on) is told apart from what is only
extreme: a cabinet of 45 °C is an alarm, 85.0 °C is the value with which a common digital thermometer starts.
"""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any, Final, Literal

from ..model.gauges import DAY_MS

LEAST_C: Final = -40.0
MOST_C: Final = 70.0
"""Common practice, no source: no shelf is colder or hotter, and few sensors for rooms are made for more."""
NONSENSE_C: Final = (-127.0, 85.0)
"""What a DS18B20 says when its wire is cut (the usual driver's word for no answer) and at power-on (data sheet of the
DS18B20, "Operation, Measuring Temperature": the power-on reset value of the temperature register is +85 °C)."""
AHEAD_MS: Final = 10 * 60_000
"""A sensor's clock may be so far ahead; its reading then counts as made now."""
OLDEST_MS: Final = 14 * DAY_MS
"""A sensor that was cut off may bring so much with it; what is older comes as a file (``import``)."""

Unit = Literal["C", "F"]
Why = Literal[
    "not_a_number", "nothing_measured", "broken_temperature", "broken_humidity", "too_old", "in_the_future"
]


@dataclass(frozen=True, slots=True)
class Reading:
    """What a sensor measured at an instant (ms since 1970 UTC); at least one of the two is there."""

    at_ms: int
    temperature_c: float | None
    humidity_pct: float | None


def celsius_of(value: float, unit: Unit) -> float:
    """Return °C of a value in °C or °F, to the hundredth: no sensor for rooms tells more."""
    return round((value - 32) / 1.8 if unit == "F" else value, 2)


def read(sent: Mapping[str, Any], unit: Unit, now_ms: int) -> Reading | Why:
    """Return the reading that a sensor sent, or why it is none.

    ``sent``: ``temperature``, ``humidity`` (numbers or null), ``at_ms`` (null or 0: the sensor has no clock, it counts
    as now), already of the right types. Either measure that is nonsense makes the whole reading broken: a chip that
    lost its power says both wrong.
    """
    temperature, humidity = sent.get("temperature"), sent.get("humidity")
    if temperature is None and humidity is None:
        return "nothing_measured"
    for value in (temperature, humidity):
        if value is not None and not math.isfinite(value):
            return "not_a_number"
    temperature_c = None if temperature is None else celsius_of(temperature, unit)
    if temperature_c is not None and (temperature_c in NONSENSE_C or not LEAST_C <= temperature_c <= MOST_C):
        return "broken_temperature"
    if humidity is not None and not 0 <= humidity <= 100:
        return "broken_humidity"
    at_ms = sent.get("at_ms") or now_ms
    if at_ms < now_ms - OLDEST_MS:
        return "too_old"
    if at_ms > now_ms + AHEAD_MS:
        return "in_the_future"
    return Reading(min(at_ms, now_ms), temperature_c, None if humidity is None else round(float(humidity), 1))
