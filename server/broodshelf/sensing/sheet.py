"""A sensor's file: two columns that the keeper names, read into the hours of a place. And the same form written.

Each row is judged as a reading that a sensor sends (``reading.read``), except that it may be as old as it likes. An
hour in which something was measured already is left as it is, so the same file twice adds nothing.
"""

from __future__ import annotations

import csv
import datetime as dt
import io
import re
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from typing import Any, Final, Literal

from sqlalchemy import Connection, select

from ..errors import BadRequest
from ..languages import Told, Unfit, told
from ..languages.saying import message_id
from ..model.facts import Hour
from ..model.gauges import HOUR_MS
from .intake import add_hours, hour_of
from .reading import OLDEST_MS, Reading, Unit, read
from .tables import place_hours

MOST_BYTES: Final = 4 * 1024 * 1024
"""About a year of a reading every three minutes; a longer file comes in parts."""
MOST_BAD: Final = 20
"""So many rows that cannot be read are told by their lines; more have the same reason as these."""
LONGEST_CELL: Final = 30
"""So many letters of a cell are shown."""
EARLIEST: Final = dt.datetime(2000, 1, 1, tzinfo=dt.UTC)
HEADS: Final = ("time", "temperature_c", "least_c", "most_c", "humidity_pct")
Dates = Literal["iso", "dmy", "mdy", "unix"]
_NUMBERED: Final = re.compile(
    r"(\d{1,2})[./-](\d{1,2})[./-](\d{4}|\d{2})[ ,T]+(\d{1,2}):(\d{2})(?::(\d{2}))?(?:[.,]\d+)?\s*([AaPp][Mm])?"
)


@dataclass(frozen=True, slots=True)
class Columns:
    """What the columns are called, in which unit and how the times are written; ``zone`` of times without an offset."""

    time: str
    temperature: str | None
    humidity: str | None
    unit: Unit
    dates: Dates
    zone: dt.tzinfo


@dataclass(frozen=True, slots=True)
class SheetRead:
    """What a file says: its readings, how many rows cannot be read, and the first of them as ``(line, why)``.

    ``why`` is a text for the person who brought it.
    """

    readings: tuple[Reading, ...]
    bad_rows: int
    bad: tuple[tuple[int, Told], ...]


def read_sheet(text: str, columns: Columns, now_ms: int) -> SheetRead:
    """Read a table in CSV (comma, semicolon or tab); its first row are the headings.

    Raises ``BadRequest`` for a text that is no such table or lacks a column.
    """
    first = text.partition("\n")[0]
    delimiter = max(",;\t", key=first.count)
    table = csv.reader(io.StringIO(text.removeprefix("\ufeff"), newline=""), delimiter=delimiter, strict=True)
    found: list[Reading] = []
    bad: list[tuple[int, Told]] = []
    bad_rows = 0
    try:
        heads = [cell.strip() for cell in next(table, [])]
        _check_heads(heads, columns)
        for row in table:
            if not any(cell.strip() for cell in row):
                continue
            cells = dict(zip(heads, (cell.strip() for cell in row), strict=False))
            try:
                found.append(_reading(cells, columns, now_ms, comma=delimiter != ","))
            except Unfit as unfit:
                bad_rows += 1
                if len(bad) < MOST_BAD:
                    bad.append((table.line_num, unfit.told))
    except csv.Error as error:
        raise BadRequest(told("problem-no-csv", line=table.line_num, why=str(error))) from None
    return SheetRead(tuple(found), bad_rows, tuple(bad))


