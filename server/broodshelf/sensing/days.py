"""The days of a place: records of the kind ``place_day``, made of its hours after the household's midnight.

An hour in which something was measured since its day was written marks that day as due; the next look writes it, or
writes it again where a sensor sent late. A day that runs is never written, so phones get one row a day and place.
"""

from __future__ import annotations

import datetime as dt
import json
import zoneinfo
from collections.abc import Iterable, Mapping
from typing import Any, Final

from sqlalchemy import Connection, func, select, update

from ..care.colony.history import day_number
from ..care.colony.measured_days import measured_day
from ..model import kinds
from ..model.facts import Hour, MeasuredDay
from ..model.gauges import HOUR_MS
from ..records.ids import PLACE_AT, first_id_of, place_day_id, place_end
from ..records.store import Ledger
from ..records.tables import records
from .intake import hours_by_place
from .tables import place_hours

KIND: Final = "place_day"
NUMBERS: Final = (
    "mean_c", "low_c", "high_c", "day_c", "night_c", "humidity_pct", "humidity_low_pct", "humidity_high_pct",
)  # fmt: skip


def oldest_due(connection: Connection) -> dict[str, int]:
    """Return the households of which a day is due, or runs, and when the oldest hour of it began."""
    h = place_hours.c
    query = select(h.household_id, func.min(h.hour_ms)).where(h.day_due).group_by(h.household_id)
    return {row[0]: row[1] for row in connection.execute(query)}


def midnight_ms(zone: zoneinfo.ZoneInfo, now_ms: int) -> int:
    """Return the instant at which the day that runs began in a zone."""
    return _begin_ms(_local(now_ms, zone).date(), zone)


def write_days(ledger: Ledger, zone: zoneinfo.ZoneInfo, now_ms: int) -> int:
    """Write the days that are due and over; return how many. The caller flushes the ledger."""
    due = _take_due(ledger.connection, ledger.household_id, midnight_ms(zone, now_ms))
    if not due:
        return 0
    wanted = {(place_id, _local(hour_ms, zone).date()) for place_id, hour_ms in due}
    days = [day for _, day in wanted]
    from_ms, until_ms = _begin_ms(min(days), zone), _begin_ms(max(days) + dt.timedelta(days=1), zone)
    for place_id, hours in hours_by_place(
        ledger.connection, ledger.household_id, from_ms - HOUR_MS, until_ms
    ).items():
        by_day: dict[dt.date, list[tuple[int, Hour]]] = {}
        for hour in hours:
            begun = _local(hour.hour_ms, zone)
            by_day.setdefault(begun.date(), []).append((begun.hour, hour))
        for on, its_hours in by_day.items():
            if (place_id, on) in wanted:
                day = measured_day(day_number(on), its_hours)
                ledger.put(place_day_id(place_id, day.day), KIND, _values(place_id, on, day), now_ms=now_ms)
    return len(wanted)


def days_by_place(
    connection: Connection, household_id: str, place_ids: Iterable[str], first_day: int
) -> dict[str, tuple[MeasuredDay, ...]]:
    """Return the written days of these places since ``first_day`` (counted from 1970-01-01), oldest first."""
    ends = {place_end(place_id): place_id for place_id in place_ids}
    c = records.c
    query = (
        select(c.id, c.fields)
        .where(c.household_id == household_id, c.kind == KIND, c.id >= first_id_of(first_day), c.gone.is_(False))
        .where(func.substr(c.id, PLACE_AT + 1).in_(sorted(ends)))
        .order_by(c.id)
    )  # fmt: skip
    found: dict[str, list[MeasuredDay]] = {}
    for row in connection.execute(query):
        found.setdefault(ends[row.id[PLACE_AT:]], []).append(_measured(json.loads(row.fields)))
    return {place_id: tuple(days) for place_id, days in found.items()}


def _take_due(connection: Connection, household_id: str, before_ms: int) -> list[tuple[str, int]]:
    """Return the due hours before an instant and count them as written.

    First, so that what comes for one of them meanwhile marks it again: PostgreSQL lets it wait for this transaction.
    """
    h = place_hours.c
    statement = (
        update(place_hours)
        .where(h.household_id == household_id, h.day_due, h.hour_ms < before_ms)
        .values(day_due=False)
        .returning(h.place_id, h.hour_ms)
    )
    return [(row.place_id, row.hour_ms) for row in connection.execute(statement)]


def _local(at_ms: int, zone: zoneinfo.ZoneInfo) -> dt.datetime:
    return dt.datetime.fromtimestamp(at_ms / 1000, zone)


def _begin_ms(day: dt.date, zone: zoneinfo.ZoneInfo) -> int:
    return round(dt.datetime.combine(day, dt.time(), zone).timestamp() * 1000)


def _values(place_id: str, on: dt.date, day: MeasuredDay) -> dict[str, Any]:
    """Return the record of a day; what was not measured is left out, as each byte goes to every phone."""
    numbers = {name: round(value, 1) for name in NUMBERS if (value := getattr(day, name)) is not None}
    return {"place_id": place_id, "on": on.isoformat(), "hours": day.hours, **numbers}


def _measured(values: Mapping[str, Any]) -> MeasuredDay:
    told = kinds.read(kinds.PlaceDay, values)
    day = day_number(dt.date.fromisoformat(told.on))
    return MeasuredDay(day, told.hours, **{name: getattr(told, name) for name in NUMBERS})
