"""What a phone fetches: one file a language with all that the phone may say, each message on its own, no comments."""

from __future__ import annotations

from .bundles import entries_in
from .choosing import languages


def phones_file(tag: str) -> bytes:
    """Return the messages of a language, or of the pseudo-language, as one Fluent resource in UTF-8.

    What the language lacks is in it in English.
    """
    entries = entries_in(tag, for_phone=True)
    return "".join(f"{text}\n" for text in entries.values()).encode()


def phones_files() -> dict[str, bytes]:
    """Return the file of each language by the name that it is served under."""
    return {name_of(tag): phones_file(tag) for tag in languages()}


def name_of(tag: str) -> str:
    """Return the name of a language's file among those of a build."""
    return f"words/{tag}.ftl"
