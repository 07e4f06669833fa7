"""What is said: one message for all that one person should do in one round, and the few others there are. Pure.

How a message looks on a phone or in a mailbox is the affair of ``channels``. A message comes in the language of whom
it is for; ``language`` is a tag of theirs, with their units if they chose any; None where nobody said.
"""

from __future__ import annotations

import json
from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import Final

from ..languages import ENGLISH, in_list, language_of, say, say_code, say_portion
from ..languages.saying import knows, message_id
from ..model.kinds.plan import Portion, Suggested
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
    portion: Portion | None = None
    suggested: Suggested | None = None

    def as_json(self) -> str:
        """Return the item as it is kept in the database."""
        return json.dumps({name: getattr(self, name) for name in self.__slots__}, ensure_ascii=False)


@dataclass(frozen=True, slots=True)
class Message:
    """What to tell somebody: a headline, lines, where to go in the app, and what can be logged from there.

    ``tag``: a message replaces an earlier one with the same tag on the phone's screen. ``language``: of the text.
    """

    title: str
    lines: tuple[str, ...]
    url: str
    tag: str = "round"
    nudge_id: str | None = None
    items: tuple[Item, ...] = ()
    language: str = ENGLISH


def of_round(items: Sequence[Item], nudge_id: str, public_url: str, language: str | None = None) -> Message:
    """Return the message of a nudge: a line for each thing to do."""
    tag = language_of(language)
    lines = tuple(say(tag, "nudge-line", {"colony": i.colony, "what": _what(i, tag)}) for i in items)
    url = f"{public_url}/#/round?nudge={nudge_id}"
    return Message(title(items, tag), lines, url, nudge_id=nudge_id, items=tuple(items), language=tag)


def in_brief(message: Message) -> Message:
    """Return the shortest message that still brings somebody to the round."""
    tag = message.language
    return replace(
        message, title=say(tag, "nudge-short-title"), lines=(say(tag, "nudge-short-body"),), items=()
    )


def of_test(public_url: str, language: str | None = None) -> Message:
    """Return the message behind the test button."""
    tag = language_of(language)
    lines = (say(tag, "nudge-test-body"),)
    return Message(say(tag, "nudge-test-title"), lines, f"{public_url}/#/settings", language=tag)


def of_notice(notice: str, public_url: str, language: str | None = None) -> Message:
    """Return the message to the other keepers of what their journal says. ``notice``: JSON, ``{what, args}``."""
    told, tag = json.loads(notice), language_of(language)
    what, args = str(told["what"]), told["args"]
    return Message(
        clip(say_code(tag, "nudge", f"{what}_title", args), LONGEST_TITLE),
        (say_code(tag, "nudge", f"{what}_body", args),),
        f"{public_url}/#/settings",
        tag="house",
        language=tag,
    )


def of_code(code: str, public_url: str, language: str | None = None) -> Message:
    """Return the message that proves a mail address: its code."""
    tag = language_of(language)
    lines = (say(tag, "mail-code-body"),)
    return Message(
        say(tag, "mail-code-title", {"code": code}), lines, f"{public_url}/#/settings", language=tag
    )


def title(items: Sequence[Item], tag: str = ENGLISH) -> str:
    """Return the headline, e.g. ``Protein for Amber``, ``Protein for 2 colonies``, ``3 colonies: protein for 2, …``."""
    return clip(_headline(items, tag), LONGEST_TITLE)


def _headline(items: Sequence[Item], tag: str) -> str:
    first, colonies = items[0], {i.colony_id for i in items}
    about = list(dict.fromkeys(map(_about, items)))
    if len(items) == 1 and first.need in FOOD_NEEDS:
        return say(tag, "nudge-one-food", {"need": say_code(tag, "need", first.need), "colony": first.colony})
    if len(items) == 1:
        return say(tag, "nudge-one-todo", {"todo": _todo(first, tag), "colony": first.colony})
    if len(colonies) == 1:
        needs = in_list((_inside(each, tag) for each in about), tag)
        return say(tag, "nudge-one-colony", {"colony": first.colony, "needs": needs})
    if len(about) == 1:
        section, code = about[0]
        said, name = say_code(tag, section, code), "same-todo" if section == "fault" else "same-need"
        return say(tag, f"nudge-{name}", {"need": said, "todo": said, "n": len(items)})
    counted = (
        say(tag, "nudge-need-for", {"need": _inside(each, tag), "n": sum(_about(i) == each for i in items)})
        for each in about
    )
    return say(tag, "nudge-colonies", {"n": len(colonies), "needs": in_list(counted, tag)})


def clip(text: str, most: int) -> str:
    """Return the text in at most so many characters; a dot-dot-dot says that something is missing."""
    return text if len(text) <= most else f"{text[: most - 1].rstrip()}…"


def _what(item: Item, tag: str) -> str:
    if item.fault is not None:
        return say_code(tag, "reason", item.fault)
    return say_portion(tag, item.portion) if item.portion else _todo(item, tag)


def _todo(item: Item, tag: str) -> str:
    if item.fault is not None:
        return say_code(tag, "fault", item.fault)
    for section, code in (("todo", item.what), ("todo", item.need)):
        if code and knows(message_id(section, code)):
            return say_code(tag, section, code)
    return say_code(tag, "need", item.need)


def _about(item: Item) -> tuple[str, str]:
    """Return what an item is about in one word: the section of its words, and the code."""
    return ("need", item.need) if item.fault is None else ("fault", item.fault)


def _inside(about: tuple[str, str], tag: str) -> str:
    name = message_id(*about)
    return say(tag, f"{name}.inside") if knows(name) else say_code(tag, *about)
