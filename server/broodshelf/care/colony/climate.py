"""The temperature and humidity in which a colony lives: sensors, else readings, else settings, else a default.

Spreads and defaults are common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from statistics import fmean
from typing import Final

from ...model.facts import Hour, Logged, Place
from ...model.gauges import DAY_MS
from ...model.kinds import log
from ...model.quantities import Estimate, within
from .history import clock_hour

LOWEST_C, HIGHEST_C = -10.0, 45.0
"""A place cannot be set outside this range; a reading outside it is a fault of the heater or the thermometer."""
DAY_HOURS: Final = range(8, 20)
"""The half of the day that the day temperature stands for."""
FRESH_DAYS: Final = 14
"""How long a reading speaks for a place."""
SENSED_DAYS: Final = 3
"""The hours of so many days are averaged: one warm afternoon is no climate, a week ago is another one."""
LEAST_HOURS: Final = 6
"""So many measured hours of a half of the day speak for it; fewer may all be of its warmest or coolest part."""
SENSED_SPREAD_C, SENSED_SPREAD_PCT = 0.5, 4.0
"""What common sensors for rooms err by (typical accuracy in the data sheets of the SHT3x and BME280 families)."""
READING_SPREAD_C, SETTING_SPREAD_C, DROP_C, DROP_SPREAD_C = 1.0, 2.0, 2.0, 2.0
READING_SPREAD_PCT, SETTING_SPREAD_PCT = 5.0, 10.0
USUAL: Final[Mapping[str, tuple[float, float, float]]] = {
    "cabinet": (24.0, 21.0, 3.0),
    "room": (22.0, 20.0, 3.0),
    "cellar": (13.0, 12.0, 4.0),
    "fridge": (6.0, 6.0, 2.0),
}
"""Day, night and spread in °C where nobody gave a temperature."""
USUAL_HUMIDITY_PCT: Final = Estimate(30, 50, 70)


@dataclass(frozen=True, slots=True)
class Climate:
    """Day and night temperature, the mean of the two, and relative humidity.

    ``basis``: ``sensor``, ``reading``, ``place`` or ``common_practice``, by what the day temperature rests on.
    """

    day_c: Estimate
    night_c: Estimate
    humidity_pct: Estimate
    basis: str

    @property
    def mean_c(self) -> Estimate:
        """The mean over a day of twelve warm and twelve cool hours."""
        return self.day_c.plus(self.night_c).times(0.5)


def climate_of(
    place: Place,
    readings: Iterable[Logged[log.Climate]] = (),
    hours: Sequence[Hour] = (),
    *,
    now_ms: int,
    utc_offset_min: int = 0,
) -> Climate:
    """Return the climate of a place from its settings, its ``climate`` events and its sensors' hours, oldest first.

    The mean of the measured hours of the last three days goes first, each half of the day by itself; then the latest
    reading of the day half and of the night half, at most 14 days old; then the settings.
    Raises ``OutOfRange`` for a setting outside -10..45 °C or 0..100 %; such a reading is left out here and
    may be an alarm of ``temperature``.
    """
    day, night, humidity = _latest(readings, now_ms, utc_offset_min)
    usual_day, usual_night, spread = USUAL.get(place.place_type or "room", USUAL["room"])
    sensed = sensed_halves(hours, now_ms, utc_offset_min)
    basis = "sensor" if sensed.day_c is not None else "reading"
    if sensed.day_c is not None:
        day_c = _around(sensed.day_c, SENSED_SPREAD_C)
    elif day is not None:
        day_c = _around(day, READING_SPREAD_C)
    elif place.day_temp_c is not None:
        basis = "place"
        day_c = _around(within("day_temp_c", place.day_temp_c, "°C", LOWEST_C, HIGHEST_C), SETTING_SPREAD_C)
    elif night is not None:
        day_c = _around(night + DROP_C, READING_SPREAD_C + DROP_SPREAD_C)
    else:
        basis, day_c = "common_practice", _around(usual_day, spread)
    if sensed.night_c is not None:
        night_c = _around(sensed.night_c, SENSED_SPREAD_C)
    elif night is not None:
        night_c = _around(night, READING_SPREAD_C)
    elif place.night_temp_c is not None:
        setting = within("night_temp_c", place.night_temp_c, "°C", LOWEST_C, HIGHEST_C)
        night_c = _around(setting, SETTING_SPREAD_C)
    elif basis == "common_practice":
        night_c = _around(usual_night, spread)
    else:
        night_c = _around(day_c.best - DROP_C, DROP_SPREAD_C)
    return Climate(day_c, night_c, _humidity(place, humidity, sensed.humidity_pct), basis)


@dataclass(frozen=True, slots=True)
class Sensed:
    """Means of what sensors measured in the last three days; None where too few hours speak."""

    day_c: float | None
    night_c: float | None
    humidity_pct: float | None


def sensed_halves(hours: Sequence[Hour], now_ms: int, utc_offset_min: int = 0) -> Sensed:
    """Return the means of the day half, of the night half, and of humidity, from the hours of the last three days."""
    day: list[float] = []
    night: list[float] = []
    damp: list[float] = []
    for hour in hours:
        if not now_ms - SENSED_DAYS * DAY_MS <= hour.hour_ms <= now_ms:
            continue
        if hour.temperature_c is not None and LOWEST_C <= hour.temperature_c <= HIGHEST_C:
            of_day = clock_hour(hour.hour_ms, utc_offset_min) in DAY_HOURS
            (day if of_day else night).append(hour.temperature_c)
        if hour.humidity_pct is not None:
            damp.append(hour.humidity_pct)
    return Sensed(_mean(day), _mean(night), _mean(damp))


def _mean(measured: Sequence[float]) -> float | None:
    return fmean(measured) if len(measured) >= LEAST_HOURS else None


def _latest(
    readings: Iterable[Logged[log.Climate]], now_ms: int, offset_min: int
) -> tuple[float | None, float | None, float | None]:
    day = night = humidity = None
    for event in readings:
        if not now_ms - FRESH_DAYS * DAY_MS <= event.happened_ms <= now_ms:
            continue
        temperature_c, humidity_pct = event.said.temperature_c, event.said.humidity_pct
        if temperature_c is not None and LOWEST_C <= temperature_c <= HIGHEST_C:
            if clock_hour(event.happened_ms, offset_min) in DAY_HOURS:
                day = float(temperature_c)
            else:
                night = float(temperature_c)
        if humidity_pct is not None and 0 <= humidity_pct <= 100:
            humidity = float(humidity_pct)
    return day, night, humidity


def _humidity(place: Place, reading_pct: float | None, sensed_pct: float | None) -> Estimate:
    if sensed_pct is not None:
        best, spread = sensed_pct, SENSED_SPREAD_PCT
    elif reading_pct is not None:
        best, spread = reading_pct, READING_SPREAD_PCT
    elif place.humidity_pct is not None:
        best, spread = within("humidity_pct", place.humidity_pct, "%", 0, 100), SETTING_SPREAD_PCT
    else:
        return USUAL_HUMIDITY_PCT
    return Estimate(max(0.0, best - spread), best, min(100.0, best + spread))


def _around(best: float, spread: float) -> Estimate:
    return Estimate(best - spread, best, best + spread)
