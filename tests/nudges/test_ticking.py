"""The nudger's beat goes on, whatever happens to the clock on the wall, to a tick or to its thread."""

from __future__ import annotations

import datetime as dt
import json
import socket
import threading
import time
import urllib.error
import urllib.request
from collections.abc import Callable
from pathlib import Path
from types import SimpleNamespace
from typing import Any

import pytest
from tests.support.server import ColdServer, Server

from broodshelf.model.gauges import HOUR_MS
from broodshelf.nudges import ticking as ticking_module
from broodshelf.nudges.ticking import Ticking
from broodshelf.supervision import ALIVE, tell_manager

PATIENCE_S = 30
HASTY = "tests.nudges.hasty_serve"


def wait_for(what: Callable[[], bool], look_s: float = 0.01) -> None:
    deadline, pause = time.monotonic() + PATIENCE_S, threading.Event()
    while not what():
        assert time.monotonic() < deadline, "waited in vain"
        pause.wait(look_s)


@pytest.fixture
def fake_clock() -> Path:
    """The library that lets one process see another time of day."""
    found = sorted(Path("/usr/lib").glob("*/faketime/libfaketimeMT.so.1"))
    assert found, (
        "libfaketime is missing; deploy/test installs it (Debian and Ubuntu: apt-get install faketime)"
    )
    return found[0]


def health(server: ColdServer) -> dict[str, Any]:
    try:
        with urllib.request.urlopen(f"{server.url}/healthz", timeout=10) as answer:
            return json.load(answer)
    except urllib.error.HTTPError as error:
        return json.load(error)


@pytest.mark.long
def test_a_clock_that_is_set_back_by_two_hours_does_not_stop_the_nudger(tmp_path: Path, fake_clock: Path):
    moved = tmp_path / "moved"
    moved.write_text("+0")
    server = ColdServer(tmp_path / "data", HASTY)

    def wait_for_health(of: Callable[[dict[str, Any]], bool]) -> None:
        wait_for(lambda: of(health(server)), look_s=0.1)

    server.settings |= {
        "LD_PRELOAD": str(fake_clock),
        "FAKETIME_TIMESTAMP_FILE": str(moved),
        "FAKETIME_CACHE_DURATION": "1",
        "NO_FAKE_STAT": "1",  # files keep their times: imports look at thousands of them
        "FAKETIME_DONT_FAKE_MONOTONIC": "1",
        "DONT_FAKE_MONOTONIC": "1",
    }
    server.start()
    try:
        wait_for_health(lambda told: told["nudger"]["last_tick_ms"] is not None)
        moved.write_text("-2h")
        back_ms = time.time() * 1000 - 2 * HOUR_MS
        # a tick that was noted under the new clock, within ten minutes of it
        wait_for_health(lambda told: abs(told["nudger"]["last_tick_ms"] - back_ms) < HOUR_MS / 6)
        wait_for_health(lambda told: bool(told["ok"]))
    finally:
        server.stop()
    assert "the clock was set back" in server.output.read_text()


def test_a_tick_that_fails_is_told_and_followed_by_the_next(caplog):
    ticks: list[int] = []

    def tick() -> None:
        ticks.append(len(ticks))
        if len(ticks) == 2:
            raise ZeroDivisionError

    ticking = Ticking(tick, every_s=0.01)
    ticking.start()
    wait_for(lambda: len(ticks) > 4)
    ticking.stop()

    assert "tick failed" in caplog.text
    count = len(ticks)
    assert not [thread for thread in threading.enumerate() if thread.name.startswith("nudges")]
    assert len(ticks) == count


def test_a_tick_that_would_end_its_thread_is_told_and_followed_by_the_next(caplog):
    ticks: list[int] = []

    def tick() -> None:
        ticks.append(len(ticks))
        if len(ticks) == 2:
            raise SystemExit  # no Exception: it ends a thread

    ticking = Ticking(tick, every_s=0.01)
    ticking.start()
    wait_for(lambda: len(ticks) > 4)
    ticking.stop()

    assert "tick failed" in caplog.text


