"""Saying a message, a code of the care core, or a serving. The same in ``pwa/words/``, by shared vectors."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any, Final

from .bundles import speaker
from .choosing import language_of
from .numbers import ISO_DAY, day, in_list, number

__all__ = ["in_list", "message_id", "say", "say_code", "say_portion"]

CODES: Final[Mapping[str, tuple[str, str | None]]] = {
    "need": ("need", None),
    "fault": ("fault", "inside"),
    "food": ("food", None),
    "brood_group": ("brood_source", None),
}
"""Arguments that are codes themselves: the section of their words, and the attribute."""
DAYS: Final = frozenset({"on", "early", "buy_by", "until", "low_on", "high_on"})
"""Arguments that are ISO days; in others such a text is a name that somebody gave."""
COUNTED: Final = frozenset({"piece", "seed", "leaf"})
"""Units in which the food itself is counted."""
SIZED: Final = frozenset({"piece", "leg", "slice"})


def message_id(section: str, code: str) -> str:
    """Return the id of the message for a code of a section: ``reason``, ``sugar_due`` → ``reason-sugar-due``."""
    return f"{section}-{code}".replace("_", "-")


def say(tag: str | None, message: str, args: Mapping[str, Any] | None = None) -> str:
    """Return a message in a language; ``need-sugar.inside`` is its attribute. Raises ``KeyError`` for an unknown one.

    Numbers are rounded as they are shown, days and lists are written in words, an argument that is missing shows as
    ``?``.
    """
    language = language_of(tag)
    name, _, attribute = message.partition(".")
    shown = {key: _shown(key, value, language) for key, value in (args or {}).items()}
    return speaker(language).say(name, shown, attribute or None)


def say_code(tag: str | None, section: str, code: str, args: Mapping[str, Any] | None = None) -> str:
    """Return the words for a code of a section; the code itself if there are none."""
    language, name = language_of(tag), message_id(section, code)
    if not knows(name):
        return code.replace("_", " ")
    return say(language, name, {key: _worded(key, value, language) for key, value in (args or {}).items()})


def knows(message: str) -> bool:
    """Whether there is such a message."""
    return speaker(language_of(None)).knows(message)


def say_portion(tag: str | None, portion: Mapping[str, Any]) -> str:
    """Return a portion in words, e.g. ``2 extra small crickets, killed and cut``."""
    amount, unit, food = portion.get("amount"), str(portion.get("unit")), str(portion.get("food_code"))
    if unit == "piece" and portion.get("form") == "piece":
        unit = "crumb"  # of what is no animal
    name = message_id("food", food)
    if knows(name):
        named = say(tag, f"{name}.{'counted' if unit in COUNTED else 'of'}", {"n": amount})
    else:
        named = food.replace("_", " ")
    args = {"n": amount, "food": named, "food_code": food}
    size = portion.get("size_class") if unit in SIZED else None
    if size:
        args |= {"size": say_code(tag, "size", size), "size_class": size}
    served = say(tag, f"portion-{unit}{'-sized' if size else ''}", args)
    form = message_id("form", str(portion.get("form")))
    return (
        say(tag, "portion-with-form", {"portion": served, "form": say(tag, form)}) if knows(form) else served
    )


def _shown(name: str, value: Any, language: str) -> Any:
    if isinstance(value, bool) or value is None:
        return str(value).lower()
    if isinstance(value, (int, float)):
        return number(value, language)
    if isinstance(value, str):
        return day(value, language) if name in DAYS and ISO_DAY.fullmatch(value) else value
    if isinstance(value, (list, tuple)):
        return in_list(map(str, value), language)
    in_language = getattr(value, "in_language", None)
    return str(value) if in_language is None else in_language(language)


def _worded(name: str, value: Any, language: str) -> Any:
    if name == "portion" and isinstance(value, Mapping):
        return say_portion(language, value)
    if not isinstance(value, str):
        return value
    if name == "source" and value == "common practice":
        return say(language, "source-common-practice")
    section, attribute = CODES.get(name, (None, None))
    found = None if section is None else message_id(section, value)
    if found is None or not knows(found):
        return value
    return say(language, f"{found}.{attribute}" if attribute else found)
