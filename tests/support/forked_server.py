"""``broodshelf serve`` started anew in a fraction of a second, for tests that kill it again and again.

A process that has everything imported forks a server for each line that it reads, prints its process id, and a
second line when it is over. What is killed is a server like any other.
"""

from __future__ import annotations

import os
import signal
import subprocess
import sys
from pathlib import Path
from typing import IO

from tests.support.server import ROOT, Server

from broodshelf.cli import main


class ForkedServer(Server):
    """A server whose ``settings`` count from its first start on."""

    def __init__(self, data: Path) -> None:
        super().__init__(data)
        self._forker: subprocess.Popen[str] | None = None
        self._pid = 0

    def start(self) -> ForkedServer:
        if self._forker is None:
            with self.output.open("ab") as log:
                self._forker = subprocess.Popen(
                    [sys.executable, "-m", "tests.support.forked_server"],
                    env=self.environment(),
                    cwd=ROOT,
                    stdin=subprocess.PIPE,
                    stdout=subprocess.PIPE,
                    stderr=log,
                    text=True,
                    bufsize=1,
                )
        _pipe(self._forker.stdin).write("serve\n")
        self._pid = int(_pipe(self._forker.stdout).readline())
        self.wait_until_healthy(self._forker)
        return self

    def kill(self) -> None:
        assert self._forker is not None
        os.kill(self._pid, signal.SIGKILL)
        assert _pipe(self._forker.stdout).readline() == "over\n"
        self._pid = 0

    def stop(self) -> None:
        if self._forker is None:
            return
        if self._pid:
            self.kill()
        _pipe(self._forker.stdin).close()
        self._forker.wait(10)
        _pipe(self._forker.stdout).close()


def _pipe(pipe: IO[str] | None) -> IO[str]:
    assert pipe is not None
    return pipe


def _fork_servers() -> None:
    for _line in sys.stdin:
        pid = os.fork()
        if pid == 0:
            os.dup2(sys.stderr.fileno(), sys.stdout.fileno())  # what a server prints goes to its log
            os._exit(main(["serve"]))
        print(pid, flush=True)
        os.waitpid(pid, 0)
        print("over", flush=True)


if __name__ == "__main__":
    _fork_servers()
