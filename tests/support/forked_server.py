"""Servers that start in a fraction of a second: forks of one process that has everything imported and packed.

That process belongs to the test run: the first worker that wants a server starts it, it listens to all of them and ends
with the last. It is told of each server its module, arguments, environment and log, and answers with the new
process's id; asked how one of them ended, it answers with the status.
What runs in a fork is the module's ``main``, as always: a command of ``broodshelf``, a server or a nudger of the
tests; the phone's files are read and packed once for all.
"""

from __future__ import annotations

import atexit
import gc
import hashlib
import importlib
import json
import os
import select
import signal
import socket
import subprocess
import sys
import tempfile
import threading
import time
import traceback
from collections.abc import Callable, Mapping, Sequence
from functools import cache
from pathlib import Path
from typing import Any

from tests.support import costs
from tests.support.house import House
from tests.support.households import colony, feeding
from tests.support.once_a_run import alone
from tests.support.one_compiler import one_compiler
from tests.support.one_shell import one_shell

from broodshelf import cli
from broodshelf.app import create_nudger
from broodshelf.languages import of_environment
from broodshelf.web import shell
from broodshelf.web.compact import ways
from broodshelf.web.parts import Parts

ROOT = Path(__file__).parents[2]
PACKED = ROOT / ".pytest_cache" / "packed"
COMING_OR_GOING = ROOT / ".pytest_cache" / "forker.lock"
"""Held by who looks for the process and by the process when nobody is left: it does not go while somebody comes."""
MOST_BYTES = 1 << 17
"""Of a question; Linux sends less at once than twice as many."""
MODULES = (
    "broodshelf.cli",
    "tests.support.serve_here",
    "tests.support.machine",
    "tests.nudges.hasty_serve",
    "tests.nudges.nudger_process",
)
"""What forks run."""


class ForkedProcess:
    """A process that another one forked, with the few methods of ``Popen`` that a test needs."""

    def __init__(self, pid: int, status: Callable[[int], int]) -> None:
        self.pid = pid
        self._handle = os.pidfd_open(pid)
        self._status = status
        self._ended_with: int | None = None

    def poll(self) -> int | None:
        """Return None while the process runs, then its exit status; below zero, the signal that ended it."""
        return self._ended(0)

    def wait(self, timeout: float) -> int:
        """Wait until the process is over; return its exit status."""
        status = self._ended(timeout)
        if status is None:
            raise subprocess.TimeoutExpired(f"the server {self.pid}", timeout)
        return status

    def kill(self) -> None:
        """End the process at once, if it still runs."""
        self.send_signal(signal.SIGKILL)

    def send_signal(self, number: int) -> None:
        """Send a signal to the process, if it still runs."""
        if self.poll() is None:
            signal.pidfd_send_signal(self._handle, number)

    def _ended(self, timeout: float) -> int | None:
        if self._handle >= 0 and select.select([self._handle], [], [], timeout)[0]:
            os.close(self._handle)
            self._handle = -1
            self._ended_with = self._status(self.pid)
        return self._ended_with


class Forker:
    """The process that forks servers."""

    def __init__(self) -> None:
        self._one_at_a_time = threading.Lock()
        COMING_OR_GOING.parent.mkdir(exist_ok=True)
        with alone(COMING_OR_GOING):
            self._line = _connected() or _started()

    def fork(
        self, module: str, arguments: Sequence[str], environment: Mapping[str, str], log: Path
    ) -> ForkedProcess:
        """Start a server: run the ``main`` of a module in a process of its own."""
        told = {"module": module, "arguments": [*arguments], "environment": {**environment}, "log": str(log)}
        return ForkedProcess(self._ask(told), lambda pid: self._ask({"ended": pid}))

    def _ask(self, told: Mapping[str, Any]) -> int:
        with self._one_at_a_time:
            self._line.sendall(json.dumps(told).encode())
            return int(self._line.recv(MOST_BYTES))


def _address() -> str:
    """Return the abstract address of this run's process: it leaves no file."""
    return f"\0broodshelf-forker-{os.environ.get('PYTEST_XDIST_TESTRUNUID', os.getpid())}"


def _connected() -> socket.socket | None:
    """Return the line to the process that another worker started, None: none did."""
    line = socket.socket(socket.AF_UNIX, socket.SOCK_SEQPACKET)  # what is sent at once comes at once
    try:
        line.connect(_address())
    except ConnectionRefusedError:
        line.close()
        return None
    atexit.register(line.close)
    return line


