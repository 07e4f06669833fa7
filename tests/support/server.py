"""A real server process for a test: own port, own data, killed and started again at will."""

from __future__ import annotations

import json
import os
import re
import signal
import socket
import subprocess
import sys
import time
import urllib.error
import urllib.request
from collections.abc import Iterator
from functools import cache
from itertools import cycle, islice
from pathlib import Path
from typing import Any

from tests.support.forked_server import ROOT, ForkedProcess, forker

START_S = 120  # as long as a start may take on a machine that is busy with much else


PORTS_A_WORKER = 1_000
FIRST_PORT = 11_000
"""Above the last port that browsers refuse (10080; WHATWG Fetch, "bad port") and, for 21 workers, below those that a
system gives to outgoing connections (32768 and up on Linux, 49152 and up by IANA)."""


@cache
def _ports() -> Iterator[int]:
    """The ports of this process, one after the other and round again; each worker of a run has its own thousand."""
    worker = os.environ.get("PYTEST_XDIST_WORKER", "")
    place = int(worker.removeprefix("gw")) % 20 if worker else 20
    first = FIRST_PORT + place * PORTS_A_WORKER
    begin = os.getpid()  # another run beside this one begins elsewhere
    return cycle([first + (begin + number) % PORTS_A_WORKER for number in range(PORTS_A_WORKER)])


def free_port() -> int:
    """A port of this machine that nobody listens on, and that nobody is given until it is asked for again.

    A port that the system picks is free only while it is held: an outgoing connection or another worker may have it
    next.
    """
    for port in islice(_ports(), PORTS_A_WORKER):
        with socket.socket() as probe:
            try:
                probe.bind(("127.0.0.1", port))
            except OSError:
                continue
            return port
    raise RuntimeError("none of this worker's ports is free")


class Server:
    """``start()`` waits until /healthz answers; ``kill()`` is SIGKILL; the next ``start()`` uses the same data.

    ``settings`` are environment variables for the next start.
    """

    def __init__(self, data: Path, module: str = "broodshelf.cli", public_url: str | None = None) -> None:
        self.settings = {"BROODSHELF_PUBLIC_URL": public_url} if public_url else {}
        self.data, self.module = data, module
        self.port = free_port()
        self.url = f"http://127.0.0.1:{self.port}"
        self.output = data.parent / f"{data.name}.log"
        self.process: ForkedProcess | subprocess.Popen[bytes] | None = None

    def start(self) -> Server:
        self.process = self._begin()
        self._wait_until_healthy(self.process)
        return self

    def _begin(self) -> ForkedProcess | subprocess.Popen[bytes]:
        return forker().fork(self.module, ["serve"], self.environment(), self.output)

    def environment(self) -> dict[str, str]:
        """The environment of a server process: ours without settings of its own, and this server's."""
        return {
            **{k: v for k, v in os.environ.items() if not k.startswith("BROODSHELF_")},
            "BROODSHELF_DATA": str(self.data),
            "BROODSHELF_PORT": str(self.port),
            **self.settings,
        }

    def _wait_until_healthy(self, process: ForkedProcess | subprocess.Popen[bytes]) -> None:
        deadline = time.monotonic() + START_S
        while time.monotonic() < deadline:
            if process.poll() is not None:
                break
            try:
                with socket.create_connection(("127.0.0.1", self.port)):
                    pass  # somebody listens; to ask by HTTP each time costs as much as a start
                with urllib.request.urlopen(f"{self.url}/healthz", timeout=2):
                    return
            except (urllib.error.URLError, OSError):
                time.sleep(0.01)
        self.stop()
        raise RuntimeError(f"The server did not start:\n{self.output.read_text()[-3000:]}")

    def become(self, build: str) -> str:
        """Kill the server, start it as another build of the app (``tests.support.serve_here``); return its id."""
        self.kill()
        (self.data / "another-build").write_text(build)
        self.start()
        return self.build()

    def build(self) -> str:
        """The id of the build that is served."""
        return str(self._health()["build"])

    def move_clock(self, ahead_ms: int) -> None:
        """Let the clock of ``tests.support.serve_here`` run ahead, and wait until the nudger has seen it."""
        scratch = self.data / "clock-ahead.new"
        scratch.write_text(str(ahead_ms))
        scratch.replace(self.data / "clock-ahead")
        wanted_ms = time.time() * 1000 + ahead_ms + 2_200  # a tick after the one that found the new time
        for _ in range(600):
            if (self._health()["nudger"]["last_tick_ms"] or 0) > wanted_ms:
                return
            time.sleep(0.05)
        raise RuntimeError("The nudger did not tick after its clock was moved.")

    def _health(self) -> Any:
        try:
            with urllib.request.urlopen(f"{self.url}/healthz", timeout=2) as answer:
                return json.load(answer)
        except urllib.error.HTTPError as error:  # 503 until the nudger has ticked
            return json.load(error)

    def kill(self) -> None:
        assert self.process is not None
        self.process.send_signal(signal.SIGKILL)
        self.process.wait(10)

    def stop(self) -> None:
        """End it at once: how a server leaves by itself has tests of its own."""
        if self.process is not None and self.process.poll() is None:
            self.kill()

    def claim_code(self) -> str:
        found = re.search(r"code: (\S+)", self.output.read_text())
        assert found, "the server printed no claim code"
        return found[1]


class ColdServer(Server):
    """A server in a process of its own from the first line on, as a keeper of the machine starts it; slow to start."""

    def _begin(self) -> subprocess.Popen[bytes]:
        with self.output.open("ab") as log:
            return subprocess.Popen(
                [sys.executable, "-m", self.module, "serve"],
                env=self.environment(),
                cwd=ROOT,
                stdout=log,
                stderr=log,
            )
