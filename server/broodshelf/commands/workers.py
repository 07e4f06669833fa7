"""``broodshelf serve --workers N``: several serving processes on the same sockets, and one that nudges.

The supervisor holds the sockets and does nothing else: it forks the others, forks one that died anew, and passes on
what the service manager and its children have to say to each other. When it is told to stop, each answers what was
sent to it; when it dies, each notices and stops. Forks have everything imported and share the memory that it takes.
"""

from __future__ import annotations

import gc
import logging
import multiprocessing
import os
import signal
import socket
import sys
import tempfile
import time
from collections.abc import Callable
from dataclasses import dataclass, field
from functools import partial
from multiprocessing.context import ForkProcess
from pathlib import Path
from typing import Final

from ..logs import say as log
from ..logs import start_logging
from ..settings import Settings
from ..supervision import ALIVE, READY, tell_manager
from ..web.binding import bind
from .serving import Share, nudger, serve
from .telling import CANNOT, telling_why_not

MOST: Final = 32
LOOK_S: Final = 0.1
SOON_S: Final = 5.0
"""A process that ends sooner than that after its start is started anew only after a pause that grows."""
LONGEST_PAUSE_S: Final = 30.0
PATIENCE_S: Final = 75.0
"""For all to end; longer than a departure takes and shorter than systemd waits before it kills (90 s)."""
STOPS: Final = (signal.SIGTERM, signal.SIGINT)


@dataclass
class _Child:
    """One process. ``work``: what it does, given whether it is its first start; ``heard``: where it says what systemd's
    protocol has words for; ``begun``: whether it ever started.
    """

    name: str
    work: Callable[[bool], int]
    heard: socket.socket
    address: str
    process: ForkProcess | None = None
    begun: bool = False
    ready: bool = False
    started_s: float = 0.0
    pause_s: float = field(default=0.0)
    begin_s: float = 0.0

    def start(self) -> None:
        """Fork it; if the supervisor fails it is told to stop and not waited for (``daemon``).

        Where the system has no room for another process, that is one that ended at once.
        """
        self.started_s = time.monotonic()
        fork = multiprocessing.get_context("fork").Process
        process = fork(target=self._become, args=(not self.begun,), daemon=True)
        # until it no longer takes them for the supervisor's
        held = signal.pthread_sigmask(signal.SIG_BLOCK, STOPS)
        try:
            process.start()
        except OSError as error:
            self.rest()
            log("not started", logging.ERROR, process=self.name, why=str(error), again_in_s=self.pause_s)
            return
        finally:
            signal.pthread_sigmask(signal.SIG_SETMASK, held)
        self.process, self.begun = process, True
        log("started", process=self.name, pid=process.pid)

    def rest(self) -> float:
        """Let it begin anew, after a growing pause if it ended soon; return how long it lived, in seconds."""
        now_s = time.monotonic()
        lived_s = now_s - self.started_s
        self.pause_s = 0.0 if lived_s > SOON_S else min(max(1.0, 2 * self.pause_s), LONGEST_PAUSE_S)
        self.process, self.begin_s = None, now_s + self.pause_s
        return lived_s

    def _become(self, first: bool) -> None:
        signal.signal(signal.SIGTERM, signal.SIG_DFL)
        signal.signal(signal.SIGINT, signal.default_int_handler)
        signal.pthread_sigmask(signal.SIG_UNBLOCK, STOPS)
        os.environ["NOTIFY_SOCKET"] = self.address
        sys.exit(self.work(first))

    def words(self) -> set[str]:
        """Return what it has said since the last look."""
        said = set()
        while True:
            try:
                said.add(self.heard.recv(256).decode())
            except BlockingIOError:
                return said


class Supervisor:
    """Keeps the processes running until ``stop``."""

    def __init__(self, settings: Settings, workers: int, tag: str, folder: Path) -> None:
        self._sockets = bind(settings.host, settings.port)
        gone, self._there = os.pipe()

        def nudge(_first: bool) -> int:
            os.close(self._there)
            return telling_why_not(tag, lambda: nudger(settings, tag, supervisor_gone=gone))

        def work(number: int, first: bool) -> int:
            os.close(self._there)
            share = Share(self._sockets, gone, first=first and number == 1)
            return telling_why_not(tag, lambda: serve(settings, tag, share))

        parts: list[tuple[str, Callable[[bool], int]]] = [("nudger", nudge)]
        parts += [(f"worker {n}", partial(work, n)) for n in range(1, workers + 1)]
        self._children = [_Child(name, part, *_ear(folder, name)) for name, part in parts]
        self._stopping = False
        self._all_ready = False

    def stop(self, *_: object) -> None:
        """Tell all to stop; safe in a signal handler: an event's lock may be held by the very thread that it stops."""
        self._stopping = True

    def run(self) -> int:
        """Start all and look after them; return the exit status."""
        status = 0
        try:
            while not self._stopping and not status:
                status = max(self._look_after(child) for child in self._children)
                if not self._all_ready and all(child.ready for child in self._children):
                    self._all_ready = True
                    tell_manager(READY)
                    log("all are ready", processes=len(self._children))
                time.sleep(LOOK_S)
        finally:
            self._end()
        return status

    def _look_after(self, child: _Child) -> int:
        """Hear a process and start it anew if it ended; return a status other than 0 if it could not begin at all."""
        said = child.words()
        child.ready = child.ready or READY in said
        if ALIVE in said and child.name == "nudger":
            tell_manager(ALIVE)
        if child.process is not None and (ended := child.process.exitcode) is not None:
            if not self._all_ready and ended == CANNOT:  # no start will go better
                return CANNOT
            child.process.close()
            lived_s = child.rest()
            log("ended", process=child.name, status=ended, seconds=round(lived_s), again_in_s=child.pause_s)
        if child.process is None and time.monotonic() >= child.begin_s:
            child.start()
        return 0

    def _end(self) -> None:
        """Tell all to stop and wait; the sockets stay open until the last one has let in who had knocked."""
        running = [child.process for child in self._children if child.process is not None]
        for process in running:
            process.terminate()
        until_s = time.monotonic() + PATIENCE_S
        for process in running:
            process.join(max(0.0, until_s - time.monotonic()))
            if process.exitcode is None:
                process.kill()
                process.join()
        for child in self._children:
            child.heard.close()
        for one in self._sockets:
            one.close()


def _ear(folder: Path, name: str) -> tuple[socket.socket, str]:
    address = str(folder / name.replace(" ", "-"))
    ear = socket.socket(socket.AF_UNIX, socket.SOCK_DGRAM)
    ear.bind(address)
    ear.setblocking(False)
    return ear, address


def supervise(settings: Settings, workers: int, tag: str) -> int:
    """Run a supervisor until it is told to stop."""
    start_logging()
    gc.collect()
    gc.freeze()  # what no search for garbage writes to stays one memory for all
    with tempfile.TemporaryDirectory(prefix="broodshelf-") as folder:
        supervisor = Supervisor(settings, workers, tag, Path(folder))
        for number in STOPS:
            signal.signal(number, supervisor.stop)
        return supervisor.run()
