"""What the server makes of a place's sensors for phones: one record a day and place."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

from .forms import DayText, Number, Ref, WholeNumber

Degrees = Annotated[float, Number(-40, 70, "°C")]
Percent = Annotated[float, Number(0, 100, "%")]


@dataclass(slots=True, kw_only=True)
class PlaceDay:
    """What was measured in a place on a day of the household's zone: mean, least and most, of ``hours`` hours.

    ``day_c`` and ``night_c``: means of the two halves of the day, null where too few hours of that half were measured.
    """

    place_id: Annotated[str, Ref("place")]
    on: DayText
    hours: Annotated[int, WholeNumber(0, 25, "h")]
    mean_c: Degrees | None = None
    low_c: Degrees | None = None
    high_c: Degrees | None = None
    day_c: Degrees | None = None
    night_c: Degrees | None = None
    humidity_pct: Percent | None = None
    humidity_low_pct: Percent | None = None
    humidity_high_pct: Percent | None = None
