"""The sockets: waitress, with an end to every wait and always room for one more.

waitress by itself takes any byte as a sign of life, and stops accepting at its limit until somebody leaves. Here
a head, a body and an answer each have their time, and a newcomer who finds all places taken gets that of whoever
has waited longest among the connections of the busiest network. Who is being served keeps the place.
"""

from __future__ import annotations

import resource
import select
import socket
import time
from collections import Counter
from collections.abc import Mapping, Sequence
from contextlib import suppress
from dataclasses import dataclass
from typing import Any, Final, Literal

from waitress.adjustments import Adjustments
from waitress.channel import HTTPChannel
from waitress.server import MultiSocketServer, TcpWSGIServer
from waitress.task import ThreadedTaskDispatcher

from .callers import network_of
from .departure import QUIET_S, Departure

THREADS: Final = 8
MOST_HEAD_BYTES: Final = 16 * 1024
MOST_BODY_BYTES: Final = 2 * 1024 * 1024
IN_MEMORY_BYTES: Final = 128 * 1024
"""Of a body that arrives; what is longer goes through a file."""
ALL_BODIES_BYTES: Final = 64 * 1024 * 1024
"""Of all bodies that are arriving; beyond it the oldest of them are given up."""
FILES_BESIDES: Final = 256
"""What the rest of the process may have open; a connection needs its socket and sometimes a file for its body."""
BUSY: Final = (
    b"HTTP/1.1 503 Service Unavailable\r\nRetry-After: 5\r\nConnection: close\r\nContent-Length: 0\r\n\r\n"
)

Phase = Literal["idle", "head", "body", "sending", "served"]


@dataclass(frozen=True, slots=True)
class Patience:
    """How many connections there may be, and how many seconds each of their waits may last.

    ``idle_s`` is longer than deploy/Caddyfile keeps an idle connection to us, so that it is never ended under a
    request. ``body_s`` is what the phone itself waits for an answer.
    """

    connections: int = 512
    idle_s: float = 75.0
    head_s: float = 10.0
    body_s: float = 60.0
    sending_s: float = 300.0
    sweep_s: float = 1.0

    def limit_s(self, phase: Phase) -> float:
        """Return how long a connection may stay in ``phase``; the app alone decides how long it serves."""
        waits: Mapping[Phase, float] = {
            "idle": self.idle_s,
            "head": self.head_s,
            "body": self.body_s,
            "sending": self.sending_s,
        }
        return waits.get(phase, float("inf"))


class Channel(HTTPChannel):  # type: ignore[misc]  # waitress has no types
    """A connection that knows what it waits for, and since when."""

    request: Any = None
    """What has arrived of a request that is not whole yet."""

    def __init__(self, server: Any, sock: Any, addr: Any, adj: Any, map: Any = None) -> None:  # noqa: A002
        self.network = network_of(addr[0])
        self._served = 0
        self._waits_for: tuple[Any, ...] = ()
        self._since_s = time.monotonic()
        super().__init__(server, sock, addr, adj, map=map)

    def service(self) -> None:
        """Serve one request, in a thread; the last one of this connection, if the server is stopping."""
        self._served += 1
        if self.server.departure.begun:
            self.requests[0].headers["CONNECTION"] = "close"  # as if the client had asked for it
        super().service()

    def readable(self) -> bool:
        """Whether more is read; nothing is once it is closed, also not in the loop's present round."""
        return bool(self.connected and super().readable())

    def writable(self) -> bool:
        """Whether something is to be written, or it is to be closed."""
        return bool(self.connected and super().writable())

    def handle_close(self) -> None:
        """Close the connection, and the file of a body that came in part."""
        half, self.request = self.request, None
        if half is not None:
            half.close()
        super().handle_close()

    @property
    def phase(self) -> Phase:
        """What the connection waits for now."""
        if self.total_outbufs_len:
            return "sending"
        if self.requests:
            return "served"
        if self.request is None:
            return "idle"
        return "body" if self.request.headers_finished else "head"

    @property
    def arrived_bytes(self) -> int:
        """How much of a body has come so far."""
        return self.request.body_bytes_received if self.request is not None else 0

    def waited_s(self, now_s: float) -> float:
        """Return for how long the present wait lasts, as of the times that this was asked."""
        waits_for = (self.phase, self.request, self._served)
        if waits_for != self._waits_for:
            self._waits_for, self._since_s = waits_for, now_s
        return now_s - self._since_s


