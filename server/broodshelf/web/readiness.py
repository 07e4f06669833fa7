"""Whether requests should be sent to this process: it can work, and was not told to stop."""

from __future__ import annotations

import time
from threading import Lock
from typing import Final

from .. import migrations
from ..records.database import reading
from ..records.trouble import trouble_of

EVERY_S: Final = 0.5
WATCHED_S: Final = 15.0
"""Whoever asked so lately asks again and sends requests elsewhere then; longer than proxies let pass between."""


class Readiness:
    """What the last look found. Whoever asks while one is under way, or soon after it, hears that."""

    def __init__(self) -> None:
        self._looking = Lock()
        self._found = "ok"
        self._next_s = 0.0
        self._asked_s = float("-inf")
        self._stopping = False
        self._heard_s: float | None = None

    @property
    def stopping(self) -> bool:
        """Whether the process was told to stop."""
        return self._stopping

    def stop(self) -> None:
        """Say from now on that nothing should be sent here; safe in a signal handler."""
        self._stopping = True

    @property
    def heard_s(self) -> float | None:
        """When somebody first asked after that, by the monotonic clock; None while nobody has."""
        return self._heard_s

    @property
    def watched(self) -> bool:
        """Whether somebody asks now and again, and so will hear that we stop."""
        return time.monotonic() - self._asked_s < WATCHED_S

    def look(self) -> str:
        """Return ``ok``, or the code of what is wrong with the database. Needs an application context."""
        self._asked_s = now_s = time.monotonic()
        if self._stopping and self._heard_s is None:
            self._heard_s = now_s
        if now_s >= self._next_s and self._looking.acquire(blocking=False):
            try:
                self._found = _try()
                self._next_s = time.monotonic() + EVERY_S
            finally:
                self._looking.release()
        return self._found


def _try() -> str:
    try:
        with reading() as connection:
            where = migrations.stands(connection)
    except Exception as error:
        found = trouble_of(error)
        if found is None:
            raise
        return found.problem_code
    return "database_behind" if where == "behind" else "ok"
