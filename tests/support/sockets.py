"""Connections of this machine that say as much as a test wants, and no more."""

from __future__ import annotations

import socket
from contextlib import ExitStack
from types import TracebackType

PATIENCE_S = 20.0
"""How long an answer is waited for before the test fails."""


def connect(port: int, source: str = "127.0.0.1") -> socket.socket:
    """Connect to a port of this machine, from one of its own addresses."""
    return socket.create_connection(("127.0.0.1", port), PATIENCE_S, source_address=(source, 0))


def read_answer(connection: socket.socket) -> bytes:
    """Return one whole answer with a Content-Length, or what came before the other side closed."""
    got = b""
    while b"\r\n\r\n" not in got:
        more = connection.recv(65_536)
        if not more:
            return got
        got += more
    head, _, body = got.partition(b"\r\n\r\n")
    length = next(
        int(line.split(b":")[1]) for line in head.lower().split(b"\r\n") if line.startswith(b"content-length")
    )
    while len(body) < length:
        more = connection.recv(65_536)
        if not more:
            break
        body += more
    return head + b"\r\n\r\n" + body


def status_of(answer: bytes) -> int:
    """Return the status of an answer; 0 for none."""
    return int(answer.split(b" ", 2)[1]) if answer.startswith(b"HTTP/") else 0


def get(port: int, path: str = "/healthz", source: str = "127.0.0.1", headers: str = "") -> bytes:
    """Ask for a page over a connection of its own."""
    with connect(port, source) as connection:
        connection.sendall(
            f"GET {path} HTTP/1.1\r\nHost: 127.0.0.1:{port}\r\n{headers}Connection: close\r\n\r\n".encode()
        )
        return read_answer(connection)


class Crowd:
    """Many connections at once: ``with Crowd(port) as crowd: crowd.add(200, b"GET")``."""

    def __init__(self, port: int) -> None:
        self._port, self._all = port, ExitStack()
        self.connections: list[socket.socket] = []

    def __enter__(self) -> Crowd:
        return self

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None
    ) -> None:
        self._all.close()

    def add(self, count: int, words: bytes = b"", source: str = "127.0.0.1") -> None:
        """Open ``count`` more connections that send ``words`` and then keep still."""
        for _ in range(count):
            connection = self._all.enter_context(connect(self._port, source))
            self.connections.append(connection)
            if words:
                connection.sendall(words)
