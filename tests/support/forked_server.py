"""A server started anew in a fraction of a second, for tests that kill it again and again.

A process that has everything imported forks one for each line that it reads, writes its process id, and a second
line when it is over. What is killed is ``broodshelf serve``, or ``tests.support.serve_here``, as always.
"""

from __future__ import annotations

import os
import signal
import subprocess
import sys
from pathlib import Path
from typing import IO

from tests.support import serve_here
from tests.support.server import ROOT, Server

from broodshelf.cli import main


class ForkedServer(Server):
    """A server whose ``settings`` count from its first start on."""

    def __init__(self, data: Path, module: str = "broodshelf.cli") -> None:
        super().__init__(data, module)
        self._forker: subprocess.Popen[str] | None = None
        self._pid = 0

    def start(self) -> ForkedServer:
        if self._forker is None:
            with self.output.open("ab") as log:
                self._forker = subprocess.Popen(
                    [sys.executable, "-m", "tests.support.forked_server", self.module],
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


def _fork_servers(module: str) -> None:
    for _line in sys.stdin:
        pid = os.fork()
        if pid == 0:
            os.dup2(sys.stderr.fileno(), sys.stdout.fileno())  # what a server prints goes to its log
            serve_here.serve() if module == "tests.support.serve_here" else main(["serve"])
            os._exit(1)
        _say(str(pid))
        os.waitpid(pid, 0)
        _say("over")


def _say(line: str) -> None:
    sys.stdout.write(f"{line}\n")
    sys.stdout.flush()


if __name__ == "__main__":
    _fork_servers(sys.argv[1])
