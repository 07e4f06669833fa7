"""Several machines with nothing in common but a database: their processes, phones that log, a push service.

Longer than 300 lines because they are one cast: no part of it is used without the others.
"""

from __future__ import annotations

import datetime as dt
import hashlib
import http.client
import io
import itertools
import json
import os
import signal
import socket
import threading
import time
from collections import Counter
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path
from typing import Any

from PIL import Image
from tests.nudges.support import BrowserKeys
from tests.support.forked_server import ForkedProcess, forker
from tests.support.households import ModelPhone
from tests.support.server import free_port

from broodshelf.nudges.channels.push.hosts import PushHosts
from broodshelf.nudges.channels.push.subscriptions import subscribe
from broodshelf.people.devices import Owner, Phone, sign_in
from broodshelf.people.households import found_household
from broodshelf.records.database import writing
from broodshelf.records.ids import uuid7
from broodshelf.records.store import Ledger

LONG_S = 120


def wait_for(what: Callable[[], bool], seconds: float = LONG_S) -> None:
    """Wait for a state."""
    deadline, pause = time.monotonic() + seconds, threading.Event()
    while not what():
        assert time.monotonic() < deadline, "waited in vain"
        pause.wait(0.02)


class Process:
    """A process of a machine, with a data folder of its own; ``begin`` starts it anew after it ended.

    Its port is held while it is down: bound, not listened at, which keeps everybody else away and lets it in.
    """

    def __init__(self, folder: Path, what: str, settings: dict[str, str]) -> None:
        self.data, self.what, self.port = folder, what, free_port()
        self._log = folder.parent / f"{folder.name}.log"
        self._settings = {"BROODSHELF_DATA": str(folder), "BROODSHELF_PORT": str(self.port), **settings}
        self._process: ForkedProcess | None = None
        self._held = socket.socket()
        self._held.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
        self._held.bind(("127.0.0.1", self.port))

    def begin(self, build: str = "") -> None:
        """Start it, as another build of the app if one is named, with whatever its folder holds."""
        self.data.mkdir(mode=0o700, exist_ok=True)
        if build:
            (self.data / "another-build").write_text(build)
        kept = {k: v for k, v in os.environ.items() if not k.startswith("BROODSHELF_")}
        self._process = forker().fork(
            "tests.support.machine", [self.what], {**kept, **self._settings}, self._log
        )

    def is_ready(self) -> bool:
        """Whether it answers that requests may be sent to it; for a nudger, whether it has begun."""
        assert self._process is not None
        assert self._process.poll() is None, self._log.read_text()[-3000:]
        if self.what == "nudger":
            return '"nudging"' in self._log.read_text()
        try:
            return ask(self.port, "GET", "/readyz").status == 200
        except OSError:
            return False

    def kill(self) -> None:
        """Kill it in the middle of whatever it does."""
        self._end(signal.SIGKILL)

    def done(self) -> None:
        """End it for good."""
        if self._process is not None:
            self.kill()
        self._held.close()

    def leave(self) -> int:
        """Tell it to stop; return its exit status."""
        return self._end(signal.SIGTERM)

    def _end(self, number: signal.Signals) -> int:
        assert self._process is not None
        if self._process.poll() is None:
            self._process.send_signal(number)
        return self._process.wait(LONG_S)


@dataclass(frozen=True, slots=True)
class Answer:
    """What a server answered."""

    status: int
    body: bytes


def ask(port: int, method: str, path: str, body: bytes | None = None, **headers: str) -> Answer:
    """Make one request to this machine, over a connection of its own."""
    line = http.client.HTTPConnection("127.0.0.1", port, timeout=60)
    try:
        line.request(method, path, body, {"Sec-Fetch-Site": "same-origin", **headers})
        answered = line.getresponse()
        return Answer(answered.status, answered.read())
    except http.client.HTTPException as error:
        raise OSError(str(error)) from error
    finally:
        line.close()


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


def noon_zone() -> str:
    """Return a zone in which it is about noon, so that no quiet hours hold a nudge back."""
    ahead = 12 - dt.datetime.now(dt.UTC).hour
    return f"Etc/GMT{-ahead:+d}" if ahead else "UTC"


