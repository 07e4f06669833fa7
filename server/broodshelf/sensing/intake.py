"""Taking readings in: each once, into the raw readings and the hour of its place, in one transaction.

The household's row is not locked: readings are no records, and a sensor must not wait for a phone's long sync.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from functools import cache
from typing import Any, Final

from sqlalchemy import Connection, case, delete, func, select, update
from sqlalchemy.dialects import postgresql, sqlite

from ..model.facts import Hour
from ..model.gauges import DAY_MS, HOUR_MS
from ..records.quick.many_rows import is_among
from .reading import OLDEST_MS, Reading, Why, read
from .sensors import Sensor
from .tables import place_hours, readings, sensors

KEPT_MS: Final = OLDEST_MS + DAY_MS
"""Longer than a reading may come late, or one that comes again would count twice in its hour."""
BROKEN: Final = ("broken_temperature", "broken_humidity", "not_a_number")
"""What says that the sensor is broken; the other refusals are about what was sent, not about who sent it."""


@dataclass(frozen=True, slots=True)
class Taken:
    """What became of what was sent: how many readings are new, how many were known, and why others are none."""

    stored: int
    known: int
    refused: tuple[tuple[int, Why], ...]


def take(connection: Connection, sensor: Sensor, sent: Sequence[Mapping[str, Any]], now_ms: int) -> Taken:
    """Store what a sensor sent (``reading.read`` has the form), in any order, any number of times.

    The same instant of the same sensor counts once, the first that came. A sensor that says only nonsense is marked
    broken from then on, and sound again with its next good reading.
    """
    judged = [read(one, sensor.unit, now_ms) for one in sent]
    good = {one.at_ms: one for one in reversed(judged) if isinstance(one, Reading)}
    refused = tuple((place, why) for place, why in enumerate(judged) if not isinstance(why, Reading))
    new = _store(connection, sensor, good.values())
    _add_to_hours(connection, sensor.household_id, sensor.place_id, new)
    _mark(connection, sensor, good, [why for _, why in refused], now_ms)
    return Taken(len(new), len(judged) - len(refused) - len(new), refused)


def _store(connection: Connection, sensor: Sensor, good: Iterable[Reading]) -> list[Reading]:
    """Insert the readings whose instants are new; return those."""
    by_instant = {one.at_ms: one for one in good}
    if not by_instant:
        return []
    rows = [
        {
            "household_id": sensor.household_id,
            "sensor_id": sensor.id,
            "at_ms": one.at_ms,
            "place_id": sensor.place_id,
            "temperature_c": one.temperature_c,
            "humidity_pct": one.humidity_pct,
        }
        for one in by_instant.values()
    ]
    stored = connection.scalars(_insert_new(connection.dialect.name), rows)
    return [by_instant[at_ms] for at_ms in stored]


def _add_to_hours(connection: Connection, household_id: str, place_id: str, new: Iterable[Reading]) -> None:
    hours: dict[int, list[Reading]] = {}
    for one in new:
        hours.setdefault(one.at_ms - one.at_ms % HOUR_MS, []).append(one)
    rows = [hour_of(household_id, place_id, hour_ms, ones) for hour_ms, ones in sorted(hours.items())]
    add_hours(connection, rows)


def hour_of(household_id: str, place_id: str, hour_ms: int, ones: Iterable[Reading]) -> dict[str, Any]:
    """Return the row of ``place_hours`` that these readings of one hour make."""
    warm = [one.temperature_c for one in ones if one.temperature_c is not None]
    damp = [one.humidity_pct for one in ones if one.humidity_pct is not None]
    return {
        "household_id": household_id,
        "place_id": place_id,
        "hour_ms": hour_ms,
        "temperatures": len(warm),
        "temperature_sum_c": sum(warm),
        "temperature_low_c": min(warm, default=None),
        "temperature_high_c": max(warm, default=None),
        "humidities": len(damp),
        "humidity_sum_pct": sum(damp),
        "humidity_low_pct": min(damp, default=None),
        "humidity_high_pct": max(damp, default=None),
        "day_due": True,
    }


def add_hours(connection: Connection, rows: Sequence[Mapping[str, Any]]) -> None:
    """Add these hours to what their hours hold already."""
    if not rows:
        return
    connection.execute(_add_to_hour(connection.dialect.name), list(rows))


@cache  # tests.bench.sensor_cost: a seventh of a reading
def _insert_new(dialect: str) -> Any:
    """Return the statement that inserts what is not there yet; made once, as making it costs more than running it."""
    made = postgresql if dialect == "postgresql" else sqlite
    return made.insert(readings).on_conflict_do_nothing().returning(readings.c.at_ms)


@cache  # tests.bench.sensor_cost: a quarter of a reading
def _add_to_hour(dialect: str) -> Any:
    """Return the statement that adds an hour's measures to those that are there; made once, too."""
    made = postgresql if dialect == "postgresql" else sqlite
    statement = made.insert(place_hours)
    here, there = place_hours.c, statement.excluded
    sums = ("temperatures", "temperature_sum_c", "humidities", "humidity_sum_pct")
    changed: dict[str, Any] = {name: here[name] + there[name] for name in sums}
    changed["day_due"] = True
    for name in ("temperature_low_c", "humidity_low_pct"):
        changed[name] = _end(here[name], there[name], here[name] < there[name])
    for name in ("temperature_high_c", "humidity_high_pct"):
        changed[name] = _end(here[name], there[name], here[name] > there[name])
    key = [here.household_id, here.place_id, here.hour_ms]
    return statement.on_conflict_do_update(index_elements=key, set_=changed)