@pytest.mark.parametrize(
    "days",
    [
        [-2],  # set back: by itself the schedule would stand still for two days
        [60_000],  # to the year 2190: five-second ticks that were missed would be 10^9
        [60_000, 0],  # there and back
        [-9000, 9000, -9000],
    ],
)
def test_ticks_go_on_whatever_the_clock_on_the_wall_does(monkeypatch, days: list[int]):
    off = dt.timedelta()

    class Wall(dt.datetime):
        @classmethod
        def now(cls, tz: dt.tzinfo | None = None) -> dt.datetime:
            return dt.datetime.now(tz) + off

    monkeypatch.setattr("apscheduler.schedulers.base.datetime", Wall)
    monkeypatch.setattr(
        ticking_module, "dt", SimpleNamespace(datetime=Wall, timedelta=dt.timedelta, UTC=dt.UTC)
    )
    ticks: list[dt.datetime] = []
    ticking = Ticking(lambda: ticks.append(Wall.now(dt.UTC)), every_s=0.01)
    ticking.start()
    try:
        wait_for(lambda: len(ticks) > 2)
        for step in days:
            off = dt.timedelta(days=step)
            here = Wall.now(dt.UTC)
            wait_for(lambda here=here: sum(abs(at - here) < dt.timedelta(days=1) for at in ticks) > 2)
    finally:
        ticking.stop()


def test_a_tick_that_hangs_is_told_once_with_where_it_hangs(caplog):
    gate, asked = threading.Event(), threading.Semaphore(0)

    def a_search_without_end() -> None:
        asked.release()
        gate.wait(PATIENCE_S)

    ticking = Ticking(a_search_without_end, every_s=0.01, stuck_s=0.05)
    ticking.start()
    wait_for(lambda: "a tick hangs" in caplog.text)
    pause = threading.Event()
    pause.wait(0.1)  # ten more looks of the watch
    told = [record for record in caplog.records if record.message == "a tick hangs"]
    gate.set()
    ticking.stop()

    assert len(told) == 1
    assert "a_search_without_end" in told[0].values["at"]


def test_a_long_tick_that_goes_on_does_not_hang(caplog):
    rounds: list[int] = []

    def long() -> None:
        if rounds:
            return
        for number in range(36):
            ticking.beat()
            rounds.append(number)
            threading.Event().wait(0.1)  # 3.6 s in all: more than may pass in silence

    ticking = Ticking(long, every_s=0.01, stuck_s=3.0)
    ticking.start()
    wait_for(lambda: len(rounds) == 36)
    ticking.stop()

    assert "a tick hangs" not in caplog.text


@pytest.mark.long
def test_the_service_manager_hears_when_the_server_listens_and_that_the_nudger_lives(tmp_path: Path):
    address = tmp_path / "manager"
    server = Server(tmp_path / "data", HASTY)
    server.settings["NOTIFY_SOCKET"] = str(address)
    with socket.socket(socket.AF_UNIX, socket.SOCK_DGRAM) as manager:
        manager.bind(str(address))
        manager.settimeout(PATIENCE_S)
        server.start()
        try:
            heard = [manager.recv(100) for _ in range(4)]
        finally:
            server.stop()

    assert heard.count(b"READY=1") == 1
    assert heard.count(b"WATCHDOG=1") == 3


def test_without_a_manager_nothing_is_said_and_a_deaf_one_is_no_fault(monkeypatch, tmp_path: Path):
    for address in ("", str(tmp_path / "nobody"), "@nobody-listens-here"):
        monkeypatch.setenv("NOTIFY_SOCKET", address)
        tell_manager(ALIVE)


def test_ticks_that_were_missed_are_not_made_up_for():
    every_s, began, ended = 0.05, list[float](), list[float]()
    gate = threading.Event()

    def tick() -> None:
        began.append(time.monotonic())
        if len(began) == 1:
            gate.wait(20 * every_s)
        ended.append(time.monotonic())

    ticking = Ticking(tick, every_s=every_s)
    ticking.start()
    wait_for(lambda: len(began) >= 12)
    ticking.stop()

    for number, at in enumerate(began[1:12], 1):  # made up for, the first twenty would come together
        assert number <= (at - ended[0]) / every_s + 3
