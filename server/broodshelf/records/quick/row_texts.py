"""The JSON of a record's columns: names of the registry, numbers and ids need no encoder.

``python -m tests.bench.sync_cost`` (the push of 1,000 logs) pays for it.
"""

from __future__ import annotations

import json
from collections.abc import Mapping

from ..merge import Stamp

compact_json = json.JSONEncoder(ensure_ascii=False, separators=(",", ":")).encode


def stamps_text(stamps: Mapping[str, Stamp]) -> str:
    """Return the JSON of stamps: names of the registry, whole numbers and ids need no escaping."""
    texts = [
        f'"{name}":[{rev},{at_ms},"{device_id}"]' if device_id else f'"{name}":[{rev},{at_ms},null]'
        for name, (rev, at_ms, device_id) in stamps.items()
    ]
    return "{" + ",".join(texts) + "}"
