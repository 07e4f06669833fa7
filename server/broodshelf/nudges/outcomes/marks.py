"""Marking together: what all lanes of a process have brought to an end is written in one commit a second.

A commit for each message, or for each lane, would take longer than the sending; with forty lanes at a slow push
service they would mostly wait for their turn to write (``python -m tests.bench.burst``).
"""

from __future__ import annotations

import time
from collections import deque
from threading import Lock
from typing import Final

from ...records.database import writing
from ..channels.outcome import Outcome, Sent
from ..claimed import Claimed
from .marking import mark, mark_sent

MARK_EVERY_S: Final = 1.0


class Marks:
    """Outcomes that wait to be written, of one process. Safe to use from several threads."""

    def __init__(self, owner: str) -> None:
        self._owner = owner
        self._waiting: deque[tuple[Claimed, Outcome, int]] = deque()
        self._writing = Lock()
        self._written_at = time.monotonic()

    def add(self, message: Claimed, outcome: Outcome, at_ms: int) -> None:
        """Note what came of a message; write down all that waits if nobody did for a second or does so now."""
        self._waiting.append((message, outcome, at_ms))
        if time.monotonic() - self._written_at > MARK_EVERY_S and self._writing.acquire(blocking=False):
            try:
                self._write()
            finally:
                self._writing.release()

    def write(self) -> None:
        """Write down all that waits; what another thread is writing is written, too, when this returns."""
        with self._writing:
            self._write()

    def _write(self) -> None:
        self._written_at = time.monotonic()
        done = [self._waiting.popleft() for _ in range(len(self._waiting))]
        if not done:
            return
        with writing() as connection:
            mark_sent(
                connection,
                [(m, at_ms) for m, outcome, at_ms in done if isinstance(outcome, Sent)],
                self._owner,
            )
            for message, outcome, at_ms in done:
                if not isinstance(outcome, Sent):
                    mark(connection, message, self._owner, outcome, at_ms)
