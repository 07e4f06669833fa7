"""The processes of a machine, and what is asked of them."""

from __future__ import annotations

import http.client
import os
import signal
import socket
import threading
import time
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

from tests.support.forked_server import ForkedProcess, forker
from tests.support.server import free_port

LONG_S = 120


def wait_for(what: Callable[[], bool], seconds: float = LONG_S) -> None:
    """Wait for a state."""
    deadline, pause = time.monotonic() + seconds, threading.Event()
    while not what():
        assert time.monotonic() < deadline, "waited in vain"
        pause.wait(0.02)


class Process:
    """A process of a machine, with a data folder of its own; ``begin`` starts it anew after it ended.

    Its port is held while it is down: bound, not listened at, which keeps everybody else away and lets it in.
    """

    def __init__(self, folder: Path, what: str, settings: dict[str, str]) -> None:
        self.data, self.what, self.port = folder, what, free_port()
        self._log = folder.parent / f"{folder.name}.log"
        self._settings = {"BROODSHELF_DATA": str(folder), "BROODSHELF_PORT": str(self.port), **settings}
        self._process: ForkedProcess | None = None
        self._held = socket.socket()
        self._held.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
        self._held.bind(("127.0.0.1", self.port))

    def begin(self, build: str = "") -> None:
        """Start it, as another build of the app if one is named, with whatever its folder holds."""
        self.data.mkdir(mode=0o700, exist_ok=True)
        if build:
            (self.data / "another-build").write_text(build)
        kept = {k: v for k, v in os.environ.items() if not k.startswith("BROODSHELF_")}
        self._process = forker().fork(
            "tests.support.machine", [self.what], {**kept, **self._settings}, self._log
        )

    def is_ready(self) -> bool:
        """Whether it answers that requests may be sent to it; for a nudger, whether it has begun."""
        assert self._process is not None
        assert self._process.poll() is None, self._log.read_text()[-3000:]
        if self.what == "nudger":
            return '"nudging"' in self._log.read_text()
        try:
            return ask(self.port, "GET", "/readyz").status == 200
        except OSError:
            return False

    def kill(self) -> None:
        """Kill it in the middle of whatever it does."""
        self._end(signal.SIGKILL)

    def done(self) -> None:
        """End it for good."""
        if self._process is not None:
            self.kill()
        self._held.close()

    def leave(self) -> int:
        """Tell it to stop; return its exit status."""
        return self._end(signal.SIGTERM)

    def _end(self, number: signal.Signals) -> int:
        assert self._process is not None
        if self._process.poll() is None:
            self._process.send_signal(number)
        return self._process.wait(LONG_S)


@dataclass(frozen=True, slots=True)
class Answer:
    """What a server answered."""

    status: int
    body: bytes


def ask(port: int, method: str, path: str, body: bytes | None = None, **headers: str) -> Answer:
    """Make one request to this machine, over a connection of its own."""
    line = http.client.HTTPConnection("127.0.0.1", port, timeout=60)
    try:
        line.request(method, path, body, {"Sec-Fetch-Site": "same-origin", **headers})
        answered = line.getresponse()
        return Answer(answered.status, answered.read())
    except http.client.HTTPException as error:
        raise OSError(str(error)) from error
    finally:
        line.close()
