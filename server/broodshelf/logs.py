"""Structured log lines: one JSON object a line. Never a token, a secret, a fragment or a push endpoint.

Of an error the lines say its class and where it arose, not its message: a database quotes the row that it refuses,
a parser the text that it could not read.
"""

from __future__ import annotations

import json
import logging
import sys
import traceback
from types import TracebackType
from typing import Any

logger = logging.getLogger("broodshelf")


class _JsonLines(logging.Formatter):
    def format(self, record: logging.LogRecord) -> str:
        line: dict[str, Any] = {
            "time": self.formatTime(record, "%Y-%m-%dT%H:%M:%S%z"),
            "level": record.levelname.lower(),
            "event": record.getMessage(),
            **getattr(record, "values", {}),
        }
        if record.exc_info:
            line["traceback"] = self.formatException(record.exc_info)
        return json.dumps(line, default=str)

    def formatException(  # noqa: N802 - the name that logging calls
        self,
        ei: tuple[type[BaseException], BaseException, TracebackType | None] | tuple[None, None, None],
    ) -> str:
        return told_without_words(ei[1]) if ei[1] is not None else ""


def told_without_words(error: BaseException) -> str:
    """Return the classes of an error and of what led to it, each with the places it came through, and no message."""
    told: list[str] = []
    seen: set[int] = set()
    each: BaseException | None = error
    while each is not None and id(each) not in seen:
        seen.add(id(each))
        places = traceback.extract_tb(each.__traceback__)
        told.append(f"{type(each).__module__}.{type(each).__qualname__}")
        told += [f"  {place.filename}:{place.lineno} {place.name}" for place in places]
        each = each.__cause__ or (None if each.__suppress_context__ else each.__context__)
    return "\n".join(told)


def start_logging() -> None:
    """Send log lines to standard error as JSON: all of the project, and what libraries warn of."""
    handler = logging.StreamHandler(sys.stderr)
    handler.setFormatter(_JsonLines())
    logger.handlers = [handler]
    logger.setLevel(logging.INFO)
    logger.propagate = False
    logging.getLogger().handlers = [handler]
    logging.getLogger().setLevel(logging.WARNING)


def say(event: str, level: int = logging.INFO, **values: Any) -> None:
    """Log an event with its values."""
    logger.log(level, event, extra={"values": values})


def say_failure(event: str, error: BaseException, **values: Any) -> None:
    """Log what failed without the content that it failed on."""
    logger.error(event, extra={"values": values}, exc_info=error)
