"""How often: the trade's bands by guild and size, in days. Common practice, no source.

The plan stays within half to twice these bands whatever a model says.
"""

from __future__ import annotations

from dataclasses import dataclass

from ...model.needs import Need
from . import Species

SLOW_FACTOR = 1.5
"""Large slow species eat at two thirds of the pace (common practice, no source)."""

Band = tuple[float, float]

QUEEN_DAYS: Band = (3, 5)
"""How often a queen is fed who has no workers and does not live on her reserves (common practice, no source)."""

_OMNIVORE: tuple[tuple[float, Band, Band], ...] = (
    (20, (3, 7), (3, 5)),
    (100, (3, 5), (2, 4)),
    (1_000, (2, 4), (2, 3)),
    (float("inf"), (2, 3), (1, 2)),
)
"""Up to so many workers: the sugar band and the protein band."""


@dataclass(frozen=True, slots=True)
class Interval:
    """An interval in days with its band, and why it is what it is."""

    low_days: float
    high_days: float
    days: float
    reason_codes: tuple[str, ...]


def interval(
    need: Need,
    species: Species,
    workers: float,
    *,
    has_larvae: bool | None,
    queen_fed: bool = False,
) -> Interval:
    """Return the interval for a food need. ``workers`` counts workers; ``has_larvae`` None: nobody looked.

    ``queen_fed``: a queen without workers that eats, who needs her food whether she has larvae or not.
    """
    low, high = _band(need, species, workers, has_larvae, queen_fed)
    codes = ["interval_band"]
    if need == "protein" and has_larvae is False and not queen_fed:
        codes.append("no_larvae")
    if species.slow:
        low, high = low * SLOW_FACTOR, high * SLOW_FACTOR
        codes.append("slow_species")
    return Interval(low, high, (low + high) / 2, tuple(codes))


def _band(need: Need, species: Species, workers: float, has_larvae: bool | None, queen_fed: bool) -> Band:
    if need == "leaves":
        return (1, 3)
    if need == "seeds":
        return (14, 42)
    if queen_fed:
        return QUEEN_DAYS
    if need == "protein":
        if species.guild == "harvester" or has_larvae is False:
            return (7, 14)
        if species.guild == "honeypot":
            return (2, 4)
        return (3, 5) if species.hunts_by_sight else _by_size(workers)[2]
    if species.guild == "honeypot":
        return (1, 3)  # "always there": looked at every day or two
    return (5, 7) if species.hunts_by_sight else _by_size(workers)[1]


def _by_size(workers: float) -> tuple[float, Band, Band]:
    return next(row for row in _OMNIVORE if workers <= row[0])
