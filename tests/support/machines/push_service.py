"""A push service that counts what it took and can keep its answers back."""

from __future__ import annotations

import threading
from collections import Counter
from collections.abc import Iterator
from contextlib import contextmanager
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer

from tests.support.machines.processes import LONG_S


class PushService:
    """Counts what it took, by address: a message is taken when it is answered. ``held`` keeps answers back."""

    def __init__(self) -> None:
        self.taken: Counter[str] = Counter()
        self.waiting = 0
        self._open = threading.Event()
        self._open.set()
        self._counting = threading.Lock()
        service = self

        class Handler(BaseHTTPRequestHandler):
            protocol_version = "HTTP/1.1"

            def do_POST(self) -> None:
                self.rfile.read(int(self.headers.get("Content-Length", 0)))
                service.answer(self)

            def log_message(self, *_args: object) -> None:
                pass

        class Server(ThreadingHTTPServer):
            daemon_threads = True

            def handle_error(self, *_args: object) -> None:
                pass  # a sender that is killed hangs up

        self._server = Server(("127.0.0.1", 0), Handler)
        self._thread = threading.Thread(target=self._server.serve_forever, kwargs={"poll_interval": 0.02})

    def url(self, path: str) -> str:
        """Return an address of this service."""
        return f"http://127.0.0.1:{self._server.server_address[1]}{path}"

    def answer(self, request: BaseHTTPRequestHandler) -> None:
        """Take a message, unless whoever sent it is gone before it is answered."""
        with self._counting:
            self.waiting += 1
        self._open.wait(LONG_S)
        with self._counting:
            self.waiting -= 1
            request.connection.setblocking(False)
            try:
                gone = request.connection.recv(1, 2) == b""  # MSG_PEEK: an end, if the sender was killed
            except BlockingIOError:
                gone = False
            except OSError:
                gone = True
            request.connection.setblocking(True)
            if gone:
                request.close_connection = True
                return
            self.taken[request.path] += 1
            request.send_response(201)
            request.send_header("Content-Length", "0")
            request.end_headers()

    @contextmanager
    def held(self) -> Iterator[None]:
        """Answer nobody inside."""
        self._open.clear()
        try:
            yield
        finally:
            self._open.set()

    def __enter__(self) -> PushService:
        self._thread.start()
        return self

    def __exit__(self, *_why: object) -> None:
        self._open.set()
        self._server.shutdown()
        self._server.server_close()
        self._thread.join(5)
