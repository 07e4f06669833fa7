"""What the app calls things, read from its English messages, so that a changed word breaks no test."""

from __future__ import annotations

from typing import Any

from broodshelf.languages import say


def text(message: str, **args: Any) -> str:
    """Return what a message says in English, by its id, as ``"saving-synced"``."""
    return say("en", message, args)
