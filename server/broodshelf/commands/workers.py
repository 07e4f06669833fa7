"""``broodshelf serve --workers N``: several serving processes on the same sockets, and one that nudges.

The supervisor holds the sockets and does nothing else: it starts the others, starts one that died anew, and passes on
what the service manager and its children have to say to each other. When it is told to stop, each answers what was
sent to it; when it dies, each notices and stops.
"""

from __future__ import annotations

import os
import signal
import socket
import subprocess
import sys
import tempfile
import threading
import time
from dataclasses import dataclass, field
from pathlib import Path
from typing import Final

from ..logs import say as log
from ..logs import start_logging
from ..settings import Settings
from ..supervision import ALIVE, READY, tell_manager
from ..web.binding import bind
from .serving import Share

MOST: Final = 32
LOOK_S: Final = 0.1
SOON_S: Final = 5.0
"""A process that ends sooner than that after its start is started anew only after a pause that grows."""
LONGEST_PAUSE_S: Final = 30.0
PATIENCE_S: Final = 75.0
"""For all to end; longer than a departure takes and shorter than systemd waits before it kills (90 s)."""


@dataclass
class _Child:
    """One process. ``heard``: where it says what systemd's protocol has words for."""

    name: str
    arguments: list[str]
    heard: socket.socket
    address: str
    process: subprocess.Popen[bytes] | None = None
    ready: bool = False
    started_s: float = 0.0
    pause_s: float = field(default=0.0)
    begin_s: float = 0.0

    def start(self, sockets: list[int]) -> None:
        self.started_s = time.monotonic()
        self.process = subprocess.Popen(  # noqa: S603 - this program, with words of our own
            [sys.executable, "-m", "broodshelf.cli", *self.arguments],
            stdin=subprocess.PIPE,
            pass_fds=sockets,
            env={**os.environ, "NOTIFY_SOCKET": self.address},
        )
        log("started", process=self.name, pid=self.process.pid)

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

    def __init__(self, settings: Settings, workers: int, folder: Path) -> None:
        self._sockets = bind(settings.host, settings.port)
        numbers = tuple(one.fileno() for one in self._sockets)
        parts = [("nudger", ["nudger", "--supervised"])]
        parts += [
            (f"worker {n}", ["serve", *Share(numbers, n == 1).as_arguments()]) for n in range(1, workers + 1)
        ]
        self._children = [_Child(name, arguments, *_ear(folder, name)) for name, arguments in parts]
        self._stopping = threading.Event()
        self._all_ready = False

    def stop(self, *_: object) -> None:
        """Tell all to stop; safe in a signal handler."""
        self._stopping.set()

    def run(self) -> int:
        """Start all and look after them; return the exit status."""
        status = 0
        for child in self._children:
            child.start([one.fileno() for one in self._sockets])
        while not self._stopping.is_set() and not status:
            status = max(self._look_after(child) for child in self._children)
            if not self._all_ready and all(child.ready for child in self._children):
                self._all_ready = True
                tell_manager(READY)
                log("all are ready", processes=len(self._children))
            self._stopping.wait(LOOK_S)
        self._end()
        return status

    def _look_after(self, child: _Child) -> int:
        """Hear a process and start it anew if it ended; return a status other than 0 if it could not begin at all."""
        said = child.words()
        child.ready = child.ready or READY in said
        if ALIVE in said and child.name == "nudger":
            tell_manager(ALIVE)
        now_s = time.monotonic()
        if child.process is not None and (ended := child.process.poll()) is not None:
            if not self._all_ready and ended == 2:  # it has said what is wrong, and no start will go better
                return 2
            _let_go(child.process)
            lived_s = now_s - child.started_s
            child.pause_s = 0.0 if lived_s > SOON_S else min(max(1.0, 2 * child.pause_s), LONGEST_PAUSE_S)
            log("ended", process=child.name, status=ended, seconds=round(lived_s), again_in_s=child.pause_s)
            child.process, child.begin_s = None, now_s + child.pause_s
        if child.process is None and now_s >= child.begin_s:
            child.arguments = [each for each in child.arguments if each != "--first"]
            child.start([one.fileno() for one in self._sockets])
        return 0

    def _end(self) -> None:
        """Tell all to stop and wait; the sockets stay open until the last one has let in who had knocked."""
        running = [child.process for child in self._children if child.process is not None]
        for process in running:
            process.send_signal(signal.SIGTERM)
        until_s = time.monotonic() + PATIENCE_S
        for process in running:
            try:
                process.wait(max(0.0, until_s - time.monotonic()))
            except subprocess.TimeoutExpired:
                process.kill()
            _let_go(process)
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


def _let_go(process: subprocess.Popen[bytes]) -> None:
    process.wait()
    if process.stdin is not None:
        process.stdin.close()


def supervise(settings: Settings, workers: int) -> int:
    """Run a supervisor until it is told to stop."""
    start_logging()
    with tempfile.TemporaryDirectory(prefix="broodshelf-") as folder:
        supervisor = Supervisor(settings, workers, Path(folder))
        for number in (signal.SIGTERM, signal.SIGINT):
            signal.signal(number, supervisor.stop)
        return supervisor.run()