def hours_that_are_new(
    connection: Connection, household_id: str, place_id: str, readings: Iterable[Reading]
) -> list[dict[str, Any]]:
    """Return the hours, as rows of ``place_hours``, that these readings make where nothing was measured yet."""
    by_hour: dict[int, list[Reading]] = {}
    for one in readings:
        by_hour.setdefault(one.at_ms - one.at_ms % HOUR_MS, []).append(one)
    if not by_hour:
        return []
    h = place_hours.c
    known = select(h.hour_ms).where(
        h.household_id == household_id,
        h.place_id == place_id,
        h.hour_ms >= min(by_hour),
        h.hour_ms <= max(by_hour),
    )
    there = set(connection.scalars(known))
    return [
        hour_of(household_id, place_id, hour_ms, ones)
        for hour_ms, ones in sorted(by_hour.items())
        if hour_ms not in there
    ]


def take_in(connection: Connection, hours: Sequence[Mapping[str, Any]]) -> None:
    """Store hours of a file; their days are written with the next look."""
    add_hours(connection, hours)


def write_sheet(hours: Iterable[Hour], zone: dt.tzinfo) -> str:
    """Return hours as a table that ``read_sheet`` reads: times with their UTC offset, °C and percent."""
    made = io.StringIO(newline="")
    table = csv.writer(made, lineterminator="\r\n")
    table.writerow(HEADS)
    for hour in hours:
        at = dt.datetime.fromtimestamp(hour.hour_ms / 1000, zone).isoformat(timespec="minutes")
        numbers = (hour.temperature_c, hour.low_c, hour.high_c, hour.humidity_pct)
        table.writerow([at, *("" if number is None else round(number, 2) for number in numbers)])
    return made.getvalue()


def _check_heads(heads: Sequence[str], columns: Columns) -> None:
    wanted = [columns.time, columns.temperature, columns.humidity]
    for name in [name for name in wanted if name is not None]:
        if heads.count(name) != 1:
            raise BadRequest(
                told("problem-no-such-column", n=heads.count(name), name=name),
                code="no_such_column",
            )


def _reading(cells: Mapping[str, str], columns: Columns, now_ms: int, *, comma: bool) -> Reading:
    """Return the reading of a row. Raises ``Unfit``."""
    at = _instant(cells.get(columns.time, ""), columns)
    if at < EARLIEST:
        raise Unfit(told("problem-row-too-early"))
    at_ms = round(at.timestamp() * 1000)
    sent = {
        "temperature": _number(cells, columns.temperature, comma=comma),
        "humidity": _number(cells, columns.humidity, comma=comma),
        "at_ms": at_ms,
    }
    judged = read(sent, columns.unit, min(now_ms, at_ms + OLDEST_MS))
    if isinstance(judged, Reading):
        return judged
    raise Unfit(told(message_id("problem-row", judged)))


def _number(cells: Mapping[str, str], column: str | None, *, comma: bool) -> float | None:
    cell = cells.get(column or "", "")
    if not cell:
        return None
    try:
        return float(cell.replace(",", ".") if comma else cell)
    except ValueError:
        raise Unfit(told("problem-row-no-number", cell=cell[:LONGEST_CELL])) from None


def _instant(cell: str, columns: Columns) -> dt.datetime:
    try:
        if columns.dates == "unix":
            number = float(cell)
            return dt.datetime.fromtimestamp(number / 1000 if number > 1e11 else number, dt.UTC)
        at = dt.datetime.fromisoformat(cell) if columns.dates == "iso" else _numbered(cell, columns.dates)
    except (ValueError, OverflowError, OSError):
        raise Unfit(told("problem-row-no-time", cell=cell[:LONGEST_CELL])) from None
    return at if at.tzinfo is not None else at.replace(tzinfo=columns.zone)


def _numbered(cell: str, dates: Dates) -> dt.datetime:
    match = _NUMBERED.fullmatch(cell)
    if match is None:
        raise ValueError(cell)
    one, other, year, hour, minute, second = (int(part or 0) for part in match.groups()[:6])
    day, month = (one, other) if dates == "dmy" else (other, one)
    half = (match[7] or "").lower()
    if half:
        hour = hour % 12 + (12 if half == "pm" else 0)
    return dt.datetime(year + 2000 if year < 100 else year, month, day, hour, minute, second)  # noqa: DTZ001
