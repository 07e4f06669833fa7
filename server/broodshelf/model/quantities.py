"""Numbers with a range: estimates with their spread, and the one error for input outside a formula's range."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final

DROP_UL: Final = 50.0
"""A drop is 0.05 mL (common practice, no source)."""


class OutOfRange(ValueError):  # noqa: N818 - named after what is wrong, like the rest of the tree
    """A quantity lies outside the range in which the formula holds."""

    def __init__(self, name: str, value: float, unit: str, low: float, high: float) -> None:
        super().__init__(f"{name} is {value:g} {unit}; it must lie between {low:g} and {high:g} {unit}")
        self.name, self.value, self.unit, self.low, self.high = name, value, unit, low, high


def within(name: str, value: float, unit: str, low: float, high: float) -> float:
    """Return ``value`` if it is finite and in ``low..high`` (both included), else raise ``OutOfRange``."""
    if not math.isfinite(value) or not low <= value <= high:
        raise OutOfRange(name, value, unit, low, high)
    return value


@dataclass(frozen=True, slots=True)
class Estimate:
    """A best value with the low and high that it may well have; all in one unit, named by the variable."""

    low: float
    best: float
    high: float

    def __post_init__(self) -> None:
        if not -math.inf < self.low <= self.best <= self.high < math.inf:
            raise ValueError(f"an estimate must be finite and in order, not {self}")

    @classmethod
    def exactly(cls, value: float) -> Estimate:
        """Return a value that is known."""
        return cls(value, value, value)

    def times(self, other: Estimate | float) -> Estimate:
        """Return the product of two estimates of quantities that are not negative."""
        if isinstance(other, Estimate):
            return Estimate(self.low * other.low, self.best * other.best, self.high * other.high)
        return Estimate(self.low * other, self.best * other, self.high * other)

    def plus(self, other: Estimate) -> Estimate:
        """Return the sum, with the spreads added: neither is assumed to cancel the other."""
        return Estimate(self.low + other.low, self.best + other.best, self.high + other.high)
