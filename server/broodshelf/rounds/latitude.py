"""How far north a household lives, as well as its time zone tells: the latitude of the zone's own place.

From ``zone.tab`` of the IANA time zone database, and for older names, which browsers still say, from the links in its
``tzdata.zi``. Good enough for the seasons; a household is asked for nothing.
"""

from __future__ import annotations

import re
from functools import cache
from importlib import resources
from typing import Final

_PLACE_OF: Final = {
    "Africa/Asmera": "Africa/Asmara",
    "Africa/Timbuktu": "Africa/Bamako",
    "America/Coral_Harbour": "America/Atikokan",
    "Iceland": "Atlantic/Reykjavik",
    "Pacific/Ponape": "Pacific/Pohnpei",
    "Pacific/Truk": "Pacific/Chuuk",
    "Pacific/Yap": "Pacific/Chuuk",
}
"""Older names whose link leads to another place with the same clock: the comments in ``backward`` of that database."""
_LATITUDE = re.compile(r"([+-])(\d{2})(\d{2})")


def latitude_deg(zone: str) -> float | None:
    """Return the latitude in degrees north, or None for a zone without a place, such as UTC."""
    return _latitudes().get(zone)


@cache
def _latitudes() -> dict[str, float]:
    found = {}
    for line in _lines("zone.tab"):
        if line.startswith("#"):
            continue
        _, coordinates, zone, *_ = line.split("\t")
        match = _LATITUDE.match(coordinates)
        if match is not None:
            degrees = int(match[2]) + int(match[3]) / 60
            found[zone] = -degrees if match[1] == "-" else degrees
    links = (line.split() for line in _lines("tzdata.zi") if line.startswith("L "))
    for _, target, name in links:
        place = _PLACE_OF.get(name, target)
        if name not in found and place in found:
            found[name] = found[place]
    return found


def _lines(name: str) -> list[str]:
    return resources.files("tzdata").joinpath("zoneinfo", name).read_text("utf-8").splitlines()
