"""Whoever keeps still, dawdles or comes in crowds costs nobody else an answer."""

from __future__ import annotations

import socket
import threading
import time
from collections.abc import Callable, Iterator
from contextlib import ExitStack, suppress

import pytest
from tests.support.serving import Serving
from tests.support.sockets import PATIENCE_S, Crowd, connect, get, read_answer, status_of

from broodshelf.web.listening import MOST_BODY_BYTES, Patience

HEAD = b"GET / HTTP/1.1\r\nHost: shelf\r\n"
POST = b"POST / HTTP/1.1\r\nHost: shelf\r\nContent-Length: %d\r\n\r\n"
LARGE = 8 * 1024 * 1024


def small_app(environ, start_response):
    """Answer with the length of the body; ``/large`` with more than sockets hold."""
    body = b"x" * LARGE if environ["PATH_INFO"] == "/large" else b"%d" % len(environ["wsgi.input"].read())
    start_response("200 OK", [("Content-Type", "text/plain"), ("Content-Length", str(len(body)))])
    return [body]


@pytest.fixture
def serve() -> Iterator[Callable[..., int]]:
    """Serve an app with some patience; return the port."""
    with ExitStack() as all_of_them:
        made: list[Serving] = []

        def start(patience: Patience, app: object = small_app) -> int:
            made.append(all_of_them.enter_context(Serving(app, patience)))
            return made[-1].port

        start.connections = lambda: made[-1].connections()  # type: ignore[attr-defined]
        yield start


def is_closed(connection: socket.socket) -> bool:
    """Wait until the other side closes; False if it says something instead."""
    try:
        return connection.recv(1) == b""
    except ConnectionResetError:
        return True


@pytest.mark.parametrize(
    "words",
    [
        b"",
        b"GET",
        HEAD,
        POST % 1000 + b"x" * 500,
        b"POST / HTTP/1.1\r\nTransfer-Encoding: chunked\r\n\r\nff\r\n",
    ],
    ids=["silent", "half a word", "half a head", "half a body", "half a chunk"],
)
def test_more_half_sent_requests_than_there_are_places_do_not_keep_anybody_out(serve, words):
    port = serve(Patience(connections=20))
    with Crowd(port) as crowd:
        crowd.add(60, words)

        assert [status_of(get(port, "/")) for _ in range(5)] == [200] * 5


def test_idle_kept_connections_do_not_keep_anybody_out(serve):
    port = serve(Patience(connections=20))
    with Crowd(port) as crowd:
        for _ in range(60):
            crowd.add(1, HEAD + b"\r\n")
            assert status_of(read_answer(crowd.connections[-1])) == 200

        assert status_of(get(port, "/")) == 200


def test_the_busiest_network_pays_for_the_room_and_others_keep_their_connection(serve):
    port = serve(Patience(connections=20))
    with connect(port, "127.0.0.2") as quiet, Crowd(port) as crowd:
        quiet.sendall(HEAD + b"\r\n")
        read_answer(quiet)
        crowd.add(60, HEAD, source="127.0.0.3")
        quiet.sendall(HEAD + b"\r\n")

        assert status_of(read_answer(quiet)) == 200


@pytest.mark.parametrize(
    ("words", "patience"),
    [
        (b"", Patience(idle_s=0.2, sweep_s=0.05)),
        (HEAD, Patience(head_s=0.2, sweep_s=0.05)),
        (POST % 1000 + b"x", Patience(body_s=0.2, sweep_s=0.05)),
    ],
    ids=["idle", "head", "body"],
)
def test_each_wait_has_an_end(serve, words, patience):
    port = serve(patience)
    with connect(port) as dawdler:
        dawdler.sendall(words)
        assert is_closed(dawdler)


def test_an_answer_that_nobody_reads_is_given_up(serve):
    port = serve(Patience(sending_s=0.2, sweep_s=0.05))
    with connect(port) as reader:
        reader.sendall(b"GET /large HTTP/1.1\r\nHost: shelf\r\n\r\n")
        wait_until(lambda: serve.connections() == 1)
        wait_until(lambda: serve.connections() == 0)

        assert 0 < len(read_answer(reader)) < LARGE


def wait_until(what: Callable[[], bool]) -> None:
    deadline, pause = time.monotonic() + PATIENCE_S, threading.Event()
    while not what():
        assert time.monotonic() < deadline, "waited in vain"
        pause.wait(0.01)


@pytest.mark.parametrize("start", [HEAD, POST % 1000], ids=["head", "body"])
def test_a_trickle_of_bytes_is_no_sign_of_life(serve, start):
    port = serve(Patience(head_s=0.3, body_s=0.3, sweep_s=0.05))
    pause = threading.Event()
    sent = 0
    with connect(port) as dawdler, suppress(OSError):
        dawdler.sendall(start)
        while sent < 400:  # 20 s if nobody ends it
            dawdler.sendall(b"X")
            sent += 1
            pause.wait(0.05)

    assert sent < 400


def test_a_connection_that_asks_again_and_again_is_kept(serve):
    port = serve(Patience(idle_s=0.5, head_s=0.5, body_s=0.5, sending_s=0.5, sweep_s=0.01))
    pause = threading.Event()
    with connect(port) as busy:
        for _ in range(30):  # 1.5 s, three times each patience
            busy.sendall(POST % 3 + b"abc")
            assert read_answer(busy).endswith(b"3")
            pause.wait(0.05)


def test_who_is_being_served_keeps_the_place_and_the_newcomer_is_asked_to_come_back(serve):
    gate, inside = threading.Event(), threading.Semaphore(0)

    def slow_app(environ, start_response):
        inside.release()
        gate.wait(PATIENCE_S)
        return small_app(environ, start_response)

    port = serve(Patience(connections=4), slow_app)
    with Crowd(port) as crowd:
        crowd.add(4, HEAD + b"\r\n")
        for _ in range(4):
            assert inside.acquire(timeout=PATIENCE_S)
        with connect(port) as newcomer:
            answer = read_answer(newcomer)
        gate.set()

        assert status_of(answer) == 503
        assert b"Retry-After: 5" in answer
        assert [status_of(read_answer(connection)) for connection in crowd.connections] == [200] * 4


def test_bodies_that_arrive_together_have_a_limit_and_the_oldest_are_given_up(serve, monkeypatch):
    monkeypatch.setattr("broodshelf.web.listening.ALL_BODIES_BYTES", 300_000)
    port = serve(Patience(sweep_s=0.05))
    with Crowd(port) as crowd:
        crowd.add(1, POST % 1_000_000 + b"x" * 200_000)
        first = crowd.connections[0]
        crowd.add(1, POST % 200_001 + b"x" * 200_000)

        assert is_closed(first)
        crowd.connections[1].sendall(b"x")
        assert read_answer(crowd.connections[1]).endswith(b"200001")


def test_heads_and_bodies_that_are_too_long_are_refused(serve):
    port = serve(Patience())
    with connect(port) as connection:
        connection.sendall(HEAD + b"Cookie: " + b"x" * 17_000 + b"\r\n\r\n")
        assert status_of(read_answer(connection)) == 431
    with connect(port) as connection:
        connection.sendall(POST % (MOST_BODY_BYTES + 1))
        assert status_of(read_answer(connection)) == 413
