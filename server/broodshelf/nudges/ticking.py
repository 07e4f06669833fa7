"""The beat of the nudger: a call every few seconds, by a clock that nobody can set, and a watch over it.

The wall clock is asked for what is due and for nothing else: set back, it would hold up a schedule that is kept by
it for as long as it was set back.
"""

from __future__ import annotations

import logging
import sys
import threading
import time
import traceback
from collections.abc import Callable
from typing import Final

from ..logs import say, say_failure
from ..supervision import ALIVE, tell_manager

TICK_S: Final = 5.0
STUCK_S: Final = 120.0
"""What a tick does for one household takes milliseconds; without a sign of life for so long it hangs."""


class Ticking:
    """Calls ``tick`` every ``every_s`` seconds, one call after the other, until it is stopped.

    A call that fails is logged, and the next one comes all the same. A thread that ended is started again. A call
    that hangs is told in the log once, with where it stands; ``/healthz`` sees that no tick was noted, and the
    service manager hears nothing any more. A call that is long but goes on says so by ``beat``.
    """

    def __init__(self, tick: Callable[[], None], every_s: float = TICK_S, stuck_s: float = STUCK_S) -> None:
        self._tick, self._every_s, self._stuck_s = tick, every_s, stuck_s
        self._ended = threading.Event()
        self._alive_s: float | None = None
        self._told_s: float | None = None
        self._heard_s = float("-inf")
        self._ticker: threading.Thread | None = None
        self._watch: threading.Thread | None = None

    def start(self) -> None:
        """Begin in threads of this process."""
        self._start_ticker()
        self._watch = threading.Thread(target=self._look_after, name="watch over nudges", daemon=True)
        self._watch.start()

    def run(self) -> None:
        """Begin, and wait in this thread until it is interrupted."""
        self.start()
        try:
            self._ended.wait()
        finally:
            self.stop()

    def stop(self) -> None:
        """End; a call that is under way is waited for."""
        self._ended.set()
        for thread in (self._watch, self._ticker):
            if thread is not None and thread is not threading.current_thread():
                thread.join()

    def beat(self) -> None:
        """Say that the call goes on."""
        self._alive_s = now_s = time.monotonic()
        if now_s - self._heard_s >= self._every_s:
            self._heard_s = now_s
            tell_manager(ALIVE)

    def _start_ticker(self) -> None:
        self._ticker = threading.Thread(target=self._go_on, name="nudges", daemon=True)
        self._ticker.start()

    def _go_on(self) -> None:
        next_s = time.monotonic()
        while not self._ended.wait(max(0.0, next_s - time.monotonic())):
            next_s = time.monotonic() + self._every_s  # what was missed is not made up for
            self.beat()
            try:
                self._tick()
            except Exception as error:  # noqa: BLE001 - a database that is away, or whatever: the next tick tries again
                say_failure("tick failed", error)
            finally:
                self._alive_s = None

    def _look_after(self) -> None:
        while not self._ended.wait(self._every_s):
            ticker, alive_s = self._ticker, self._alive_s
            if ticker is not None and not ticker.is_alive():
                say("the nudger's thread ended by itself and is started again", logging.ERROR)
                self._start_ticker()
            elif ticker is not None and alive_s is not None and alive_s != self._told_s:
                silent_s = time.monotonic() - alive_s
                if silent_s > self._stuck_s:
                    self._told_s = alive_s
                    say("a tick hangs", logging.ERROR, seconds=round(silent_s), at=_where(ticker))


def _where(thread: threading.Thread) -> str:
    """Return where a thread stands, innermost last."""
    frame = sys._current_frames().get(thread.ident or 0)
    return "".join(traceback.format_stack(frame)[-6:]) if frame is not None else "nowhere"
