"""The JSON of a record's columns, written the quick way: millions of rows go through here."""

from __future__ import annotations

import json
from collections.abc import Mapping
from typing import Any

from .merge import Stamp

compact_json = json.JSONEncoder(ensure_ascii=False, separators=(",", ":")).encode


def before_text(before: Mapping[str, Any]) -> str:
    """Return the JSON of what stood there; of a new record nothing did, and the encoder would be the slower half."""
    if any(value is not None for value in before.values()):
        return compact_json(before)
    return "{" + ",".join([f'"{name}":null' for name in before]) + "}"


def stamps_text(stamps: Mapping[str, Stamp]) -> str:
    """Return the JSON of stamps: names of the registry, whole numbers and ids need no escaping."""
    texts = [
        f'"{name}":[{rev},{at_ms},"{device_id}"]' if device_id else f'"{name}":[{rev},{at_ms},null]'
        for name, (rev, at_ms, device_id) in stamps.items()
    ]
    return "{" + ",".join(texts) + "}"
