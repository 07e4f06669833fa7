"""Exceptions that the app caught and only wrote down."""

from __future__ import annotations

import logging
from collections.abc import Iterator
from contextlib import contextmanager


class Swallowed(logging.Handler):
    """Exceptions that the app caught and only wrote down: a plan that failed, an operation, a tick."""

    def __init__(self) -> None:
        super().__init__(logging.ERROR)
        self.found: list[str] = []

    def emit(self, record: logging.LogRecord) -> None:
        if record.exc_info and record.exc_info[1] is not None:
            self.found.append(f"{record.getMessage()}: {record.exc_info[1]!r}")

    @contextmanager
    def listening(self) -> Iterator[None]:
        """Hear what is logged, and keep it from the screen."""
        logger = logging.getLogger("broodshelf")
        handlers, spreads, level = list(logger.handlers), logger.propagate, logging.root.manager.disable
        logging.disable(logging.NOTSET)
        logger.handlers, logger.propagate = [self], False
        self.found.clear()
        try:
            yield
        finally:
            logger.handlers, logger.propagate = handlers, spreads
            logging.disable(level)

    def check(self, told: str) -> None:
        """Raise for what was swallowed since the last look."""
        found, self.found = self.found, []
        assert not found, f"swallowed by {told}: {found[0][:600]}"
