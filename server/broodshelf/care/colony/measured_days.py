"""From the hours of a place to its days. Pure; days are counted from 1970-01-01 in the household's zone."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from statistics import fmean

from ...model.facts import Hour, MeasuredDay
from .climate import DAY_HOURS, LEAST_HOURS


def days_of(hours: Iterable[Hour], utc_offset_min: int) -> tuple[MeasuredDay, ...]:
    """Return the days that hours of one place make up, oldest first; the last one may go on."""
    by_day: dict[int, list[tuple[int, Hour]]] = {}
    for hour in hours:
        day, of_day = divmod(hour.hour_ms // 60_000 + utc_offset_min, 24 * 60)
        by_day.setdefault(day, []).append((of_day // 60, hour))
    return tuple(measured_day(day, by_day[day]) for day in sorted(by_day))


def measured_day(day: int, hours: Sequence[tuple[int, Hour]]) -> MeasuredDay:
    """Return a day from its hours, each with the hour of the household's clock in which it begins (0 to 23)."""
    warm = [
        (clock in DAY_HOURS, hour.temperature_c) for clock, hour in hours if hour.temperature_c is not None
    ]
    day_c = _of_half([c for of_day, c in warm if of_day])
    night_c = _of_half([c for of_day, c in warm if not of_day])
    mean_c = _mean([c for _, c in warm]) if day_c is None or night_c is None else (day_c + night_c) / 2
    return MeasuredDay(
        day,
        len(warm),
        mean_c=mean_c,
        low_c=min(_known(hour.low_c for _, hour in hours), default=None),
        high_c=max(_known(hour.high_c for _, hour in hours), default=None),
        day_c=day_c,
        night_c=night_c,
        humidity_pct=_mean(_known(hour.humidity_pct for _, hour in hours)),
        humidity_low_pct=min(_known(hour.humidity_low_pct for _, hour in hours), default=None),
        humidity_high_pct=max(_known(hour.humidity_high_pct for _, hour in hours), default=None),
    )


def _of_half(measured: Sequence[float]) -> float | None:
    return fmean(measured) if len(measured) >= LEAST_HOURS else None


def _mean(measured: Sequence[float]) -> float | None:
    return fmean(measured) if measured else None


def _known(values: Iterable[float | None]) -> list[float]:
    return [value for value in values if value is not None]
