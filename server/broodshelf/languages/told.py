"""A text that nobody has put into a language yet: its message's id, and what it says of."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Any

from .choosing import ENGLISH
from .saying import say


@dataclass(frozen=True, slots=True)
class Told:
    """A message with its arguments. As text it is English, for logs."""

    id: str
    args: Mapping[str, Any] = field(default_factory=dict)

    def in_language(self, tag: str) -> str:
        """Return the text in a language."""
        return say(tag, self.id, self.args)

    def __str__(self) -> str:
        return self.in_language(ENGLISH)


def told(message_id: str, **args: Any) -> Told:
    """Return a text by its message's id and its arguments, which may be such texts themselves."""
    return Told(message_id, args)


class Unfit(ValueError):  # noqa: N818 - named after what is wrong, like the errors of the server
    """A value that cannot be taken, with a text for the person who gave it. As text it is English, for logs."""

    def __init__(self, why: Told) -> None:
        super().__init__(str(why))
        self.told = why


def why_of(error: BaseException) -> Told | str:
    """Return what an error says for a person; what others raise comes as they say it."""
    found = getattr(error, "told", None)
    return found if isinstance(found, Told) else str(error)


def told_of(error: BaseException) -> Told:
    """Return what an error says for a person, as a text; what others raise comes as they say it, in English."""
    found = why_of(error)
    return found if isinstance(found, Told) else told("import-wrong", why=found)
