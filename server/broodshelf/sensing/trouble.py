"""Sensors that say nothing, or nothing but nonsense: found once for each time, to be told to the keepers."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final, Literal

from sqlalchemy import Connection, update

from ..model.gauges import HOUR_MS
from .sensors import Sensor, sensors_of
from .tables import sensors

SILENT_MS: Final = 6 * HOUR_MS
"""Common practice, no source: long enough for a router to be restarted, short enough for a heater to be looked at."""
SaidOf = Literal["silent", "broken"]


@dataclass(frozen=True, slots=True)
class Trouble:
    """A sensor that is silent or broken, since when (ms since 1970 UTC)."""

    sensor: Sensor
    word: SaidOf
    since_ms: int


def trouble_of(sensor: Sensor, now_ms: int) -> Trouble | None:
    """Return what is wrong with a sensor now, or None. One that was never heard is not missed."""
    if sensor.broken_ms is not None:
        return Trouble(sensor, "broken", sensor.broken_ms)
    if sensor.heard_ms is not None and now_ms - sensor.heard_ms >= SILENT_MS:
        return Trouble(sensor, "silent", sensor.heard_ms)
    return None


def new_troubles(connection: Connection, household_id: str, now_ms: int) -> list[Trouble]:
    """Return the troubles that were not told yet, and count them as told. A good reading makes them new again."""
    untold = [sensor for sensor in sensors_of(connection, household_id) if sensor.told_word is None]
    found = [trouble for sensor in untold if (trouble := trouble_of(sensor, now_ms)) is not None]
    for trouble in found:
        its = (sensors.c.household_id == household_id, sensors.c.id == trouble.sensor.id)
        connection.execute(update(sensors).where(*its).values(told_word=trouble.word))
    return found
