"""How long the sun is up: the CBM model of Forsythe et al. 1995, Ecol. Modelling 80:87-95.

Its error is stated there as under a minute up to 40 degrees and a few minutes up to 60 (from memory).
"""

from __future__ import annotations

import datetime as dt
import math
from typing import Final

from ...model.quantities import within

HORIZON_DEG: Final = 0.8333
"""The sun's centre is so far under the horizon when its upper edge touches it (US government definition)."""
SOLSTICES: Final = {1: (12, 21), -1: (6, 21)}
"""Month and day of the shortest day, north and south of the equator."""


def day_length_hours(latitude_deg: float, day: dt.date) -> float:
    """Return the hours from sunrise to sunset; 0 in polar night, 24 under the midnight sun.

    ``latitude_deg``: -90..90, north positive; outside raises ``OutOfRange``. With J the day of the year:
    theta = 0.2163108 + 2 atan(0.9671396 tan(0.00860 (J - 186))), declination = asin(0.39795 cos theta), and
    D = 24 - 24/pi acos((sin p + sin lat sin decl) / (cos lat cos decl)) with p the horizon.
    Example: Sydney, 33.86 degrees south, 21 December: 14.41 h (Sydney Observatory: 14 h 25 min).
    """
    latitude = math.radians(within("latitude_deg", latitude_deg, "°", -90, 90))
    theta = 0.2163108 + 2 * math.atan(0.9671396 * math.tan(0.00860 * (day.timetuple().tm_yday - 186)))
    declination = math.asin(0.39795 * math.cos(theta))
    up = math.sin(math.radians(HORIZON_DEG)) + math.sin(latitude) * math.sin(declination)
    across = max(1e-12, math.cos(latitude) * math.cos(declination))
    return 24 - 24 / math.pi * math.acos(max(-1.0, min(1.0, up / across)))


def shortest_day_near(day: dt.date, latitude_sign: int) -> dt.date:
    """Return the shortest day of the hemisphere (sign 1: north, -1: south) that is nearest to ``day``."""
    month, dom = SOLSTICES[1 if latitude_sign >= 0 else -1]
    around = (dt.date(year, month, dom) for year in (day.year - 1, day.year, day.year + 1))
    return min(around, key=lambda solstice: abs((solstice - day).days))
