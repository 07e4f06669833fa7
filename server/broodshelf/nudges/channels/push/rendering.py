"""How a message looks on the way to a phone: JSON of at most 3000 bytes. Pure.

The shape is docs/http-api.md, "What a nudge carries": a declarative push client reads the outer part, our own
service worker the inner one.
"""

from __future__ import annotations

import json
from typing import Any, Final

from ....languages import say
from ....languages.tags import read_tag
from ...messages import Item, Message, clip, in_brief

MOST_BYTES: Final = 3000
"""Push services must take 4096 bytes encrypted (RFC 8030, section 7.2); vendors advise to stay at 3000 plain."""
LONGEST_BODY: Final = 300
MOST_LINES: Final = 6


def render(message: Message, delivery_id: str) -> bytes:
    """Return the message as JSON of at most 3000 bytes.

    Of very many items the last are left out, and the text says how many: "done as suggested" only logs what
    the message named.
    """
    for kept in range(len(message.items), 0, -1):
        payload = _payload(message, delivery_id, kept)
        if len(payload) <= MOST_BYTES:
            return payload
    return _payload(in_brief(message) if message.items else message, delivery_id, 0)


def _payload(message: Message, delivery_id: str, kept: int) -> bytes:
    told: dict[str, Any] = {
        "web_push": 8030,
        "notification": {
            "title": message.title,
            "body": _body(message, min(kept, MOST_LINES) or MOST_LINES),
            "navigate": message.url,
            "tag": message.tag,
            "lang": read_tag(message.language).language,
            "data": {},
        },
        "broodshelf": {
            "nudge_id": message.nudge_id,
            "delivery_id": delivery_id,
            "items": [_logged(item) for item in message.items[:kept]],
        },
    }
    if message.items:
        told["app_badge"] = len(message.items)
    return json.dumps(told, ensure_ascii=False, separators=(",", ":")).encode()


def _body(message: Message, shown: int) -> str:
    """Return the lines in one, e.g. ``Amber: 1 fruit fly · Birch: See to the water``, and how many more."""
    lines = list(message.lines[:shown])
    if len(message.lines) > shown:
        lines.append(say(message.language, "nudge-more", {"n": len(message.lines) - shown}))
    return clip(" · ".join(lines), LONGEST_BODY)


def _logged(item: Item) -> dict[str, Any]:
    return {
        "colony_id": item.colony_id,
        "need": item.need,
        "task_key": item.task_key,
        "occurrence_id": item.occurrence_id,
        "suggested": item.suggested,
    }
