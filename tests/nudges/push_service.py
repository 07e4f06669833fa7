"""A push service on loopback that answers by path: what RFC 8030 allows, and what goes wrong."""

from __future__ import annotations

import datetime as dt
import socket
import threading
from collections.abc import Mapping
from dataclasses import dataclass
from email.utils import format_datetime
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from types import TracebackType


@dataclass(frozen=True)
class Taken:
    method: str
    path: str
    headers: Mapping[str, str]
    body: bytes


class PushService:
    """``with PushService() as service``: ``service.url("/status/410")`` is an endpoint that answers 410."""

    def __init__(self) -> None:
        self.taken: list[Taken] = []
        self.release = threading.Event()
        self.now_ms: int | None = None
        self.most_at_once = self._at_once = 0
        self._counting = threading.Lock()
        service = self

        class Handler(BaseHTTPRequestHandler):
            protocol_version = "HTTP/1.1"

            def do_POST(self) -> None:
                length = int(self.headers.get("Content-Length", 0))
                body = self.rfile.read(length)
                service.taken.append(Taken("POST", self.path, self.headers, body))
                service.answer(self)

            def do_GET(self) -> None:
                service.taken.append(Taken("GET", self.path, self.headers, b""))
                service.answer(self)

            def log_message(self, *_args: object) -> None:
                pass

            def date_time_string(self, _timestamp: float | None = None) -> str:
                at = (
                    dt.datetime.now(dt.UTC)
                    if service.now_ms is None
                    else dt.datetime.fromtimestamp(service.now_ms / 1000, dt.UTC)
                )
                return format_datetime(at, usegmt=True)

        class Server(ThreadingHTTPServer):
            daemon_threads = True

            def handle_error(self, *_args: object) -> None:
                pass  # a client that hangs up is part of the tests

        self.server = Server(("127.0.0.1", 0), Handler)
        self.thread = threading.Thread(target=self.server.serve_forever, kwargs={"poll_interval": 0.02})

    def url(self, path: str) -> str:
        return f"http://127.0.0.1:{self.server.server_address[1]}{path}"

    def answer(self, request: BaseHTTPRequestHandler) -> None:
        _, what, *rest = request.path.split("/")
        detail = rest[0] if rest else ""
        if what == "redirect":
            self._say(request, int(detail), Location=self.url("/internal"))
        elif what == "retry":
            at = format_datetime(dt.datetime(2199, 12, 31, tzinfo=dt.UTC), usegmt=True)
            self._say(request, 429, **{"Retry-After": at if detail == "date" else detail})
        elif what == "after":
            with self._counting:
                self._at_once += 1
                self.most_at_once = max(self.most_at_once, self._at_once)
            threading.Event().wait(int(detail) / 1000)
            with self._counting:
                self._at_once -= 1
            self._say(request, 201)
        elif what == "slow":
            self.release.wait(20)
            self._say(request, 201)
        elif what == "reset":
            request.connection.setsockopt(socket.SOL_SOCKET, socket.SO_LINGER, b"\1\0\0\0\0\0\0\0")
            request.connection.close()
            request.close_connection = True
        elif what == "status":
            self._say(request, int(detail))
        else:
            self._say(request, 201)

    def _say(self, request: BaseHTTPRequestHandler, status: int, **headers: str) -> None:
        request.send_response(status)
        for name, value in headers.items():
            request.send_header(name, value)
        request.send_header("Content-Length", "0")
        request.end_headers()

    def __enter__(self) -> PushService:
        self.thread.start()
        return self

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, tb: TracebackType | None
    ) -> None:
        self.release.set()
        self.server.shutdown()
        self.server.server_close()
        self.thread.join(5)
