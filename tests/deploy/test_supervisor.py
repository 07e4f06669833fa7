"""The supervisor of ``serve --workers``: told to stop at any step, and on a machine that has no room for a process."""

from __future__ import annotations

import errno
import signal
import sys
import threading
from collections.abc import Callable
from dataclasses import dataclass, field
from itertools import count
from pathlib import Path
from types import SimpleNamespace

import pytest

from broodshelf.commands import workers
from broodshelf.commands.workers import Supervisor

STEPS = 400
"""Lines and calls of the start and of some rounds of looking and waiting."""


@dataclass
class Machine:
    """A clock that a wait turns forward, and processes that are only written down.

    ``refuses``: which forks, counted from 0, the system has no room for. ``looked``: is called at every wait.
    """

    now_s: float = 0.0
    refuses: tuple[int, ...] = ()
    looked: Callable[[], None] = lambda: None
    forked: list[tuple[float, bool]] = field(default_factory=list)
    terminated: int = 0

    def __post_init__(self) -> None:
        machine, numbers = self, count()

        class Fork:
            pid, exitcode = 1, None

            def __init__(self, target: object, args: tuple[bool], daemon: bool) -> None:
                self.first = args[0]

            def start(self) -> None:
                if next(numbers) in machine.refuses:
                    raise BlockingIOError(errno.EAGAIN, "no room")
                machine.forked.append((machine.now_s, self.first))

            def terminate(self) -> None:
                machine.terminated += 1

            def join(self, _seconds: float = 0) -> None:
                self.exitcode = 0

        self.multiprocessing = SimpleNamespace(get_context=lambda _: SimpleNamespace(Process=Fork))

    def monotonic(self) -> float:
        return self.now_s

    def sleep(self, seconds: float) -> None:
        self.now_s += seconds
        self.looked()


@pytest.fixture
def machine(monkeypatch) -> Machine:
    made = Machine()
    monkeypatch.setattr(workers, "time", made)
    monkeypatch.setattr(workers, "multiprocessing", made.multiprocessing)
    monkeypatch.setattr(workers, "bind", lambda *_: [])
    monkeypatch.setattr(workers, "LOOK_S", 0.125)  # of which floats have exact sums
    return made


def supervisor(folder: Path) -> Supervisor:
    """One with two workers and a nudger."""
    folder.mkdir(exist_ok=True)
    return Supervisor(SimpleNamespace(host="", port=0), 2, "en", folder)  # type: ignore[arg-type]


def test_told_to_stop_at_any_step_it_stops(machine, tmp_path):
    """A signal comes between any two steps of the thread that waits, whatever that holds just then."""
    for wanted in range(STEPS):
        made, steps = supervisor(tmp_path / str(wanted)), count()

        def trace(_frame, _event, _arg, made=made, steps=steps, wanted=wanted):
            if next(steps) == wanted:
                made.stop()
            return trace

        def run(made=made, trace=trace):
            sys.settrace(trace)
            made.run()

        running = threading.Thread(target=run, daemon=True)
        running.start()
        running.join(20)
        assert not running.is_alive(), f"hangs when it is told to stop at step {wanted}"


def test_a_process_for_which_there_is_no_room_is_started_after_a_pause_and_the_others_go_on(
    machine, tmp_path
):
    machine.refuses = (1, 3)  # the first worker's first start and its second
    made = supervisor(tmp_path)
    machine.looked = lambda: made.stop() if len(machine.forked) == 3 else None
    before = signal.pthread_sigmask(signal.SIG_BLOCK, ())

    assert made.run() == 0
    assert machine.forked == [(0.0, True), (0.0, True), (3.0, True)]  # after one second, then after two more
    assert machine.terminated == 3
    assert signal.pthread_sigmask(signal.SIG_BLOCK, ()) == before


def test_a_supervisor_that_fails_leaves_no_process_behind(machine, tmp_path):
    def fails() -> None:
        raise ZeroDivisionError

    machine.looked = fails
    with pytest.raises(ZeroDivisionError):
        supervisor(tmp_path).run()

    assert machine.terminated == 3