def _started() -> socket.socket:
    """Start the process; return the line to it."""
    with socket.socket(socket.AF_UNIX, socket.SOCK_SEQPACKET) as listener:
        listener.bind(_address())
        listener.listen()
        process = subprocess.Popen(
            [sys.executable, "-m", "tests.support.forked_server", str(listener.fileno())],
            cwd=ROOT,
            env={k: v for k, v in os.environ.items() if not k.startswith("BROODSHELF_")},
            stdin=subprocess.DEVNULL,
            pass_fds=[listener.fileno()],
            start_new_session=True,
        )
        atexit.register(process.wait)  # after the line was closed: what comes last is called first
        line = _connected()
    assert line is not None
    return line


@cache
def forker() -> Forker:
    """Return this run's forker, started when it is first asked for."""
    return Forker()


def packing(name: str, way: Callable[[bytes], bytes]) -> Callable[[bytes], bytes]:
    """Return a way to compress that remembers, also from one run to the next: brotli at its best takes seconds."""
    PACKED.mkdir(parents=True, exist_ok=True)

    @cache
    def packed(body: bytes) -> bytes:
        kept = PACKED / f"{hashlib.sha256(body).hexdigest()}.{name}"
        if not kept.exists():
            begun = kept.with_name(f"{kept.name}.{os.getpid()}")
            begun.write_bytes(way(body))
            begun.replace(kept)
        return kept.read_bytes()

    return packed


def _prepare() -> None:
    """Make an app once and let it do what each server is asked first.

    Every fork finds its modules imported, the phone's files packed, and statements, messages and forms compiled.
    """
    for module in MODULES:
        importlib.import_module(module)
    packed = {name: packing(name, way) for name, way in ways().items()}
    shell.ways = lambda: packed
    with tempfile.TemporaryDirectory() as data, House(Path(data)) as house:
        phone = house.phone()
        feeding(phone, colony(phone))
        house.post(phone, json.dumps(phone.request()).encode())
        house.app.test_client().get("/healthz")
        nudger = create_nudger(house.app)
        nudger.tick(house.now_ms)
        nudger.close()
    parts: Parts = house.app.extensions["broodshelf"]
    made = parts.shell
    for file in (
        made.page("en"),
        made.worker,
        made.manifest,
        *made.files.values(),
        *made.parcels.values(),
    ):
        file.compressed(next(iter(packed)))
    cli.command_line = cache(cli.command_line)
    cli.command_line(of_environment({}))
    assert threading.active_count() == 1, "a fork has only the thread that forks"
    gc.collect()
    gc.freeze()


def _serve(module: str, arguments: list[str], environment: dict[str, str], log: str) -> int:
    """Become a server, as if started by itself with this environment; return its exit status."""
    nothing = os.open(os.devnull, os.O_RDONLY)
    output = os.open(log, os.O_WRONLY | os.O_CREAT | os.O_APPEND)
    for ours, theirs in ((nothing, 0), (output, 1), (output, 2)):
        os.dup2(ours, theirs)
    os.environ.clear()
    os.environ.update(environment)
    if group := environment.get(costs.GROUP_OF_A_WORKER):
        costs.join(Path(group))
    time.tzset()
    return importlib.import_module(module).main(arguments) or 0


def _fork_when_told(listener: socket.socket) -> None:
    """Do what the workers ask for, until the last of them is gone."""
    lines: list[socket.socket] = []
    while lines or not _nobody_comes(listener):
        for ready in select.select([listener, *lines], [], [])[0]:
            if ready is listener:
                lines.append(listener.accept()[0])
            elif asked := ready.recv(MOST_BYTES):
                ready.sendall(str(_answer(json.loads(asked), [listener, *lines])).encode())
            else:
                ready.close()
                lines.remove(ready)


def _nobody_comes(listener: socket.socket) -> bool:
    """Say whether no worker is at the door, and close it then."""
    with alone(COMING_OR_GOING):
        if not select.select([listener], [], [], 0)[0]:
            listener.close()
        return listener.fileno() < 0


def _answer(told: dict[str, Any], of_the_forker: Sequence[socket.socket]) -> int:
    """Return how a server ended, or the id of a new one, which leaves the lines of this process alone."""
    if "ended" in told:
        return os.waitstatus_to_exitcode(os.waitpid(told["ended"], 0)[1])
    if pid := os.fork():
        return pid
    status = 1
    try:
        for each in of_the_forker:
            each.close()
        status = _serve(**told)
    except BaseException:  # noqa: BLE001 - it ends with the process, and is told as by any other
        traceback.print_exc()
    finally:
        sys.stdout.flush()
        os._exit(status)


if __name__ == "__main__":
    with one_shell(), one_compiler(), socket.socket(fileno=int(sys.argv[1])) as door:
        _prepare()
        _fork_when_told(door)
    os.killpg(0, signal.SIGKILL)  # the run is over, or was killed: no server outlives it