class Listener(TcpWSGIServer):  # type: ignore[misc]  # waitress has no types
    """A listening socket that makes room instead of turning away."""

    channel_class = Channel
    patience = Patience()
    departure = Departure()
    _next_sweep_s = 0.0

    def __init__(self, *args: Any, **more: Any) -> None:
        self._to_close: list[Channel] = []
        super().__init__(*args, **more)

    def readable(self) -> bool:
        """Look after the connections before every wait for sockets; always ready to accept."""
        now_s = time.monotonic()
        if now_s >= self._next_sweep_s:
            self._next_sweep_s = now_s + self.patience.sweep_s
            self._sweep(now_s)
        for channel in self._to_close:
            if channel.connected:
                channel.handle_close()
        self._to_close.clear()
        if self.departure.begun:
            self._depart(now_s)
        return bool(self.accepting)

    def handle_accept(self) -> None:
        """Take a newcomer in, if need be in the place of another."""
        staying = [channel for channel in self._channels() if not channel.will_close]
        if len(staying) >= self.patience.connections and not self._make_room(staying):
            self._turn_away()
            return
        super().handle_accept()

    def _depart(self, now_s: float) -> None:
        """Let nobody new in once those who send us requests know; leave when the last request is answered."""
        if self.departure.is_known(now_s):
            if self.accepting:
                self._close_the_door()
            for channel in self._channels():
                if channel.phase == "idle" and channel.waited_s(now_s) > QUIET_S and not channel.will_close:
                    self._end(channel)
        if self.departure.is_over(now_s, connections=len(self._channels())):
            raise SystemExit  # what ends waitress's loop

    def _close_the_door(self) -> None:
        """Let in who has knocked already, then stop listening; the loop goes on asking us without a socket."""
        knocking = select.poll()
        knocking.register(self.socket, select.POLLIN)
        for _ in range(self.patience.connections):
            if not knocking.poll(0):
                break
            self.handle_accept()
        self.accepting = False
        self.del_channel()
        self.socket.close()
        self._map[-1 - len(self._map)] = self  # no descriptor has such a number, and none is waited for

    def _channels(self) -> list[Channel]:
        """Return the connections of all listening sockets of this server."""
        return [channel for channel in self._map.values() if isinstance(channel, Channel)]

    def _sweep(self, now_s: float) -> None:
        arriving = []
        for channel in self._channels():
            waited_s, phase = channel.waited_s(now_s), channel.phase
            if waited_s > self.patience.limit_s(phase):
                self._end(channel)
            elif phase == "body":
                arriving.append((waited_s, channel.arrived_bytes, channel))
        total = sum(size for _, size, _ in arriving)
        for _, size, channel in sorted(arriving, key=lambda found: -found[0]):
            if total <= ALL_BODIES_BYTES:
                break
            self._end(channel)
            total -= size

    def _end(self, channel: Channel) -> None:
        """Close a connection before the next wait for sockets.

        Not at once, because the loop's list of ready sockets could then name another by the same number; and not
        by waitress's mark alone, because that waits until the other side can be written to.
        """
        channel.will_close = True
        self._to_close.append(channel)

    def _make_room(self, staying: list[Channel]) -> bool:
        """End the longest wait among the busiest network's connections; False if all are being served."""
        waiting = [channel for channel in staying if channel.phase != "served"]
        if not waiting:
            return False
        busiest = Counter(channel.network for channel in waiting).most_common(1)[0][0]
        now_s = time.monotonic()
        own = (channel for channel in waiting if channel.network == busiest)
        self._end(max(own, key=lambda channel: channel.waited_s(now_s)))
        return True

    def _turn_away(self) -> None:
        with suppress(OSError):  # gone again already, or no number left for its socket
            accepted = self.accept()
            if accepted is not None:
                with accepted[0] as visitor:
                    visitor.setblocking(False)
                    visitor.send(BUSY)


def listen(
    app: Any,
    host: str,
    port: int,
    patience: Patience | None = None,
    *,
    departure: Departure | None = None,
    sockets: Sequence[socket.socket] = (),
) -> Any:
    """Return a server that listens already; ``run()`` serves until it is interrupted, ``close()`` ends it.

    ``departure`` ends it with every request answered. ``sockets`` are bound and shared with other processes; without
    any it binds its own.

    Headers that proxies add are left in the environment: the app decides whom it believes (``callers``). The
    process may open enough files for all of it afterwards.
    """
    patience = patience or Patience()
    _allow_files(FILES_BESIDES + 2 * patience.connections)
    adjustments = Adjustments(
        host=host,
        port=port,
        threads=THREADS,
        ident=None,
        asyncore_use_poll=True,
        clear_untrusted_proxy_headers=False,
        inbuf_overflow=IN_MEMORY_BYTES,
        log_socket_errors=False,
        max_request_header_size=MOST_HEAD_BYTES,
        max_request_body_size=MOST_BODY_BYTES,
    )
    dispatcher = ThreadedTaskDispatcher()
    dispatcher.set_thread_count(adjustments.threads)
    connections: dict[int, Any] = {}
    places: list[dict[str, Any]] = [{"sockinfo": address} for address in adjustments.listen]
    if sockets:
        places = [
            {
                "_sock": one,
                "bind_socket": False,
                "sockinfo": (one.family, one.type, one.proto, one.getsockname()),
            }
            for one in sockets
        ]
    listeners = []
    for place in places:
        listener = Listener(app, connections, dispatcher=dispatcher, adj=adjustments, **place)
        listener.patience, listener.departure = patience, departure or Departure()
        listeners.append(listener)
    bound = [(listener.effective_host, listener.effective_port) for listener in listeners]
    return MultiSocketServer(connections, adjustments, bound, dispatcher)


def _allow_files(count: int) -> None:
    """Raise the soft limit of open files, as far as the hard one lets us."""
    soft, hard = resource.getrlimit(resource.RLIMIT_NOFILE)
    wanted = count if hard == resource.RLIM_INFINITY else min(count, hard)
    if soft != resource.RLIM_INFINITY and soft < wanted:
        resource.setrlimit(resource.RLIMIT_NOFILE, (wanted, hard))
