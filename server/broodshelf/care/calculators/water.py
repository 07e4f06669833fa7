"""How long the water of a test tube lasts."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any, Final

from ...model.quantities import within
from ..water.evaporation import path_through_mm, tube_loss_mm_day, tube_water_days
from ..water.vessel_sizes import INNER_COTTON_MM, OUTER_PLUG_MM, SHORTEST_AIR_MM
from .model import Calculator, Input, Line, spread


def _tube_water(given: Mapping[str, Any]) -> tuple[Line, ...]:
    bore_mm = given["bore_mm"]
    reservoir_mm = within("reservoir_mm", given["reservoir_mm"], "mm", 1, given["length_mm"])
    air_mm = given["length_mm"] - reservoir_mm - INNER_COTTON_MM - OUTER_PLUG_MM
    path_mm = path_through_mm(max(SHORTEST_AIR_MM, air_mm), OUTER_PLUG_MM)
    days = tube_water_days(bore_mm, reservoir_mm, given["temp_c"], given["humidity_pct"], path_mm)
    loss = tube_loss_mm_day(bore_mm, given["temp_c"], given["humidity_pct"], path_mm)
    return Line("water_days", spread(days)), Line("water_loss", spread(loss, 2))


TUBE_WATER: Final = Calculator(
    "tube_water",
    (
        Input("bore_mm", "mm", 14.0, 3, 200),
        Input("length_mm", "mm", 150.0, 20, 1000),
        Input("reservoir_mm", "mm", 50.0, 1, 1000),
        Input("temp_c", "°C", 24.0, 0, 50),
        Input("humidity_pct", "%", 50.0, 0, 99),
    ),
    _tube_water,
)
