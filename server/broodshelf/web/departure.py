"""Leaving without dropping anybody: a server that was told to stop answers what was sent to it, and then ends.

Whoever sends us requests first gets the time to see that we stop (``/readyz``); then nobody new is let in, connections
on which nothing comes are closed, and the process ends when the last request is answered, or after a while.
"""

from __future__ import annotations

import time
from collections.abc import Callable
from typing import Final

LINGER_S: Final = 3.0
"""For a proxy to see that we stop; deploy/Caddyfile.machines asks every second."""
HEARD_S: Final = 6.0
"""So long we wait for a proxy that has asked before to ask again, on a machine that is short of time."""
QUIET_S: Final = 1.0
"""A connection on which nothing has come for so long is closed; before that a request may be on the way."""
LONGEST_S: Final = 30.0
"""Service managers kill after 90 s (systemd) or are told to wait (compose.yaml); the nudger needs its time, too."""


class Departure:
    """When a server stops.

    ``watched``: whether anybody asks if requests may still be sent here; ``heard_s``: when somebody first heard that
    they may not, by the monotonic clock, None for not yet.
    """

    def __init__(
        self, watched: Callable[[], bool] = lambda: False, heard_s: Callable[[], float | None] = lambda: None
    ) -> None:
        self._watched, self._heard_s = watched, heard_s
        self._begun_s: float | None = None
        self._linger_s = 0.0

    @property
    def begun(self) -> bool:
        """Whether the server was told to stop."""
        return self._begun_s is not None

    def begin(self) -> None:
        """Tell the server to stop; safe in a signal handler, and a second time changes nothing."""
        if self._begun_s is None:
            self._linger_s = LINGER_S if self._watched() else 0.0
            self._begun_s = time.monotonic()

    def is_known(self, now_s: float) -> bool:
        """Say whether whoever sends us requests has heard that we stop, and has had the time to send no more."""
        if self._begun_s is None or now_s - self._begun_s < self._linger_s:
            return False
        heard_s = self._heard_s()
        has_heard = heard_s is not None and now_s - heard_s >= QUIET_S
        return has_heard or not self._linger_s or now_s - self._begun_s >= HEARD_S

    def is_over(self, now_s: float, *, connections: int) -> bool:
        """Say whether the server may end: nobody is left, or they had long enough."""
        late = self._begun_s is not None and now_s - self._begun_s > LONGEST_S
        return late or (self.is_known(now_s) and not connections)
