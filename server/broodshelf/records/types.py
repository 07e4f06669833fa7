"""The types of what enters: ids, days, instants, texts and numbers, each judged whole and between two ends.

Whatever comes from a phone, an import or an address is judged here and nowhere else. Every pattern is held
against the whole text (``$`` would let a line break through), digits are those of ASCII, no list takes null,
and every day and instant lies where arithmetic with it stays possible.
"""

from __future__ import annotations

import datetime as dt
import re
import zoneinfo
from functools import cache
from typing import Any, Final

from marshmallow import ValidationError, fields, validate

FIRST_YEAR: Final = 2000
LAST_YEAR: Final = 2100
"""Instants lie in these years. The far end leaves room for arithmetic, and no clock is that wrong by accident."""
FIRST_DAY: Final = dt.date(1970, 1, 1)
"""A queen may be older than the log: Lasius niger lived 28 years in keeping (AntWiki, from memory)."""
LAST_DAY: Final = dt.date(LAST_YEAR, 12, 31)
LAST_MS: Final = 4_133_980_799_999
"""The end of the year 2100 in ms since 1970 UTC."""

UUID: Final = re.compile(r"[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}")
WALL_TIME: Final = re.compile(r"(?:[01][0-9]|2[0-3]):[0-5][0-9]")
_DAY: Final = re.compile(r"[0-9]{4}-[0-9]{2}-[0-9]{2}")
SHA256: Final = re.compile(r"[0-9a-f]{64}")
_INSTANT: Final = re.compile(
    r"[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9]{2}:[0-9]{2}(?::[0-9]{2}(?:\.[0-9]{1,9})?)?(?:Z|[+-][0-9]{2}:[0-9]{2})"
)


def is_uuid(value: object) -> bool:
    """Say whether ``value`` is a UUID in lower-case canonical form, and nothing besides."""
    return isinstance(value, str) and UUID.fullmatch(value) is not None


def happened_ms(text: str) -> int:
    """Turn a stored ISO 8601 instant with offset into ms since 1970 UTC, whatever its year.

    Raises ``ValidationError`` when the text is not such an instant.
    """
    return round((_instant(text) - _EPOCH) / _MS)


def check_instant(text: str) -> None:
    """Raise ``ValidationError`` unless ``text`` is an instant as phones write it, between 2000 and 2100."""
    if not FIRST_YEAR <= _instant(text).year <= LAST_YEAR:
        raise ValidationError(f"The year must lie between {FIRST_YEAR} and {LAST_YEAR}.")
    if _INSTANT.fullmatch(text) is None:
        raise ValidationError(_NO_INSTANT)


_EPOCH: Final = dt.datetime(1970, 1, 1, tzinfo=dt.UTC)
_MS: Final = dt.timedelta(milliseconds=1)
_NO_INSTANT: Final = "Not an ISO 8601 instant; write e.g. 2026-05-01T18:30:00+02:00."


def _instant(text: str) -> dt.datetime:
    try:
        instant = dt.datetime.fromisoformat(text)
    except ValueError:
        raise ValidationError(_NO_INSTANT) from None
    if instant.tzinfo is None:
        raise ValidationError("The instant lacks its UTC offset, e.g. +02:00.")
    return instant


def check_day(text: str) -> None:
    """Raise ``ValidationError`` unless ``text`` is a day of the calendar between 1970 and 2100."""
    if _DAY.fullmatch(text) is None:
        raise ValidationError("Not a date, e.g. 2026-05-01.")
    try:
        day = dt.date.fromisoformat(text)
    except ValueError:
        raise ValidationError("There is no such day in the calendar.") from None
    if not FIRST_DAY <= day <= LAST_DAY:
        raise ValidationError(f"The year must lie between {FIRST_DAY.year} and {LAST_YEAR}.")


def is_sha256(value: object) -> bool:
    """Say whether ``value`` is a SHA-256 in lower-case hexadecimal."""
    return isinstance(value, str) and SHA256.fullmatch(value) is not None


def readable_day(value: object) -> str | None:
    """Return a stored day as arithmetic can take it: none for what is no day, the far end for what lies beyond.

    An older server took days that no calendar has, and years up to 9999.
    """
    try:
        day = dt.date.fromisoformat(str(value)) if value else None
    except ValueError:
        return None
    return min(max(day, FIRST_DAY), LAST_DAY).isoformat() if day is not None else None


def readable_time(value: object) -> str | None:
    """Return a stored wall-clock time, or none for what is none."""
    return value if isinstance(value, str) and WALL_TIME.fullmatch(value) else None


class Happened(fields.String):
    """An ISO 8601 instant with its UTC offset, e.g. ``2026-05-01T18:30:00.000+02:00``. Kept as written."""

    def _deserialize(self, value: Any, attr: str | None, data: Any, **kwargs: Any) -> str:
        text: str = super()._deserialize(value, attr, data, **kwargs)
        check_instant(text)
        return text


class Day(fields.String):
    """A calendar day in the household's zone, e.g. ``2026-05-01``."""

    def _deserialize(self, value: Any, attr: str | None, data: Any, **kwargs: Any) -> str:
        text: str = super()._deserialize(value, attr, data, **kwargs)
        check_day(text)
        return text


class Whole(validate.Validator):
    """The whole text must have this form; marshmallow's own ``Regexp`` looks at its beginning only."""

    def __init__(self, pattern: re.Pattern[str], why: str) -> None:
        self.pattern, self.why = pattern, why

    def __call__(self, value: str) -> str:
        """Return the value, or raise ``ValidationError``."""
        if self.pattern.fullmatch(value) is None:
            raise ValidationError(self.why)
        return value


def check_zone(value: str) -> None:
    """Raise ``ValidationError`` unless ``value`` is an IANA time zone."""
    if value not in _zones():
        raise ValidationError("Not an IANA time zone, e.g. Europe/Vienna.")


@cache
def _zones() -> frozenset[str]:
    return frozenset(zoneinfo.available_timezones())


def finite(value: float) -> None:
    """Raise ``ValidationError`` for infinities and for what is no number."""
    if value != value or value in (float("inf"), float("-inf")):
        raise ValidationError("Must be a finite number.")
