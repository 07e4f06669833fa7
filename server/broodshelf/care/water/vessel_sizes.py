"""What a vessel and its place say about water before anybody reads it: sizes, and how fast a full reservoir goes."""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass, replace
from typing import Final

from ...model.facts import Place, Vessel
from ..catalogue import VesselKind, vessels
from .evaporation import path_through_mm, tube_loss_mm_day
from .hydration import MOISTEST_PCT, hydration_days

USUAL_TUBE: Final = VesselKind("", "tube", 8.0, 80, 14.0, 150.0)
"""Taken where a vessel is not described: a 16 x 150 mm tube with a third of water."""
INNER_COTTON_MM, OUTER_PLUG_MM, SHORTEST_AIR_MM = 15.0, 20.0, 10.0
"""The cotton at the water, the plug at the mouth, the least air between (common practice, no source)."""
USUAL_TEMP_C: Final = {"fridge": 6.0, "cellar": 14.0}
ROOM_TEMP_C, ROOM_HUMIDITY_PCT = 24.0, 50.0
"""Taken where a place has no temperature or humidity (common practice, no source)."""
TUBE_DAYS: Final = (15.0, 400.0)
"""What a model may say of a full tube before any reading (common practice, no source: 60 to 120 days in a room)."""


@dataclass(frozen=True, slots=True)
class WaterSizes:
    """``reservoir_mm``: length of the full reservoir (None: nobody knows); ``tube_mm``: what no reading can exceed.

    ``usual_per_day``: the share of a full reservoir that goes in a day, before any reading. ``entered``: the keeper
    gave the length; otherwise it is reckoned from the vessel, ``guessed`` from the longest reading, or not known.
    """

    tube: bool
    reservoir_mm: float | None
    reservoir_ml: float | None
    tube_mm: float | None
    usual_per_day: float
    entered: bool = False
    guessed: bool = False


def water_sizes(vessel: Vessel, place: Place) -> WaterSizes:
    """Return the sizes, the keeper's own before the catalogue's. What is impossible is left out, never raised."""
    known = vessels().get(vessel.code or "")
    kind = known or USUAL_TUBE
    bore_mm = _sound(vessel.bore_mm, 3, 200) or kind.bore_mm
    length_mm = _sound(vessel.length_mm, 20, 1000) or kind.length_mm
    own_ml = _sound(vessel.reservoir_ml, 0.05, 5000)
    reservoir_mm = _sound(vessel.reservoir_length_mm, 1, 1000)
    if reservoir_mm is None and bore_mm is not None:
        reservoir_mm = (own_ml or kind.reservoir_ml) * 1000 / (math.pi / 4 * bore_mm**2)
    if reservoir_mm is not None and length_mm is not None:
        reservoir_mm = min(reservoir_mm, length_mm)
    temp_c, humidity_pct = air_of(place)
    if kind.tube and bore_mm is not None and reservoir_mm is not None:
        air_mm = (length_mm or 150.0) - reservoir_mm - INNER_COTTON_MM - OUTER_PLUG_MM
        way_mm = path_through_mm(max(SHORTEST_AIR_MM, air_mm), OUTER_PLUG_MM)
        days = reservoir_mm / tube_loss_mm_day(bore_mm, temp_c, humidity_pct, way_mm).best
        days = min(TUBE_DAYS[1], max(TUBE_DAYS[0], days))
    else:
        days = hydration_days(temp_c, humidity_pct).best
    entered = _sound(vessel.reservoir_length_mm, 1, 1000) is not None
    return WaterSizes(kind.tube, reservoir_mm, own_ml or kind.reservoir_ml, length_mm, 1 / days, entered)


def lengthened(sizes: WaterSizes, seen_mm: Iterable[float]) -> WaterSizes:
    """Return the sizes in the light of readings in mm, where the keeper never entered the length.

    No full reservoir is shorter than the longest reading. Where nothing but readings tells the length, two are
    needed: one alone says neither 'full' nor 'half'.
    """
    longest_mm = sizes.tube_mm or 1000.0
    sound = [mm for mm in seen_mm if 1 <= mm <= longest_mm]
    if sizes.entered or len(sound) < (1 if sizes.reservoir_mm is not None else 2):
        return sizes
    known_mm = sizes.reservoir_mm
    reservoir_mm = max(sound) if known_mm is None else max(known_mm, *sound)
    # a tube loses so many mm a day however long its reservoir is; a nest is watered every so many days
    shorter = known_mm / reservoir_mm if sizes.tube and known_mm is not None else 1.0
    return replace(
        sizes,
        reservoir_mm=reservoir_mm,
        usual_per_day=sizes.usual_per_day * shorter,
        guessed=known_mm is None,
    )


def air_of(place: Place) -> tuple[float, float]:
    """Return temperature and humidity around the vessel, held inside what the formulas cover."""
    given = [t for t in (place.day_temp_c, place.night_temp_c) if t is not None and math.isfinite(t)]
    temp_c = sum(given) / len(given) if given else USUAL_TEMP_C.get(place.place_type or "", ROOM_TEMP_C)
    humidity_pct = place.humidity_pct
    if humidity_pct is None or not math.isfinite(humidity_pct):
        humidity_pct = ROOM_HUMIDITY_PCT
    return min(50.0, max(0.0, temp_c)), min(MOISTEST_PCT, max(0.0, humidity_pct))


def _sound(value: float | None, low: float, high: float) -> float | None:
    return value if value is not None and low <= value <= high else None
