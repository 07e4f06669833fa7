"""The shipped Caddyfiles in a real Caddy, on ports of this machine and without https."""

from __future__ import annotations

import os
import shutil
import subprocess
import time
from pathlib import Path
from types import TracebackType

from tests.support.server import ROOT, free_port
from tests.support.sockets import get


class Caddy:
    """``with Caddy(folder, to_port) as caddy``: ``caddy.port`` answers when the block begins."""

    def __init__(self, folder: Path, to_port: int, *others: int, port: int | None = None) -> None:
        self.port = port or free_port()
        self._folder = folder
        self._config = "Caddyfile.machines" if others else "Caddyfile"
        places = " ".join(f"127.0.0.1:{each}" for each in (to_port, *others))
        # round robin: the harshest for servers that are replaced, each page comes from several of them
        self._where = (
            {"SHELF_SERVERS": places, "SHELF_POLICY": "round_robin"} if others else {"SHELF_SERVER": places}
        )

    def __enter__(self) -> Caddy:
        found = shutil.which("caddy")
        assert found, "Caddy is missing; deploy/test installs it (Debian and Ubuntu: apt-get install caddy)"
        self._folder.mkdir(exist_ok=True)
        environment = {
            **os.environ,
            "SHELF_NAME": f"http://127.0.0.1:{self.port}",
            **self._where,
            "CADDY_ADMIN": f"127.0.0.1:{free_port()}",
            **dict.fromkeys(("HOME", "XDG_DATA_HOME", "XDG_CONFIG_HOME"), str(self._folder)),
        }
        command = [found, "run", "--config", str(ROOT / "deploy" / self._config)]
        self._log = (self._folder / "caddy.log").open("wb")
        self._process = subprocess.Popen(command, env=environment, stdout=self._log, stderr=self._log)
        self._wait_until_it_answers()
        return self

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None
    ) -> None:
        self._process.kill()
        self._process.wait(10)
        self._log.close()

    def _wait_until_it_answers(self) -> None:
        deadline = time.monotonic() + 20
        while time.monotonic() < deadline and self._process.poll() is None:
            try:
                get(self.port)
            except OSError:
                time.sleep(0.05)
            else:
                return
        self.__exit__(None, None, None)
        raise RuntimeError(f"Caddy did not start:\n{(self._folder / 'caddy.log').read_text()[-3000:]}")
