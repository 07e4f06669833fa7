"""What the app calls things, read from its English messages, so that a changed word breaks no test."""

from __future__ import annotations

import re
from typing import Any, Final

from broodshelf.languages import say
from broodshelf.languages.entries import SOURCE, entries_of

_OPEN: Final = "\ue000"
"""Stands for an argument that is not given: no text of ours has a character of private use."""
_PARAMETER: Final = re.compile(r"\$([a-zA-Z][\w-]*)")


def text(message: str, **args: Any) -> str:
    """Return what a message says in English, by its id, as ``"saving-synced"``."""
    return say("en", message, args)


def beginning(message: str, **args: Any) -> str:
    """Return what a message says before the first of its arguments that is not given here."""
    return _with_gaps(message, args).partition(_OPEN)[0].rstrip()


def like(message: str, **args: Any) -> re.Pattern[str]:
    """Return what finds a message whatever those of its arguments say that are not given here.

    A number among them may be one or many. A code takes the usual choice: give it where it can be another.
    """
    return _finding(_with_gaps(message, args), _with_gaps(message, args, 1))


def any_of(*sought: str | re.Pattern[str]) -> re.Pattern[str]:
    """Return what finds one of these or more: texts, or what ``like`` returned."""
    patterns = (each if isinstance(each, re.Pattern) else _finding(each) for each in sought)
    return re.compile("|".join(each.pattern for each in patterns), re.IGNORECASE)


def labelled(label: str, value: str, second: str | None = None) -> str:
    """Return a label and what it is a label of, and what is said of that besides."""
    if second is None:
        return text("part-labelled", label=label, value=value)
    return text("part-labelled-twice", label=label, first=value, second=second)


def capital(words: str) -> str:
    """Return words as they stand at the beginning of a line."""
    return words[:1].upper() + words[1:]


def drops_of_sugar_water(count: int) -> str:
    """Return the serving that a small colony gets first, as the round says it."""
    return text("portion-drop", n=count, food=text("food-sugar-water.of"))


def first_count() -> str:
    """Return what the diary says of the count that a new colony begins with."""
    seen = (text("event-workers-roughly", amount="few"), text("event-counted-larvae", amount="some"))
    return text("event-counted", seen=", ".join(seen))


def _with_gaps(message: str, args: dict[str, Any], gap: str | int = _OPEN) -> str:
    asked = _PARAMETER.findall(entries_of(SOURCE)[message.partition(".")[0]])
    return text(message, **{**dict.fromkeys(asked, gap), **args})


def _finding(*texts: str) -> re.Pattern[str]:
    """Return what finds a text in large or small letters, with any spaces, and with anything in its gaps."""
    written = (re.escape(" ".join(each.split())) for each in texts)
    return re.compile("|".join(written).replace(r"\ ", r"\s+").replace(_OPEN, ".+"), re.IGNORECASE)