def _end(here: Any, there: Any, here_wins: Any) -> Any:
    return case((there.is_(None), here), (here.is_(None), there), (here_wins, here), else_=there)


def _mark(
    connection: Connection, sensor: Sensor, good: Mapping[int, Reading], refused: Sequence[Why], now_ms: int
) -> None:
    broken = next((why for why in refused if why in BROKEN), None)
    its = (sensors.c.household_id == sensor.household_id, sensors.c.id == sensor.id)
    if good:
        newest_ms = max(good)
        heard = func.coalesce(sensors.c.heard_ms, 0)
        values = {"heard_ms": case((heard < newest_ms, newest_ms), else_=heard), "away_ms": None}
        values |= {"broken_ms": None, "broken_word": None, "told_word": None}
        connection.execute(update(sensors).where(*its).values(**values))
    elif broken is not None and sensor.broken_ms is None:
        connection.execute(update(sensors).where(*its).values(broken_ms=now_ms, broken_word=broken))


def note_away(connection: Connection, sensor: Sensor, now_ms: int) -> None:
    """Remember that the sensor was said to be offline (its last will, or its own word) until it is heard again."""
    its = (
        sensors.c.household_id == sensor.household_id,
        sensors.c.id == sensor.id,
        sensors.c.away_ms.is_(None),
    )
    connection.execute(update(sensors).where(*its).values(away_ms=now_ms))


def hours_by_place(
    connection: Connection, household_id: str, from_ms: int, until_ms: int, place_id: str | None = None
) -> dict[str, list[Hour]]:
    """Return what each place's sensors measured in the hours that begin in [from_ms, until_ms), oldest first.

    ``place_id``: of this one only.
    """
    h = place_hours.c
    query = select(place_hours).where(
        h.household_id == household_id, h.hour_ms >= from_ms, h.hour_ms < until_ms
    )
    if place_id is not None:
        query = query.where(h.place_id == place_id)
    found: dict[str, list[Hour]] = {}
    for row in connection.execute(query.order_by(h.place_id, h.hour_ms)):
        warm = row.temperature_sum_c / row.temperatures if row.temperatures else None
        damp = row.humidity_sum_pct / row.humidities if row.humidities else None
        hour = Hour(
            row.hour_ms, warm, row.temperature_low_c, row.temperature_high_c,
            damp, row.humidity_low_pct, row.humidity_high_pct,
        )  # fmt: skip
        found.setdefault(row.place_id, []).append(hour)
    return found


def forget_old_readings(connection: Connection, household_ids: Iterable[str], now_ms: int) -> None:
    """Delete what these households' sensors sent longer ago than a repeat of it would still be taken; hours stay."""
    r = readings.c
    among = is_among(connection, r.household_id, household_ids)
    connection.execute(delete(readings).where(among, r.at_ms < now_ms - KEPT_MS))
