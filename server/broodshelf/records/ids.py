"""Identities: UUIDv7 for what is made now, UUIDv5 for what follows from something else."""

from __future__ import annotations

import secrets
import uuid

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
