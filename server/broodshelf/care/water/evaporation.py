"""Evaporation from a test tube: water creeps as vapour from wet cotton through still air to the room.

The cotton that holds the water back stays wet and stays where it is, so the way to the room does not grow as the
reservoir empties, and where the cotton fills the bore, the bore cancels out of mm a day.
"""

from __future__ import annotations

import math
from typing import Final

from ...model.quantities import Estimate, within
from .vapour import (
    ATMOSPHERE_PA,
    ZERO_C_K,
    deficit_pa,
    diffusivity_m2_s,
    saturation_pressure_pa,
    vapour_pressure_pa,
)

GAS_J_MOL_K: Final = 8.314462618
"""Molar gas constant, CODATA 2018 (exact)."""
WATER_G_MOL: Final = 18.015
WATER_MG_MM3: Final = 0.998
"""Density of water; 0.9992 at 15 °C and 0.9956 at 30 °C (IAPWS-95), so within 0.3 % there."""
DAY_S: Final = 86_400

COTTON_PATH: Final = 1.2
"""One mm of loose cotton holds vapour up like so many mm of air: about nine tenths of it is air, and the way winds
a little (common practice; no published figure was found)."""
IN_USE: Final = Estimate(1.1, 2.0, 3.6)
"""How many times faster a tube in use loses water than still air explains: wet walls, loose plugs, draughts, opening,
drinking. Chosen so that a 16 x 150 mm tube at 24 °C and 50 % lasts the 60 to 120 days, usually 90, that keepers
know (common practice, no source); low and high are meant as 80 %."""
DRINK_PER_DAY: Final = 0.1
"""Water that workers take for good, as a share of their fresh mass a day (common practice, no source)."""


def stefan_flux_mol_m2_s(
    far_share: float,
    surface_share: float,
    diffusivity_m2s: float,
    path_m: float,
    temp_c: float,
    pressure_pa: float = ATMOSPHERE_PA,
) -> float:
    """Return the flux of a vapour through still gas, in mol/m²/s, between two mole fractions (0 to below 1).

    Stefan's tube, e.g. Bird, Stewart and Lightfoot, Transport Phenomena:
    ``N = (p D)/(R T z) x ln((1 - far)/(1 - surface))``. Negative if the far end is the moister one.
    """
    within("surface_share", surface_share, "", 0, 0.999)
    within("far_share", far_share, "", 0, 0.999)
    within("path_m", path_m, "m", 1e-4, 10)
    within("diffusivity_m2s", diffusivity_m2s, "m²/s", 1e-7, 1e-3)
    kelvin = within("temp_c", temp_c, "°C", -50, 150) + ZERO_C_K
    molar = pressure_pa / (GAS_J_MOL_K * kelvin)
    return molar * diffusivity_m2s / path_m * math.log((1 - far_share) / (1 - surface_share))


def path_through_mm(air_mm: float, plug_mm: float) -> float:
    """Return the way through air and a cotton plug, in mm of air that would hold vapour up as much."""
    return within("air_mm", air_mm, "mm", 0, 1000) + within("plug_mm", plug_mm, "mm", 0, 200) * COTTON_PATH


def evaporation_mg_mm2_day(temp_c: float, humidity_pct: float, path_mm: float) -> float:
    """Return what still air carries from a wet surface to a room, in mg per mm² and day (= kg per m² and day).

    0 to 50 °C, 0 to 100 % relative humidity, a way of 1 to 1000 mm, at one atmosphere. Nothing but diffusion.
    """
    within("path_mm", path_mm, "mm", 1, 1000)
    surface = saturation_pressure_pa(temp_c) / ATMOSPHERE_PA
    room = vapour_pressure_pa(temp_c, humidity_pct) / ATMOSPHERE_PA
    flux = stefan_flux_mol_m2_s(room, surface, diffusivity_m2_s(temp_c), path_mm / 1000, temp_c)
    return flux * WATER_G_MOL * DAY_S / 1000


def tube_loss_mm_day(
    bore_mm: float, temp_c: float, humidity_pct: float, path_mm: float, colony_mg: float = 0.0
) -> Estimate:
    """Return how many mm of reservoir a tube in use loses a day: diffusion x ``IN_USE``, and what workers drink.

    ``bore_mm`` is the inner diameter (3 to 200), ``path_mm`` the way from wet cotton to the room
    (``path_through_mm``), ``colony_mg`` the fresh mass of all workers (0: as in the tubes behind ``IN_USE``).
    """
    area_mm2 = math.pi / 4 * within("bore_mm", bore_mm, "mm", 3, 200) ** 2
    still = evaporation_mg_mm2_day(temp_c, humidity_pct, path_mm) / WATER_MG_MM3
    drunk = within("colony_mg", colony_mg, "mg", 0, 1e6) * DRINK_PER_DAY / (area_mm2 * WATER_MG_MM3)
    return IN_USE.times(still).plus(Estimate.exactly(drunk))


def tube_water_days(
    bore_mm: float,
    reservoir_mm: float,
    temp_c: float,
    humidity_pct: float,
    path_mm: float,
    colony_mg: float = 0.0,
) -> Estimate:
    """Return how many days a full reservoir of this length lasts in a tube in use, before any reading.

    Humidity 0 to 99 %: in air that is full of vapour nothing dries, and the answer would be 'for ever'.
    """
    within("reservoir_mm", reservoir_mm, "mm", 1, 1000)
    within("humidity_pct", humidity_pct, "%", 0, 99)
    loss = tube_loss_mm_day(bore_mm, temp_c, humidity_pct, path_mm, colony_mg)
    return Estimate(reservoir_mm / loss.high, reservoir_mm / loss.best, reservoir_mm / loss.low)


def drying(temp_c: float, humidity_pct: float) -> float:
    """Return how fast the air dries a nest compared with 24 °C and 50 %: the ratio of what the air lacks."""
    return deficit_pa(temp_c, humidity_pct) / deficit_pa(24.0, 50.0)
