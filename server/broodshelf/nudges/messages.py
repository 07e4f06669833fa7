"""What is said: one message for all that one person should do in one round, and the few others there are. Pure.

How a message looks on a phone or in a mailbox is the affair of ``channels``. Words come from the shared word table.
"""

from __future__ import annotations

import json
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Any, Final

from ..care.catalogue import words
from ..care.wording import say, say_portion
from ..model.needs import FOOD_NEEDS

LONGEST_TITLE: Final = 120


@dataclass(frozen=True, slots=True)
class Item:
    """One occurrence as the message tells it. ``portion`` and ``suggested`` as in a plan's task."""

    occurrence_id: str
    colony_id: str
    colony: str
    need: str
    task_key: str
    what: str = ""
    fault: str | None = None
    portion: Mapping[str, Any] | None = None
    suggested: Mapping[str, Any] | None = None

    def as_json(self) -> str:
        """Return the item as it is kept in the database."""
        return json.dumps({name: getattr(self, name) for name in self.__slots__}, ensure_ascii=False)


@dataclass(frozen=True, slots=True)
class Message:
    """What to tell somebody: a headline, lines, where to go in the app, and what can be logged from there.

    ``tag``: a message replaces an earlier one with the same tag on the phone's screen.
    """

    title: str
    lines: tuple[str, ...]
    url: str
    tag: str = "round"
    nudge_id: str | None = None
    items: tuple[Item, ...] = ()


def of_round(items: Sequence[Item], nudge_id: str, public_url: str) -> Message:
    """Return the message of a nudge: a line for each thing to do."""
    lines = tuple(say("nudge", "line", {"colony": i.colony, "what": _what(i)}) for i in items)
    return Message(
        title(items), lines, f"{public_url}/#/round?nudge={nudge_id}", nudge_id=nudge_id, items=tuple(items)
    )


def in_brief(message: Message) -> Message:
    """Return the shortest message that still brings somebody to the round."""
    return replace(message, title=say("nudge", "short_title"), lines=(say("nudge", "short_body"),), items=())


def of_test(public_url: str) -> Message:
    """Return the message behind the test button."""
    return Message(say("nudge", "test_title"), (say("nudge", "test_body"),), f"{public_url}/#/settings")


def of_notice(notice: str, public_url: str) -> Message:
    """Return the message to the other keepers of what their journal says. ``notice``: JSON, ``{what, args}``."""
    told = json.loads(notice)
    what, args = str(told["what"]), told["args"]
    return Message(
        clip(say("nudge", f"{what}_title", args), LONGEST_TITLE),
        (say("nudge", f"{what}_body", args),),
        f"{public_url}/#/settings",
        tag="house",
    )


def of_code(code: str, public_url: str) -> Message:
    """Return the message that proves a mail address: its code."""
    return Message(
        say("nudge", "code_title", {"code": code}), (say("nudge", "code_body"),), f"{public_url}/#/settings"
    )


def title(items: Sequence[Item]) -> str:
    """Return the headline, e.g. ``Protein for Amber``, ``Protein for 2 colonies``, ``3 colonies: protein for 2, …``."""
    first = items[0]
    if len(items) == 1:
        if first.need in FOOD_NEEDS:
            text = say("nudge", "one_food", {"need": say("need", first.need), "colony": first.colony})
        else:
            text = say("nudge", "one_todo", {"todo": _capital(_todo(first)), "colony": first.colony})
        return clip(text, LONGEST_TITLE)
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
    return clip(text, LONGEST_TITLE)


def clip(text: str, most: int) -> str:
    """Return the text in at most so many characters; a dot-dot-dot says that something is missing."""
    return text if len(text) <= most else f"{text[: most - 1].rstrip()}…"


def _what(item: Item) -> str:
    if item.fault is not None:
        return say("reason", item.fault)
    return say_portion(item.portion) if item.portion else _todo(item)


def _todo(item: Item) -> str:
    if item.fault is not None:
        return say("fault", item.fault)
    todo = say("todo", item.what if item.what in words()["todo"] else item.need)
    return todo if todo != item.need else say("need", item.need)


def _short(item: Item) -> str:
    return say("fault", item.fault) if item.fault is not None else say("need", item.need).lower()


def _capital(text: str) -> str:
    return text[:1].upper() + text[1:]
