"""Structured log lines: one JSON object a line. Never a token, a secret, a fragment or a push endpoint."""

from __future__ import annotations

import json
import logging
import sys
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
        return json.dumps(line, ensure_ascii=False, default=str)


def start_logging() -> None:
    """Send the project's log lines to standard error as JSON."""
    handler = logging.StreamHandler(sys.stderr)
    handler.setFormatter(_JsonLines())
    logger.handlers = [handler]
    logger.setLevel(logging.INFO)
    logger.propagate = False


def say(event: str, level: int = logging.INFO, **values: Any) -> None:
    """Log an event with its values."""
    logger.log(level, event, extra={"values": values})
