"""Identities: UUIDv7 for what is made now, UUIDv5 and UUIDv8 for what follows from something else."""

from __future__ import annotations

import hashlib
import secrets
import uuid
from typing import Final

from ..model.gauges import DAY_MS

PLACE_AT: Final = 13
PLAN_SPACE = uuid.UUID("6f1d4a52-53a3-5c1c-9d0e-0b8a6f1d7a11")


def uuid7(now_ms: int) -> str:
    """Return a UUIDv7 (RFC 9562, section 5.7) whose first 48 bits are ``now_ms``."""
    random_bits = secrets.randbits(74)
    value = (
        (now_ms & (2**48 - 1)) << 80
        | 0x7 << 76
        | (random_bits >> 62) << 64
        | 0b10 << 62
        | random_bits & (2**62 - 1)
    )
    return str(uuid.UUID(int=value))


def made_ms_of(identity: str) -> int:
    """Return the 48 bits of a UUIDv7 that tell when it was made, in ms since 1970 UTC."""
    return uuid.UUID(identity).int >> 80


def plan_id(colony_id: str) -> str:
    """Return the id of the plan record of a colony: the same on every server."""
    return str(uuid.uuid5(PLAN_SPACE, colony_id))


def place_day_id(place_id: str, day: int) -> str:
    """Return the id of what was measured in a place on a day (counted from 1970-01-01): the same on every server.

    A UUIDv8 (RFC 9562, section 5.8) that begins with the day, as a UUIDv7 does with its instant: so the days of all
    places stand in their order, and those from some day on are one walk along an index.
    """
    return first_id_of(day) + place_end(place_id)


def first_id_of(day: int) -> str:
    """Return how the ids of a day begin: no id of it or of a later one is below that text."""
    digits = f"{day * DAY_MS:012x}"
    return f"{digits[:8]}-{digits[8:]}"


def place_end(place_id: str) -> str:
    """Return how the ids of a place's days end, from their ``PLACE_AT``-th character on."""
    digits = hashlib.sha256(place_id.encode()).hexdigest()
    variant = "89ab"[int(digits[3], 16) % 4]
    return f"-8{digits[:3]}-{variant}{digits[4:7]}-{digits[7:19]}"
