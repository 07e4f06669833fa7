"""Which rules of the world's time zones this machine has: governments change them, and packages follow."""

from __future__ import annotations

import zlib
import zoneinfo
from importlib import resources
from pathlib import Path


def zones_mark() -> int:
    """Return a checksum of the rules of every zone as ``zoneinfo`` would read them; reads some 600 small files."""
    mark = 0
    for name in sorted(zoneinfo.available_timezones()):
        mark = zlib.crc32(_rules(name), zlib.crc32(name.encode(), mark))
    return mark


def _rules(name: str) -> bytes:
    for folder in zoneinfo.TZPATH:
        path = Path(folder) / name
        if path.is_file():
            return path.read_bytes()
    return resources.files("tzdata").joinpath("zoneinfo", *name.split("/")).read_bytes()
