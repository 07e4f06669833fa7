"""How far north a household lives, as well as its time zone tells: the latitude of the zone's own place.

From ``zone.tab`` of the IANA time zone database. Good enough for the seasons; a household is asked for nothing.
"""

from __future__ import annotations

import re
from functools import cache
from importlib import resources

_LATITUDE = re.compile(r"([+-])(\d{2})(\d{2})")


def latitude_deg(zone: str) -> float | None:
    """Return the latitude in degrees north, or None for a zone without a place, such as UTC."""
    return _latitudes().get(zone)


@cache
def _latitudes() -> dict[str, float]:
    found = {}
    table = resources.files("tzdata").joinpath("zoneinfo/zone.tab").read_text("utf-8")
    for line in table.splitlines():
        if line.startswith("#"):
            continue
        _, coordinates, zone, *_ = line.split("\t")
        match = _LATITUDE.match(coordinates)
        if match is not None:
            degrees = int(match[2]) + int(match[3]) / 60
            found[zone] = -degrees if match[1] == "-" else degrees
    return found
