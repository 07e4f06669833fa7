"""What the phone's worker fetches ahead: many small scripts in one answer.

The page asks for the two files of its start at once, over a connection that is open (decisions 0004 and 0022). The
rest comes for a day without a connection, and nobody waits for it: in one body what many files say alike is said once,
and one answer has one head. The worker unpacks a parcel into its cache, so that each file is there at its own address.
"""

from __future__ import annotations

from collections.abc import Collection, Mapping
from typing import Final

CHARTS: Final = (
    "care/awaited.js",
    "care/place-climate.js",
    "care/time-line.js",
    "components/chart.js",
    "components/climate-chart.js",
    "components/picture.js",
    "components/place-file.js",
    "components/time-line.js",
    "screens/brood-line.js",
    "screens/brood.js",
    "screens/charts.js",
    "screens/place-chart.js",
)
LABELS: Final = (
    "vendor/qr/",
    "screens/labels.js",
    "screens/at.js",
    "signals/camera.js",
    "care/short-code.js",
)
COUNTING: Final = (
    "counting/",
    "screens/count-picture.js",
    "screens/dot-stage.js",
    "screens/growth.js",
    "screens/pictures.js",
    "screens/taking.js",
)
DECODER: Final = "vendor/qr/decode.js"
"""Reads labels for browsers that cannot by themselves; the others never fetch it."""
WAY_IN: Final = "screens/start.js"
"""The page of a phone that is new asks for it at once, with messages that it needs anyway."""
ONLINE: Final = (
    "components/sensors.js",
    "screens/doors.js",
    "screens/holiday.js",
    "screens/look.js",
    "screens/nudges-card.js",
    "screens/past.js",
    "screens/reckon.js",
    "signals/push.js",
    WAY_IN,
)
"""What works with a connection only, or is looked at once: fetched when it is opened."""
NOT_AHEAD: Final = (*ONLINE, "vendor/licences/", "vendor/vendor.json", "icons/tube-512.png", "worker/")
"""And what is for people who look at the server, for the installer of the system, or kept with the worker."""
SCREENS: Final = "parcels/screens.txt"
CHARTS_AND_LABELS: Final = "parcels/charts-and-labels.txt"
COUNTING_ON_PICTURES: Final = "parcels/counting.txt"
PARTED: Final = b"\0"
"""No script holds it."""


def make_parcels(bodies: Mapping[str, bytes], start: Collection[str]) -> dict[str, bytes]:
    """Return the parcels by name: of each script its name and its text, all parted by ``PARTED`` (as they are: JSON
    would escape every quotation mark).

    ``start``: what the page itself asks for.
    """
    parcels: dict[str, list[bytes]] = {SCREENS: [], CHARTS_AND_LABELS: [], COUNTING_ON_PICTURES: []}
    for name in sorted(set(bodies) - set(start)):
        if goes_in_a_parcel(name):
            parcels[_parcel_of(name)] += [name.encode(), bodies[name]]
    return {name: PARTED.join(parcel) for name, parcel in parcels.items()}


def _parcel_of(name: str) -> str:
    if name.startswith(COUNTING):
        return COUNTING_ON_PICTURES
    return CHARTS_AND_LABELS if name.startswith(CHARTS + LABELS) else SCREENS


def goes_in_a_parcel(name: str) -> bool:
    """Whether a file off the start path is fetched ahead with others."""
    return name.endswith((".js", ".mjs")) and name != DECODER and not name.startswith(NOT_AHEAD)
