"""What a nudge says: one message for all that one person should do in one round. Pure.

The shape is docs/http-api.md, "What a nudge carries": a declarative push client reads the outer part, our own
service worker the inner one. Words come from the shared word table.
"""

from __future__ import annotations

import json
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any, Final

from ..care.catalogue import words
from ..care.wording import say, say_portion
from ..model.kinds.words import FOOD_NEEDS

MOST_BYTES: Final = 3000
"""Push services must take 4096 bytes encrypted (RFC 8030, section 7.2); vendors advise to stay at 3000 plain."""
LONGEST_TITLE: Final = 120
LONGEST_BODY: Final = 300
MOST_LINES: Final = 6


@dataclass(frozen=True, slots=True)
class Item:
    """One occurrence as the message tells it. ``portion`` and ``suggested`` as in a plan's task."""

    occurrence_id: str
    colony_id: str
    colony: str
    need: str
    task_key: str
    fault: str | None = None
    portion: Mapping[str, Any] | None = None
    suggested: Mapping[str, Any] | None = None

    def as_json(self) -> str:
        """Return the item as it is kept in the database."""
        return json.dumps({name: getattr(self, name) for name in self.__slots__}, ensure_ascii=False)


def compose(items: Sequence[Item], nudge_id: str, delivery_id: str, public_url: str) -> bytes:
    """Return the message as JSON of at most 3000 bytes.

    Of very many items the last are left out, and the text says how many: "done as suggested" only logs what
    the message named.
    """
    for kept in range(len(items), 0, -1):
        payload = _payload(
            title(items),
            body(items, min(kept, MOST_LINES)),
            f"{public_url}/#/round?nudge={nudge_id}",
            len(items),
            {"nudge_id": nudge_id, "delivery_id": delivery_id, "items": [_logged(i) for i in items[:kept]]},
        )
        if len(payload) <= MOST_BYTES:
            return payload
    return compose_short(nudge_id, delivery_id, public_url)


def compose_short(nudge_id: str, delivery_id: str, public_url: str) -> bytes:
    """Return the shortest message that still brings somebody to the round."""
    inner: dict[str, Any] = {"nudge_id": nudge_id, "delivery_id": delivery_id, "items": []}
    where = f"{public_url}/#/round?nudge={nudge_id}"
    return _payload(say("nudge", "short_title"), say("nudge", "short_body"), where, None, inner)


def compose_test(delivery_id: str, public_url: str) -> bytes:
    """Return the message behind the test button."""
    inner: dict[str, Any] = {"nudge_id": None, "delivery_id": delivery_id, "items": []}
    return _payload(
        say("nudge", "test_title"), say("nudge", "test_body"), f"{public_url}/#/settings", None, inner
    )


def compose_notice(notice: str, delivery_id: str, public_url: str) -> bytes:
    """Return the message to the other keepers of what their journal says. ``notice``: JSON, ``{what, args}``."""
    told = json.loads(notice)
    what, args = str(told["what"]), told["args"]
    inner: dict[str, Any] = {"nudge_id": None, "delivery_id": delivery_id, "items": []}
    return _payload(
        _clip(say("nudge", f"{what}_title", args), LONGEST_TITLE),
        _clip(say("nudge", f"{what}_body", args), LONGEST_BODY),
        f"{public_url}/#/settings",
        None,
        inner,
        tag="house",
    )


def compose_code(code: str, public_url: str) -> bytes:
    """Return the message that proves an e-mail address: its code."""
    inner: dict[str, Any] = {"nudge_id": None, "delivery_id": code, "items": []}
    return _payload(
        say("nudge", "code_title", {"code": code}),
        say("nudge", "code_body"),
        f"{public_url}/#/settings",
        None,
        inner,
    )


def title(items: Sequence[Item]) -> str:
    """Return the headline, e.g. ``Protein for Amber``, ``Protein for 2 colonies``, ``3 colonies: protein for 2, …``."""
    first = items[0]
    if len(items) == 1:
        if first.need in FOOD_NEEDS:
            text = say("nudge", "one_food", {"need": say("need", first.need), "colony": first.colony})
        else:
            text = say("nudge", "one_todo", {"todo": _capital(_todo(first)), "colony": first.colony})
        return _clip(text, LONGEST_TITLE)
    colonies = {i.colony_id for i in items}
    needs = list(dict.fromkeys(_short(i) for i in items))
    if len(colonies) == 1:
        text = say("nudge", "one_colony", {"colony": first.colony, "needs": ", ".join(needs)})
    elif len(needs) == 1:
        text = say("nudge", "same_need", {"need": _capital(needs[0]), "n": len(items)})
    else:
        counted = [
            say("nudge", "need_for", {"need": need, "n": sum(_short(i) == need for i in items)})
            for need in needs
        ]
        text = say("nudge", "colonies", {"n": len(colonies), "needs": ", ".join(counted)})
    return _clip(text, LONGEST_TITLE)


def body(items: Sequence[Item], shown: int) -> str:
    """Return one line an item, e.g. ``Amber: 1 fruit fly · Birch: See to the water``, and how many more."""
    lines = [say("nudge", "line", {"colony": i.colony, "what": _what(i)}) for i in items[:shown]]
    if len(items) > shown:
        lines.append(say("nudge", "more", {"n": len(items) - shown}))
    return _clip(" · ".join(lines), LONGEST_BODY)


def _payload(
    headline: str,
    text: str,
    navigate: str,
    badge: int | None,
    inner: Mapping[str, Any],
    tag: str = "round",
) -> bytes:
    message: dict[str, Any] = {
        "web_push": 8030,
        "notification": {
            "title": headline, "body": text, "navigate": navigate, "tag": tag, "data": {},
        },
        "broodshelf": inner,
    }  # fmt: skip
    if badge is not None:
        message["app_badge"] = badge
    return json.dumps(message, ensure_ascii=False, separators=(",", ":")).encode()


def _logged(item: Item) -> dict[str, Any]:
    return {
        "colony_id": item.colony_id,
        "need": item.need,
        "task_key": item.task_key,
        "occurrence_id": item.occurrence_id,
        "suggested": item.suggested,
    }


def _what(item: Item) -> str:
    if item.fault is not None:
        return say("reason", item.fault)
    return say_portion(item.portion) if item.portion else _todo(item)


def _todo(item: Item) -> str:
    if item.fault is not None:
        return say("fault", item.fault)
    own = item.task_key.split(":")[0]
    todo = say("todo", own if own in words()["todo"] else item.need)
    return todo if todo != item.need else say("need", item.need)


def _short(item: Item) -> str:
    return say("fault", item.fault) if item.fault is not None else say("need", item.need).lower()


def _capital(text: str) -> str:
    return text[:1].upper() + text[1:]


def _clip(text: str, most: int) -> str:
    return text if len(text) <= most else f"{text[: most - 1].rstrip()}…"
