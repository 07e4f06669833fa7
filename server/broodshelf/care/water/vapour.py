"""Water vapour: its pressure over water, and how fast it spreads through air."""

from __future__ import annotations

import math
from typing import Final

from ...model.quantities import within

COLDEST_C: Final = 0.0
WARMEST_C: Final = 50.0
"""Liquid water, where a nest can be. The pressure formula itself holds up to 374 °C."""
ATMOSPHERE_PA: Final = 101_325.0
ZERO_C_K: Final = 273.15

_CRITICAL_K: Final = 647.096
_CRITICAL_PA: Final = 22.064e6
_TERMS: Final = (
    (-7.85951783, 1.0),
    (1.84408259, 1.5),
    (-11.7866497, 3.0),
    (22.6807411, 3.5),
    (-15.9618719, 4.0),
    (1.80122502, 7.5),
)
_MASSMAN_M2_S: Final = 2.178e-5
_MASSMAN_EXPONENT: Final = 1.81


def saturation_pressure_pa(temp_c: float) -> float:
    """Return the pressure of vapour that is in balance with water, in Pa, for 0 to 50 °C.

    Wagner and Pruss 2002, J. Phys. Chem. Ref. Data 31:387, eq. 2.5: ``ln(p/pc) = Tc/T x sum(a_i x tau^n_i)`` with
    ``tau = 1 - T/Tc``. Coefficients second-hand, from public code; the tests hold them to two libraries.
    """
    kelvin = within("temp_c", temp_c, "°C", COLDEST_C, WARMEST_C) + ZERO_C_K
    tau = 1 - kelvin / _CRITICAL_K
    return _CRITICAL_PA * math.exp(_CRITICAL_K / kelvin * sum(a * tau**n for a, n in _TERMS))


def vapour_pressure_pa(temp_c: float, humidity_pct: float) -> float:
    """Return the pressure of the vapour in air of a relative humidity, in Pa."""
    return saturation_pressure_pa(temp_c) * within("humidity_pct", humidity_pct, "%", 0, 100) / 100


def deficit_pa(temp_c: float, humidity_pct: float) -> float:
    """Return how much vapour pressure the air lacks until it is full, in Pa: what drives drying."""
    return saturation_pressure_pa(temp_c) - vapour_pressure_pa(temp_c, humidity_pct)


def diffusivity_m2_s(temp_c: float, pressure_pa: float = ATMOSPHERE_PA) -> float:
    """Return how fast water vapour spreads through still air, in m²/s, for 0 to 50 °C and 50 to 110 kPa.

    Massman 1998, Atmos. Environ. 32:1111: ``2.178e-5 (T/273.15)^1.81`` at one atmosphere, 0 to 100 °C (second-hand,
    from public code), inversely with pressure. Published formulas differ by 3 to 4 %:
    no result built on this one can be surer than that.
    """
    kelvin = within("temp_c", temp_c, "°C", COLDEST_C, WARMEST_C) + ZERO_C_K
    within("pressure_pa", pressure_pa, "Pa", 50_000, 110_000)
    return _MASSMAN_M2_S * math.pow(kelvin / ZERO_C_K, _MASSMAN_EXPONENT) * ATMOSPHERE_PA / pressure_pa
