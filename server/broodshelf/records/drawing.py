"""Having pictures drawn anew by a process beside the server (``draw_anew``), one after the other.

A request waits for its picture, so few may wait: one is drawn, one waits its turn, none is a second one of the
same household. Who comes beyond that is asked to come back. The other threads serve everybody else.
"""

from __future__ import annotations

import logging
import os
import signal
import subprocess
import sys
import weakref
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from threading import Lock, Timer
from typing import IO, Final, cast

from ..errors import BadRequest, Unavailable
from ..languages import told
from ..logs import say

PROGRAM: Final = Path(__file__).with_name("draw_anew.py")
MOST_AT_ONCE: Final = 2
PATIENCE_S: Final = 20.0
"""For one picture with everything that delays it; its processor time is bounded by the process itself."""
ENDING_S: Final = 1.0
COME_BACK_S: Final = 5


class _Gone(Exception):  # noqa: N818
    """The process has ended without an answer; ``status`` as ``Popen`` gives it."""

    def __init__(self, status: int) -> None:
        super().__init__(status)
        self.status = status


class Drawing:
    """The drawing process of one server process, started when it is first needed."""

    def __init__(self, command: tuple[str, ...] = (sys.executable, "-I", str(PROGRAM))) -> None:
        self._command = command
        self._turn, self._entry = Lock(), Lock()
        self._inside: set[str] = set()
        self._process: subprocess.Popen[bytes] | None = None

    def draw(self, household_id: str, body: bytes, before: Callable[[], None] = lambda: None) -> bytes:
        """Return the picture drawn anew; ``before`` is done as soon as there is a place for it.

        Raises ``BadRequest`` for what is no picture or too hard to read, and ``Unavailable`` while too many wait.
        """
        with self._place(household_id):
            before()
            with self._turn:
                return self._drawn(body)

    def _drawn(self, body: bytes) -> bytes:
        try:
            try:
                return self._ask(body)
            except _Gone as gone:
                if gone.status != 0:
                    raise
                return self._ask(body)  # it had just ended, because nobody had asked for long
        except _Gone as gone:
            say("the drawing of a picture ended early", logging.WARNING, status=gone.status)
            if gone.status == -signal.SIGPROF:
                raise BadRequest(told("problem-picture-slow"), code="not_a_photo") from None
            raise Unavailable(told("problem-picture-not-now"), retry_after_s=COME_BACK_S) from None

    @contextmanager
    def _place(self, household_id: str) -> Iterator[None]:
        with self._entry:
            if len(self._inside) >= MOST_AT_ONCE or household_id in self._inside:
                raise Unavailable(told("problem-picture-busy"), code="busy", retry_after_s=COME_BACK_S)
            self._inside.add(household_id)
        try:
            yield
        finally:
            with self._entry:
                self._inside.remove(household_id)

    def _ask(self, body: bytes) -> bytes:
        process = self._running()
        end = Timer(PATIENCE_S, process.kill)
        end.start()
        try:
            word, answer = _told(process, body)
        finally:
            end.cancel()
        if word == b"+":
            return answer
        if word == b"-":
            raise BadRequest(told(answer.decode()), code="not_a_photo")
        raise _Gone(_status_of(process))

    def _running(self) -> subprocess.Popen[bytes]:
        if self._process is not None and self._process.poll() is None:
            return self._process
        if self._process is not None:
            _end(self._process)
        environment = {
            name: value for name, value in os.environ.items() if not name.startswith("BROODSHELF_")
        }
        self._process = subprocess.Popen(  # noqa: S603 - our own program
            self._command,
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            env=environment,
            start_new_session=True,  # whoever interrupts the server does not mean it: its input ends, that is enough
        )
        weakref.finalize(self, _end, self._process)
        return self._process


def _told(process: subprocess.Popen[bytes], body: bytes) -> tuple[bytes, bytes]:
    """Give the process a picture; return its word and what goes with it, and nothing if it ends meanwhile."""
    given, taken = cast(IO[bytes], process.stdin), cast(IO[bytes], process.stdout)
    try:
        given.write(len(body).to_bytes(4, "big") + body)
        given.flush()
        word, length = taken.read(1), taken.read(4)
        answer = taken.read(int.from_bytes(length, "big"))
    except OSError:
        return b"", b""
    return word, answer


def _status_of(process: subprocess.Popen[bytes]) -> int:
    """Return how a process ended that does not speak any more; one that lingers is ended."""
    try:
        return process.wait(ENDING_S)
    except subprocess.TimeoutExpired:
        process.kill()
        return process.wait()


def _end(process: subprocess.Popen[bytes]) -> None:
    """End a process and close what joined us to it."""
    process.kill()
    process.wait()
    for pipe in (process.stdin, process.stdout):
        if pipe is not None:
            pipe.close()
