"""The beat of the nudger: APScheduler calls the tick every few seconds, and a watch sees to it that it does.

APScheduler keeps its times by the clock on the wall. Set forward, that clock makes a tick due at once, and one only
(``Every``); set back, it would hold up the next tick for as long as it was set back. So the watch goes by a clock that
nobody can set, and wakes a schedule that has fallen silent.
"""

from __future__ import annotations

import datetime as dt
import logging
import sys
import threading
import time
import traceback
from collections.abc import Callable
from typing import Final

from apscheduler.events import EVENT_JOB_ERROR, JobExecutionEvent
from apscheduler.executors.pool import ThreadPoolExecutor
from apscheduler.schedulers.background import BackgroundScheduler
from apscheduler.triggers.base import BaseTrigger

from ..logs import say, say_failure
from ..supervision import ALIVE, tell_manager

TICK_S: Final = 5.0
STUCK_S: Final = 120.0
"""What a tick does for one household takes milliseconds; without a sign of life for so long it hangs."""
SILENT_BEATS: Final = 2.0
"""So many beats without a tick mean that the clock was set back."""
JOB: Final = "tick"


class Every(BaseTrigger):  # type: ignore[misc]  # it has no types
    """Due at once, then so many seconds after each call began. What was missed is not made up for."""

    def __init__(self, seconds: float) -> None:
        self._pause = dt.timedelta(seconds=seconds)

    def get_next_fire_time(self, previous_fire_time: dt.datetime | None, now: dt.datetime) -> dt.datetime:
        """Return the next instant, counted from now however long ago the last one was."""
        return now if previous_fire_time is None else now + self._pause


class Ticking:
    """Calls ``tick`` every ``every_s`` seconds, one call after the other, until it is stopped.

    A call that fails is logged, and the next one comes all the same. A call that hangs is told in the log once, with
    where it stands; ``/healthz`` sees that no tick was noted, and the service manager hears nothing any more. A call
    that is long but goes on says so by ``beat``.
    """

    def __init__(self, tick: Callable[[], None], every_s: float = TICK_S, stuck_s: float = STUCK_S) -> None:
        self._tick, self._every_s, self._stuck_s = tick, every_s, stuck_s
        self._ended = threading.Event()
        self._alive_s = time.monotonic()
        self._heard_s = float("-inf")
        self._told_s: float | None = None
        self._ticks_in: int | None = None
        self._watch = threading.Thread(target=self._look_after, name="watch over nudges", daemon=True)
        logging.getLogger("apscheduler").setLevel(logging.CRITICAL)  # what it would say is said here
        self._scheduler = BackgroundScheduler(
            executors={"default": ThreadPoolExecutor(1, {"thread_name_prefix": "nudges"})}, timezone=dt.UTC
        )
        self._scheduler.add_job(
            self._call, Every(every_s), id=JOB, max_instances=1, coalesce=True, misfire_grace_time=None
        )
        self._scheduler.add_listener(_tell_failure, EVENT_JOB_ERROR)

    def start(self) -> None:
        """Begin in threads of this process."""
        self._scheduler.start()
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
        self._watch.join()
        self._scheduler.shutdown()

    def beat(self) -> None:
        """Say that the call goes on."""
        self._alive_s = now_s = time.monotonic()
        if now_s - self._heard_s >= self._every_s:
            self._heard_s = now_s
            tell_manager(ALIVE)

    def _call(self) -> None:
        self._ticks_in = threading.get_ident()
        self.beat()
        try:
            self._tick()
        finally:
            self._alive_s = time.monotonic()
            self._ticks_in = None

    def _look_after(self) -> None:
        while not self._ended.wait(self._every_s):
            alive_s, ticks_in = self._alive_s, self._ticks_in
            silent_s = time.monotonic() - alive_s
            if ticks_in is None and silent_s > SILENT_BEATS * self._every_s:
                self._scheduler.modify_job(JOB, next_run_time=dt.datetime.now(dt.UTC))
            if silent_s > self._stuck_s and alive_s != self._told_s:
                self._told_s = alive_s
                say("a tick hangs", logging.ERROR, seconds=round(silent_s), at=_where(ticks_in))


def _tell_failure(event: JobExecutionEvent) -> None:
    """A database that is away, or whatever: the next tick tries again."""
    say_failure("tick failed", event.exception)


def _where(thread_id: int | None) -> str:
    """Return where a thread stands, innermost last."""
    frame = sys._current_frames().get(thread_id or 0)
    return "".join(traceback.format_stack(frame)[-6:]) if frame is not None else "before the tick"
