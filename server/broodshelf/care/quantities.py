"""Numbers with a range: the one error for input that lies outside what a formula is valid for."""

from __future__ import annotations

import math


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
