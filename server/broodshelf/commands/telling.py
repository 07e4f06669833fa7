"""What a command cannot do is told in a sentence, not in lines of code."""

from __future__ import annotations

import sqlite3
import sys
from collections.abc import Callable
from typing import Final

from sqlalchemy.exc import SQLAlchemyError

from ..errors import BroodshelfError
from ..languages import Told, told
from ..records.trouble import trouble_of

CANNOT: Final = 2
"""The exit status of a command that has said why it cannot do its work; to try again is no use."""


def telling_why_not(tag: str, command: Callable[[], int]) -> int:
    """Run a command and return its exit status; where it cannot do its work, say why and return ``CANNOT``."""
    try:
        return command()
    except BroodshelfError as error:
        why = error.told
    except (SQLAlchemyError, sqlite3.Error, OSError) as error:
        why = _said_plainly(error)
    print(f"broodshelf: {why.in_language(tag)}", file=sys.stderr)
    return CANNOT


def _said_plainly(error: Exception) -> Told:
    """Return a sentence for what a database or a disk cannot do."""
    trouble = trouble_of(error)
    if trouble is not None and trouble.problem_code == "database_damaged":
        return told("database-damaged")
    if trouble is not None:
        return trouble.told
    if isinstance(error, OSError):
        name = error.strerror or type(error).__name__
        where = error.filename
        return (
            told("system-error", error=name, path=where)
            if where
            else told("system-error-somewhere", error=name)
        )
    return told("database-unusable", error=type(error).__name__)
