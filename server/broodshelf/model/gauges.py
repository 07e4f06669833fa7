"""The gauge: a store that runs down at a rate, is filled by what the keeper does, and is due at a level.

The same arithmetic stands in ``pwa/care/gauges.js``; ``fixtures/conformance/gauges.json`` holds both to it. What a
log does to a gauge only the phone reckons: the server makes a new plan.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import TYPE_CHECKING, Final

from .needs import Need
from .quantities import within

if TYPE_CHECKING:
    from .kinds.plan import PlannedGauge, Reason

HOUR_MS: Final = 3_600_000
DAY_MS: Final = 24 * HOUR_MS
READINGS: Final[Mapping[str, float]] = {
    "full": 1.0,
    "three_quarters": 0.75,
    "half": 0.5,
    "quarter": 0.25,
    "empty": 0.0,
}
"""A water reading as a share of the full reservoir."""
FILLS: Final = frozenset({"refill", "new_tube", "hydrate"})
"""What a water log does that leaves the reservoir full."""
EMPTY_BELOW_MM: Final = 1.0
"""Less water than this is none: the cotton holds it (common practice, no source)."""


@dataclass(frozen=True, slots=True)
class Gauge:
    """A level in ``unit``; rates in unit per day (best, low, high); ``as_of_ms`` in ms since 1970 UTC.

    ``gain_per_portion`` is what one feeding adds; None: it fills the gauge. ``full_mm`` is the length of the full
    reservoir, for readings in mm; None: nobody knows it, or it is not a gauge of water.
    """

    need: Need
    unit: str
    level: float
    capacity: float
    rate_per_day: float
    rate_low: float
    rate_high: float
    as_of_ms: int
    due_level: float
    basis: str
    gain_per_portion: float | None = None
    reasons: tuple[Reason, ...] = ()
    full_mm: float | None = None

    def __post_init__(self) -> None:
        within("capacity", self.capacity, self.unit, 1e-9, 1e9)
        within("level", self.level, self.unit, 0, self.capacity)
        within("due_level", self.due_level, self.unit, 0, self.capacity)
        within("rate_low", self.rate_low, f"{self.unit}/day", 0, 1e9)
        within("rate_high", self.rate_high, f"{self.unit}/day", self.rate_low, 1e9)
        within("rate_per_day", self.rate_per_day, f"{self.unit}/day", self.rate_low, self.rate_high)

    @classmethod
    def of(cls, row: PlannedGauge) -> Gauge:
        """Return the gauge that a plan holds. Raises ``OutOfRange`` for one that cannot be."""
        return cls(
            row["need"], row["unit"], row["level"], row["capacity"], row["rate_per_day"], row["rate_low"],
            row["rate_high"], row["as_of_ms"], row["due_level"], row["basis"], row.get("gain_per_portion"),
            tuple(row.get("reasons", ())), row.get("full_mm"),
        )  # fmt: skip

    def as_json(self) -> PlannedGauge:
        """Return the shape of docs/http-api.md, "A plan"."""
        return {
            "need": self.need,
            "unit": self.unit,
            "level": self.level,
            "capacity": self.capacity,
            "rate_per_day": self.rate_per_day,
            "rate_low": self.rate_low,
            "rate_high": self.rate_high,
            "as_of_ms": self.as_of_ms,
            "due_level": self.due_level,
            "basis": self.basis,
            "gain_per_portion": self.gain_per_portion,
            "reasons": list(self.reasons),
            "full_mm": self.full_mm,
        }


def level_at(gauge: Gauge, now_ms: int) -> float:
    """Return the level at an instant: ``clamp(level - rate x days since as_of, 0, capacity)``."""
    days = max(0, now_ms - gauge.as_of_ms) / DAY_MS
    return min(gauge.capacity, max(0.0, gauge.level - gauge.rate_per_day * days))


def due_at_ms(gauge: Gauge) -> int | None:
    """Return when the level meets the due level; ``as_of_ms`` if it is there already, None if it never falls."""
    if gauge.level <= gauge.due_level:
        return gauge.as_of_ms
    if gauge.rate_per_day == 0:
        return None
    return round(gauge.as_of_ms + (gauge.level - gauge.due_level) / gauge.rate_per_day * DAY_MS)


def not_before(start_ms: int, level: float, capacity: float, earliest_ms: int | None) -> tuple[int, float]:
    """Return start and level of a gauge in days that is due at ``earliest_ms`` at the soonest: due, not overdue.

    It starts as early as it can, so that what was logged since then still fills it.
    """
    if earliest_ms is None or start_ms + level * DAY_MS >= earliest_ms:
        return start_ms, level
    start_ms = max(start_ms, earliest_ms - int(capacity * DAY_MS))
    return start_ms, (earliest_ms - start_ms) / DAY_MS