@dataclass
class Keeper:
    """A household whose keeper logs through the proxy, as a phone does: the same again until it is answered."""

    port: int
    name: str
    phone: ModelPhone
    cookie: str
    logged: list[str] = field(default_factory=list)
    pictures: dict[str, bytes] = field(default_factory=dict)
    leaks: int = 0
    broken: str = ""
    failures: list[str] = field(default_factory=list)
    _stop: threading.Event = field(default_factory=threading.Event)
    _gone: threading.Event = field(default_factory=threading.Event)

    @property
    def headers(self) -> dict[str, str]:
        """What makes a request this phone's."""
        return {"Cookie": f"broodshelf_session={self.cookie}"}

    def run(self) -> None:
        """Log until told to stop; what is wrong stands in ``broken``."""
        try:
            self._log()
        except Exception as error:  # noqa: BLE001 - told by the test that waits for this phone
            self.broken = repr(error)[:1000]

    def _log(self) -> None:
        """Log until told to stop: feedings, a leak of a new colony now and then, a picture now and then."""
        for number in itertools.count():
            if self._stop.is_set():
                return
            self.phone.now_ms = time.time_ns() // 1_000_000
            now = dt.datetime.fromtimestamp(self.phone.now_ms / 1000, dt.UTC).isoformat(
                timespec="milliseconds"
            )
            colony = self._write("colony", {"name": f"{self.name} {number}", "stage": "growing"})
            self._write("feeding", {"colony_id": colony, "need": "sugar", "happened_at": now})
            if number % 4 == 1:
                self._write("fault", {"colony_id": colony, "fault": "leak", "happened_at": now})
                self.leaks += 1
            picture = _picture(self.name, number) if number % 3 == 0 else b""
            if picture:
                named = {
                    "colony_id": colony,
                    "happened_at": now,
                    "sha256": hashlib.sha256(picture).hexdigest(),
                }
                photo = self._write("photo", named)
            self._sync()
            if picture:
                self._until_taken("PUT", f"/api/photos/{photo}", picture, "image/jpeg")
                self.pictures[photo] = picture

    def stop(self) -> None:
        """Log nothing more once the present round is done."""
        self._stop.set()

    def give_up(self) -> None:
        """Ask no more, whatever is still to be answered."""
        self._stop.set()
        self._gone.set()

    def _write(self, kind: str, values: dict[str, Any]) -> str:
        record_id = str(self.phone.write(kind, values)["id"])
        self.logged.append(record_id)
        return record_id

    def _sync(self) -> None:
        while self.phone.outbox:
            body = json.dumps(self.phone.request()).encode()
            answer = self._until_taken("POST", "/api/sync", body, "application/json")
            self.phone.take(json.loads(answer))

    def _until_taken(self, method: str, path: str, body: bytes, kind: str) -> bytes:
        while True:
            try:
                answer = ask(self.port, method, path, body, **self.headers, **{"Content-Type": kind})
            except OSError as error:
                self.failures.append(type(error).__name__)
            else:
                if answer.status == 200:
                    return answer.body
                assert answer.status in (502, 503), answer  # never signed out, never refused
                self.failures.append(str(answer.status))
            if self._gone.wait(0.05):
                raise RuntimeError("the test is over")


def _picture(name: str, number: int) -> bytes:
    body = io.BytesIO()
    shade = int.from_bytes(hashlib.sha256(f"{name}{number}".encode()).digest()[:3])
    Image.new("RGB", (64, 48), (shade >> 16, shade >> 8 & 255, shade & 255)).save(body, "JPEG")
    return body.getvalue()


def new_keeper(port: int, name: str, service: PushService, key_id: str, listeners: int) -> Keeper:
    """Found a household with a keeper who logs and others who listen. Needs an application context."""
    now_ms = time.time_ns() // 1_000_000
    keys = BrowserKeys()
    with writing() as connection:
        household_id, person_id = found_household(connection, name, "Shelf", noon_zone(), now_ms)
        phone = ModelPhone(household_id, now_ms, person_id=person_id)
        session = sign_in(
            connection, Phone(phone.device_id, "a phone"), Owner(household_id, person_id), now_ms
        )
        for number in range(listeners):
            other = ModelPhone(household_id, now_ms, person_id=uuid7(now_ms))
            ledger = Ledger(connection, household_id)
            ledger.put(other.person_id, "person", {"name": f"k{number}", "role": "keeper"}, now_ms=now_ms)
            ledger.flush()
            sign_in(
                connection, Phone(other.device_id, "a phone"), Owner(household_id, other.person_id), now_ms
            )
            endpoint = service.url(f"/{name}/{number}")
            body = {"endpoint": endpoint, "keys": keys.as_json, "key_id": key_id}
            subscribe(connection, other.actor, body, PushHosts(loopback=True), key_id, now_ms)
    return Keeper(port, name, phone, session.token)
