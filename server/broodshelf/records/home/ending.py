"""Noting what is being ended, and asking whether something was: from anywhere, over the transaction at hand."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Final

from flask import Flask, current_app
from sqlalchemy import Connection

from ..ended import Revocation, What, still_ended, undoing
from .port import Endings

_BOOK: Final = "broodshelf.ended"


def keep_book(app: Flask, book: Endings) -> None:
    """Let ``note_ended`` write there."""
    app.extensions[_BOOK] = book


def note_ended(
    connection: Connection, what: What, household_id: str, ended_ids: Iterable[str], at_ms: int
) -> None:
    """Note what this transaction ends; nothing is noted by an app that keeps no book. Call it before the end."""
    book: Endings | None = current_app.extensions.get(_BOOK)
    if book is not None:
        entries = [Revocation(what, household_id, i, at_ms) for i in ended_ids]
        book.note(connection, [_after_all_noted(book, connection, entry) for entry in entries])


def _after_all_noted(book: Endings, connection: Connection, entry: Revocation) -> Revocation:
    """Return an entry later than those that it undoes, also where the clock was set back in between."""
    pair = undoing(entry.what)
    before = book.of_one(connection, entry.household_id, entry.id) if pair else ()
    return entry._replace(at_ms=max([entry.at_ms, *(e.at_ms + 1 for e in before if e.what in pair)]))


def ended_ms(connection: Connection, what: What, household_id: str, ended_id: str) -> int | None:
    """Return when this was ended, or None; a person who came back has not ended."""
    book: Endings | None = current_app.extensions.get(_BOOK)
    noted = book.of_one(connection, household_id, ended_id) if book is not None else ()
    return max((e.at_ms for e in still_ended(what, noted)), default=None)
