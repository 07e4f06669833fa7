"""A real server process for a test: own port, own data, killed and started again at will."""

from __future__ import annotations

import os
import re
import signal
import socket
import subprocess
import sys
import time
import urllib.error
import urllib.request
from pathlib import Path

ROOT = Path(__file__).parents[2]


class Server:
    """``start()`` waits until /healthz answers; ``kill()`` is SIGKILL; the next ``start()`` uses the same data.

    ``settings`` are environment variables for the next start.
    """

    def __init__(self, data: Path, module: str = "broodshelf.cli") -> None:
        self.settings: dict[str, str] = {}
        self.data, self.module = data, module
        with socket.socket() as probe:
            probe.bind(("127.0.0.1", 0))
            self.port = probe.getsockname()[1]
        self.url = f"http://127.0.0.1:{self.port}"
        self.output = data.parent / f"{data.name}.log"
        self.process: subprocess.Popen[bytes] | None = None

    def start(self) -> Server:
        environment = {
            **{k: v for k, v in os.environ.items() if not k.startswith("BROODSHELF_")},
            "BROODSHELF_DATA": str(self.data),
            "BROODSHELF_PORT": str(self.port),
            **self.settings,
        }
        with self.output.open("ab") as log:
            self.process = subprocess.Popen(
                [sys.executable, "-m", self.module, "serve"],
                env=environment,
                cwd=ROOT,
                stdout=log,
                stderr=log,
            )
        deadline = time.monotonic() + 30
        while time.monotonic() < deadline:
            if self.process.poll() is not None:
                break
            try:
                with urllib.request.urlopen(f"{self.url}/healthz", timeout=2):
                    return self
            except (urllib.error.URLError, OSError):
                time.sleep(0.05)
        raise RuntimeError(f"The server did not start:\n{self.output.read_text()[-3000:]}")

    def kill(self) -> None:
        assert self.process is not None
        self.process.send_signal(signal.SIGKILL)
        self.process.wait(10)

    def stop(self) -> None:
        if self.process is not None and self.process.poll() is None:
            self.process.terminate()
            try:
                self.process.wait(5)
            except subprocess.TimeoutExpired:
                self.process.kill()
                self.process.wait(5)

    def claim_code(self) -> str:
        found = re.search(r"code: (\S+)", self.output.read_text())
        assert found, "the server printed no claim code"
        return found[1]
