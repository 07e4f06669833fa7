"""What a message of a topic says: a number by itself, or one in JSON at the end of a path. Pure."""

from __future__ import annotations

import re
from typing import Any, Final

from ..records.json_text import read_json

LONGEST_BYTES: Final = 8_192
NUMBER: Final = re.compile(r"[+-]?\d{1,6}(?:[.,]\d{1,10})?")
AWAY: Final = frozenset({"", "offline", "unavailable", "unknown", "none", "null", "nan"})
"""Words, without regard to case, that say that there is no reading: what a last will says, and what hubs write."""


class SaidAway(Exception):  # noqa: N818 - a word of the sensor, nothing went wrong
    """The message says that the sensor is offline."""


def number_of(payload: bytes, path: str | None) -> float | None:
    """Return the number that a message holds; None where the path leads nowhere or to null.

    ``path``: names and places in lists with dots between (``climate.0.temperature``); empty for a message that is the
    number itself. Raises ``SaidAway`` for a word of ``AWAY``, ``ValueError`` in words for all else that is no number.
    """
    if len(payload) > LONGEST_BYTES:
        raise ValueError(f"more than {LONGEST_BYTES} bytes")
    text = payload.decode("utf-8", "strict").strip()
    if text.lower() in AWAY:
        raise SaidAway
    if not path:
        return _number(text)
    return _number(_at(read_json(payload), path))


def _at(value: Any, path: str) -> Any:
    for step in path.split("."):
        if isinstance(value, list):
            value = value[int(step)] if step.isdecimal() and int(step) < len(value) else None
        elif isinstance(value, dict):
            value = value.get(step)
        else:
            return None
    return value


def _number(value: Any) -> float | None:
    if value is None:
        return None
    if isinstance(value, str):
        if value.strip().lower() in AWAY:
            raise SaidAway
        if NUMBER.fullmatch(value.strip()):
            return float(value.strip().replace(",", "."))
    elif isinstance(value, (int, float)) and not isinstance(value, bool):
        return float(value)
    raise ValueError("it is not a number")
