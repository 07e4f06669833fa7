"""A server that is told to stop: it says so, answers what was sent to it, lets nobody else in, and ends."""

from __future__ import annotations

import socket
import threading

import pytest
from sqlalchemy import text
from tests.nudges.killing import wait_for
from tests.support.sockets import connect, read_answer, status_of

from broodshelf.records.database import writing
from broodshelf.web import departure as waits
from broodshelf.web.binding import bind
from broodshelf.web.departure import Departure
from broodshelf.web.listening import listen
from broodshelf.web.parts import Parts

ASK = b"GET / HTTP/1.1\r\nHost: 127.0.0.1\r\n\r\n"


class Slow:
    """An app that answers when it is let."""

    def __init__(self) -> None:
        self.asked, self.let = threading.Semaphore(0), threading.Event()

    def __call__(self, _environ, start_response):
        self.asked.release()
        self.let.wait(20)
        start_response("200 OK", [("Content-Length", "2")])
        return [b"ok"]


@pytest.fixture
def slow():
    """The app; a test that fails lets everybody go."""
    made = Slow()
    yield made
    made.let.set()


@pytest.fixture
def departing(slow, monkeypatch):
    """A server of that app on a socket that others could share, its departure, and its thread."""
    monkeypatch.setattr(waits, "LINGER_S", 0.5)
    departure = Departure(lambda: True, lambda: 0.0)
    (shared,) = bind("127.0.0.1", 0)
    server = listen(slow, "127.0.0.1", 0, departure=departure, sockets=[shared])
    thread = threading.Thread(target=server.run)
    thread.start()
    yield int(server.effective_listen[0][1]), departure, thread
    slow.let.set()
    departure.begin()
    thread.join(30)
    assert not thread.is_alive()


def test_what_was_sent_is_answered_and_the_process_ends_after_it(slow, departing):
    port, departure, thread = departing
    with connect(port) as early, connect(port) as idle:
        early.sendall(ASK)
        assert slow.asked.acquire(timeout=20)
        departure.begin()
        with connect(port) as late:  # whoever sends us requests may not know yet
            late.sendall(ASK)
            assert slow.asked.acquire(timeout=20)
            wait_for(lambda: _is_closed(port))
            assert thread.is_alive()  # two are still to be answered
            slow.let.set()
            answers = [read_answer(each) for each in (early, late)]
        assert idle.recv(1) == b""
    thread.join(20)

    assert not thread.is_alive()
    assert [status_of(answer) for answer in answers] == [200, 200]
    assert b"connection: close" in answers[1].lower()  # the client sends nothing more over it


def _is_closed(port: int) -> bool:
    with socket.socket() as visitor:
        return visitor.connect_ex(("127.0.0.1", port)) != 0


def test_nobody_lingers_where_nobody_asks(monkeypatch):
    departure = Departure()
    departure.begin()

    assert departure.is_known(waits.time.monotonic())
    assert departure.is_over(waits.time.monotonic(), connections=0)
    assert not departure.is_over(waits.time.monotonic(), connections=1)
    assert departure.is_over(waits.time.monotonic() + waits.LONGEST_S + 1, connections=1)


def test_whoever_asks_is_waited_for_until_they_have_heard_that_we_stop():
    heard_s: list[float] = []
    departure = Departure(lambda: True, lambda: heard_s[0] if heard_s else None)
    departure.begin()
    begun_s = waits.time.monotonic()

    assert not departure.is_known(begun_s + waits.LINGER_S + 1)
    heard_s.append(begun_s + waits.LINGER_S + 1)
    assert not departure.is_known(heard_s[0] + waits.QUIET_S - 0.01)  # what it sent before may be on its way
    assert departure.is_known(heard_s[0] + waits.QUIET_S)


def test_whoever_asks_no_more_is_not_waited_for_for_ever():
    departure = Departure(lambda: True)
    departure.begin()

    assert not departure.is_known(waits.time.monotonic() + waits.HEARD_S - 1)
    assert departure.is_known(waits.time.monotonic() + waits.HEARD_S)


def _ready(client) -> tuple[int, dict[str, object]]:
    answer = client.get("/readyz")
    return answer.status_code, answer.get_json()


def test_a_process_is_ready_until_it_is_told_to_stop(app):
    parts: Parts = app.extensions["broodshelf"]
    assert not parts.readiness.watched
    status, told = _ready(app.test_client())
    assert (status, told["ready"], told["stopping"]) == (200, True, False)
    assert told["build"] == parts.shell.build
    assert parts.readiness.watched
    parts.readiness.stop()
    assert parts.readiness.heard_s is None

    status, told = _ready(app.test_client())
    assert (status, told["ready"], told["stopping"]) == (503, False, True)
    assert parts.readiness.heard_s is not None
    assert app.test_client().get("/healthz").status_code == 200  # alive, and well


@pytest.mark.parametrize(
    ("revision", "status", "database"), [("0001", 503, "database_behind"), ("9999", 200, "ok")]
)
def test_a_process_is_ready_for_its_own_schema_and_for_a_newer_one(app, revision, status, database):
    parts: Parts = app.extensions["broodshelf"]
    with app.app_context(), writing() as connection:
        connection.execute(text("UPDATE alembic_version SET version_num = :at"), {"at": revision})
    parts.readiness._next_s = 0.0

    found, told = _ready(app.test_client())
    assert (found, told["database"]) == (status, database)
